package org.cagewall.room.care;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

/**
 * A check of one cage. Immutable; any thread.
 *
 * @param entry the entry that records it
 * @param signs what was seen, by the names of the signs; a check of an early version holds words
 */
public record Visit(
        long entry,
        long cage,
        String person,
        Answer answer,
        How how,
        Optional<DayPart> part,
        List<String> signs,
        LocalDate day,
        Optional<LocalTime> time,
        Optional<String> note) {

    public Visit {
        signs = List.copyOf(signs);
    }

    public boolean isDifferent() {
        return answer == Answer.DIFFERENT;
    }
}
