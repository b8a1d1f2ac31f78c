package org.cagewall.room;

import java.time.LocalDate;

/** Where a bird is for a time, and since when. Immutable; any thread. */
public record Outing(Whither where, LocalDate since) {}
