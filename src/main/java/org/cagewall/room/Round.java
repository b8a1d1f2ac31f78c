package org.cagewall.room;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/** One round of a pair: its eggs in the order of their marks. Immutable; any thread. */
public record Round(long id, int number, LocalDate begun, Optional<LocalDate> ended, List<Egg> eggs) {

    public Round {
        eggs = List.copyOf(eggs);
    }

    public boolean isOpen() {
        return ended.isEmpty();
    }
}
