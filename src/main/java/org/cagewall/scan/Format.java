package org.cagewall.scan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The format information of a symbol (ISO/IEC 18004, 7.9): which of four levels and of eight masks. It is told by how all
 * thirty modules look that show it, not by a threshold. Immutable; any thread.
 *
 * @param level the two bits of the level of correction
 * @param mask 0 to 7
 */
record Format(int level, int mask) {

    static final int LEVEL_H = 0b10;

    private static final int LEVELS = 4;
    private static final int MASKS = 8;
    private static final int BITS = 15;
    private static final int GENERATOR = 0b101_0011_0111;
    private static final int SCRAMBLE = 0b101_0100_0001_0010;

    private static final int[] FIRST_COLUMNS = {0, 1, 2, 3, 4, 5, 7, 8, 8, 8, 8, 8, 8, 8, 8};
    private static final int[] FIRST_ROWS = {8, 8, 8, 8, 8, 8, 8, 8, 7, 5, 4, 3, 2, 1, 0};
    private static final int IN_COLUMN = 7;

    private record Told(Format format, double likelihood) {}

    /** All there are, the likeliest first. */
    static List<Format> likeliest(double[] darkness, KnownModules known) {
        int[] modules = modules(known);
        return IntStream.range(0, LEVELS * MASKS)
                .mapToObj(bits -> new Format(bits / MASKS, bits % MASKS))
                .map(format -> new Told(format, format.likelihood(darkness, modules)))
                .sorted(Comparator.comparingDouble(Told::likelihood).reversed())
                .map(Told::format)
                .toList();
    }

    private double likelihood(double[] darkness, int[] modules) {
        boolean[] dark = dark();
        double sum = 0;
        for (int i = 0; i < modules.length; i++) {
            double value = Math.max(-1, Math.min(1, darkness[modules[i]]));
            sum += dark[i] ? value : -value;
        }
        return sum;
    }

    /** Where the bits stand, the highest first: around the upper left corner, and once more in two parts. */
    static int[] modules(KnownModules known) {
        int[] modules = new int[2 * BITS];
        for (int i = 0; i < BITS; i++) {
            modules[i] = known.number(FIRST_COLUMNS[i], FIRST_ROWS[i]);
            modules[BITS + i] =
                    i < IN_COLUMN ? known.number(8, known.side() - 1 - i) : known.number(known.side() - BITS + i, 8);
        }
        return modules;
    }

    /** Which of these modules are dark. */
    boolean[] dark() {
        int word = CheckedWord.of(level << 3 | mask, GENERATOR) ^ SCRAMBLE;
        boolean[] dark = new boolean[2 * BITS];
        for (int i = 0; i < dark.length; i++) {
            dark[i] = (word >> (BITS - 1 - i % BITS) & 1) == 1;
        }
        return dark;
    }
}
