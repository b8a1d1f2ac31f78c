package org.cagewall.plan;

import org.cagewall.almanac.Evidence;
import org.cagewall.almanac.Rate;

/**
 * How likely an egg is full, hatches, and its chick is reared: what is usual, worth ten, drawn towards what this room's
 * own eggs did. Immutable; any thread.
 *
 * @param full that an egg not yet looked at is full, from 0 to 1
 * @param hatchesOfFull that a full egg hatches, from 0 to 1
 * @param reared that a chick that hatches is weaned, from 0 to 1
 */
public record Odds(double full, double hatchesOfFull, double reared) {

    /** How many eggs the usual is worth; chosen so that a clutch or two moves it little and a season much. */
    static final int USUAL_IS_WORTH = 10;

    /** Of ten eggs; common practice, no source. Over 9 of 10 in the study of Banaszewska et al. 2014, of small birds. */
    static final int USUALLY_FULL = 8;

    /** Of ten eggs, full or not; common practice, no source. */
    static final int USUALLY_HATCHED = 7;

    /** Of ten chicks; common practice, no source. */
    static final int USUALLY_REARED = 9;

    /** What holds before a room has eggs of its own. */
    static final Odds USUAL = new Odds(
            (double) USUALLY_FULL / USUAL_IS_WORTH,
            (double) USUALLY_HATCHED / USUALLY_FULL,
            (double) USUALLY_REARED / USUAL_IS_WORTH);

    /** By what all pairs of a species in the room have done, as it stands beside any one of them. */
    static Odds of(Evidence evidence) {
        double full = mixed(USUALLY_FULL, evidence.full().room());
        double hatched = mixed(USUALLY_HATCHED, evidence.hatched().room());
        return new Odds(
                full,
                Math.min(1, hatched / full),
                mixed(USUALLY_REARED, evidence.weaned().room()));
    }

    private static double mixed(int usually, Rate own) {
        return (double) (usually + own.hits()) / (USUAL_IS_WORTH + own.of());
    }
}
