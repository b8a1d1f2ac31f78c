package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.room.Call;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Room;

/**
 * The cages whose feeding was said not to be done. Husks make an empty dish look full, so that somebody has to be phoned
 * whatever was seen in the dishes. Pure; any thread.
 */
public final class Unfed {

    private Unfed() {}

    /** The names of all such cages of a day, in the order of the list. */
    public static List<String> at(Room room, LocalDate date) {
        return undone(room, date).flatMap(task -> task.cage().stream()).toList();
    }

    /** Those about which nobody has been spoken to since. */
    public static List<String> unphoned(Room room, LocalDate date) {
        return undone(room, date)
                .filter(task -> !isPhonedAbout(room, date, task))
                .flatMap(task -> task.cage().stream())
                .toList();
    }

    private static Stream<Task> undone(Room room, LocalDate date) {
        boolean any = room.outcomes().stream()
                .anyMatch(outcome -> !outcome.done() && outcome.day().equals(date));
        return any
                ? DailyList.of(room, date, Audience.SITTER).stream()
                        .filter(task -> task.isFeeding() && task.state() == Task.State.NOT_DONE)
                : Stream.empty();
    }

    private static boolean isPhonedAbout(Room room, LocalDate date, Task task) {
        long said = task.closing().map(Task.Closing::entry).orElse(0L);
        return room.callsOn(date).stream()
                        .filter(call -> call.reachedSomebody() && call.entry() > said)
                        .anyMatch(call -> isAt(room, call, task) || isAboutAllFood(call))
                || room.agreedOn(date).stream()
                        .filter(Unfed::isAboutFood)
                        .anyMatch(call -> isAt(room, call, task) || isAboutAllFood(call));
    }

    private static boolean isAt(Room room, Call call, Task task) {
        return call.cage()
                .map(room::cageName)
                .filter(name -> task.cage().filter(name::equals).isPresent())
                .isPresent();
    }

    /** One call about food that names no cage speaks of every cage without. */
    static boolean isAboutAllFood(Call call) {
        return call.cage().isEmpty() && isAboutFood(call);
    }

    private static boolean isAboutFood(Call call) {
        return call.matter().equals(CallMatter.FOOD.word());
    }
}
