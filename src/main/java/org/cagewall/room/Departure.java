package org.cagewall.room;

import java.time.LocalDate;
import java.util.Optional;

/** How and when a bird left for good. Immutable; any thread. */
public record Departure(Way how, LocalDate day, Optional<String> place, Optional<String> likely) {}
