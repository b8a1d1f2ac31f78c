package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One round of a pair: its eggs in the order of their marks. Immutable; any thread.
 *
 * @param sitting from when the hen was seen to sit
 */
public record Round(
        long id, int number, LocalDate begun, Optional<LocalDate> ended, Optional<ToldDay> sitting, List<Egg> eggs) {

    public Round {
        eggs = List.copyOf(eggs);
    }

    /** The round before that day; empty where it had not begun. */
    Optional<Round> before(LocalDate day) {
        List<Egg> laid = eggs.stream()
                .filter(egg -> egg.laid().isBefore(day))
                .map(egg -> egg.before(day))
                .toList();
        return laid.isEmpty() && !begun.isBefore(day)
                ? Optional.empty()
                : Optional.of(new Round(
                        id,
                        number,
                        begun,
                        Days.before(ended, day),
                        sitting.filter(seen -> seen.day().isBefore(day)),
                        laid));
    }

    public boolean isOpen() {
        return ended.isEmpty();
    }

    public Optional<LocalDate> lastLaid() {
        return eggs.stream().map(Egg::laid).max(LocalDate::compareTo);
    }
}
