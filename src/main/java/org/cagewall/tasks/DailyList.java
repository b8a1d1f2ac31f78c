package org.cagewall.tasks;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import org.cagewall.room.Room;
import org.cagewall.room.care.DayPart;

/** The day's list, worked out from the room and the date alone. Pure; any thread. */
public final class DailyList {

    /** From this time on the list begins with the evening. Common practice, no source. */
    private static final LocalTime EVENING = LocalTime.of(15, 0);

    private DailyList() {}

    /** The round that is made at this time of the day. */
    public static DayPart roundAt(LocalTime time) {
        return time.isBefore(EVENING) ? DayPart.MORNING : DayPart.EVENING;
    }

    /** Whether what belongs to that round can be asked for at this time of the day: the evening's not before the evening. */
    public static boolean hasCome(Task task, LocalTime time) {
        return task.part()
                .filter(part -> part == DayPart.EVENING && roundAt(time) != part)
                .isEmpty();
    }

    /** Whether the sitter may look into the nest box of a cage that day: chicks are due a look, and the owner allows it. */
    public static boolean looksIn(Room room, LocalDate date, String cage) {
        return of(room, date, Audience.SITTER).stream()
                .anyMatch(task -> task.kind() == Kind.NEST_LOOK
                        && task.cage().filter(cage::equals).isPresent());
    }

    /** What is open for the sitter at one cage at this time of the day, what was to be done first before the rest. */
    public static List<Task> openAt(Room room, LocalDate date, LocalTime time, String cage) {
        return of(room, date, Audience.SITTER).stream()
                .filter(task -> task.isOpen()
                        && task.row().isEmpty()
                        && task.cage().filter(cage::equals).isPresent()
                        && task.part()
                                .filter(part -> !part.equals(DayPart.EVENING) || roundAt(time) == part)
                                .isPresent())
                .toList();
    }

    /**
     * What there is to do on a day, in the order in which it is done, with what has been done of it. For the sitter the
     * morning comes before the evening. The room must hold that day's visits and outcomes of tasks for their state to
     * be right.
     */
    public static List<Task> of(Room room, LocalDate date, Audience audience) {
        return switch (audience) {
            case OWNER -> new OwnersList(room, date).tasks();
            case SITTER -> new SittersList(Reckoned.of(room, date), date).tasks();
        };
    }
}
