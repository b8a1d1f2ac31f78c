package org.cagewall.plan;

import java.time.LocalDate;

/**
 * What is asked of the days ahead.
 *
 * @param clearBy the day by which all is to be done
 * @param rounds how many are to be reared, from 1 to {@link #MOST_ROUNDS}
 * @throws IllegalArgumentException for rounds out of range
 */
public record AheadQuestion(LocalDate clearBy, Policy policy, int rounds, Draws draws) {

    /** More are not asked for: two are usual and four or five the most ever; from memory. */
    public static final int MOST_ROUNDS = 9;

    public AheadQuestion {
        if (rounds < 1 || rounds > MOST_ROUNDS) {
            throw new IllegalArgumentException("rounds: " + rounds);
        }
    }
}
