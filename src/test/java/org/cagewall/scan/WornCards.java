package org.cagewall.scan;

import java.util.SplittableRandom;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.room.CardCode;

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
        Shot shot = new Shot(chance);
        shot.suffer(wear);
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
        return shot.camera()
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

    /** One picture's share of every cause: a little of each, and much of what it is to suffer from. */
    private static final class Shot {

        private final SplittableRandom chance;

        private int width = 640;
        private int height = 480;
        private double pixels;
        private double tilt;
        private double roll;
        private double bend;
        private double blur;
        private double motion;
        private double exposure;
        private double noise;
        private double glare;
        private double glareRadius = 6;
        private double dirt;
        private CardPaper.Dirt where = CardPaper.Dirt.ANYWHERE;

        Shot(SplittableRandom chance) {
            this.chance = chance;
            pixels = from(4, 6);
            tilt = from(0, 10);
            roll = from(-8, 8);
            blur = from(0.1, 0.25);
            exposure = from(0.7, 1);
            noise = from(0.005, 0.02);
        }

        void suffer(Wear wear) {
            switch (wear) {
                case BLUR -> blur = from(0.3, 1.1);
                case TILT -> tilt = from(15, 62);
                case ROLL -> {
                    roll = from(-180, 180);
                    tilt = from(0, 25);
                }
                case DIRT -> dirt = from(0.01, 0.2);
                case DIRT_OFF_FINDERS -> {
                    dirt = from(0.03, 0.35);
                    where = CardPaper.Dirt.OFF_FINDERS;
                }
                case LOW_LIGHT -> {
                    exposure = from(0.04, 0.35);
                    noise = from(0.015, 0.08);
                }
                case GLARE -> {
                    glare = from(0.2, 1.2);
                    glareRadius = from(2, 6);
                }
                case CURL -> bend = 1 / from(8, 60) * (chance.nextBoolean() ? 1 : -1);
                case DISTANCE -> pixels = from(1.3, 3.5);
                case MOTION -> motion = from(0.6, 3);
                case FILTHY -> dirt = from(0.2, 0.7);
                case MIXED -> mixed();
                case HARD -> hard();
                default -> throw new IllegalArgumentException(wear.name());
            }
        }

        private void mixed() {
            pixels = from(2.5, 6);
            tilt = from(0, 30);
            roll = from(-25, 25);
            blur = from(0.1, 0.45);
            motion = sometimes(0.3, from(0.2, 0.9));
            dirt = sometimes(0.4, from(0.005, 0.06));
            bend = sometimes(0.3, from(0.002, 0.012));
            glare = sometimes(0.2, from(0.1, 0.5));
            exposure = from(0.3, 1);
            noise = from(0.01, 0.03);
        }

        private void hard() {
            width = 1280;
            height = 720;
            pixels = from(2.2, 6);
            tilt = from(0, 45);
            roll = from(-40, 40);
            blur = from(0.1, 0.55);
            motion = sometimes(0.35, from(0.3, 1.2));
            dirt = sometimes(0.5, from(0.005, 0.09));
            bend = sometimes(0.4, from(0.002, 0.02));
            glare = sometimes(0.2, from(0.1, 0.7));
            exposure = from(0.15, 1);
            noise = from(0.01, 0.045);
        }

        void dirty(CardPaper paper) {
            if (dirt > 0) {
                paper.soil(dirt, where, chance);
            }
        }

        Camera camera() {
            return new Camera(
                    width,
                    height,
                    pixels,
                    tilt,
                    from(0, 360),
                    roll,
                    bend,
                    from(0, 180),
                    blur,
                    motion,
                    from(0, 180),
                    exposure,
                    noise,
                    glare,
                    glareRadius);
        }

        private double sometimes(double share, double value) {
            return chance.nextDouble() < share ? value : 0;
        }

        private double from(double least, double most) {
            return least + (most - least) * chance.nextDouble();
        }
    }
}
