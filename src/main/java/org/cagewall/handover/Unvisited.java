package org.cagewall.handover;

import java.time.LocalDate;

/** A cage that nobody looked at on a day. Immutable; any thread. */
public record Unvisited(String cage, LocalDate day) {}
