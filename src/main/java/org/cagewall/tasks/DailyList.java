package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.List;
import org.cagewall.room.Room;

/** The day's list, worked out from the room and the date alone. Pure; any thread. */
public final class DailyList {

    private DailyList() {}

    /**
     * What there is to do on a day, in the order in which it is done, with what has been done of it. For the sitter the
     * morning comes before the evening. The room must hold that day's visits and outcomes of tasks for their state to
     * be right.
     */
    public static List<Task> of(Room room, LocalDate date, Audience audience) {
        return switch (audience) {
            case OWNER -> new OwnersList(room, date).tasks();
            case SITTER -> new SittersList(room, date).tasks();
        };
    }
}
