package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.ClearEggs;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.NestCandling;
import org.cagewall.almanac.NextEgg;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.StageOutlook;
import org.cagewall.almanac.Unsat;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.room.Lying;
import org.cagewall.room.Room;
import org.cagewall.room.Stage;
import org.cagewall.text.Message;

/**
 * What the nests ask of the owner on a day: one task a nest for each kind, from two days before it may be done until what
 * it asks for is recorded. Its date is the expected day of the first that it is about, and it is late once the latest day
 * of one of them has gone by. Pure; any thread.
 */
final class NestTasks {

    /** For so many days before it may be done a task is in the list as coming soon. Common practice, no source. */
    private static final int SOON_DAYS = 2;

    private static final String SOON = "tasks.why-soon";

    private static final Map<Stage, Kind> KINDS = Map.of(
            Stage.BOX_TURNED, Kind.BOX_TURNED,
            Stage.BOX_OFF, Kind.BOX_OFF,
            Stage.COCK_OUT, Kind.COCK_OUT,
            Stage.HEN_OUT, Kind.HEN_OUT);

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
        made.tasks.sort(Comparator.comparing((Task task) -> !task.late()).thenComparing(task -> !presses(task)));
        return List.copyOf(made.tasks);
    }

    /** Whether it is for today, and not for one of the days that come. */
    static boolean presses(Task task) {
        return !task.why().key().equals(SOON);
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
        waitsForItsFirstEgg(cage, nest);
        waitsForTheNextEgg(cage, nest);
        if (nest.firstLook().isPresent()) {
            candled(cage, nest.firstLook(), 1);
        } else {
            candled(cage, nest.secondLook(), 2);
        }
        unsat(cage, nest);
        hatches(cage, nest);
        chicks(cage, nest, Kind.RING, ChickOutlook::ringing);
        chicks(cage, nest, Kind.RING_CHECK, ChickOutlook::ringCheck);
        lookedInto(cage, nest);
        backs(cage, nest);
        chicks(cage, nest, Kind.OUT_OF_BOX, ChickOutlook::outOfBox);
        chicks(cage, nest, Kind.WEAN, ChickOutlook::independent);
        clearEggs(cage, nest);
        goesOn(cage, nest);
        nest.parting().filter(parting -> parting.begun().isPresent()).ifPresent(parting -> parted(cage, parting));
    }

    /** Only once it is late: until then there is nothing to do but wait. */
    private void waitsForItsFirstEgg(Cage cage, Outlook nest) {
        nest.firstEgg()
                .filter(Due::isOpen)
                .map(Due::window)
                .filter(window -> window.isPast(date))
                .ifPresent(window -> add(cage, Kind.FIRST_EGG, 1, window, Message.of("tasks.do-first-egg")));
    }

    private void waitsForTheNextEgg(Cage cage, Outlook nest) {
        Optional<NextEgg> next = nest.nextEgg();
        Optional<LocalDate> tooLong = next.flatMap(NextEgg::tooLongFrom);
        if (tooLong.isPresent()
                && !date.isBefore(tooLong.get())
                && date.isBefore(next.get().givenUp())) {
            add(cage, Kind.EGG_GAP, 1, next.get().window(), Message.of("tasks.do-egg-gap"));
        }
    }

    private void candled(Cage cage, Optional<NestCandling> candling, int n) {
        candling.ifPresent(look ->
                add(cage, Kind.CANDLE, n, look.window(), Message.of("tasks.do-candle", names(cage, look.eggs()))));
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
                        Message.of("tasks.do-unsat", eggNames(cage, stale))));
    }

    private void hatches(Cage cage, Outlook nest) {
        List<EggOutlook> near = nest.eggsHere().stream()
                .filter(egg -> egg.hatch().filter(this::isNear).isPresent())
                .toList();
        List<EggOutlook> overdue = near.stream()
                .filter(egg ->
                        egg.overdueFrom().filter(day -> !day.isAfter(date)).isPresent())
                .toList();
        first(near.stream()
                        .flatMap(egg -> egg.hatch().stream())
                        .map(Due::window)
                        .toList())
                .ifPresent(window -> add(
                        cage,
                        Kind.HATCH,
                        1,
                        overdue.isEmpty() ? neverLate(window) : window,
                        overdue.isEmpty()
                                ? Message.of("tasks.do-hatch", eggNames(cage, near))
                                : Message.of("tasks.do-overdue", eggNames(cage, overdue))));
    }

    /** A chick that has not hatched is not late before it is overdue. */
    private Window neverLate(Window window) {
        return window.isPast(date) ? new Window(window.earliest(), window.expected(), date, window.about()) : window;
    }

    private void chicks(Cage cage, Outlook nest, Kind kind, Function<ChickOutlook, Optional<Due>> what) {
        List<ChickOutlook> near = nest.chicksHere().stream()
                .filter(chick -> what.apply(chick).filter(this::isNear).isPresent())
                .toList();
        List<Lying> lying = near.stream().map(ChickOutlook::lying).toList();
        first(near.stream()
                        .flatMap(chick -> what.apply(chick).stream())
                        .map(Due::window)
                        .toList())
                .ifPresent(window ->
                        add(cage, kind, 1, window, Message.of("tasks.do-" + kind.word(), names(cage, lying))));
    }

    private void lookedInto(Cage cage, Outlook nest) {
        lookIn.due(cage, nest)
                .ifPresent(day -> add(
                        cage,
                        Kind.NEST_LOOK,
                        1,
                        new Window(day, day, day.plusDays(1), false),
                        Message.of("tasks.do-nest-look", nest.chicksHere().size())));
    }

    private void backs(Cage cage, Outlook nest) {
        nest.backs()
                .filter(due -> due.isOpen() && !due.window().earliest().isAfter(date))
                .ifPresent(due -> add(cage, Kind.BACKS, 1, due.window(), Message.of("tasks.do-backs")));
    }

    /** Offered, and never late: nobody is hurried to take them out. */
    private void clearEggs(Cage cage, Outlook nest) {
        List<ClearEggs> ready = nest.clearEggs().stream()
                .filter(eggs -> !eggs.from().isAfter(date))
                .toList();
        List<Lying> eggs = ready.stream().flatMap(each -> each.eggs().stream()).toList();
        ready.stream()
                .map(ClearEggs::from)
                .min(LocalDate::compareTo)
                .ifPresent(from -> add(
                        cage,
                        Kind.CLEAR_EGGS,
                        1,
                        new Window(from, from, date, false),
                        Message.of("tasks.do-clear-eggs", names(cage, eggs))));
    }

    /** Told while it may begin, and not after: not every pair goes on. */
    private void goesOn(Cage cage, Outlook nest) {
        nest.rounds().stream()
                .flatMap(round -> round.nextRound().stream())
                .filter(Due::isOpen)
                .map(Due::window)
                .filter(window -> !window.isPast(date))
                .findFirst()
                .ifPresent(window -> add(cage, Kind.NEXT_ROUND, 1, window, Message.of("tasks.do-next-round")));
    }

    private void parted(Cage cage, PartingOutlook parting) {
        for (Stage stage : Stage.values()) {
            StageOutlook outlook = parting.stage(stage);
            if (outlook.isOpen()) {
                outlook.due()
                        .filter(this::isNear)
                        .ifPresent(due -> add(
                                cage,
                                KINDS.get(stage),
                                1,
                                stage == Stage.HEN_OUT ? movedTo(parting, due.window()) : due.window(),
                                Message.of("tasks.do-" + KINDS.get(stage).word())));
            }
        }
    }

    /** The hen goes on the morning that suits the days away. */
    private static Window movedTo(PartingOutlook parting, Window window) {
        return parting.toFlight()
                .map(flight -> flight.morning())
                .filter(day -> !day.isBefore(window.earliest()))
                .map(day -> new Window(
                        window.earliest(), day, day.isAfter(window.latest()) ? day : window.latest(), window.about()))
                .orElse(window);
    }

    private boolean isNear(Due due) {
        return due.isOpen() && isNear(due.window());
    }

    private boolean isNear(Window window) {
        return !window.earliest().minusDays(SOON_DAYS).isAfter(date);
    }

    /** From the first that may be done to the first that is late. */
    private static Optional<Window> first(List<Window> windows) {
        return windows.stream()
                .reduce((one, other) -> new Window(
                        earlier(one.earliest(), other.earliest()),
                        earlier(one.expected(), other.expected()),
                        earlier(one.latest(), other.latest()),
                        one.about() || other.about()));
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    private static List<String> eggNames(Cage cage, List<EggOutlook> eggs) {
        return names(cage, eggs.stream().map(EggOutlook::lying).toList());
    }

    private static List<String> names(Cage cage, List<Lying> lying) {
        return lying.stream().map(each -> each.name(cage.id())).toList();
    }

    private void add(Cage cage, Kind kind, int n, Window window, Message words) {
        if (!isNear(window)) {
            return;
        }
        String id = Task.id(window.expected(), cage.name(), kind, n);
        Closed.Verdict verdict = closed.byOutcome(id);
        int lateBy = verdict.state() == Task.State.OPEN ? Task.lateBy(window.latest(), date) : 0;
        Message why = lateBy > 0
                ? Message.of("tasks.why-late", window.latest(), lateBy)
                : Message.of(window.earliest().isAfter(date) ? SOON : "tasks.why-due", WindowWords.of(window));
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
