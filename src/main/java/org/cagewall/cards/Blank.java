package org.cagewall.cards;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.paper.Align;
import org.cagewall.paper.Area;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Page;
import org.cagewall.paper.Type;
import org.cagewall.text.Words;

/**
 * A card with its symbols in their places, on which a face writes from the top down: each line goes where the symbols
 * leave it enough room. All lengths in millimetres. One thread.
 */
final class Blank {

    static final Ink INK = Ink.BLACK;
    static final Ink SOFT = Ink.grey(70);
    static final Ink RULE = Ink.grey(150);

    /** The least height of a capital of the cage's name. */
    static final double SMALLEST_NAME = 7;

    /** The same where one word is whole only if it is smaller. */
    private static final double SMALLEST_WORD = 4.5;

    private static final Type SMALL = Type.regular(1.6);
    private static final double NARROWEST_NAME = 0.66;
    private static final double NARROWEST = 0.8;
    private static final double NAME_LEADING = 1.32;

    /** How far letters such as p and q reach below their line, as a share of a capital. */
    private static final double DESCENT = 0.26;

    /** The white that is kept for them above a symbol. */
    private static final double DESCENT_ROOM = 0.3;

    private static final double TOP = 3;
    private static final double GUTTER = 1.4;
    private static final double FOOT_LINE = 1.7;
    private static final double FOOT = 4.6;
    private static final double PENCIL_HEIGHT = 4.2;
    private static final double USUAL_PENCIL = 6.5;
    private static final double LEAST_GAP = 0.7;
    private static final double LEAST_RULE = 22;

    /** The usual card, on which all sizes are as they are written here. */
    private static final double USUAL_AREA = 85 * 54;

    private final Page page;
    private final Area card;
    private final SymbolTiles tiles;
    private final Words words;
    private final double scale;
    private double y;

    Blank(Page page, Area card, SymbolTiles tiles, Words words) {
        this.page = page;
        this.card = card;
        this.tiles = tiles;
        this.words = words;
        this.scale = scale(card);
        this.y = card.top() + Math.min(TOP * scale, 7);
    }

    /** How much larger than on the usual card everything is written. */
    static double scale(Area card) {
        return Math.max(0.8, Math.min(1.9, Math.sqrt(card.width() * card.height() / USUAL_AREA)));
    }

    void down(double by) {
        y += by;
    }

    void downTo(double to) {
        y = to;
    }

    /** Whether the name stands in one line without becoming too small. */
    static boolean isOneLine(Page page, Area card, SymbolTiles tiles, String name) {
        Type smallest = Type.bold(SMALLEST_NAME).stretched(NARROWEST_NAME);
        return page.width(name, smallest) <= tiles.boxes().get(0).left() - card.left() - margin(card);
    }

    void drawSymbols(String text) {
        List<Symbol.Bar> bars = Symbols.matrix(text).bars();
        double module = tiles.module();
        for (Area tile : tiles.boxes()) {
            double left = tile.left() + Symbols.QUIET_ZONE * module;
            double top = tile.top() + Symbols.QUIET_ZONE * module;
            page.fill(
                    bars.stream()
                            .map(bar -> new Area(
                                    left + bar.column() * module,
                                    top + bar.row() * module,
                                    bar.width() * module,
                                    bar.height() * module))
                            .toList(),
                    INK);
        }
    }

    /** The cage's name, in capitals up to this height; a long one is narrowed and set in two lines, a long word made smaller if that saves it. */
    void drawName(String name, double largest) {
        Span span = span(y, y + SMALLEST_NAME);
        double width = span.width();
        Type type = page.shrunk(name, Type.bold(largest), width, SMALLEST_NAME);
        List<String> lines = List.of(name);
        if (page.width(name, type) > width * 1.001) {
            type = page.narrowed(name, type, width, NARROWEST_NAME);
        }
        if (page.width(name, type) > width * 1.001) {
            lines = twoLines(page.wrapped(name, type.stretched(NARROWEST_NAME), width));
            for (String line : lines) {
                type = page.narrowed(line, type, width, NARROWEST_NAME);
            }
            Type whole = page.shrunk(lines.get(0), type, width, SMALLEST_WORD);
            type = lines.size() == 1 && page.width(lines.get(0), whole) <= width * 1.001 ? whole : type;
        }
        double baseline = y + type.capitals();
        for (String line : lines) {
            page.text(page.cut(line, type, width * 1.001), type, INK, span.left(), baseline);
            y = baseline + (reachesBelow(line) ? type.capitals() * DESCENT : 0);
            baseline += type.capitals() * NAME_LEADING;
        }
    }

    private static boolean reachesBelow(String line) {
        return line.chars().anyMatch(letter -> "gjpqyQJ,;()".indexOf(letter) >= 0);
    }

    private static List<String> twoLines(List<String> lines) {
        return lines.size() < 3 ? lines : List.of(lines.get(0), String.join(" ", lines.subList(1, lines.size())));
    }

    /** Goes down by the gap to the next line of this type that is at least so wide, and says how far it reaches. */
    Span next(double gap, Type type, double least) {
        return next(gap, type, least, type.capitals());
    }

    /** The same for the first of several lines that are to stay together, and are so high. */
    Span next(double gap, Type type, double least, double height) {
        Span span = place(gap, type, height, least).orElseGet(() -> span(y + gap, y + gap + height));
        y = span.top() + type.capitals();
        return span;
    }

    /** Whether a line of this type and width would still leave so much above the foot. */
    boolean hasRoom(double gap, Type type, double least, double below) {
        return place(gap, type, type.capitals(), least).stream()
                .anyMatch(span -> span.top() + type.capitals() + below <= foot());
    }

    /** The first place from here on that is wide enough for lines that are together so high, if the card has one left. */
    Optional<Span> place(double gap, Type type, double height, double least) {
        return placeBelow(y + gap, type, height, least);
    }

    Optional<Span> placeBelow(double from, Type type, double height, double least) {
        return tops(from)
                .filter(top -> top + height <= card.bottom() - FOOT_LINE - SMALL.capitals() - LEAST_GAP)
                .map(top -> span(top, top + height + below(type)))
                .filter(span -> span.width() >= least)
                .findFirst();
    }

    /** The white that a line needs below it. */
    private static double below(Type type) {
        return Math.max(LEAST_GAP, type.capitals() * DESCENT_ROOM);
    }

    /** From here, or right below one of the symbols. */
    private Stream<Double> tops(double from) {
        return Stream.concat(Stream.of(from), tiles.boxes().stream().map(tile -> tile.bottom() + LEAST_GAP))
                .filter(top -> top >= from)
                .sorted();
    }

    /** How high capitals may be, this gap below, for their line to stand above the lower symbol. */
    double capitalsAboveSymbol(double gap) {
        double room = lowerLeft().mapToDouble(Area::top).min().orElse(Double.MAX_VALUE) - y - gap;
        return Math.min(room - LEAST_GAP, room / (1 + DESCENT_ROOM)) - 0.01;
    }

    /** Rows of this pitch that all begin at the same distance from the edge, in all ways to place them. */
    List<List<Span>> blocks(double gap, Type type, double pitch, double least) {
        double edge = card.left() + margin(card);
        return Stream.concat(Stream.of(edge), lowerLeft().map(tile -> tile.right() + GUTTER))
                .flatMap(left -> tops(y + gap).map(top -> rows(top, left, type, pitch, least)))
                .toList();
    }

    private Stream<Area> lowerLeft() {
        return tiles.boxes().stream().skip(1);
    }

    private List<Span> rows(double first, double left, Type type, double pitch, double least) {
        return Stream.iterate(first, top -> top + type.capitals() <= foot(), top -> top + pitch)
                .map(top -> span(top, top + type.capitals() + below(type)))
                .takeWhile(row -> row.left() <= left && row.right() - left >= least)
                .map(row -> new Span(row.top(), left, row.right()))
                .toList();
    }

    /** How far a line between these heights may reach without touching a symbol's quiet zone. */
    Span span(double top, double bottom) {
        double left = card.left() + margin(card);
        double right = card.right() - margin(card);
        for (Area tile : tiles.boxes()) {
            if (tile.top() < bottom && tile.bottom() > top) {
                if (tile.left() - card.left() < card.right() - tile.right()) {
                    left = Math.max(left, tile.right() + GUTTER);
                } else {
                    right = Math.min(right, tile.left());
                }
            }
        }
        return new Span(top, left, right);
    }

    /** A text at the line that drawing has come to, made smaller and narrower where it must. */
    void text(String text, Type type, Ink ink, double left, double right) {
        text(text, type, ink, left, right, y);
    }

    void text(String text, Type type, Ink ink, double left, double right, double baseline) {
        Type fitted = fitted(text, type, right - left);
        page.text(page.cut(text, fitted, right - left), fitted, ink, left, baseline);
    }

    Type fitted(String text, Type type, double width) {
        return page.narrowed(text, page.shrunk(text, type, width, type.capitals() * 0.72), width, NARROWEST);
    }

    double width(String text, Type type) {
        return page.width(text, type);
    }

    /** A line to write on at the height that drawing has come to. */
    void rule(double left, double right) {
        rule(left, right, y);
    }

    void rule(double left, double right, double at) {
        page.line(left, at, right, at, 0.18, RULE);
    }

    /** Lines for a pencil down to the foot, at least one. */
    void drawPencilLines() {
        pencilLines(y + 1, PENCIL_HEIGHT).forEach(line -> rule(line.left(), line.right(), line.top()));
    }

    /**
     * Lines for a pencil, no closer than these rows, under heads that the first of them leaves room for; all end where the one
     * at the foot does, so that columns stand below each other.
     */
    List<Span> tallyLines(double headHeight, double leastRow) {
        Span last = lastLine();
        double from = y + headHeight;
        double top = tiles.boxes().stream()
                .filter(tile -> tile.left() < last.right() && tile.right() > last.left())
                .mapToDouble(tile -> tile.bottom() + headHeight)
                .reduce(from, Math::max);
        return pencilLines(top, leastRow).stream()
                .map(line -> new Span(line.top(), Math.min(line.left(), last.left()), last.right()))
                .toList();
    }

    /** How far the line at the foot reaches. */
    Span lastLine() {
        return span(foot() - PENCIL_HEIGHT, foot());
    }

    private List<Span> pencilLines(double from, double leastRow) {
        double room = foot() - from;
        long usual = Math.round(room / (USUAL_PENCIL * Math.min(scale, 1.3)));
        long count = Math.max(1, Math.min(usual, (long) (room / leastRow)));
        return Stream.iterate(1L, each -> each <= count, each -> each + 1)
                .map(each -> foot() - room * (count - each) / count)
                .map(at -> {
                    Span span = span(at - PENCIL_HEIGHT, at);
                    return new Span(at, span.left(), span.right());
                })
                .filter(line -> line.width() >= LEAST_RULE)
                .toList();
    }

    void drawFoot(LocalDate printed, String code) {
        double baseline = card.bottom() - FOOT_LINE;
        Span span = span(baseline - SMALL.capitals(), baseline);
        page.text(words.say("cards.card.printed", printed), SMALL, SOFT, span.left(), baseline);
        page.text(code, SMALL, SOFT, span.right(), baseline, Align.RIGHT);
    }

    /** The height of the last line for a pencil. */
    double foot() {
        return card.bottom() - FOOT;
    }

    private static double margin(Area card) {
        return card.height() < 45 ? 3.2 : 4.5;
    }

    /**
     * A line's place.
     *
     * @param top its upper edge
     * @param left from where
     * @param right to where
     */
    record Span(double top, double left, double right) {

        double width() {
            return right - left;
        }
    }
}
