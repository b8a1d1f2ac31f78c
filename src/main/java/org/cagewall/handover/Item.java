package org.cagewall.handover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Room;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Message;

/**
 * One entry as the review shows it. Immutable; any thread.
 *
 * @param cages names of the cages it speaks of
 * @param deed the deed's name in the language of the record
 * @param what it as a short sentence
 * @param read whether the owner has ticked it
 * @param strike by whom and why it was struck out
 */
public record Item(
        long entry,
        LocalDate day,
        Optional<LocalTime> at,
        String by,
        Optional<Answer> answer,
        Optional<How> how,
        List<String> cages,
        String deed,
        Message what,
        Optional<String> note,
        boolean read,
        Optional<LogEntry.Strike> strike) {

    public Item {
        cages = List.copyOf(cages);
    }

    static Item of(Room room, LogEntry entry) {
        return new Item(
                entry.number(),
                entry.day(),
                entry.at(),
                entry.by(),
                entry.answer(),
                entry.how(),
                entry.cages().stream().map(room::cageName).toList(),
                entry.deed(),
                entry.what(),
                entry.note(),
                entry.seen(),
                entry.strike());
    }

    public boolean isStruck() {
        return strike.isPresent();
    }

    /** Whether it only says that all was well: such entries are many and can be read together. */
    public boolean isCalm() {
        return answer.filter(it -> it == Answer.WELL).isPresent() && note.isEmpty() && !isStruck();
    }
}
