package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Two birds meant for each other and for a cage. Immutable; any thread.
 *
 * @param day the day on which that was decided
 */
public record PairPlan(long id, long cage, long cock, long hen, Optional<String> label, LocalDate day) {}
