package org.cagewall.handover;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;

/**
 * Something that waits for the owner who is back: what can still be caught up with, and what is too late. Immutable; any
 * thread.
 *
 * @param cages where it is; several only of cards
 * @param words in a few words what it is
 * @param why since when, or until when
 * @param due the day by which it is, or was, to be done
 * @param lateBy how many days ago that was at the latest; 0 while it is not late
 */
public record Waiting(What what, List<String> cages, Message words, Message why, LocalDate due, int lateBy) {

    /** What it is about, the most urgent first. */
    public enum What {
        /** Chicks whose ring still fits. */
        TO_RING,
        /** Chicks old enough to be taken away. */
        TO_TAKE_AWAY,
        /** Chicks without a ring that are past the last day for one. */
        RING_TOO_LATE,
        /** Anything else that is late. */
        LATE,
        /** Cards that no longer tell what they should. */
        CARDS
    }

    /** What the owner sees to day by day or by reading the review, and what has a line of its own kind here. */
    private static final Set<Kind> TOLD_APART =
            Set.of(Kind.CHECK, Kind.REPORT, Kind.BACK, Kind.AWAY, Kind.RING, Kind.WEAN, Kind.CARD);

    public Waiting {
        cages = List.copyOf(cages);
    }

    /** What waits on that day, the most urgent first, and else in the order of the day's list. */
    public static List<Waiting> of(Room room, LocalDate date) {
        List<Task> open = DailyList.of(room, date, Audience.OWNER).stream()
                .filter(Task::isOpen)
                .toList();
        List<Waiting> waiting = new ArrayList<>();
        Almanac almanac = Almanac.of(room);
        room.walk().forEach(cage -> rings(waiting, cage, almanac.nest(cage), date));
        open.stream()
                .filter(task -> task.kind() == Kind.WEAN && task.presses())
                .forEach(task -> waiting.add(of(What.TO_TAKE_AWAY, task)));
        open.stream()
                .filter(task -> task.late() && !TOLD_APART.contains(task.kind()))
                .forEach(task -> waiting.add(of(What.LATE, task)));
        cards(open, date).ifPresent(waiting::add);
        waiting.sort(Comparator.comparing(Waiting::what));
        return List.copyOf(waiting);
    }

    private static Waiting of(What what, Task task) {
        return new Waiting(what, task.cage().stream().toList(), task.words(), task.why(), task.due(), task.lateBy());
    }

    /** The chicks of one nest, those whose ring still fits and those whose does not any more. */
    private static void rings(List<Waiting> waiting, Cage cage, Outlook nest, LocalDate date) {
        List<Unringed> chicks = nest.chicksHere().stream()
                .flatMap(chick -> Unringed.of(chick, cage).stream())
                .sorted(Comparator.comparing(Unringed::last))
                .toList();
        List<Unringed> fits =
                chicks.stream().filter(chick -> chick.window().holds(date)).toList();
        List<Unringed> past =
                chicks.stream().filter(chick -> chick.window().isPast(date)).toList();
        fits.stream()
                .findFirst()
                .map(first -> new Waiting(
                        What.TO_RING,
                        List.of(cage.name()),
                        Message.of("waiting.to-ring", names(fits)),
                        Message.of("waiting.ring-by", first.last()),
                        first.last(),
                        0))
                .ifPresent(waiting::add);
        past.stream()
                .findFirst()
                .map(first -> new Waiting(
                        What.RING_TOO_LATE,
                        List.of(cage.name()),
                        Message.of("waiting.ring-too-late", names(past)),
                        Message.of("waiting.ring-was", first.last()),
                        first.last(),
                        (int) ChronoUnit.DAYS.between(first.last(), date)))
                .ifPresent(waiting::add);
    }

    private static List<String> names(List<Unringed> chicks) {
        return chicks.stream().map(Unringed::name).toList();
    }

    private record Unringed(String name, Window window) {

        static Optional<Unringed> of(ChickOutlook chick, Cage cage) {
            return chick.ringing()
                    .filter(Due::isOpen)
                    .map(due -> new Unringed(chick.lying().name(cage.id()), due.window()));
        }

        LocalDate last() {
            return window.latest();
        }
    }

    private static Optional<Waiting> cards(List<Task> open, LocalDate date) {
        List<String> cages = open.stream()
                .filter(task -> task.kind() == Kind.CARD)
                .flatMap(task -> task.cage().stream())
                .toList();
        return cages.isEmpty()
                ? Optional.empty()
                : Optional.of(new Waiting(
                        What.CARDS,
                        cages,
                        Message.of("waiting.cards", cages.size()),
                        Message.of("waiting.cards-how"),
                        date,
                        0));
    }
}
