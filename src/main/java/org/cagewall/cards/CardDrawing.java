package org.cagewall.cards;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.paper.Align;
import org.cagewall.paper.Box;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Page;
import org.cagewall.paper.Type;
import org.cagewall.room.CardFace;
import org.cagewall.text.Words;

/**
 * Draws one card: the cage's name to be read across the room, the symbol, who lives there, and lines for a pencil. All
 * lengths in millimetres. One thread.
 */
final class CardDrawing {

    /** Fourteen dots of a 300 dpi printer, so that every module edge falls on a dot: 21 modules are 24.9 mm. */
    static final double MODULE = 14 * 25.4 / 300;

    /** The least height of a capital of the cage's name. */
    static final double SMALLEST_NAME = 7;

    /** Every second dot of a 300 dpi printer: the raster on which the symbol begins. */
    private static final double RASTER = 25.4 / 150;

    private static final double MARGIN = 4.5;
    private static final double EDGE = 1;
    private static final double LARGEST_NAME = 10.5;
    private static final double NARROWEST_NAME = 0.66;
    private static final double NAME_LEADING = 1.32;
    private static final double LABEL_WIDTH = 11.5;
    private static final double SINCE_STEP = 4;
    private static final double BIRD_STEP = 5.7;
    private static final double LINE_PITCH = 3.9;
    private static final double LEAST_PENCIL = 5;
    private static final double USUAL_PENCIL = 6.5;
    private static final double FOOT = 4.9;

    private static final Type LEAD = Type.bold(3);
    private static final Type BIRD = Type.bold(3.3);
    private static final Type LABEL = Type.regular(2.3);
    private static final Type LINE = Type.medium(2.3);
    private static final Type SMALL = Type.regular(1.6);

    private static final Ink INK = Ink.BLACK;
    private static final Ink SOFT = Ink.grey(70);
    private static final Ink RULE = Ink.grey(150);

    private final Page page;
    private final Box card;
    private final Box tile;
    private final LocalDate printed;
    private final Words words;

    private double y;

    CardDrawing(Page page, Box card, LocalDate printed, Words words) {
        this.page = page;
        this.card = card;
        this.printed = printed;
        this.words = words;
        this.tile = tile(card);
        this.y = card.top() + 3.9;
    }

    void draw(PrintedCard what) {
        drawSymbol(what.code().text());
        drawName(what.face().cage());
        drawLead(what.face());
        drawBirds(what.face());
        drawLines(what.face().lines());
        drawPencilLines();
        drawFoot(what.code().text());
    }

    /** Where the symbol and its quiet zone lie: at the right, above. */
    static Box tile(Box card) {
        double side = (Symbols.SIDE + 2 * Symbols.QUIET_ZONE) * MODULE;
        double left = Math.floor((card.right() - EDGE - side) / RASTER) * RASTER;
        double top = Math.ceil((card.top() + EDGE) / RASTER) * RASTER;
        return new Box(left, top, side, side);
    }

    private void drawSymbol(String text) {
        double left = tile.left() + Symbols.QUIET_ZONE * MODULE;
        double top = tile.top() + Symbols.QUIET_ZONE * MODULE;
        page.fill(
                Symbols.matrix(text).bars().stream()
                        .map(bar -> new Box(
                                left + bar.column() * MODULE,
                                top + bar.row() * MODULE,
                                bar.width() * MODULE,
                                bar.height() * MODULE))
                        .toList(),
                INK);
    }

    private void drawName(String name) {
        double width = tile.left() - left();
        Type type = page.shrunk(name, Type.bold(LARGEST_NAME), width, SMALLEST_NAME);
        List<String> lines = List.of(name);
        if (page.width(name, type) > width * 1.001) {
            lines = twoLines(page.wrapped(name, type.stretched(NARROWEST_NAME), width));
            for (String line : lines) {
                type = page.narrowed(line, type, width, NARROWEST_NAME);
            }
        }
        double baseline = y + type.capitals();
        for (String line : lines) {
            page.text(page.cut(line, type, width * 1.001), type, INK, left(), baseline);
            baseline += type.capitals() * NAME_LEADING;
        }
        y = baseline - type.capitals() * NAME_LEADING;
    }

    private static List<String> twoLines(List<String> lines) {
        return lines.size() < 3 ? lines : List.of(lines.get(0), String.join(" ", lines.subList(1, lines.size())));
    }

    private void drawLead(CardFace face) {
        String lead = lead(face);
        Optional<String> since = face.since().map(day -> words.say("cards.card.since", day));
        if (lead.isEmpty()) {
            since.ifPresentOrElse(text -> drawFittedAt(6.4, text, LABEL, SOFT), () -> step(2));
            return;
        }
        drawFittedAt(6.2, lead, LEAD, INK);
        double after = left() + page.width(lead, LEAD) + 3.5;
        boolean beside = since.stream().anyMatch(text -> after + page.width(text, LABEL) <= right());
        if (beside) {
            since.ifPresent(text -> page.text(text, LABEL, SOFT, after, y));
        } else if (y + SINCE_STEP + birdsHeight(face) + LEAST_PENCIL <= foot()) {
            since.ifPresent(text -> drawFittedAt(SINCE_STEP, text, LABEL, SOFT));
        }
    }

    /** The pair and its round; where no pair is, what the cage is for, unless its name says so. */
    private String lead(CardFace face) {
        List<String> parts = new ArrayList<>();
        String use = words.say(CardFace.useWord(face.use()));
        boolean saidByName = face.cage().toLowerCase(Locale.ROOT).contains(use.toLowerCase(Locale.ROOT));
        if (face.pair().isEmpty() && !saidByName) {
            parts.add(use);
        }
        face.pair().ifPresent(label -> parts.add(words.say("cards.card.pair", label)));
        face.round().ifPresent(number -> parts.add(words.say("cards.card.round", number)));
        return String.join("  \u00B7  ", parts);
    }

    private void drawBirds(CardFace face) {
        if (hasLine(face, face.cock())) {
            drawBird(words.say("cards.card.cock"), face.cock());
        }
        if (hasLine(face, face.hen())) {
            drawBird(words.say("cards.card.hen"), face.hen());
        }
    }

    private static double birdsHeight(CardFace face) {
        return Stream.of(face.cock(), face.hen())
                        .filter(bird -> hasLine(face, bird))
                        .count()
                * BIRD_STEP;
    }

    private static boolean hasLine(CardFace face, Optional<String> bird) {
        return bird.isPresent() || face.use().equals("breeding");
    }

    private void drawBird(String label, Optional<String> bird) {
        step(BIRD_STEP);
        page.text(label, LABEL, SOFT, left(), y);
        double start = left() + LABEL_WIDTH;
        double width = right() - start;
        if (bird.isEmpty()) {
            rule(start, right() - 1, y);
            return;
        }
        Type type = page.narrowed(bird.get(), page.shrunk(bird.get(), BIRD, width, 2.4), width, 0.8);
        page.text(page.cut(bird.get(), type, width), type, INK, start, y);
    }

    private void drawLines(List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        int columns = lines.size() > 3 ? 2 : 1;
        double column = (tile.left() - left()) / columns;
        step(1.4);
        int rows = Math.max(1, (int) Math.floor((foot() - LEAST_PENCIL - y) / LINE_PITCH));
        List<String> texts = firstOf(lines, rows * columns);
        for (int i = 0; i < texts.size(); i++) {
            if (i % columns == 0) {
                step(LINE_PITCH);
            }
            double width = column - 1;
            Type type = page.narrowed(texts.get(i), LINE, width, 0.8);
            page.text(page.cut(texts.get(i), type, width), type, INK, left() + i % columns * column, y);
        }
    }

    private List<String> firstOf(List<String> lines, int most) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, most - 1));
        first.add(words.say("cards.card.more", lines.size() - first.size()));
        return first;
    }

    private void drawPencilLines() {
        double from = Math.max(y + 1.2, tile.bottom());
        double room = foot() - from;
        long count = Math.max(1, Math.round(room / USUAL_PENCIL));
        for (int i = 1; i <= count; i++) {
            rule(left(), card.right() - MARGIN, from + room * i / count);
        }
    }

    private void drawFoot(String code) {
        double baseline = card.bottom() - 1.8;
        page.text(words.say("cards.card.printed", printed), SMALL, SOFT, left(), baseline);
        page.text(code, SMALL, SOFT, card.right() - MARGIN, baseline, Align.RIGHT);
    }

    private void drawFittedAt(double step, String text, Type type, Ink ink) {
        step(step);
        double width = right() - left();
        Type fitted = page.narrowed(text, page.shrunk(text, type, width, 2), width, 0.8);
        page.text(page.cut(text, fitted, width), fitted, ink, left(), y);
    }

    private void rule(double from, double to, double at) {
        page.line(from, at, to, at, 0.18, RULE);
    }

    private void step(double down) {
        y += down;
    }

    private double left() {
        return card.left() + MARGIN;
    }

    /** How far a text may reach at the height that drawing has come to: to the quiet zone, or under it to the margin. */
    private double right() {
        return y - BIRD.capitals() > tile.bottom() ? card.right() - MARGIN : tile.left();
    }

    private double foot() {
        return card.bottom() - FOOT;
    }
}
