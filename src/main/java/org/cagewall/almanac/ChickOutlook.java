package org.cagewall.almanac;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Lying;

/**
 * One chick, and what comes next in its life. What was not recorded and cannot come any more (a dead chick's ring) is
 * empty. Immutable; any thread.
 *
 * @param here whether it is in this nest now, or was here last
 * @param ringCheck whether the ring is still on, the day after ringing
 */
public record ChickOutlook(
        Lying lying,
        boolean here,
        Optional<Window> eyes,
        Optional<Due> ringing,
        Optional<Due> ringCheck,
        Optional<Due> outOfBox,
        Optional<Due> independent) {

    public Chick chick() {
        return lying.chick().orElseThrow();
    }

    /** Its age in days; the day it hatched is day 0. */
    public int age(LocalDate day) {
        return (int) ChronoUnit.DAYS.between(chick().hatched(), day);
    }
}
