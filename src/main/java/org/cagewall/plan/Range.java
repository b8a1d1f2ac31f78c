package org.cagewall.plan;

import java.util.Arrays;

/**
 * How many of something there will be on a day, over all draws. Immutable; any thread.
 *
 * @param mean on average
 * @param low so many or fewer in one draw of ten
 * @param high so many or fewer in nine draws of ten
 */
public record Range(double mean, int low, int high) {

    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /** Of the number in each draw; sorts them. */
    static Range of(int[] draws) {
        Arrays.sort(draws);
        double sum = 0;
        for (int each : draws) {
            sum += each;
        }
        return new Range(sum / draws.length, at(draws, LOW), at(draws, HIGH));
    }

    /** The smallest number that holds at least that share of the draws. */
    private static int at(int[] sorted, double share) {
        return sorted[Math.max(0, (int) Math.ceil(share * sorted.length) - 1)];
    }
}
