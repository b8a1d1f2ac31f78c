package org.cagewall.room;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;

/** What became of a task of the daily list. Immutable; any thread. */
public record TaskOutcome(
        long entry,
        String task,
        boolean done,
        Optional<String> why,
        String person,
        LocalDate day,
        Optional<LocalTime> time) {}
