package org.cagewall.room.nest;

import java.time.LocalDate;

/**
 * A chick taken from its nest as a bird of its own. Immutable; any thread.
 *
 * @param bird the bird that it is from then on
 * @param about whether the day is the keeper's guess
 */
public record Weaning(long bird, LocalDate day, boolean about) {}
