package org.cagewall.handover;

import static org.cagewall.handover.PackLeafPdf.LEFT;
import static org.cagewall.handover.PackLeafPdf.RIGHT;
import static org.cagewall.handover.PackLeafPdf.WIDTH;

import java.util.List;
import org.cagewall.paper.Align;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Type;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** What is never done, what is done when something happens, and what is said back. One thread, while it is drawn. */
record PackTopicsPdf(PackLeafPdf leaf, Words words) {

    private static final Type STEP = Type.regular(2.7);

    void draw(Pack pack) {
        never(pack);
        cases(pack.cases());
        sayBack(pack);
    }

    private void never(Pack pack) {
        leaf.begin(words.say("pack.never"), "");
        points(pack.never());
        pack.rules().ifPresent(rules -> {
            leaf.down(4);
            leaf.need(20);
            leaf.head(words.say("pack.rules", pack.owner()), LEFT, WIDTH);
            rules.lines().filter(line -> !line.isBlank()).forEach(line -> paragraph(line.strip()));
        });
        leaf.down(4);
        leaf.need(20);
        leaf.head(words.say("pack.first"), LEFT, WIDTH);
        paragraph(words.say("pack.first-text"));
    }

    private void points(List<Message> messages) {
        for (Message message : messages) {
            String sentence = words.say(message);
            leaf.need(leaf.height(sentence, STEP, WIDTH - 4));
            leaf.points(List.of(sentence), STEP, LEFT, WIDTH);
            leaf.down(1.2);
        }
    }

    private void paragraph(String text) {
        for (String line : leaf.page().wrapped(text, STEP, WIDTH)) {
            leaf.need(6);
            leaf.text(line, STEP, Ink.BLACK, LEFT, WIDTH);
        }
    }

    private void cases(List<Pack.Topic> cases) {
        leaf.begin(words.say("pack.if"), "");
        for (Pack.Topic topic : cases) {
            double height = 7
                    + topic.steps().stream()
                            .mapToDouble(step -> leaf.height(words.say(step), STEP, WIDTH - 10))
                            .sum();
            leaf.need(height);
            leaf.head(words.say(topic.title()), LEFT, WIDTH);
            for (int i = 0; i < topic.steps().size(); i++) {
                leaf.page()
                        .text(
                                String.valueOf(i + 1),
                                Type.bold(2.7),
                                Ink.BLACK,
                                LEFT + 4,
                                leaf.y() + STEP.capitals(),
                                Align.RIGHT);
                leaf.text(words.say(topic.steps().get(i)), STEP, Ink.BLACK, LEFT + 8, WIDTH - 8);
            }
            leaf.down(4);
        }
    }

    private void sayBack(Pack pack) {
        leaf.begin(words.say("pack.back"), "");
        paragraph(words.say("pack.back-text", pack.owner(), pack.absence().sitter()));
        leaf.down(4);
        for (Message question : pack.sayBack()) {
            double top = leaf.y();
            leaf.tick(LEFT, top - 0.6, 4.4);
            leaf.text(words.say(question), STEP, Ink.BLACK, LEFT + 9, WIDTH - 9);
            leaf.down(5);
        }
        leaf.down(6);
        leaf.blank(words.say("pack.walked-on"), LEFT, LEFT + 80);
        leaf.blank(words.say("pack.walked-by", pack.absence().sitter()), LEFT + 90, RIGHT);
        leaf.down(12);
        leaf.blank(words.say("pack.walked-by", pack.owner()), LEFT + 90, RIGHT);
    }
}
