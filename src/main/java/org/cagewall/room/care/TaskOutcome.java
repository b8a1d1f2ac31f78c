package org.cagewall.room.care;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Optional;
import java.util.Set;

/**
 * What became of a task of the daily list. Immutable; any thread.
 *
 * @param why why it was not done: the name of a reason, or somebody's own words
 * @param note what was added to that
 */
public record TaskOutcome(
        long entry,
        String task,
        boolean done,
        Optional<String> why,
        String person,
        LocalDate day,
        Optional<LocalTime> time,
        Optional<String> note) {

    /** The kinds that are asked for anew each day. */
    private static final Set<String> OF_A_DAY =
            Set.of("morning", "evening-food", "evening-row", "evening", "check", "card");

    /** Whether the same task may be asked for on a later day, so that its answer has to be remembered. */
    public boolean mayBeAskedAgain() {
        String[] parts = task.split("/");
        return parts.length < 3 || !OF_A_DAY.contains(parts[2]);
    }
}
