package org.cagewall.files;

import java.time.LocalDate;
import java.util.Optional;

/**
 * One line of a calendar as its file holds it, in words. Immutable; any thread.
 *
 * @param uid what it is about, whatever becomes of its days, so that a later import finds it again
 * @param first its first day
 * @param last its last day, counted in
 */
record CalendarEvent(
        String uid, String summary, Optional<String> description, LocalDate first, LocalDate last, Standing standing) {

    /** Whether it is still so; what no longer is stays in the file for a while, so that a phone lets go of it. */
    enum Standing {
        HOLDS,
        IS_OVER
    }

    boolean isOver() {
        return standing == Standing.IS_OVER;
    }

    CalendarEvent over(String words) {
        return isOver() ? this : new CalendarEvent(uid, words, description, first, last, Standing.IS_OVER);
    }
}
