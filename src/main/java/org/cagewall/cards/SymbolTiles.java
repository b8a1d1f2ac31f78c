package org.cagewall.cards;

import java.util.List;
import java.util.Optional;
import org.cagewall.paper.Area;
import org.cagewall.paper.Size;
import org.cagewall.text.Message;

/**
 * Where the symbols of a card lie, each with the four light modules around it, and how large their modules are. All
 * lengths in millimetres. Immutable; any thread.
 *
 * @param dots the side of a module, in dots of a 300 dpi printer, so that every module edge falls on a dot
 * @param boxes the symbols with their quiet zones
 */
record SymbolTiles(int dots, List<Area> boxes) {

    /** A dot of a 300 dpi printer. */
    static final double DOT = 25.4 / 300;

    /** Modules of 1.02 mm and a symbol of 21 mm, which a camera that reads 25 mm to 260 mm reads to 220 mm. */
    static final int FEWEST_DOTS = 12;

    /** Modules of 1.19 mm and a symbol of 25 mm. */
    static final int USUAL_DOTS = 14;

    static final int MOST_DOTS = 20;

    /** White between a symbol's quiet zone and the edge of the card, for a cut that goes astray. */
    private static final double EDGE = 1;

    /** Every second dot of a 300 dpi printer: the raster on which a symbol begins. */
    private static final double RASTER = 2 * DOT;

    private static final int MODULES = Symbols.SIDE + 2 * Symbols.QUIET_ZONE;

    /** Under the one symbol of a card: the foot. */
    private static final double BELOW = 5;

    /** Beside the one symbol of a card: its margin, a name and a ring. */
    private static final double BESIDE = 28;

    /** Between two symbols: the round, and white on both sides; then above the left one: a name with the pair. */
    private static final Size NARROW = new Size(13, 18.5);

    /** Between two symbols: pair and birds; then above the left one: a name. */
    private static final Size BROAD = new Size(30.8, 14.6);

    /** The share of a card's shorter side that a symbol may take. */
    private static final double SHARE = 0.58;

    double module() {
        return dots * DOT;
    }

    /** Two symbols where the card has room for them, else one. */
    static SymbolTiles of(Area card) {
        return two(card).orElseGet(() -> one(card));
    }

    /** One symbol, at the right above. */
    private static SymbolTiles one(Area card) {
        int dots = Math.max(FEWEST_DOTS, Math.min(dotsForOne(card), share(card)));
        return new SymbolTiles(dots, List.of(upperRight(card, dots, EDGE)));
    }

    /**
     * One symbol at the right above and one at the left below, where the card has room for both: each in halves of its own,
     * so that one is left when the other's half is covered, if their modules need not become too small for that.
     */
    private static Optional<SymbolTiles> two(Area card) {
        int room = Math.min(dotsForTwo(card), share(card));
        double half = Math.min(card.width(), card.height()) / 2;
        int apart = Math.min(room, dotsWithOneWhiteSide(half - EDGE));
        if (apart >= FEWEST_DOTS) {
            return Optional.of(two(card, apart, EDGE));
        }
        if (room >= FEWEST_DOTS && dotsWithOneWhiteSide(half) >= FEWEST_DOTS) {
            return Optional.of(two(card, FEWEST_DOTS, half - sideWithOneWhiteSide(FEWEST_DOTS)));
        }
        return room < USUAL_DOTS ? Optional.empty() : Optional.of(two(card, room, EDGE));
    }

    private static SymbolTiles two(Area card, int dots, double edge) {
        return new SymbolTiles(dots, List.of(upperRight(card, dots, edge), lowerLeft(card, dots, edge)));
    }

    /** Why a card of this size is too small for a symbol that a camera reads. */
    static Optional<Message> against(Size card) {
        if (dotsForOne(new Area(0, 0, card.width(), card.height())) >= FEWEST_DOTS) {
            return Optional.empty();
        }
        double module = Math.max(0, Math.min(card.width() - EDGE - BESIDE, card.height() - EDGE - BELOW) / MODULES);
        double side = side(FEWEST_DOTS);
        return Optional.of(Message.of(
                "cards.sheet.too-small",
                card.width(),
                card.height(),
                Math.floor(module * 100) / 100,
                Math.ceil(FEWEST_DOTS * DOT * 100) / 100,
                Math.ceil(side + EDGE + BESIDE),
                Math.ceil(side + EDGE + BELOW)));
    }

    private static int dotsForOne(Area card) {
        return dots(Math.min(card.width() - EDGE - BESIDE, card.height() - EDGE - BELOW));
    }

    private static int dotsForTwo(Area card) {
        if (card.height() > card.width()) {
            return dots(card.width() / 2 - EDGE);
        }
        return Math.max(dotsForTwo(card, NARROW), dotsForTwo(card, BROAD));
    }

    private static int dotsForTwo(Area card, Size left) {
        return dots(Math.min((card.width() - left.width()) / 2 - EDGE, card.height() - EDGE - left.height()));
    }

    private static int share(Area card) {
        return Math.max(USUAL_DOTS, dots(SHARE * Math.min(card.width(), card.height())));
    }

    private static int dots(double side) {
        return Math.min(MOST_DOTS, (int) Math.floor(side / MODULES / DOT + 1e-9));
    }

    private static int dotsWithOneWhiteSide(double side) {
        return (int) Math.floor(side / sideWithOneWhiteSide(1) + 1e-9);
    }

    private static double side(int dots) {
        return MODULES * dots * DOT;
    }

    /** A symbol with the white on its outer side; what covers the other half may lie against its inner side. */
    private static double sideWithOneWhiteSide(int dots) {
        return (Symbols.SIDE + Symbols.QUIET_ZONE) * dots * DOT;
    }

    private static Area upperRight(Area card, int dots, double edge) {
        return new Area(before(card.right() - EDGE - side(dots)), after(card.top() + edge), side(dots), side(dots));
    }

    private static Area lowerLeft(Area card, int dots, double edge) {
        return new Area(after(card.left() + EDGE), before(card.bottom() - edge - side(dots)), side(dots), side(dots));
    }

    private static double before(double mm) {
        return Math.floor(mm / RASTER + 1e-6) * RASTER;
    }

    private static double after(double mm) {
        return Math.ceil(mm / RASTER - 1e-6) * RASTER;
    }
}
