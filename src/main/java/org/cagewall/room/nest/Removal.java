package org.cagewall.room.nest;

import java.time.LocalDate;

/** An egg taken out of the nest for good. Immutable; any thread. */
public record Removal(WhyRemoved why, LocalDate day) {}
