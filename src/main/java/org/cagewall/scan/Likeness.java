package org.cagewall.scan;

import java.util.Arrays;

/** A pattern of dark and light, against which what is seen is held: their correlation. Immutable; any thread. */
final class Likeness {

    /** Differences of less than about five in brightness are noise: their square. */
    private static final double NOISE = 25;

    private final double[] pattern;
    private final double length;

    /** @param brightness of each spot: 1 light, 0 dark, one of each at least; not copied */
    Likeness(double[] brightness) {
        double mean = Arrays.stream(brightness).average().orElseThrow();
        pattern = Arrays.stream(brightness).map(value -> value - mean).toArray();
        length = Arrays.stream(pattern).map(value -> value * value).sum();
    }

    int spots() {
        return pattern.length;
    }

    /**
     * How like the pattern this is: 1 the same, 0 none of it, -1 with light for dark.
     *
     * @param seen the brightness of each spot, of 255
     */
    double of(double[] seen) {
        double mean = 0;
        for (double value : seen) {
            mean += value / seen.length;
        }
        double product = 0;
        double squares = 0;
        for (int i = 0; i < seen.length; i++) {
            double off = seen[i] - mean;
            product += pattern[i] * off;
            squares += off * off;
        }
        return product / Math.sqrt(length * Math.max(squares, NOISE * seen.length));
    }
}
