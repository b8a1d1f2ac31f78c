package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A time in which a nest box hung in a cage. Immutable; any thread.
 *
 * @param about whether the day on which it was put up is the keeper's guess
 * @param off the day on which it was taken off, or another put up in its place
 */
public record Hung(LocalDate on, boolean about, Optional<LocalDate> off) {

    Hung before(LocalDate day) {
        return new Hung(on, about, Days.before(off, day));
    }

    /** Whether it hung on that day, the first and the last among them. */
    boolean covers(LocalDate day) {
        return !day.isBefore(on) && off.filter(day::isAfter).isEmpty();
    }
}
