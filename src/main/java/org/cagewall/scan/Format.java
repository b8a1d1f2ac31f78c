package org.cagewall.scan;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The format information of a symbol (ISO/IEC 18004, 7.9): which of four levels and of eight masks. Told by how its fifteen
 * modules look in both their places, not by a threshold. Immutable; any thread.
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

    /** All there are, the likeliest first. */
    static List<Format> likeliest(double[] darkness, KnownModules known) {
        return IntStream.range(0, LEVELS * MASKS)
                .mapToObj(bits -> new Format(bits / MASKS, bits % MASKS))
                .sorted(Comparator.comparingDouble(format -> -format.likelihood(darkness, known)))
                .toList();
    }

    /** The fifteen bits as they are printed, the highest first. */
    int word() {
        int data = level << 3 | mask;
        int rest = data << 10;
        for (int bit = BITS - 1; bit >= 10; bit--) {
            if ((rest >> bit & 1) == 1) {
                rest ^= GENERATOR << (bit - 10);
            }
        }
        return (data << 10 | rest) ^ SCRAMBLE;
    }

    private double likelihood(double[] darkness, KnownModules known) {
        int word = word();
        int[] modules = modules(known);
        double sum = 0;
        for (int i = 0; i < modules.length; i++) {
            double value = Math.max(-1, Math.min(1, darkness[modules[i]]));
            sum += isDark(word, i % BITS) ? value : -value;
        }
        return sum;
    }

    static boolean isDark(int word, int place) {
        return (word >> (BITS - 1 - place) & 1) == 1;
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

    /** Which module of a symbol shows this place of the word. */
    static int place(int i) {
        return i % BITS;
    }
}
