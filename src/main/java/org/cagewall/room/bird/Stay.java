package org.cagewall.room.bird;

import java.time.LocalDate;

/** From when a bird stands in a cage. The first stay of a bird counts from always. Immutable; any thread. */
public record Stay(long cage, LocalDate since, long entry) {}
