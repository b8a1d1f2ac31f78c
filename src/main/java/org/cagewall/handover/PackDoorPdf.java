package org.cagewall.handover;

import static org.cagewall.handover.PackLeafPdf.LEFT;
import static org.cagewall.handover.PackLeafPdf.RIGHT;
import static org.cagewall.handover.PackLeafPdf.WIDTH;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.paper.Area;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Type;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** The page for the door: whom to phone, and when. One thread, while the document is being drawn. */
record PackDoorPdf(PackLeafPdf leaf, Words words) {

    private static final double GAP = 8;
    private static final double COLUMN = (WIDTH - GAP) / 2;

    /** So many cages to look at first fit onto the page; where there are more, their pages tell. */
    private static final int MOST_WATCHED = 7;

    void draw(Pack pack) {
        leaf.begin(
                words.say("pack.door"),
                words.say(
                        "pack.days",
                        words.shortDay(pack.absence().from()),
                        words.shortDay(pack.absence().to())));
        leaf.text(
                words.say(
                        "pack.door-text",
                        pack.absence().sitter(),
                        pack.owner(),
                        pack.effort().minutes()),
                PackLeafPdf.TEXT,
                Ink.BLACK,
                LEFT,
                WIDTH);
        if (pack.left() > 0) {
            leaf.text(words.say("pack.left", pack.days().size()), PackLeafPdf.TEXT, Ink.BLACK, LEFT, WIDTH);
        }
        leaf.down(3);
        stop(pack.door());
        phones(pack.door());
        columns(pack.door());
    }

    private void stop(Pack.Door door) {
        double top = leaf.y();
        List<String> rules = said(door.stop());
        Type type = Type.medium(2.9);
        double height = 10
                + rules.stream()
                        .mapToDouble(rule -> leaf.height(rule, type, WIDTH - 16) + type.capitals() * 0.45)
                        .sum()
                + 2;
        leaf.page().fillRounded(new Area(LEFT, top, WIDTH, height), 2, PackLeafPdf.SHADE);
        leaf.page().frameRounded(new Area(LEFT, top, WIDTH, height), 2, 0.6, Ink.BLACK);
        leaf.down(4);
        leaf.head(words.say("pack.stop"), LEFT + 6, WIDTH - 12);
        leaf.points(rules, type, LEFT + 6, WIDTH - 12);
        leaf.at(top + height + 6);
    }

    private void phones(Pack.Door door) {
        for (Alarms.Phone phone : door.phones()) {
            double baseline = leaf.y() + 5;
            String name = phone.name().isBlank() ? words.say("pack.vet") : phone.name();
            leaf.page()
                    .text(
                            leaf.page().cut(said(phone, words.say(who(phone), name)), PackLeafPdf.STRONG, 74),
                            PackLeafPdf.STRONG,
                            Ink.BLACK,
                            LEFT,
                            baseline);
            String number = phone.number().orElse("");
            Type large = leaf.page().shrunk(number, Type.bold(4.6), WIDTH - 80, 2.5);
            leaf.page().text(number, large, Ink.BLACK, LEFT + 78, baseline);
            leaf.page().line(LEFT, baseline + 2.2, RIGHT, baseline + 2.2, 0.2, PackLeafPdf.RULE);
            leaf.down(9);
        }
        leaf.down(1.5);
        leaf.text(words.say(Danger.NO_ANSWER), PackLeafPdf.TEXT, Ink.BLACK, LEFT, WIDTH);
        leaf.text(words.say(Danger.EMERGENCY_FIRST), PackLeafPdf.STRONG, Ink.BLACK, LEFT, WIDTH);
        leaf.down(2.5);
        leaf.blank(words.say("pack.address"), LEFT, RIGHT);
        leaf.down(11);
    }

    private String said(Alarms.Phone phone, String name) {
        return phone.first()
                .map(first -> words.say("phone.person-first", name, first))
                .orElse(name);
    }

    private static String who(Alarms.Phone phone) {
        return switch (phone.who()) {
            case OWNER -> "pack.phone-owner";
            case SECOND -> "pack.phone-second";
            case VET -> "pack.phone-vet";
        };
    }

    private void columns(Pack.Door door) {
        double top = leaf.y();
        List<String> watch = new ArrayList<>(said(door.watch()));
        if (watch.size() > MOST_WATCHED) {
            String more = words.say("pack.watch-more", watch.size() - MOST_WATCHED);
            watch.subList(MOST_WATCHED, watch.size()).clear();
            watch.add(more);
        }
        block("pack.watch", watch, LEFT);
        block("pack.fumes", said(door.fumes()), LEFT);
        leaf.at(top);
        block("pack.ill", said(door.ill()), LEFT + COLUMN + GAP);
        block("pack.hours", said(door.hours()), LEFT + COLUMN + GAP);
    }

    private void block(String heading, List<String> sentences, double left) {
        leaf.head(words.say(heading), left, COLUMN);
        leaf.points(sentences, PackLeafPdf.TEXT, left, COLUMN);
        leaf.down(4);
    }

    private List<String> said(List<Message> messages) {
        return messages.stream().map(words::say).toList();
    }
}
