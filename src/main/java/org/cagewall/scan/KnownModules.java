package org.cagewall.scan;

import com.google.zxing.qrcode.decoder.Version;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What every symbol of one size shows, whatever it says (ISO/IEC 18004, 6.3): corner squares with the light around them,
 * timing patterns, alignment patterns, and white paper outside. Immutable; any thread.
 */
final class KnownModules {

    /** How many modules of white around a symbol are looked at. */
    static final int RIM = 2;

    static final int DATA = 0;
    static final int DARK = 1;
    static final int LIGHT = -1;

    /** More tell no more about how a symbol lies; measured. */
    private static final int MOST_OF_DATA = 400;

    /** ISO/IEC 18004, 7.10: from this version on a symbol says its version. */
    private static final int LEAST_TOLD = 7;

    private static final int VERSION_BITS = 18;
    private static final int VERSION_GENERATOR = 0b1_1111_0010_0101;

    private final Version version;
    private final int side;
    private final int[] kinds;
    private final int[] columns;
    private final int[] rows;
    private final int[] pairs;

    private KnownModules(int number) {
        version = Version.getVersionForNumber(number);
        side = version.getDimensionForVersion();
        kinds = new int[stride() * stride()];
        columns = IntStream.range(0, kinds.length)
                .map(module -> module % stride() - RIM)
                .toArray();
        rows = IntStream.range(0, kinds.length)
                .map(module -> module / stride() - RIM)
                .toArray();
        drawRim();
        drawTiming();
        drawAlignments();
        drawCorner(0, 0);
        drawCorner(side - 7, 0);
        drawCorner(0, side - 7);
        set(8, side - 8, DARK);
        if (number >= LEAST_TOLD) {
            drawVersion(number);
        }
        pairs = neighbours();
    }

    static int side(int version) {
        return Version.getVersionForNumber(version).getDimensionForVersion();
    }

    static KnownModules of(int version) {
        return new KnownModules(version);
    }

    Version version() {
        return version;
    }

    int side() {
        return side;
    }

    /** The columns, and rows, in which the middles of the alignment patterns lie; none in version 1. */
    int[] alignments() {
        return version.getAlignmentPatternCenters();
    }

    /** How many modules are looked at in a row, the rim with them. */
    int stride() {
        return side + 2 * RIM;
    }

    /** Dark, light, or data; modules are numbered row by row, from the rim's upper left. */
    int kind(int module) {
        return kinds[module];
    }

    int count() {
        return kinds.length;
    }

    /** Neighbours of which one is light and one is dark, the light one first. */
    int[] pairs() {
        return pairs;
    }

    /** All that are known, with one row of the white around. */
    int[] marks() {
        return IntStream.range(0, kinds.length)
                .filter(module -> kinds[module] != DATA)
                .filter(module -> Math.min(column(module), row(module)) >= -1)
                .filter(module -> Math.max(column(module), row(module)) <= side)
                .toArray();
    }

    /** Every second module of data, as the black squares of a chessboard; of large symbols fewer, as evenly spread. */
    int[] someOfData() {
        int[] squares = IntStream.range(0, kinds.length)
                .filter(module -> kinds[module] == DATA && (column(module) + row(module)) % 2 != 0)
                .toArray();
        int step = 1 + squares.length / MOST_OF_DATA;
        return IntStream.range(0, squares.length / step)
                .map(i -> squares[i * step])
                .toArray();
    }

    /** Columns and rows are counted from the symbol's own upper left. */
    int column(int module) {
        return columns[module];
    }

    int row(int module) {
        return rows[module];
    }

    int number(int column, int row) {
        return (row + RIM) * stride() + column + RIM;
    }

    private void set(int column, int row, int kind) {
        if (Math.min(column, row) >= -RIM && Math.max(column, row) < side + RIM) {
            kinds[number(column, row)] = kind;
        }
    }

    private void drawRim() {
        for (int i = -RIM; i < side + RIM; i++) {
            for (int rim = 1; rim <= RIM; rim++) {
                set(i, -rim, LIGHT);
                set(i, side - 1 + rim, LIGHT);
                set(-rim, i, LIGHT);
                set(side - 1 + rim, i, LIGHT);
            }
        }
    }

    private void drawTiming() {
        for (int i = 8; i < side - 8; i++) {
            set(i, 6, i % 2 == 0 ? DARK : LIGHT);
            set(6, i, i % 2 == 0 ? DARK : LIGHT);
        }
    }

    private void drawAlignments() {
        int[] centres = alignments();
        for (int column : centres) {
            for (int row : centres) {
                boolean inCorner =
                        column < 8 && row < 8 || column < 8 && row > side - 9 || column > side - 9 && row < 8;
                if (!inCorner) {
                    drawSquares(column, row, 2);
                }
            }
        }
    }

    /** Twice, in three columns beside a corner square and in three rows above another; the least bit first. */
    private void drawVersion(int number) {
        int word = CheckedWord.of(number, VERSION_GENERATOR);
        for (int i = 0; i < VERSION_BITS; i++) {
            int kind = (word >> i & 1) == 1 ? DARK : LIGHT;
            set(side - 11 + i % 3, i / 3, kind);
            set(i / 3, side - 11 + i % 3, kind);
        }
    }

    private void drawCorner(int left, int top) {
        for (int row = -1; row < 8; row++) {
            for (int column = -1; column < 8; column++) {
                set(left + column, top + row, LIGHT);
            }
        }
        drawSquares(left + 3, top + 3, 3);
        for (int row = 2; row < 5; row++) {
            for (int column = 2; column < 5; column++) {
                set(left + column, top + row, DARK);
            }
        }
    }

    /** A dark ring, a light one in it, and a dark middle. */
    private void drawSquares(int column, int row, int reach) {
        for (int down = -reach; down <= reach; down++) {
            for (int across = -reach; across <= reach; across++) {
                int ring = Math.max(Math.abs(down), Math.abs(across));
                set(column + across, row + down, ring == reach - 1 ? LIGHT : DARK);
            }
        }
    }

    private int[] neighbours() {
        List<Integer> all = new ArrayList<>();
        for (int row = 0; row < stride(); row++) {
            for (int column = 0; column < stride(); column++) {
                int here = row * stride() + column;
                if (column + 1 < stride()) {
                    addIfDiffer(here, here + 1, all);
                }
                if (row + 1 < stride()) {
                    addIfDiffer(here, here + stride(), all);
                }
            }
        }
        return all.stream().mapToInt(Integer::intValue).toArray();
    }

    private void addIfDiffer(int one, int other, List<Integer> all) {
        if (kinds[one] * kinds[other] == -1) {
            all.add(kinds[one] == LIGHT ? one : other);
            all.add(kinds[one] == LIGHT ? other : one);
        }
    }
}
