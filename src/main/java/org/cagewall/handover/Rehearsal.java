package org.cagewall.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Room;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;

/**
 * Any day away as the sitter will meet it: the sitter's own list, of a room in which every look into a nest was done on
 * the days before that are still to come. Pure; any thread.
 */
public final class Rehearsal {

    private Rehearsal() {}

    /**
     * The sitter's list of one day away. The days away are those that the room holds.
     *
     * @param today the day on which it is asked; what was recorded until then counts
     * @param date the day asked about; on one that has come, what was done of it shows
     */
    public static List<Task> of(Room room, LocalDate today, LocalDate date) {
        if (!date.isAfter(today)) {
            return DailyList.of(room, date, Audience.SITTER);
        }
        Room until = room;
        for (LocalDate day = today; day.isBefore(date) && looksIn(room); day = day.plusDays(1)) {
            until = withLooksDone(until, day);
        }
        return DailyList.of(until, date, Audience.SITTER).stream()
                .filter(Task::isOpen)
                .toList();
    }

    private static boolean looksIn(Room room) {
        return room.cages().stream().anyMatch(cage -> cage.routine().allows(Permission.LOOK_IN));
    }

    private static Room withLooksDone(Room room, LocalDate day) {
        List<TaskOutcome> outcomes = new ArrayList<>(room.outcomes());
        DailyList.of(room, day, Audience.SITTER).stream()
                .filter(task -> task.kind() == Kind.NEST_LOOK && task.isOpen())
                .map(Task::id)
                .map(id -> new TaskOutcome(
                        room.head(), id, true, Optional.empty(), "-", day, Optional.empty(), Optional.empty()))
                .forEach(outcomes::add);
        return room.holding(room.since(), room.visits(), room.unread(), outcomes);
    }
}
