package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.text.Message;

/**
 * The morning on which the hen goes to the hens' flight. Immutable; any thread.
 *
 * @param moved why it is not the day her rest is over, where it is not
 */
public record FlightMove(LocalDate morning, Optional<Message> moved) {}
