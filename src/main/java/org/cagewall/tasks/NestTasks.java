package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Coming;
import org.cagewall.almanac.Coming.What;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.NextEgg;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Overdue;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.Unsat;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Lying;
import org.cagewall.text.Message;

/**
 * What the nests ask of the owner on a day: one task a nest for each kind, from two days before it may be done until what
 * it asks for is recorded. Its date is the expected day of the first that it is about, and it is late once the latest day
 * of one of them has gone by. Pure; any thread.
 */
final class NestTasks {

    /** A task is in the list as coming soon n days before it may be done. Common practice, no source. */
    private static final int SOON_DAYS = 2;

    private final Room room;
    private final LocalDate date;
    private final Closed closed;
    private final LookIn lookIn;
    private final Almanac almanac;
    private final List<Task> tasks = new ArrayList<>();

    private NestTasks(Room room, LocalDate date) {
        this.room = room;
        this.date = date;
        this.closed = new Closed(room, date);
        this.lookIn = new LookIn(room, date);
        this.almanac = Almanac.of(room);
    }

    /**
     * Those that are late first, then those that are due, then those that are soon; each in the order of the walk. What
     * was done on that day is among them.
     */
    static List<Task> of(Room room, LocalDate date) {
        NestTasks made = new NestTasks(room, date);
        made.addAll();
        made.addDone(new Answered(room, date));
        made.tasks.sort(Comparator.comparing((Task task) -> !task.late()).thenComparing(task -> !task.presses()));
        return List.copyOf(made.tasks);
    }

    private void addAll() {
        room.walk().forEach(cage -> add(cage, almanac.nest(cage)));
    }

    /** What was asked for before that day, was answered on it, and is asked for no more. */
    private void addDone(Answered answered) {
        if (answered.isNothing()) {
            return;
        }
        Set<String> asked = tasks.stream().map(Task::id).collect(Collectors.toSet());
        NestTasks before = new NestTasks(room.before(date), date);
        before.addAll();
        for (Task task : before.tasks) {
            Cage cage = task.cage().flatMap(room::cage).orElseThrow();
            if (!asked.contains(task.id()) && answered.at(cage).contains(task.kind())) {
                tasks.add(task.recorded(Sight.of(room, cage, date)));
            }
        }
    }

    private void add(Cage cage, Outlook nest) {
        int before = tasks.size();
        Coming.each(nest, date).stream()
                .filter(coming -> isNear(coming) && isNext(nest, coming))
                .collect(Collectors.groupingBy(Coming::what, () -> new EnumMap<>(What.class), Collectors.toList()))
                .forEach((what, near) -> add(cage, nest, what, near));
        unsat(cage, nest);
        missedRings(cage, nest);
        tasks.subList(before, tasks.size()).sort(Comparator.comparing(Task::kind));
    }

    /** All of a kind that are near are one task, from the first that may be done to the first that is late. */
    private void add(Cage cage, Outlook nest, What what, List<Coming> near) {
        Kind kind = kind(what);
        Window window = near.stream().map(Coming::window).reduce(Window::or).orElseThrow();
        List<Lying> whom =
                near.stream().flatMap(coming -> coming.whom().stream()).toList();
        Message words = whom.isEmpty()
                ? Message.of("tasks.do-" + kind.word())
                : Message.of("tasks.do-" + kind.word(), names(cage, whom));
        switch (what) {
            case FIRST_EGG -> onlyLate(window).ifPresent(late -> add(cage, kind, 1, late, words));
            case NEXT_EGG ->
                nest.nextEgg().filter(this::isTooLong).ifPresent(egg -> add(cage, kind, 1, egg.window(), words));
            case CANDLE -> add(cage, kind, nest.firstLook().isPresent() ? 1 : 2, window, words);
            case HATCH -> hatches(cage, nest, window, words);
            case NEST_LOOK -> lookIn.due(cage, nest).ifPresent(day -> looksIn(cage, nest, day));
            case CLEAR_EGGS -> add(cage, kind, 1, neverLate(window), words);
            case NEXT_ROUND -> notLate(window).ifPresent(open -> add(cage, kind, 1, open, words));
            default -> add(cage, kind, 1, window, words);
        }
    }

    static Kind kind(What what) {
        return switch (what) {
            case NEXT_EGG -> Kind.EGG_GAP;
            case LEAVE_BOX -> Kind.OUT_OF_BOX;
            default -> Kind.valueOf(what.name());
        };
    }

    /** Whether it is in the list already; some are told of only from their first day on. */
    private boolean isNear(Coming coming) {
        return switch (coming.what()) {
            case BACKS, CLEAR_EGGS, NEST_LOOK -> coming.isDue(date);
            default -> isNear(coming.window());
        };
    }

    /** Of the stages of parting only the one that comes next is asked for. */
    private static boolean isNext(Outlook nest, Coming coming) {
        return !coming.isStage()
                || nest.parting()
                        .flatMap(PartingOutlook::next)
                        .filter(stage -> stage.name().equals(coming.what().name()))
                        .isPresent();
    }

    private boolean isNear(Window window) {
        return !window.earliest().minusDays(SOON_DAYS).isAfter(date);
    }

    /** Until the first egg is late there is nothing to do but wait. */
    private Optional<Window> onlyLate(Window window) {
        return Optional.of(window).filter(it -> it.isPast(date));
    }

    /** The next round is in the list while it may begin, and not after: not every pair goes on. */
    private Optional<Window> notLate(Window window) {
        return Optional.of(window).filter(it -> !it.isPast(date));
    }

    /** A chick that has not hatched is not late before it is overdue, and nobody is hurried to take out clear eggs. */
    private Window neverLate(Window window) {
        return window.isPast(date) ? new Window(window.earliest(), window.expected(), date, window.about()) : window;
    }

    private boolean isTooLong(NextEgg next) {
        return next.tooLongFrom().filter(from -> !date.isBefore(from)).isPresent() && date.isBefore(next.givenUp());
    }

    private void hatches(Cage cage, Outlook nest, Window window, Message near) {
        Optional<Overdue> overdue = Overdue.at(nest, date, Overdue.What.HATCH);
        add(
                cage,
                Kind.HATCH,
                1,
                overdue.isPresent() ? window : neverLate(window),
                overdue.map(late -> Message.of("tasks.do-overdue", names(cage, late.whom())))
                        .orElse(near));
    }

    /** A chick that missed its ring is said for a while; nothing is late about it, since nothing can be done. */
    private void missedRings(Cage cage, Outlook nest) {
        Overdue.at(nest, date, Overdue.What.RING)
                .ifPresent(missed -> add(
                        cage,
                        Kind.RING_MISSED,
                        1,
                        new Window(missed.since(), missed.since(), date, false),
                        Message.of("tasks.do-ring-missed", names(cage, missed.whom()))));
    }

    /** A look that was missed is not made up for: today's is due, and none is late. */
    private void looksIn(Cage cage, Outlook nest, LocalDate day) {
        add(
                cage,
                Kind.NEST_LOOK,
                1,
                new Window(day, day, Window.later(day.plusDays(1), date), false),
                NestName.at(room, cage)
                        .say("tasks.do-nest-look", nest.chicksHere().size()));
    }

    private void unsat(Cage cage, Outlook nest) {
        List<EggOutlook> stale =
                nest.eggsHere().stream().filter(egg -> egg.liesUnsat(date)).toList();
        stale.stream()
                .flatMap(egg -> egg.unsat().stream())
                .min(Comparator.comparing(Unsat::warnFrom))
                .ifPresent(first -> add(
                        cage,
                        Kind.UNSAT,
                        1,
                        new Window(first.warnFrom(), first.warnFrom(), first.staleFrom(), false),
                        Message.of(
                                "tasks.do-unsat",
                                names(
                                        cage,
                                        stale.stream().map(EggOutlook::lying).toList()))));
    }

    private static List<String> names(Cage cage, List<Lying> lying) {
        return lying.stream().map(each -> each.name(cage.id())).toList();
    }

    private void add(Cage cage, Kind kind, int n, Window window, Message words) {
        String id = Task.id(window.expected(), cage.name(), kind, n);
        Closed.Verdict verdict = closed.byOutcome(id);
        int lateBy = verdict.state() == Task.State.OPEN ? Task.lateBy(window.latest(), date) : 0;
        Message why = lateBy > 0
                ? Message.of("tasks.why-late", window.latest(), lateBy)
                : Message.of(window.earliest().isAfter(date) ? Task.SOON : "tasks.why-due", WindowWords.of(window));
        tasks.add(new Task(
                id,
                Optional.of(cage.name()),
                kind,
                window.expected(),
                lateBy,
                words,
                Optional.of(Sight.of(room, cage, date)),
                why,
                List.of(Message.of("tasks.how-" + kind.word())),
                List.of(why),
                Optional.empty(),
                Optional.empty(),
                verdict.state(),
                verdict.closing()));
    }
}
