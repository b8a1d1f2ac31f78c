package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/** What was known before a day. Pure; any thread. */
public final class Days {

    private Days() {}

    public static Optional<LocalDate> before(Optional<LocalDate> done, LocalDate day) {
        return done.filter(that -> that.isBefore(day));
    }
}
