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
public record Circumstances(
        LocalDate on,
        Optional<LocalTime> at,
        boolean about,
        Optional<String> by,
        Optional<String> cage,
        Optional<String> note,
        boolean sure) {

    public static Circumstances on(LocalDate day, String by) {
        return new Circumstances(
                day, Optional.empty(), false, Optional.of(by), Optional.empty(), Optional.empty(), false);
    }

    public Circumstances at(LocalTime time) {
        return new Circumstances(on, Optional.of(time), about, by, cage, note, sure);
    }

    public Circumstances noting(String words) {
        return new Circumstances(on, at, about, by, cage, Optional.of(words), sure);
    }

    public Circumstances beingSure() {
        return new Circumstances(on, at, about, by, cage, note, true);
    }
}
