package org.cagewall.room;

import java.time.LocalDate;
import java.util.Optional;

/**
 * The ring put on a chick. Immutable; any thread.
 *
 * @param checked the day it was seen to be still on
 */
public record ChickRing(String ring, LocalDate day, Optional<LocalDate> checked) {}
