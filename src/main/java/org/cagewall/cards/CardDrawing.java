package org.cagewall.cards;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.paper.Box;
import org.cagewall.paper.Page;
import org.cagewall.paper.Type;
import org.cagewall.room.CardFace;
import org.cagewall.text.Words;

/**
 * Draws one card: the cage's name to be read across the room, the symbol, who lives there, and lines for a pencil. All
 * lengths in millimetres. One thread.
 */
final class CardDrawing {

    private static final double LINE_PITCH = 1.7;
    private static final int FEW_LINES = 2;
    private static final double LEAST_PENCIL = 5;
    private static final double LEAST_TALLY = 11;
    private static final double LEAST_SHRINK = 0.75;
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
    private final PrintedCard what;
    private final LocalDate printed;
    private final Words words;

    private CardDrawing(Blank blank, Face face, Style style, PrintedCard what, LocalDate printed, Words words) {
        this.blank = blank;
        this.face = face;
        this.style = style;
        this.what = what;
        this.printed = printed;
        this.words = words;
    }

    /** A name in two lines leaves no room for more than the plain face, unless the card is large. */
    static CardDrawing of(PrintedCard what, Page page, Box card, Face face, LocalDate printed, Words words) {
        Tiles tiles = tiles(page, card, face, what.face());
        boolean cramped = !isLarge(card)
                && (face == Face.LARGE || what.face().pair().isPresent())
                && !Blank.isOneLine(page, card, tiles, what.face().cage());
        Face fitting = cramped ? Face.PLAIN : face;
        Blank blank = new Blank(page, card, tiles, words);
        return new CardDrawing(blank, fitting, Style.of(fitting, card), what, printed, words);
    }

    /** The symbols of a card: two, unless the face, the name or what it says needs the room of the second. */
    static Tiles tiles(Page page, Box card, Face face, CardFace what) {
        return Tiles.two(card)
                .filter(two -> isLarge(card) || isShort(face, what) && Blank.isOneLine(page, card, two, what.cage()))
                .orElseGet(() -> Tiles.one(card));
    }

    /** Whether what the face says goes above the lower symbol and beside it. */
    private static boolean isShort(Face face, CardFace what) {
        boolean few = what.lines().size() <= FEW_LINES && !namesPair(what);
        return switch (face) {
            case PLAIN -> few || what.lines().isEmpty();
            case LARGE -> false;
            case FLIGHT -> few;
        };
    }

    /** Whether the card names a cock and a hen, or leaves lines for them. */
    private static boolean namesPair(CardFace what) {
        return isForBreeding(what) || what.cock().isPresent() || what.hen().isPresent();
    }

    private static boolean isForBreeding(CardFace what) {
        return what.use().equals("breeding");
    }

    /** On cards of this size two symbols leave room for anything. */
    private static boolean isLarge(Box card) {
        return Math.min(card.width(), card.height()) >= 90;
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
        Blank.Span span = blank.next(style.leadGap(), style.lead(), widthFor(lead, style.lead()));
        blank.text(lead, style.lead(), Blank.INK, span.left(), span.right());
        double after = span.left() + blank.width(lead, style.lead()) + BESIDE;
        boolean beside = since.stream().anyMatch(text -> after + blank.width(text, style.label()) <= span.right());
        if (beside) {
            since.ifPresent(text -> blank.text(text, style.label(), Blank.SOFT, after, span.right()));
        } else {
            since.ifPresent(this::drawSince);
        }
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
        double lines = what.face().lines().isEmpty() ? 0 : style.leadGap() + LINE_PITCH * kept().capitals();
        return birds().size() * style.birdHeight() + lines + (face == Face.FLIGHT ? countHeight() : LEAST_PENCIL * 1.2);
    }

    private void drawBirds() {
        List<Bird> birds = birds();
        if (birds.isEmpty()) {
            return;
        }
        double height = birds.size() * style.birdHeight() - style.birdGap();
        Blank.Span span = blank.next(style.birdGap(), style.bird(), style.birdWidth(), height);
        for (Bird bird : birds) {
            blank.text(bird.label(), style.label(), Blank.SOFT, span.left(), span.right());
            double start = span.left() + style.labelWidth();
            bird.ring()
                    .ifPresentOrElse(
                            ring -> blank.text(ring, style.bird(), Blank.INK, start, span.right()),
                            () -> blank.rule(start, span.right() - 1));
            blank.down(style.birdHeight());
        }
        blank.down(-style.birdHeight());
    }

    private record Bird(String label, Optional<String> ring) {}

    /** In a breeding cage a missing bird leaves a line to write on. */
    private List<Bird> birds() {
        return Stream.of(
                        new Bird(words.say("cards.card.cock"), what.face().cock()),
                        new Bird(words.say("cards.card.hen"), what.face().hen()))
                .filter(bird -> isForBreeding(what.face()) || bird.ring().isPresent())
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
        int columns = lines.size() > FEW_LINES + 1 ? 2 : 1;
        blank.down(style.leadGap() * 0.8);
        double room = blank.foot() - (face == Face.FLIGHT ? countHeight() : LEAST_PENCIL) - blank.y();
        boolean fits = columns == 1 && lines.size() * LINE_PITCH * kept().capitals() <= room;
        Type type = fits ? kept() : style.line();
        double pitch = LINE_PITCH * type.capitals();
        int rows = Math.max(1, (int) Math.floor(room / pitch));
        List<String> texts = firstOf(lines, rows * columns);
        double together = columns == 1 ? (texts.size() - 1) * pitch : 0;
        double column = 0;
        for (int i = 0; i < texts.size(); i += columns) {
            double height = type.capitals() + (i == 0 ? together : 0);
            Blank.Span span = blank.next(pitch - type.capitals(), type, style.leadWidth(), height);
            column = column == 0 ? span.width() / columns : column;
            for (int j = i; j < Math.min(texts.size(), i + columns); j++) {
                double left = span.left() + (j - i) * column;
                blank.text(texts.get(j), type, Blank.INK, left, left + column - 1);
            }
        }
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

    /** How many, by a word, since a figure beside rings and dates is misread; true on the day of the print. */
    private void drawCount() {
        if (what.birds() > 0) {
            String text = words.say("cards.card.birds", what.birds(), CountWord.of(what.birds(), words), printed);
            Blank.Span span = blank.next(style.sinceGap(), style.line(), widthFor(text, style.line()));
            blank.text(text, style.line(), Blank.INK, span.left(), span.right());
        }
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
