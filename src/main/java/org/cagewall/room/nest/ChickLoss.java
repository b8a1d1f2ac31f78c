package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/**
 * A chick that died or is missing. Immutable; any thread.
 *
 * @param likely what it likely came of, in the keeper's words
 */
public record ChickLoss(boolean dead, LocalDate day, Optional<String> likely) {}
