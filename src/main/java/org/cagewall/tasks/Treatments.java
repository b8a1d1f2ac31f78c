package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.PairPlan;
import org.cagewall.text.Message;

/**
 * What the owner's own rule on treating may ask for: birds back from a show, and birds of a planned pair before the
 * season; one task a cage. With what, how much and whether at all is for the label, the vet and the owner to say, and a
 * hen that lays is never named. Pure; any thread.
 */
final class Treatments {

    /** For so long after a show it is thought of, in days. Common practice, no source. */
    private static final int AFTER_SHOW_DAYS = 14;

    /** Once in n days, before the season. Common practice, no source. */
    private static final int YEAR_DAYS = 365;

    /** So long after her last egg a hen counts as laying, in days: twice the longest usual gap. Common practice, no source. */
    private static final int LAYING_DAYS = 10;

    private final Room room;
    private final LocalDate date;
    private final Closed closed;

    private Treatments(Room room, LocalDate date) {
        this.room = room;
        this.date = date;
        this.closed = new Closed(room, date);
    }

    /** In the order of the walk, what was done on that day with them. */
    static List<Task> of(Room room, LocalDate date) {
        List<Task> tasks = new ArrayList<>(new Treatments(room, date).asked());
        if (room.birds().stream().anyMatch(bird -> isTreatedOn(bird, date))) {
            Set<String> open = tasks.stream().map(Task::id).collect(Collectors.toSet());
            new Treatments(room.before(date), date)
                    .asked().stream().filter(task -> !open.contains(task.id())).forEach(task -> {
                        Cage cage = task.cage().flatMap(room::cage).orElseThrow();
                        tasks.add(task.recorded(Sight.of(room, cage, date)));
                    });
        }
        return tasks;
    }

    private static boolean isTreatedOn(Bird bird, LocalDate date) {
        return bird.treated().filter(date::equals).isPresent();
    }

    private List<Task> asked() {
        return room.walk()
                .flatMap(cage -> Stream.of(afterShow(cage), yearly(cage)).flatMap(Optional::stream))
                .toList();
    }

    private Optional<Task> afterShow(Cage cage) {
        List<Bird> back = room.birdsIn(cage).stream()
                .filter(bird -> bird.backFromShow().filter(this::isFresh).isPresent())
                .filter(bird -> isUntreatedSince(bird, bird.backFromShow().orElseThrow()) && !isLaying(bird))
                .sorted(Comparator.comparing(bird -> bird.backFromShow().orElseThrow()))
                .toList();
        return back.stream()
                .findFirst()
                .flatMap(Bird::backFromShow)
                .map(day -> task(cage, Kind.AFTER_SHOW, day, day.plusDays(AFTER_SHOW_DAYS), back));
    }

    private boolean isFresh(LocalDate back) {
        return !back.isAfter(date) && !back.plusDays(AFTER_SHOW_DAYS).isBefore(date);
    }

    /** At the cage for which they are meant. */
    private Optional<Task> yearly(Cage cage) {
        List<PairPlan> plans = room.plans().stream()
                .filter(plan -> plan.cage() == cage.id() && !plan.day().isAfter(date))
                .filter(plan -> !untreated(plan).isEmpty())
                .sorted(Comparator.comparing(PairPlan::day))
                .toList();
        List<Bird> birds = plans.stream()
                .flatMap(plan -> untreated(plan).stream())
                .distinct()
                .toList();
        return plans.stream().findFirst().map(plan -> task(cage, Kind.YEARLY, plan.day(), plan.day(), birds));
    }

    private List<Bird> untreated(PairPlan plan) {
        return Stream.of(plan.cock(), plan.hen())
                .flatMap(id -> room.bird(id).stream())
                .filter(bird -> isUntreatedSince(bird, date.minusDays(YEAR_DAYS)) && !isLaying(bird))
                .toList();
    }

    private static boolean isUntreatedSince(Bird bird, LocalDate day) {
        return bird.treated().filter(treated -> !treated.isBefore(day)).isEmpty();
    }

    private boolean isLaying(Bird bird) {
        return room.pairs().stream()
                .filter(pair -> pair.hen() == bird.id())
                .flatMap(pair -> pair.rounds().stream())
                .flatMap(round -> round.lastLaid().stream())
                .anyMatch(laid -> !laid.plusDays(LAYING_DAYS).isBefore(date));
    }

    /** A reminder: it is never late. */
    private Task task(Cage cage, Kind kind, LocalDate from, LocalDate due, List<Bird> birds) {
        String id = Task.id(from, cage.name(), kind);
        Closed.Verdict verdict = closed.byOutcome(id);
        List<Message> how = new ArrayList<>(List.of(Message.of("tasks.how-treat"), Message.of("tasks.how-treat-hen")));
        room.settings()
                .rules()
                .map(rules -> Message.of("tasks.how-treat-rule", rules))
                .ifPresent(how::add);
        return new Task(
                id,
                Optional.of(cage.name()),
                kind,
                due,
                0,
                Message.of(
                        "tasks.do-" + kind.word(),
                        birds.stream().map(Bird::ring).toList()),
                Optional.of(Sight.of(room, cage, date)),
                Message.of("tasks.why-" + kind.word()),
                how,
                List.of(how.get(0)),
                Optional.empty(),
                Optional.empty(),
                verdict.state(),
                verdict.closing());
    }
}
