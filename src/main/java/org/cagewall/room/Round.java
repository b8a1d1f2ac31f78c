package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * One round of a pair: its eggs in the order of their marks. Immutable; any thread.
 *
 * @param sitting the day from which the hen was seen to sit
 */
public record Round(
        long id, int number, LocalDate begun, Optional<LocalDate> ended, Optional<LocalDate> sitting, List<Egg> eggs) {

    public Round {
        eggs = List.copyOf(eggs);
    }

    public boolean isOpen() {
        return ended.isEmpty();
    }

    public Optional<LocalDate> lastLaid() {
        return eggs.stream().map(Egg::laid).max(LocalDate::compareTo);
    }
}
