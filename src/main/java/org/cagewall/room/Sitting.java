package org.cagewall.room;

import java.time.LocalDate;

/**
 * A hen seen to sit on her round from a day on. Immutable; any thread.
 *
 * @param about whether the day is the keeper's guess
 */
public record Sitting(LocalDate day, boolean about) {}
