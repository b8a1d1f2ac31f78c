package org.cagewall.room;

import java.time.LocalDate;
import java.util.Optional;

/** What was known before a day. Pure; any thread. */
final class Days {

    private Days() {}

    static Optional<LocalDate> before(Optional<LocalDate> done, LocalDate day) {
        return done.filter(that -> that.isBefore(day));
    }
}
