package org.cagewall.room.bird;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;

/**
 * A bird looked over. Immutable; any thread.
 *
 * @param weight in grams
 */
public record LookedOver(Condition condition, Optional<BigDecimal> weight, LocalDate day) {}
