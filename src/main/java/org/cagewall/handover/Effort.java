package org.cagewall.handover;

import java.util.List;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.care.DayPart;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;

/**
 * How long a sitter is likely to be at it, so that nobody is asked for more than was said. A rough guess from the day's
 * list: what a task takes is common practice, no source. Immutable; any thread.
 *
 * @param morning minutes of the morning round, rounded up to five
 * @param evening the same in the evening
 */
public record Effort(int morning, int evening) {

    /** Coming in, washing hands, and closing the round, each time; minutes, common practice, no source. */
    private static final int COMING_AND_GOING = 5;

    /** Dishes tipped and filled, birds looked at and counted; minutes, common practice, no source. */
    private static final int A_CAGE = 3;

    /** A flight has more dishes and more birds to count; minutes, common practice, no source. */
    private static final int A_FLIGHT = 8;

    /** Minutes, common practice, no source. */
    private static final int ONLY_A_LOOK = 1;

    /** Into a nest box with chicks; minutes, common practice, no source. */
    private static final int A_NEST_LOOK = 5;

    /** Old soft food out, or food for the night; minutes, common practice, no source. */
    private static final int EVENING_FOOD = 1;

    /** A row walked past; minutes, common practice, no source. */
    private static final int A_ROW = 2;

    private static final int ROUNDED_TO = 5;

    /** The effort of one day's list. */
    public static Effort of(Room room, List<Task> list) {
        return new Effort(of(room, list, DayPart.MORNING), of(room, list, DayPart.EVENING));
    }

    private static int of(Room room, List<Task> list, DayPart part) {
        List<Task> round = list.stream()
                .filter(task -> task.part().filter(its -> its == part).isPresent())
                .toList();
        if (round.isEmpty()) {
            return 0;
        }
        int minutes = COMING_AND_GOING
                + round.stream().mapToInt(task -> minutes(room, task)).sum();
        return (minutes + ROUNDED_TO - 1) / ROUNDED_TO * ROUNDED_TO;
    }

    private static int minutes(Room room, Task task) {
        if (task.kind() == Kind.MORNING) {
            return task.cage()
                    .flatMap(room::cage)
                    .map(cage -> morning(room, cage, task))
                    .orElse(ONLY_A_LOOK);
        }
        return switch (task.kind()) {
            case NEST_LOOK -> A_NEST_LOOK;
            case EVENING_FOOD -> EVENING_FOOD;
            case EVENING_ROW -> A_ROW;
            default -> ONLY_A_LOOK;
        };
    }

    private static int morning(Room room, Cage cage, Task task) {
        boolean onlyLooks = !room.isLivedIn(cage)
                || room.absenceOn(task.due())
                        .filter(away -> away.leaveAlone().contains(cage.id()))
                        .isPresent();
        if (onlyLooks) {
            return ONLY_A_LOOK;
        }
        return cage.use() == Use.FLIGHT ? A_FLIGHT : A_CAGE;
    }

    public int minutes() {
        return morning + evening;
    }

    public Message words() {
        return Message.of("ready.effort", minutes(), morning, evening);
    }
}
