package org.cagewall.desk;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What time it is: the real instant for the record, and what "today" means, which the command line may set. Immutable;
 * any thread.
 *
 * @param today a fixed date, or empty for the calendar's
 */
public record Clocks(Clock clock, Optional<LocalDate> today) {

    public static Clocks system() {
        return new Clocks(Clock.systemUTC(), Optional.empty());
    }

    public Clocks withToday(LocalDate date) {
        return new Clocks(clock, Optional.of(date));
    }

    public Instant instant() {
        return clock.instant();
    }

    public LocalDate today(ZoneId zone) {
        return today.orElseGet(() -> LocalDate.ofInstant(clock.instant(), zone));
    }

    public LocalTime time(ZoneId zone) {
        return LocalTime.ofInstant(clock.instant(), zone).withSecond(0).withNano(0);
    }
}
