package org.cagewall.room.nest;

import java.time.LocalDate;

/** What an egg showed against the light on a day. Immutable; any thread. */
public record Candling(EggFinding finding, LocalDate day) {}
