package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cagewall.room.Room;

/** What of the sitter's day was said not to be done, and at which cages: a row stands for each of its cages. Any thread. */
public final class LeftUndone {

    private LeftUndone() {}

    /** The first such task of each cage on that day, by the cages' names. */
    public static Map<String, Kind> at(Room room, LocalDate date) {
        Map<String, Kind> undone = new LinkedHashMap<>();
        boolean any = room.outcomes().stream()
                .anyMatch(outcome -> !outcome.done() && outcome.day().equals(date));
        if (any) {
            DailyList.of(room, date, Audience.SITTER).stream()
                    .filter(task -> task.state() == Task.State.NOT_DONE)
                    .forEach(task -> cages(task).forEach(cage -> undone.putIfAbsent(cage, task.kind())));
        }
        return undone;
    }

    private static List<String> cages(Task task) {
        return task.row().map(Task.WallRow::cages).orElse(task.cage().stream().toList());
    }
}
