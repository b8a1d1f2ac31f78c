package org.cagewall.handover;

import java.time.LocalDate;

/**
 * A cage that nobody looked at on a day. Immutable; any thread.
 *
 * @param read whether the owner has ticked that day
 */
public record Unvisited(String cage, LocalDate day, boolean read) {}
