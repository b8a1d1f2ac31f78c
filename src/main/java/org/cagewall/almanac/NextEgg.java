package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The egg that comes next in a round under way. Immutable; any thread.
 *
 * @param tooLongFrom the day from which the gap is asked about; empty once the usual clutch is laid, or eggs of a smaller one are full
 * @param givenUp the day from which no more eggs of this round are looked for: twice that gap
 */
public record NextEgg(Window window, Optional<LocalDate> tooLongFrom, LocalDate givenUp) {}
