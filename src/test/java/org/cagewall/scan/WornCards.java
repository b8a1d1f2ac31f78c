package org.cagewall.scan;

import java.util.SplittableRandom;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.room.card.CardCode;

/**
 * Makes pictures of worn cards as a tablet's camera sees them, always the same for the same seed, so that decoders can be
 * compared where no photograph is at hand. Any thread.
 */
public final class WornCards {

    private static final String LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    private final long seed;
    private final Layout layout;

    /** How often the symbol stands on a card, and of how many dots at 300 dpi its modules are. */
    public enum Layout {
        ONE_SYMBOL(14),
        TWO_SYMBOLS(12),
        TWO_SYMBOLS_AT_14(14);

        private final int dots;

        Layout(int dots) {
            this.dots = dots;
        }

        private CardPaper paper(Symbol symbol, SplittableRandom chance) {
            return this == ONE_SYMBOL
                    ? CardPaper.withOne(symbol, dots, chance)
                    : CardPaper.withTwo(symbol, dots, chance);
        }
    }

    /**
     * A picture of a card.
     *
     * @param text what its symbol says
     */
    public record Worn(Luma picture, String text) {}

    private WornCards(long seed, Layout layout) {
        this.seed = seed;
        this.layout = layout;
    }

    public static WornCards of(long seed) {
        return new WornCards(seed, Layout.ONE_SYMBOL);
    }

    public static WornCards of(long seed, Layout layout) {
        return new WornCards(seed, layout);
    }

    /** The card of this number that suffered from this cause. */
    public Worn card(Wear wear, int number) {
        SplittableRandom chance = new SplittableRandom(seed * 1_000_003 + wear.ordinal() * 100_003L + number);
        String text = code(chance).text();
        return new Worn(picture(Symbols.matrix(text), wear, chance), text);
    }

    /** A card's picture with any symbol in the place of its own. */
    public Luma picture(Symbol symbol, Wear wear, int number) {
        return picture(
                symbol, wear, new SplittableRandom(seed * 1_000_003 + wear.ordinal() * 100_003L + number + 50_000));
    }

    private Luma picture(Symbol symbol, Wear wear, SplittableRandom chance) {
        CardPaper paper = layout.paper(symbol, chance);
        Shot shot = Shot.of(wear, chance);
        shot.dirty(paper);
        double lookX = paper.tiles().stream()
                .mapToDouble(CardPaper.Tile::middleX)
                .average()
                .orElseThrow();
        double lookY = paper.tiles().stream()
                .mapToDouble(CardPaper.Tile::middleY)
                .average()
                .orElseThrow();
        double aside = layout == Layout.ONE_SYMBOL ? 12 : 4;
        return shot.camera(CardPaper.MODULE)
                .picture(
                        paper,
                        lookX + (chance.nextDouble() - 0.5) * aside,
                        lookY + (chance.nextDouble() - 0.5) * aside,
                        chance);
    }

    public static CardCode code(SplittableRandom chance) {
        return new CardCode(letters(3, chance), 1 + chance.nextInt(CardCode.HIGHEST_NUMBER), letters(2, chance));
    }

    private static String letters(int count, SplittableRandom chance) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < count; i++) {
            letters.append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
        }
        return letters.toString();
    }
}
