package org.cagewall.deed;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/**
 * What every deed may carry beside its own fields. Immutable; any thread.
 *
 * @param on the date it happened
 * @param at the local time, shown but never computed with
 * @param about whether the date is the keeper's guess
 * @param by the person who records
 * @param cage a cage the deed is to be shown with, where it has no cage of its own
 * @param sure whether the odd thing it tells has been confirmed
 */
public record Told(
        LocalDate on,
        Optional<LocalTime> at,
        boolean about,
        Optional<String> by,
        Optional<String> cage,
        Optional<String> note,
        boolean sure) {

    public static Told on(LocalDate day, String by) {
        return new Told(day, Optional.empty(), false, Optional.of(by), Optional.empty(), Optional.empty(), false);
    }

    public Told at(LocalTime time) {
        return new Told(on, Optional.of(time), about, by, cage, note, sure);
    }

    public Told noting(String words) {
        return new Told(on, at, about, by, cage, Optional.of(words), sure);
    }

    public Told beingSure() {
        return new Told(on, at, about, by, cage, note, true);
    }
}
