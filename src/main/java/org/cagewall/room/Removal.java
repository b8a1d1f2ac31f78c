package org.cagewall.room;

import java.time.LocalDate;

/** An egg taken out of the nest for good. Immutable; any thread. */
public record Removal(WhyRemoved why, LocalDate day) {}
