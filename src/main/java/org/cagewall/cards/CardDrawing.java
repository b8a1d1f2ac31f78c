package org.cagewall.cards;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.paper.Area;
import org.cagewall.paper.Page;
import org.cagewall.paper.Type;
import org.cagewall.room.card.CardFace;
import org.cagewall.text.Words;

/**
 * Draws one card: the cage's name to be read across the room, the symbol, who lives there, and lines for a pencil. All
 * lengths in millimetres. One thread.
 */
final class CardDrawing {

    private static final double LINE_PITCH = 1.7;
    private static final int FEW_LINES = 2;
    private static final double LARGE_CARD = 90;
    private static final double LEAST_PENCIL = 4.7;
    private static final double LEAST_TALLY = 11;
    private static final double TALLY_ALONE = 8;
    private static final double LEAST_SHRINK = 0.75;
    private static final double LEAST_LEAD = 0.68;
    private static final double NARROW_GAP = 1.1;
    private static final double LEAST_COUNT = 0.6;
    private static final double LEAST_RING = 0.9;
    private static final double SMALLER = 0.85;
    private static final double LEAST_BIRD = 2.3;
    private static final double COLUMN_GAP = 1.5;
    private static final List<Double> SHRINKS = List.of(1.0, 0.95, 0.9, 0.85, 0.8, 0.75, 0.7, 0.65, 0.6);
    private static final double BESIDE = 3;
    private static final List<String> TALLY = List.of("day", "in", "out", "now");
    private static final Type TALLY_HEAD = Type.regular(1.6);
    private static final double TALLY_HEIGHT = 2;
    private static final double TALLY_GAP = 2;
    private static final double TALLY_ROW = 5;
    private static final double LEAST_TALLY_ROW = 5.3;

    private final Blank blank;
    private final Face face;
    private final Style style;
    private final CardToPrint what;
    private final LocalDate printed;
    private final Words words;

    private CardDrawing(Blank blank, Face face, Style style, CardToPrint what, LocalDate printed, Words words) {
        this.blank = blank;
        this.face = face;
        this.style = style;
        this.what = what;
        this.printed = printed;
        this.words = words;
    }

    /** Beside a name in two lines there is room for the plain face only, unless the card is large. */
    static CardDrawing of(CardToPrint what, Page page, Area card, Face face, LocalDate printed, Words words) {
        SymbolTiles tiles = SymbolTiles.of(card);
        boolean asksForRoom = face == Face.LARGE
                || what.face().pair().isPresent()
                || tiles.boxes().size() == 1;
        boolean cramped = asksForRoom
                && !isLarge(card)
                && !Blank.isOneLine(page, card, tiles, what.face().cage());
        Face fitting = cramped ? Face.PLAIN : face;
        Blank blank = new Blank(page, card, tiles, words);
        return new CardDrawing(blank, fitting, Style.of(fitting, card), what, printed, words);
    }

    private static boolean isLarge(Area card) {
        return Math.min(card.width(), card.height()) >= LARGE_CARD;
    }

    void draw() {
        blank.drawSymbols(what.code().text());
        blank.drawName(what.face().cage(), style.name());
        drawLead();
        drawBirds();
        drawLines(what.face().lines());
        if (face == Face.FLIGHT) {
            drawCount();
            drawTally();
        } else {
            blank.drawPencilLines();
        }
        blank.drawFoot(printed, what.code().text());
    }

    /** Pair and round and since when; where there is no pair, what the cage is for, unless its name says so. */
    private void drawLead() {
        Optional<String> since = what.face().since().map(day -> words.say("cards.card.since", day));
        String lead = lead();
        if (lead.isEmpty()) {
            since.ifPresent(this::drawSince);
        } else {
            drawLead(lead, since);
        }
    }

    private void drawLead(String lead, Optional<String> since) {
        Type type = leadType();
        double gap = type.equals(style.lead()) ? style.leadGap() : narrowGap();
        Blank.Span span = blank.next(gap, type, widthFor(lead, type));
        blank.text(lead, type, Blank.INK, span.left(), span.right());
        double after = span.left() + blank.width(lead, type) + BESIDE;
        boolean beside = since.stream().anyMatch(text -> after + blank.width(text, style.label()) <= span.right());
        if (beside) {
            since.ifPresent(text -> blank.text(text, style.label(), Blank.SOFT, after, span.right()));
        } else {
            since.filter(text -> isBelow(span)).ifPresent(this::drawSince);
        }
    }

    /** Somewhat lower where it then stands right below the name, above the symbol that else would push it aside. */
    private Type leadType() {
        double whole = style.lead().capitals();
        double low = Math.min(whole * 0.99, blank.capitalsAboveSymbol(narrowGap()));
        boolean fits = whole <= blank.capitalsAboveSymbol(style.leadGap());
        return fits || low < whole * LEAST_LEAD ? style.lead() : style.lead().sized(low);
    }

    private double narrowGap() {
        return Math.min(style.leadGap(), NARROW_GAP);
    }

    /** Whether the day would stand right below the lead, and not aside. */
    private boolean isBelow(Blank.Span lead) {
        return blank.place(style.sinceGap(), style.label(), style.label().capitals(), style.leadWidth()).stream()
                .anyMatch(span -> span.left() == lead.left());
    }

    private String lead() {
        CardFace card = what.face();
        List<String> parts = new ArrayList<>();
        String use = words.say(CardFace.useWord(card.use()));
        boolean saidByName = card.cage().toLowerCase(Locale.ROOT).contains(use.toLowerCase(Locale.ROOT));
        if (card.pair().isEmpty() && !saidByName) {
            parts.add(use);
        }
        card.pair().ifPresent(label -> parts.add(words.say("cards.card.pair", label)));
        card.round().ifPresent(number -> parts.add(words.say("cards.card.round", number)));
        return String.join("  \u00B7  ", parts);
    }

    /** A line is begun where it need not be made much narrower. */
    private double widthFor(String text, Type type) {
        return Math.max(style.leadWidth(), blank.width(text, type) * LEAST_SHRINK);
    }

    private void drawSince(String text) {
        if (blank.hasRoom(style.sinceGap(), style.label(), style.leadWidth(), heightBelow())) {
            Blank.Span span = blank.next(style.sinceGap(), style.label(), style.leadWidth());
            blank.text(text, style.label(), Blank.SOFT, span.left(), span.right());
        }
    }

    /** What must not be pushed off the card. */
    private double heightBelow() {
        int rows = Math.min(FEW_LINES, what.face().lines().size());
        double lines = rows == 0 ? 0 : style.leadGap() + rows * LINE_PITCH * kept().capitals();
        return birds().size() * style.birdHeight() + lines + (face == Face.FLIGHT ? countHeight() : LEAST_PENCIL * 1.2);
    }

    private void drawBirds() {
        List<Bird> birds = birds();
        if (birds.isEmpty()) {
            return;
        }
        Style fitted = fitted(birds);
        double height = birds.size() * fitted.birdHeight() - fitted.birdGap();
        Blank.Span span = blank.next(fitted.birdGap(), fitted.bird(), birdsWidth(fitted, birds, height), height);
        for (Bird bird : birds) {
            blank.text(bird.label(), fitted.label(), Blank.SOFT, span.left(), span.right());
            double start = span.left() + fitted.labelWidth();
            bird.ring()
                    .ifPresentOrElse(
                            ring -> blank.text(ring, fitted.bird(), Blank.INK, start, span.right()),
                            () -> blank.rule(start, span.right() - 1));
            blank.down(fitted.birdHeight());
        }
        blank.down(-fitted.birdHeight());
    }

    /** The style with its rings as large as leaves room for what is below them. */
    private Style fitted(List<Bird> birds) {
        double room = blank.foot() - (face == Face.FLIGHT ? TALLY_ALONE : LEAST_PENCIL);
        return SHRINKS.stream()
                .map(style::withBirds)
                .filter(each -> {
                    double height = birds.size() * each.birdHeight() - each.birdGap();
                    return blank.place(each.birdGap(), each.bird(), height, birdsWidth(each, birds, height)).stream()
                            .anyMatch(span -> span.top() + height <= room);
                })
                .findFirst()
                .orElseGet(() -> style.withBirds(SHRINKS.get(SHRINKS.size() - 1)));
    }

    /** Rings are begun where they need not be made much narrower, if there is such a place. */
    private double birdsWidth(Style fitted, List<Bird> birds, double height) {
        double longest = birds.stream()
                .flatMap(bird -> bird.ring().stream())
                .mapToDouble(ring -> blank.width(ring, fitted.bird()))
                .max()
                .orElse(0);
        double whole = Math.max(fitted.birdWidth(), fitted.labelWidth() + longest * LEAST_RING);
        double most = Math.min(whole, blank.lastLine().width());
        return blank.place(fitted.birdGap(), fitted.bird(), height, most).isPresent() ? most : fitted.birdWidth();
    }

    private record Bird(String label, Optional<String> ring) {}

    /** In a breeding cage a missing bird leaves a line to write on. */
    private List<Bird> birds() {
        return Stream.of(
                        new Bird(words.say("cards.card.cock"), what.face().cock()),
                        new Bird(words.say("cards.card.hen"), what.face().hen()))
                .filter(bird ->
                        what.face().use().equals("breeding") || bird.ring().isPresent())
                .toList();
    }

    private Type kept() {
        return what.face().lines().size() <= FEW_LINES ? style.kept() : style.line();
    }

    /** Whom a flock's cage keeps, in columns, as many as fit, and then how many more. */
    private void drawLines(List<String> lines) {
        if (lines.isEmpty()) {
            return;
        }
        int count = lines.size();
        List<Columns> choices = types().flatMap(type -> blocks(type, lines)).toList();
        List<Columns> whole =
                choices.stream().filter(each -> each.places().size() >= count).toList();
        Columns chosen = whole.stream()
                .filter(each -> each.isEven(count))
                .findFirst()
                .or(() -> whole.stream().findFirst())
                .or(() -> choices.stream()
                        .max(Comparator.comparingInt(each -> each.places().size())))
                .orElseGet(() -> nextLine(style.line(), lines));
        List<String> texts = firstOf(lines, chosen.places().size());
        for (int i = 0; i < texts.size(); i++) {
            Blank.Span place = chosen.places().get(i);
            blank.text(
                    texts.get(i),
                    chosen.type(),
                    Blank.INK,
                    place.left(),
                    place.right(),
                    place.top() + chosen.type().capitals());
        }
        blank.downTo(chosen.places().get(texts.size() - 1).top() + chosen.type().capitals());
    }

    /**
     * Where the lines of a block go.
     *
     * @param places row by row, from the left
     */
    private record Columns(Type type, List<Blank.Span> places) {

        /** Whether the first n of them stand below each other throughout. */
        boolean isEven(int count) {
            double top = places.get(0).top();
            int across = (int) places.stream().filter(each -> each.top() == top).count();
            return IntStream.range(0, count)
                    .allMatch(
                            i -> places.get(i).left() == places.get(i % across).left());
        }
    }

    /** From the largest to the smallest in which birds are told. */
    private Stream<Type> types() {
        return Stream.of(kept(), smaller(kept()), style.line(), smaller(style.line()));
    }

    private static Type smaller(Type type) {
        return type.sized(Math.max(Math.min(type.capitals(), LEAST_BIRD), type.capitals() * SMALLER));
    }

    private Stream<Columns> blocks(Type type, List<String> lines) {
        double pitch = LINE_PITCH * type.capitals();
        double gap = style.leadGap() * 0.8 + pitch - type.capitals();
        double column = column(type, lines);
        return blank.blocks(gap, type, pitch, Math.min(column, style.leadWidth())).stream()
                .map(rows -> rows.stream()
                        .takeWhile(row -> leavesRoom(row.top() + type.capitals()))
                        .flatMap(row -> cells(row, column))
                        .toList())
                .filter(places -> !places.isEmpty())
                .map(places -> new Columns(type, places));
    }

    /** The place where a line of many is written when the card has room for nothing. */
    private Columns nextLine(Type type, List<String> lines) {
        Blank.Span row = blank.next(style.leadGap(), type, style.leadWidth());
        return new Columns(type, cells(row, column(type, lines)).toList());
    }

    /** Few lines stand below each other, many in columns as wide as the widest of them. */
    private double column(Type type, List<String> lines) {
        if (lines.size() <= FEW_LINES + 1) {
            return Double.MAX_VALUE;
        }
        return lines.stream().mapToDouble(line -> blank.width(line, type)).max().orElse(0) + COLUMN_GAP;
    }

    private static Stream<Blank.Span> cells(Blank.Span row, double column) {
        int count = (int) Math.max(1, Math.floor((row.width() + COLUMN_GAP) / column));
        double width = Math.min(column, row.width() + COLUMN_GAP);
        return IntStream.range(0, count)
                .mapToDouble(i -> row.left() + i * width)
                .mapToObj(left -> new Blank.Span(row.top(), left, left + width - COLUMN_GAP));
    }

    /** Whether what stands below the lines has its place when they reach down to here. */
    private boolean leavesRoom(double bottom) {
        if (face != Face.FLIGHT) {
            return bottom + LEAST_PENCIL <= blank.foot();
        }
        Type type = style.line();
        return blank.placeBelow(bottom + style.sinceGap(), type, type.capitals(), countWidth()).stream()
                .anyMatch(span -> span.top() + type.capitals() + TALLY_ALONE <= blank.foot());
    }

    /** The sentence of how many, and lines to count on. */
    private double countHeight() {
        return LEAST_TALLY + LINE_PITCH * style.line().capitals();
    }

    private List<String> firstOf(List<String> lines, int most) {
        if (lines.size() <= most) {
            return lines;
        }
        List<String> first = new ArrayList<>(lines.subList(0, most - 1));
        first.add(words.say("cards.card.more", lines.size() - first.size()));
        return first;
    }

    /**
     * How many, by a word, since a figure beside rings and dates is misread; true on the day of the print. A pair whose
     * rings are told needs no count where there is no room for it.
     */
    private void drawCount() {
        Type type = style.line();
        boolean needed = birds().isEmpty() || blank.hasRoom(style.sinceGap(), type, countWidth(), TALLY_ALONE);
        if (what.birds() > 0 && needed) {
            Blank.Span span = blank.next(style.sinceGap(), type, countWidth());
            blank.text(count(), type, Blank.INK, span.left(), span.right());
        }
    }

    /** On a card without a place where the count need not be made much narrower, as narrow as it may become uncut. */
    private double countWidth() {
        double uncut = blank.width(count(), style.line()) * LEAST_COUNT;
        return Math.min(
                widthFor(count(), style.line()),
                Math.max(uncut, blank.lastLine().width()));
    }

    private String count() {
        return words.say("cards.card.birds", what.birds(), CountWord.of(what.birds(), words), printed);
    }

    /** Lines to count on, under small heads: on which day how many came, went, and are there. */
    private void drawTally() {
        List<Blank.Span> rows = blank.tallyLines(TALLY_HEIGHT, LEAST_TALLY_ROW);
        double column = tallyColumn(rows);
        for (Blank.Span row : rows) {
            double right = row.right() - (TALLY.size() - 1) * (column + TALLY_GAP);
            double left = row.left();
            for (String each : TALLY) {
                blank.rule(left, right, row.top());
                if (row == rows.get(0)) {
                    String head = words.say("cards.card.tally-" + each);
                    blank.text(head, TALLY_HEAD, Blank.SOFT, left, right, row.top() - TALLY_ROW);
                }
                left = right + TALLY_GAP;
                right = left + column;
            }
        }
    }

    /** Numbers stand below each other; the day has what is left, in the shortest row twice as much as a number. */
    private static double tallyColumn(List<Blank.Span> rows) {
        double width = rows.get(rows.size() - 1).width();
        return (width - TALLY_GAP * (TALLY.size() - 1)) / (TALLY.size() + 1);
    }
}
