package org.cagewall.plan;

import java.util.Arrays;

/**
 * How many of something there will be on a day, over all draws. Immutable; any thread.
 *
 * @param mean on average
 * @param low the number not exceeded in one draw of ten
 * @param high the number not exceeded in nine draws of ten
 */
public record Range(double mean, int low, int high) {

    private static final double LOW = 0.1;
    private static final double HIGH = 0.9;

    /** Of the number in each draw, none less than nothing. */
    public static Range of(int[] draws) {
        int[] times = new int[Arrays.stream(draws).max().orElseThrow() + 1];
        long sum = 0;
        for (int each : draws) {
            times[each]++;
            sum += each;
        }
        return new Range(
                (double) sum / draws.length, reached(times, LOW * draws.length), reached(times, HIGH * draws.length));
    }

    /** The smallest number that, with those below it, was drawn at least n times. */
    private static int reached(int[] times, double wanted) {
        int number = 0;
        for (int drawn = times[0]; drawn < wanted; drawn += times[number]) {
            number++;
        }
        return number;
    }
}
