package org.cagewall.handover;

import static org.cagewall.handover.PackLeafPdf.LEFT;
import static org.cagewall.handover.PackLeafPdf.RIGHT;
import static org.cagewall.handover.PackLeafPdf.WIDTH;

import java.util.List;
import java.util.Locale;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Type;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** What each cage is given, and how much. One thread, while the document is being drawn. */
record PackRoutinePdf(PackLeafPdf leaf, Words words) {

    private static final List<String> COLUMNS = List.of("cages", "morning", "evening", "notes");
    private static final List<Double> WIDTHS = List.of(36.0, 50.0, 40.0, 50.0);
    private static final double PADDING = 2;

    void draw(Pack pack) {
        leaf.begin(words.say("pack.routine"), "");
        leaf.text(words.say("pack.routine-text"), PackLeafPdf.STRONG, Ink.BLACK, LEFT, WIDTH);
        leaf.down(3);
        head();
        for (Pack.Given given : pack.routine()) {
            row(List.of(
                    List.of(String.join(", ", given.cages())),
                    said(given.morning()),
                    said(given.evening()),
                    said(given.notes())));
        }
        if (pack.routine().isEmpty()) {
            leaf.text(words.say("pack.routine-none"), PackLeafPdf.TEXT, Ink.BLACK, LEFT, WIDTH);
        }
    }

    private void head() {
        double left = LEFT;
        for (int i = 0; i < COLUMNS.size(); i++) {
            leaf.page()
                    .text(
                            words.say("pack.column-" + COLUMNS.get(i)),
                            PackLeafPdf.STRONG,
                            PackLeafPdf.GREY,
                            left,
                            leaf.y() + 2.5);
            left += WIDTHS.get(i);
        }
        leaf.down(5);
        rule(0.4);
    }

    private void rule(double width) {
        leaf.page().line(LEFT, leaf.y(), RIGHT, leaf.y(), width, PackLeafPdf.RULE);
        leaf.down(PADDING);
    }

    private void row(List<List<String>> cells) {
        double height = 0;
        for (int i = 0; i < cells.size(); i++) {
            Type type = type(i);
            double width = WIDTHS.get(i) - 4;
            height = Math.max(
                    height,
                    cells.get(i).stream()
                            .mapToDouble(text -> leaf.height(text, type, width))
                            .sum());
        }
        int before = leaf.pages();
        leaf.need(Math.min(height + PADDING * 2, 200));
        if (leaf.pages() != before) {
            head();
        }
        double top = leaf.y();
        double left = LEFT;
        for (int i = 0; i < cells.size(); i++) {
            leaf.at(top);
            for (String text : cells.get(i)) {
                leaf.text(text, type(i), Ink.BLACK, left, WIDTHS.get(i) - 4);
            }
            left += WIDTHS.get(i);
        }
        leaf.at(top + height + PADDING / 2);
        rule(0.2);
    }

    private static Type type(int column) {
        return column == 0 ? Type.bold(2.5) : PackLeafPdf.TEXT;
    }

    private List<String> said(List<Message> messages) {
        return messages.stream().map(words::say).map(PackRoutinePdf::capital).toList();
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
