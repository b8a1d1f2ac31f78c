package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.cagewall.cards.Symbol;

/**
 * The surface of a made-up card as how much light each spot gives back, with its print and its dirt, so that a camera can
 * look at it from anywhere. Lengths in millimetres from the upper left corner.
 */
final class CardPaper {

    static final double WIDTH = 85;
    static final double HEIGHT = 54;

    /** A dot of a 300 dpi printer. */
    private static final double DOT = 25.4 / 300;

    /** A module of 14 dots, by which pixels, blur and motion are counted, however large the printed ones are. */
    static final double MODULE = 14 * DOT;

    private static final int DOTS = 8;
    private static final int COLUMNS = (int) (WIDTH * DOTS);
    private static final int ROWS = (int) (HEIGHT * DOTS);
    private static final int QUIET_ZONE = 4;
    private static final double EDGE = 1;
    private static final float PAPER = 0.82f;
    private static final float INK = 0.05f;

    private final float[] light = new float[COLUMNS * ROWS];
    private final List<Tile> tiles = new ArrayList<>();

    /** Where a symbol lies, without the white around it. */
    record Tile(double left, double top, int modules, double module) {

        double side() {
            return modules * module;
        }

        double middleX() {
            return left + side() / 2;
        }

        double middleY() {
            return top + side() / 2;
        }

        /** Whether the spot is within a corner square, or so close that a stain of this size would touch it. */
        boolean isNearFinder(double x, double y, double reach) {
            double far = side() - 7 * module;
            return touches(x - left, y - top, reach)
                    || touches(x - left - far, y - top, reach)
                    || touches(x - left, y - top - far, reach);
        }

        boolean isFinder(int column, int row) {
            int far = modules - 7;
            return column < 7 && (row < 7 || row >= far) || row < 7 && column >= far;
        }

        private boolean touches(double x, double y, double reach) {
            double square = 7 * module;
            double outX = Math.max(0, Math.max(-x, x - square));
            double outY = Math.max(0, Math.max(-y, y - square));
            return Math.hypot(outX, outY) < reach;
        }
    }

    private CardPaper() {
        Arrays.fill(light, PAPER);
    }

    /** A card with its symbol at the right, above, with modules of so many dots at 300 dpi. */
    static CardPaper withOne(Symbol symbol, int dots, SplittableRandom chance) {
        CardPaper paper = new CardPaper();
        paper.write(chance);
        double white = (symbol.side() + 2 * QUIET_ZONE) * dots * DOT;
        paper.print(symbol, dots * DOT, WIDTH - EDGE - white, EDGE);
        return paper;
    }

    /** A card with its symbol twice: at the right above, and at the left below. */
    static CardPaper withTwo(Symbol symbol, int dots, SplittableRandom chance) {
        CardPaper paper = withOne(symbol, dots, chance);
        double white = (symbol.side() + 2 * QUIET_ZONE) * dots * DOT;
        paper.print(symbol, dots * DOT, EDGE, HEIGHT - EDGE - white);
        return paper;
    }

    /** A label with one symbol in its middle, as large as there is room for, but no larger than a card's. */
    static CardPaper label(Symbol symbol, SplittableRandom chance) {
        CardPaper paper = new CardPaper();
        paper.write(chance);
        int modules = symbol.side() + 2 * QUIET_ZONE;
        double module = Math.min(MODULE, (HEIGHT - 2 * EDGE) / modules);
        paper.print(symbol, module, (WIDTH - modules * module) / 2, (HEIGHT - modules * module) / 2);
        return paper;
    }

    List<Tile> tiles() {
        return tiles;
    }

    /** How much of the light that falls on a spot comes back, 0 to 1; nothing of the card lies outside it. */
    double at(double x, double y) {
        double column = Math.max(0, Math.min(COLUMNS - 1.001, x * DOTS - 0.5));
        double row = Math.max(0, Math.min(ROWS - 1.001, y * DOTS - 0.5));
        int left = (int) column;
        int top = (int) row;
        double right = column - left;
        double below = row - top;
        int i = top * COLUMNS + left;
        return (light[i] * (1 - right) + light[i + 1] * right) * (1 - below)
                + (light[i + COLUMNS] * (1 - right) + light[i + COLUMNS + 1] * right) * below;
    }

    static boolean holds(double x, double y) {
        return x >= 0 && y >= 0 && x < WIDTH && y < HEIGHT;
    }

    /** Dirt until this share of each symbol and its white is covered; or of all but its corner squares. */
    void soil(double share, Dirt where, SplittableRandom chance) {
        for (Tile tile : tiles) {
            soil(tile, share, where, chance);
        }
    }

    /** Where dirt falls. */
    enum Dirt {
        ANYWHERE,
        OFF_FINDERS
    }

    private void soil(Tile tile, double share, Dirt where, SplittableRandom chance) {
        double toCover = share * tile.side() * tile.side();
        double covered = 0;
        for (int tries = 0; covered < toCover && tries < 400; tries++) {
            double radius = 0.5 + 4.5 * Math.pow(chance.nextDouble(), 2);
            radius = Math.min(radius, Math.sqrt((toCover - covered) / Math.PI) + 0.3);
            double x = tile.left() + tile.side() * chance.nextDouble();
            double y = tile.top() + tile.side() * chance.nextDouble();
            if (where == Dirt.OFF_FINDERS && tile.isNearFinder(x, y, radius * 1.4)) {
                continue;
            }
            stain(x, y, radius, chance);
            covered += Math.PI * radius * radius;
        }
    }

    /** A stain with an uneven edge: dust and droppings pale, husks brown, grease dark. */
    private void stain(double x, double y, double radius, SplittableRandom chance) {
        double shade = 0.04 + 0.75 * chance.nextDouble();
        double cover = 0.7 + 0.3 * chance.nextDouble();
        double[] phase = chance.doubles(3, 0, 2 * Math.PI).toArray();
        double reach = radius * 1.4;
        for (int row = (int) ((y - reach) * DOTS); row <= (y + reach) * DOTS; row++) {
            for (int column = (int) ((x - reach) * DOTS); column <= (x + reach) * DOTS; column++) {
                if (row < 0 || column < 0 || row >= ROWS || column >= COLUMNS) {
                    continue;
                }
                double across = (column + 0.5) / DOTS - x;
                double down = (row + 0.5) / DOTS - y;
                double angle = Math.atan2(down, across);
                double edge = radius
                        * (1
                                + 0.2 * Math.sin(2 * angle + phase[0])
                                + 0.12 * Math.sin(3 * angle + phase[1])
                                + 0.08 * Math.sin(5 * angle + phase[2]));
                if (Math.hypot(across, down) < edge) {
                    int i = row * COLUMNS + column;
                    light[i] = (float) (light[i] * (1 - cover) + shade * cover);
                }
            }
        }
    }

    private void print(Symbol symbol, double module, double left, double top) {
        double white = QUIET_ZONE * module;
        Tile tile = new Tile(left + white, top + white, symbol.side(), module);
        fill(left, top, tile.side() + 2 * white, tile.side() + 2 * white, PAPER);
        for (Symbol.Bar bar : symbol.bars()) {
            fill(
                    tile.left() + bar.column() * module,
                    tile.top() + bar.row() * module,
                    bar.width() * module,
                    bar.height() * module,
                    INK);
        }
        tiles.add(tile);
    }

    /** Prints the only symbol anew, the dark modules outside of its corner squares so much narrower. */
    void dot(Symbol symbol, double share) {
        Tile tile = tiles.get(0);
        fill(tile.left(), tile.top(), tile.side(), tile.side(), PAPER);
        for (int module = 0; module < tile.modules() * tile.modules(); module++) {
            int column = module % tile.modules();
            int row = module / tile.modules();
            if (symbol.isDark(column, row)) {
                double size = tile.module() * (tile.isFinder(column, row) ? 1 : share);
                double gap = (tile.module() - size) / 2;
                fill(
                        tile.left() + column * tile.module() + gap,
                        tile.top() + row * tile.module() + gap,
                        size,
                        size,
                        INK);
            }
        }
    }

    /** A picture over the middle of the only symbol, with white around it. */
    void cover(double share, float shade) {
        Tile tile = tiles.get(0);
        fillAround(tile, share * tile.side(), 1, PAPER);
        fillAround(tile, share * tile.side() * 0.67, 0.6, shade);
    }

    private void fillAround(Tile tile, double width, double flat, float shade) {
        fill(tile.middleX() - width / 2, tile.middleY() - width * flat / 2, width, width * flat, shade);
    }

    /** Leaves only so much white around the only symbol. */
    void surround(double white, float shade) {
        Tile tile = tiles.get(0);
        double right = tile.left() + tile.side() + white;
        double below = tile.top() + tile.side() + white;
        fill(0, 0, WIDTH, tile.top() - white, shade);
        fill(0, below, WIDTH, HEIGHT - below, shade);
        fill(0, 0, tile.left() - white, HEIGHT, shade);
        fill(right, 0, WIDTH - right, HEIGHT, shade);
    }

    /** Strokes in the place of letters, so that the print does not lean on a machine's fonts. */
    private void write(SplittableRandom chance) {
        for (double y = 6; y < HEIGHT - 4; y += 5.5) {
            double height = 2.4;
            for (double x = 4; x < WIDTH - 6; x += 1.9) {
                if (chance.nextInt(6) > 0) {
                    fill(x, y, 0.35, height, INK);
                    fill(x, y + height * chance.nextDouble() * 0.9, 1.2, 0.35, INK);
                    fill(x + 1.1 * chance.nextDouble(), y, 0.35, height, INK);
                }
            }
        }
    }

    /** Fills a rectangle, its edges shared out by how much of a dot they cover. */
    private void fill(double left, double top, double width, double height, float shade) {
        for (int row = (int) (top * DOTS); row < Math.min(ROWS, (top + height) * DOTS); row++) {
            double down = overlap(row, top * DOTS, (top + height) * DOTS);
            for (int column = (int) (left * DOTS); column < Math.min(COLUMNS, (left + width) * DOTS); column++) {
                double share = down * overlap(column, left * DOTS, (left + width) * DOTS);
                int i = row * COLUMNS + column;
                light[i] = (float) (light[i] * (1 - share) + shade * share);
            }
        }
    }

    private static double overlap(int dot, double from, double to) {
        return Math.max(0, Math.min(dot + 1, to) - Math.max(dot, from));
    }
}
