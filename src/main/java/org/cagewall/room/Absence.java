package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * The owner's days away. Immutable; any thread.
 *
 * @param from the first day away
 * @param to the last day away
 * @param vet how the vet is reached, as the owner wrote it
 * @param leaveAlone ids of the cages the sitter does not touch
 * @param ended the day the owner was back, when that has been said
 */
public record Absence(
        long id,
        LocalDate from,
        LocalDate to,
        String sitter,
        Optional<String> second,
        Optional<String> vet,
        List<Long> leaveAlone,
        Optional<LocalDate> ended) {

    public Absence {
        leaveAlone = List.copyOf(leaveAlone);
    }

    public boolean runsOn(LocalDate day) {
        return !day.isBefore(from)
                && !day.isAfter(to)
                && ended.filter(back -> !day.isBefore(back)).isEmpty();
    }

    /** Its first day that has not gone by on that day. */
    public LocalDate firstFrom(LocalDate today) {
        return from.isAfter(today) ? from : today;
    }

    /** The last day the owner was away, as far as it is known. */
    public LocalDate last() {
        return ended.map(back -> back.minusDays(1))
                .filter(day -> day.isBefore(to))
                .orElse(to);
    }
}
