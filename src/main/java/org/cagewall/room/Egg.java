package org.cagewall.room;

import java.time.LocalDate;

/**
 * One egg. Immutable; any thread.
 *
 * @param mark the number pencilled on it
 * @param about whether the laying date is the keeper's guess
 * @param cage where it was laid
 */
public record Egg(String mark, LocalDate laid, boolean about, EggPlace place, long cage, long entry) {}
