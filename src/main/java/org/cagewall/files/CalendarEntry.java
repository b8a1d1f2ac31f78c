package org.cagewall.files;

import java.time.LocalDate;
import java.util.Optional;
import java.util.function.Function;
import org.cagewall.text.Message;

/**
 * One line of the calendar, of whole days. Immutable; any thread.
 *
 * @param uid what it is about, whatever becomes of its days, so that a later import finds it again
 * @param first its first day
 * @param last its last day, counted in
 */
record CalendarEntry(String uid, Message summary, Optional<Message> description, LocalDate first, LocalDate last) {

    CalendarEntry called(String other) {
        return new CalendarEntry(other, summary, description, first, last);
    }

    CalendarEvent said(Function<Message, String> words) {
        return new CalendarEvent(
                uid, words.apply(summary), description.map(words), first, last, CalendarEvent.Standing.HOLDS);
    }
}
