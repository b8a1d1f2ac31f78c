package org.cagewall.room.nest;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The ring put on a chick. Immutable; any thread.
 *
 * @param about whether the day it was put on is the keeper's guess
 * @param checked the day it was seen to be still on
 */
public record ChickRing(String ring, LocalDate day, boolean about, Optional<LocalDate> checked) {}
