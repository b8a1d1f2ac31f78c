package org.cagewall.room.care;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which entries of the record are wanted, the newest first. Immutable; any thread.
 *
 * @param from the first day told of
 * @param to the last day told of
 * @param most how many at most
 */
public record LogQuery(
        Optional<Long> cage, Optional<Long> bird, Optional<LocalDate> from, Optional<LocalDate> to, int most) {

    public static LogQuery newest(int most) {
        return new LogQuery(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), most);
    }

    public static LogQuery between(LocalDate from, LocalDate to) {
        return new LogQuery(Optional.empty(), Optional.empty(), Optional.of(from), Optional.of(to), Integer.MAX_VALUE);
    }

    public LogQuery ofCage(long id) {
        return new LogQuery(Optional.of(id), bird, from, to, most);
    }

    public LogQuery ofBird(long id) {
        return new LogQuery(cage, Optional.of(id), from, to, most);
    }
}
