package org.cagewall.room.care;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * One entry of the record as it is read: what happened, when, by whom, and whether it was struck out. Immutable; any
 * thread.
 *
 * @param touch the number of the first entry recorded by the same touch
 * @param deed the deed's name in the language of the record
 * @param cages ids of the cages it speaks of
 * @param what the deed as a short sentence
 * @param part the round of the day a check was made on, where that was said
 * @param task the id of the task it answers
 * @param line the recorded line
 */
public record LogEntry(
        long number,
        long touch,
        Instant recorded,
        LocalDate day,
        Optional<LocalTime> at,
        String by,
        String deed,
        List<Long> cages,
        Message what,
        Optional<Answer> answer,
        Optional<How> how,
        Optional<DayPart> part,
        Optional<String> task,
        Optional<String> note,
        Optional<Strike> strike,
        boolean seen,
        String line) {

    /** Why and by whom an entry was struck out. */
    public record Strike(long entry, String by, String why) {}

    public LogEntry {
        cages = List.copyOf(cages);
    }

    /** This entry, shown with these cages. */
    public LogEntry at(List<Long> shownWith) {
        return new LogEntry(
                number, touch, recorded, day, at, by, deed, shownWith, what, answer, how, part, task, note, strike,
                seen, line);
    }

    public boolean isStruck() {
        return strike.isPresent();
    }
}
