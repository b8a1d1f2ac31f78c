package org.cagewall.room.care;

import java.time.LocalDate;

/** How many birds were counted in a cage, and when. Immutable; any thread. */
public record Headcount(int birds, LocalDate day) {}
