package org.cagewall.room;

import java.time.LocalDate;

/**
 * From which day a nest or an egg is sat on. Immutable; any thread.
 *
 * @param about whether it leans on a day that was the keeper's guess
 * @param foreseen whether it still lies in the laying of eggs to come, rather than in what was recorded
 */
public record SatFrom(LocalDate day, boolean about, boolean foreseen) {

    SatFrom notBefore(LocalDate begin, boolean guess) {
        return begin.isAfter(day) ? new SatFrom(begin, guess, false) : this;
    }
}
