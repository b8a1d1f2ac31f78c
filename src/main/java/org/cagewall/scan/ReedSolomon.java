package org.cagewall.scan;

import java.util.Arrays;
import java.util.Optional;

/**
 * Mends the words of a version 1 symbol at level H (ISO/IEC 18004, 7.5.2: 26 codewords over the field of 256 elements, 17
 * of them for correction): e wrong ones and f that are known to be unsure, as long as 2e + f is at most 17. ZXing's mends
 * 8 wrong ones and cannot be told which are unsure, as those under dirt are. Immutable; any thread.
 */
final class ReedSolomon {

    static final int WORDS = 26;
    static final int CHECKS = 17;

    private static final int FIELD = 0x11D;
    private static final int[] POWERS = new int[510];
    private static final int[] LOGS = new int[256];

    static {
        int power = 1;
        for (int i = 0; i < 255; i++) {
            POWERS[i] = power;
            POWERS[i + 255] = power;
            LOGS[power] = i;
            power <<= 1;
            if (power > 255) {
                power ^= FIELD;
            }
        }
    }

    private final int[] received;
    private final int[] syndromes;

    /** @param received 26 values of 0 to 255; not copied */
    ReedSolomon(int[] received) {
        this.received = received;
        this.syndromes = syndromes(received);
    }

    /**
     * The nearest word that holds together.
     *
     * @param unsure the places that may hold anything, the first n of this list
     */
    Optional<int[]> mended(int[] unsure, int count) {
        if (isZero(syndromes)) {
            return Optional.of(received);
        }
        int[] locator = locator(unsure, count);
        return locator.length == 0 ? Optional.empty() : repaired(locator);
    }

    private static int[] syndromes(int[] word) {
        int[] syndromes = new int[CHECKS];
        for (int i = 0; i < CHECKS; i++) {
            int sum = 0;
            for (int value : word) {
                sum = times(sum, POWERS[i]) ^ value;
            }
            syndromes[i] = sum;
        }
        return syndromes;
    }

    private static boolean isZero(int[] values) {
        for (int value : values) {
            if (value != 0) {
                return false;
            }
        }
        return true;
    }

    /** Berlekamp and Massey's algorithm, begun with the places that are unsure; nothing where too much is wrong. */
    private int[] locator(int[] unsure, int count) {
        int[] locator = new int[CHECKS + 2];
        locator[0] = 1;
        for (int i = 0; i < count; i++) {
            int root = POWERS[WORDS - 1 - unsure[i]];
            for (int j = i + 1; j > 0; j--) {
                locator[j] ^= times(locator[j - 1], root);
            }
        }
        int[] before = locator.clone();
        int[] next = new int[locator.length];
        int length = count;
        for (int r = count + 1; r <= CHECKS; r++) {
            int gap = 0;
            for (int i = 0; i <= Math.min(length, r - 1); i++) {
                gap ^= times(locator[i], syndromes[r - 1 - i]);
            }
            shift(before);
            if (gap == 0) {
                continue;
            }
            for (int i = 0; i < next.length; i++) {
                next[i] = locator[i] ^ times(gap, before[i]);
            }
            if (2 * length <= r + count - 1) {
                length = r + count - length;
                int inverse = POWERS[255 - LOGS[gap]];
                for (int i = 0; i < before.length; i++) {
                    before[i] = times(locator[i], inverse);
                }
            }
            int[] free = locator;
            locator = next;
            next = free;
        }
        int degree = locator.length - 1;
        while (degree > 0 && locator[degree] == 0) {
            degree--;
        }
        return degree == length && 2 * degree - count <= CHECKS ? Arrays.copyOf(locator, degree + 1) : new int[0];
    }

    private static void shift(int[] polynomial) {
        System.arraycopy(polynomial, 0, polynomial, 1, polynomial.length - 1);
        polynomial[0] = 0;
    }

    /** Forney's formula at each root of the locator. */
    private Optional<int[]> repaired(int[] locator) {
        int[] evaluator = new int[CHECKS];
        for (int i = 0; i < CHECKS; i++) {
            for (int j = 0; j <= Math.min(i, locator.length - 1); j++) {
                evaluator[i] ^= times(locator[j], syndromes[i - j]);
            }
        }
        int[] word = received.clone();
        int roots = 0;
        for (int place = 0; place < WORDS; place++) {
            int power = WORDS - 1 - place;
            int inverse = (255 - power) % 255;
            if (at(locator, inverse) != 0) {
                continue;
            }
            roots++;
            int slope = slope(locator, inverse);
            if (slope == 0) {
                return Optional.empty();
            }
            int value = times(POWERS[power], at(evaluator, inverse));
            word[place] ^= value == 0 ? 0 : POWERS[LOGS[value] + 255 - LOGS[slope]];
        }
        return roots == locator.length - 1 && isZero(syndromes(word)) ? Optional.of(word) : Optional.empty();
    }

    private static int at(int[] polynomial, int log) {
        int sum = 0;
        for (int i = 0; i < polynomial.length; i++) {
            sum ^= polynomial[i] == 0 ? 0 : POWERS[(LOGS[polynomial[i]] + log * i) % 255];
        }
        return sum;
    }

    private static int slope(int[] polynomial, int log) {
        int sum = 0;
        for (int i = 1; i < polynomial.length; i += 2) {
            sum ^= polynomial[i] == 0 ? 0 : POWERS[(LOGS[polynomial[i]] + log * (i - 1)) % 255];
        }
        return sum;
    }

    private static int times(int one, int other) {
        return one == 0 || other == 0 ? 0 : POWERS[LOGS[one] + LOGS[other]];
    }
}
