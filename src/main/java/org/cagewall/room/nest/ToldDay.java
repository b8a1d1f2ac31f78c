package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A day on which something happened, as it was told. Immutable; any thread.
 *
 * @param about whether it is the keeper's guess
 */
public record ToldDay(LocalDate day, boolean about) {

    /** The day, unless it is a guess. */
    public Optional<LocalDate> known() {
        return Optional.of(day).filter(told -> !about);
    }
}
