package org.cagewall.room.nest;

import java.time.LocalDate;

/**
 * A chick that left the box, or was put back into it. Immutable; any thread.
 *
 * @param about whether the day is the keeper's guess
 */
public record BoxTrip(boolean out, LocalDate day, boolean about) {}
