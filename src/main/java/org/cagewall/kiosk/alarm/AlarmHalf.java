package org.cagewall.kiosk.alarm;

import java.util.Optional;
import org.cagewall.tasks.Danger;

/**
 * What was touched of an alarm. Immutable; any thread.
 *
 * @param at the cage, or that nobody knows which; empty while nothing was touched
 */
public record AlarmHalf(Danger danger, Optional<Optional<String>> at) {}
