package org.cagewall.room.bird;

import java.time.LocalDate;
import java.util.Optional;

/** How and when a bird left for good. Immutable; any thread. */
public record Departure(Way how, LocalDate day, Optional<String> place, Optional<String> likely) {}
