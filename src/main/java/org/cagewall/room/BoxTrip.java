package org.cagewall.room;

import java.time.LocalDate;

/** A chick that left the box, or was put back into it. Immutable; any thread. */
public record BoxTrip(boolean out, LocalDate day) {}
