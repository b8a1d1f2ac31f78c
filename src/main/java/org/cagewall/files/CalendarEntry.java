package org.cagewall.files;

import java.time.LocalDate;
import java.util.Optional;
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
}
