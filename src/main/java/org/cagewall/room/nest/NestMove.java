package org.cagewall.room.nest;

import java.time.LocalDate;

/**
 * An egg or chick moved to another nest. Immutable; any thread.
 *
 * @param letter what it is marked with there
 */
public record NestMove(long cage, String letter, LocalDate day) {}
