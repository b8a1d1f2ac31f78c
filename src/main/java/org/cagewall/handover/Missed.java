package org.cagewall.handover;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Room;

/**
 * What nobody recorded on a day, so that no entry can be ticked: the owner ticks the day, as a task that is done.
 * Immutable; any thread.
 */
public enum Missed {
    /** Cages that nobody looked at. */
    CAGES,
    /** Tasks that nobody answered. */
    TASKS;

    /** The task that is done once the owner has read it; it borrows the first cage of the walk. */
    public Optional<String> task(Room room, LocalDate day) {
        return room.walk().findFirst().map(cage -> day + "/" + cage.name() + "/" + word());
    }

    /** Whether the owner has; the first cage may be another since. */
    boolean isReadOn(Room room, LocalDate day) {
        return room.outcomes().stream()
                .anyMatch(outcome -> outcome.done()
                        && outcome.task().startsWith(day + "/")
                        && outcome.task().endsWith("/" + word()));
    }

    static boolean isTask(String id) {
        return Stream.of(values()).anyMatch(each -> id.endsWith("/" + each.word()));
    }

    private String word() {
        return "read-missed-" + name().toLowerCase(Locale.ROOT);
    }
}
