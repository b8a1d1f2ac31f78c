package org.cagewall.handover;

import java.util.ArrayList;
import java.util.List;
import org.cagewall.paper.Align;
import org.cagewall.paper.Area;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Page;
import org.cagewall.paper.Pdf;
import org.cagewall.paper.Size;
import org.cagewall.paper.Type;
import org.cagewall.text.Words;

/**
 * The leaves of the pack, one after the other: each with its heading and foot, and how far it is filled. All lengths in
 * millimetres. One thread, and only while the document is being drawn.
 */
final class PackLeafPdf {

    static final double LEFT = 17;
    static final double RIGHT = 193;
    static final double WIDTH = RIGHT - LEFT;

    /** What is printed ends above this line, so that the shorter Letter paper holds it too. */
    static final double BOTTOM = 268;

    static final Ink GREY = Ink.grey(90);
    static final Ink RULE = Ink.grey(120);
    static final Ink SHADE = Ink.grey(232);

    static final Type TITLE = Type.bold(5);
    static final Type HEAD = Type.bold(3.2);
    static final Type TEXT = Type.regular(2.5);
    static final Type STRONG = Type.medium(2.5);

    /** From one line to the next, in heights of capitals. */
    static final double LEADING = 1.95;

    private static final double TOP = 15;
    private static final double FOOT = 274;

    private final Pdf pdf;
    private final Size paper;
    private final Words words;
    private final String foot;
    private final int of;
    private int pages;
    private String title = "";
    private Page page;
    private double y;

    PackLeafPdf(Pdf pdf, Size paper, Words words, String foot, int of) {
        this.pdf = pdf;
        this.paper = paper;
        this.words = words;
        this.foot = foot;
        this.of = of;
    }

    static String foot(Pack pack, Words words) {
        return pack.room().isEmpty()
                ? words.say("pack.foot", pack.made())
                : words.say("pack.foot-room", pack.room(), pack.made());
    }

    int pages() {
        return pages;
    }

    Page page() {
        return page;
    }

    double y() {
        return y;
    }

    void down(double mm) {
        y += mm;
    }

    void at(double mm) {
        y = mm;
    }

    /** How much of the leaf is left. */
    double room() {
        return BOTTOM - y;
    }

    /** A new leaf with this heading. */
    void begin(String heading, String beside) {
        title = heading;
        open(heading, beside);
    }

    /** A new leaf with the same heading, where less than this is left. */
    void need(double mm) {
        if (room() < mm) {
            open(words.say("pack.more", title), "");
        }
    }

    private void open(String heading, String beside) {
        page = pdf.page(paper, (paper.width() - Size.A4.width()) / 2, Math.min(0, (paper.height() - TOP - FOOT) / 2));
        pages++;
        Type small = page.shrunk(beside, TEXT, WIDTH * 0.4, 1.8);
        double wide = WIDTH - page.width(beside, small) - 6;
        Type type = page.shrunk(heading, TITLE, wide, 3.4);
        page.text(page.cut(heading, type, wide), type, Ink.BLACK, LEFT, TOP + TITLE.capitals());
        page.text(beside, small, GREY, RIGHT, TOP + TITLE.capitals(), Align.RIGHT);
        page.line(LEFT, TOP + 8.5, RIGHT, TOP + 8.5, 0.5, Ink.BLACK);
        page.text(page.cut(foot, Type.regular(1.9), WIDTH * 0.8), Type.regular(1.9), GREY, LEFT, FOOT);
        page.text(words.say("pack.page", pages, of), Type.regular(1.9), GREY, RIGHT, FOOT, Align.RIGHT);
        y = TOP + 14;
    }

    /** A heading within the leaf, at the left of a column. */
    void head(String text, double left, double width) {
        Type type = page.shrunk(text, HEAD, width, 2.2);
        page.text(text, type, Ink.BLACK, left, y + HEAD.capitals());
        y += HEAD.capitals() + 3;
    }

    /** A paragraph. */
    void text(String text, Type type, Ink ink, double left, double width) {
        for (String line : lines(text, type, width)) {
            page.text(line, type, ink, left, y + type.capitals());
            y += type.capitals() * LEADING;
        }
    }

    /** How high a paragraph is. */
    double height(String text, Type type, double width) {
        return lines(text, type, width).size() * type.capitals() * LEADING;
    }

    /** The text in lines; a word that is wider than the place is broken where it is full. */
    List<String> lines(String text, Type type, double width) {
        return page.wrapped(text, type, width).stream()
                .flatMap(line -> broken(line, type, width).stream())
                .toList();
    }

    private List<String> broken(String line, Type type, double width) {
        List<String> parts = new ArrayList<>();
        String rest = line;
        while (page.width(rest, type) > width && rest.codePointCount(0, rest.length()) > 1) {
            int end = rest.length();
            while (end > rest.offsetByCodePoints(0, 1) && page.width(rest.substring(0, end), type) > width) {
                end = rest.offsetByCodePoints(end, -1);
            }
            parts.add(rest.substring(0, end));
            rest = rest.substring(end);
        }
        parts.add(rest);
        return parts;
    }

    /** Sentences one below the other, each behind a dot. */
    void points(List<String> sentences, Type type, double left, double width) {
        for (String sentence : sentences) {
            page.fillRounded(new Area(left, y + type.capitals() / 2 - 0.6, 1.2, 1.2), 0.6, Ink.BLACK);
            text(sentence, type, Ink.BLACK, left + 4, width - 4);
            y += type.capitals() * 0.45;
        }
    }

    /** A square to tick. */
    void tick(double left, double top, double side) {
        page.frameRounded(new Area(left, top, side, side), 0.4, 0.35, Ink.BLACK);
    }

    /** A line to write on, after a few words. */
    void blank(String label, double left, double right) {
        double baseline = y + TEXT.capitals();
        page.text(label, TEXT, Ink.BLACK, left, baseline);
        double from = left + page.width(label, TEXT) + 2;
        page.line(Math.min(from, right - 10), baseline + 0.8, right, baseline + 0.8, 0.25, RULE);
    }
}
