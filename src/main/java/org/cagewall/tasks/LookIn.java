package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.care.TaskOutcome;

/**
 * When the chicks of a nest are looked at next. A look that was only ticked off, or left out with a word, moves the next
 * one as a look that was recorded does. Pure; any thread.
 */
record LookIn(Room room, LocalDate date) {

    /** The day it falls due, if that has come. */
    Optional<LocalDate> due(Cage cage, Outlook nest) {
        return nest.nestLook().map(day -> afterTicks(cage, day)).filter(day -> !day.isAfter(date));
    }

    private LocalDate afterTicks(Cage cage, LocalDate recorded) {
        LocalDate due = recorded;
        Optional<LocalDate> next = afterTick(cage, due);
        while (next.filter(day -> !day.isAfter(date)).isPresent()) {
            due = next.get();
            next = afterTick(cage, due);
        }
        return due;
    }

    private Optional<LocalDate> afterTick(Cage cage, LocalDate due) {
        return room.outcome(Task.id(due, cage.name(), Kind.NEST_LOOK))
                .map(TaskOutcome::day)
                .map(ticked -> (ticked.isAfter(due) ? ticked : due).plusDays(Outlook.NEST_LOOK_DAYS));
    }
}
