package org.cagewall.handover;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Way;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.tasks.Warmth;
import org.cagewall.text.Message;

/** Sorts the entries of some days and finds what is missing among them. Lives for one review, on one thread. */
final class Reviewing {

    private static final String NOT_DONE = "task-not-done";

    /** A chick that is missing from its nest is looked for among the dead. */
    private static final Set<String> LOST_CHICKS = Set.of("chick-died", "chick-missing");

    /** After these a cage may be empty that was not. */
    private static final Set<String> LOSSES = Set.of("bird-left", "bird-loose", "chick-died", "chick-missing");

    private static final Set<String> ALARMS = Set.of("alarm-raised", "bird-loose");

    private final Room room;
    private final List<LogEntry> entries;
    private final LocalDate from;
    private final LocalDate to;
    private final Room thoseDays;
    private final Attendance attendance;
    private final Set<Long> shown = new HashSet<>();
    private final Map<LocalDate, List<Task>> lists = new HashMap<>();

    Reviewing(Room room, List<LogEntry> all, LocalDate from, LocalDate to) {
        this.room = room;
        this.entries = all.stream()
                .filter(entry -> !entry.day().isBefore(from) && !entry.day().isAfter(to))
                .sorted(Comparator.comparing(LogEntry::day).thenComparing(LogEntry::number))
                .toList();
        this.from = from;
        this.to = to;
        this.thoseDays = asTold();
        this.attendance = new Attendance(
                thoseDays,
                from,
                to,
                days().toList(),
                entries.stream()
                        .filter(entry ->
                                LOSSES.contains(entry.deed()) && entry.strike().isEmpty())
                        .toList());
    }

    Review review() {
        Strip strip = attendance.strip();
        List<Unvisited> unvisited = unvisited(strip);
        List<Undone> notDone = notDone();
        return new Review(
                from,
                to,
                items(this::isDifferent),
                notDone,
                unvisited,
                items(entry -> entry.deed().equals("chick-hatched")),
                items(Reviewing::isDeath),
                items(entry -> entry.deed().equals("phoned")),
                items(entry -> !isTick(entry)),
                strip,
                Waiting.of(room, room.day()),
                daysAway());
    }

    /** Something different at a cage, an alarm, a bird that got loose, or a room too hot or too cold. */
    private boolean isDifferent(LogEntry entry) {
        return ALARMS.contains(entry.deed())
                || entry.answer().filter(it -> it == Answer.DIFFERENT).isPresent()
                || Warmth.told(entry).danger(room.settings()).isPresent();
    }

    /** Reading is no event of those days. */
    private static boolean isTick(LogEntry entry) {
        return entry.deed().equals("entry-seen")
                || entry.task().filter(Missed::isTask).isPresent();
    }

    private Optional<DaysAway> daysAway() {
        return room.absences().stream()
                .filter(Absence::cameAbout)
                .filter(absence ->
                        !absence.from().isAfter(to) && !absence.last().isBefore(from))
                .max(Comparator.comparing(Absence::from))
                .map(DaysAway::of);
    }

    /** The entries of that kind that are not yet in a list. */
    private List<Item> items(Predicate<LogEntry> kind) {
        return entries.stream()
                .filter(kind)
                .filter(entry -> shown.add(entry.number()))
                .map(entry -> Item.of(room, entry))
                .toList();
    }

    private static boolean isDeath(LogEntry entry) {
        boolean left = entry.deed().equals("bird-left")
                && entry.what().args().stream().anyMatch(arg -> arg == Way.DIED || arg == Way.PUT_TO_SLEEP);
        return left || LOST_CHICKS.contains(entry.deed());
    }

    private List<Unvisited> unvisited(Strip strip) {
        return strip.days().stream()
                .flatMap(day ->
                        strip.unvisited(day).map(cage -> new Unvisited(cage, day, Missed.CAGES.isReadOn(room, day))))
                .toList();
    }

    private List<Undone> notDone() {
        List<Undone> notDone = new ArrayList<>();
        Set<String> answered = new HashSet<>();
        for (LogEntry entry : entries) {
            if (entry.deed().equals(NOT_DONE) && isTheLastWord(entry)) {
                shown.add(entry.number());
                answered.add(entry.task().orElseThrow());
                notDone.add(said(entry));
            }
        }
        days().flatMap(day -> list(day).stream())
                .filter(Task::isOpen)
                .filter(this::isMissed)
                .filter(task -> answered.add(task.id()))
                .map(task -> new Undone(
                        task.id(),
                        task.cage().orElseThrow(),
                        task.due(),
                        task.words(),
                        Optional.empty(),
                        Optional.empty(),
                        Missed.TASKS.isReadOn(room, task.due())))
                .forEach(notDone::add);
        notDone.sort(Comparator.comparing(Undone::day));
        return notDone;
    }

    /** The look at a cage that nobody came to all day is not told of twice, and one that was not expected not at all. */
    private boolean isMissed(Task task) {
        return switch (task.kind()) {
            case MORNING -> attendance.isSeen(task.cage().orElseThrow(), task.due());
            case EVENING -> attendance.isExpected(task.cage().orElseThrow(), task.due());
            default -> true;
        };
    }

    /** A task that was done after all is no longer among those not done; a struck entry stays, with its line. */
    private boolean isTheLastWord(LogEntry entry) {
        return entry.isStruck()
                || task(entry).map(task -> task.state() == Task.State.NOT_DONE).orElse(true);
    }

    /** What the sitter had to do that day: in the morning with the birds where it found them, later as it left them. */
    private List<Task> list(LocalDate day) {
        return lists.computeIfAbsent(day, then -> Stream.concat(
                        DailyList.of(thoseDays.before(then), then, Audience.SITTER).stream()
                                .filter(task -> task.kind() == Kind.MORNING),
                        DailyList.of(thoseDays.before(then.plusDays(1)), then, Audience.SITTER).stream()
                                .filter(task -> task.kind() != Kind.MORNING))
                .toList());
    }

    private Optional<Task> task(LogEntry entry) {
        String id = entry.task().orElseThrow();
        return day(id).flatMap(day ->
                list(day).stream().filter(task -> task.id().equals(id)).findFirst());
    }

    private Undone said(LogEntry entry) {
        String id = entry.task().orElseThrow();
        Item item = Item.of(room, entry);
        Optional<Task> task = task(entry);
        return new Undone(
                id,
                item.cages().stream().findFirst().orElse("-"),
                day(id).orElse(entry.day()),
                task.map(Task::words).orElse(entry.what()),
                task.flatMap(known -> why(entry)),
                Optional.of(item),
                item.read());
    }

    /** The reason stands second in the sentence. */
    private static Optional<Message> why(LogEntry entry) {
        return entry.what().args().stream()
                .skip(1)
                .filter(Message.class::isInstance)
                .map(Message.class::cast)
                .findFirst();
    }

    private static Optional<LocalDate> day(String task) {
        try {
            return Optional.of(LocalDate.parse(task.split("/", 2)[0]));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** The days on which somebody was expected, as far as they are over. */
    private Stream<LocalDate> days() {
        LocalDate end = to.isBefore(room.day()) ? to.plusDays(1) : room.day();
        List<LocalDate> asked = from.isBefore(end) ? from.datesUntil(end).toList() : List.of();
        List<LocalDate> away =
                asked.stream().filter(day -> room.absenceOn(day).isPresent()).toList();
        boolean noneAway = asked.stream().allMatch(day -> room.absenceOn(day).isEmpty()) && !runsToday();
        return (noneAway ? asked.stream().filter(this::isAfterTheFirstEntry) : away.stream());
    }

    private boolean runsToday() {
        return room.absenceOn(room.day())
                .filter(absence -> !to.isBefore(absence.from()) && !from.isAfter(absence.to()))
                .isPresent();
    }

    private boolean isAfterTheFirstEntry(LocalDate day) {
        return entries.stream()
                .findFirst()
                .filter(first -> !day.isBefore(first.day()))
                .isPresent();
    }

    /** The room with the visits and outcomes that these entries tell of, which it may no longer hold. */
    private Room asTold() {
        return room.holding(
                from,
                living().filter(entry -> entry.answer().isPresent())
                        .flatMap(Reviewing::visits)
                        .toList(),
                List.of(),
                living().map(Reviewing::outcome).flatMap(Optional::stream).toList());
    }

    private Stream<LogEntry> living() {
        return entries.stream().filter(entry -> !entry.isStruck());
    }

    private static Stream<Visit> visits(LogEntry entry) {
        return entry.cages().stream()
                .map(cage -> new Visit(
                        entry.number(),
                        cage,
                        entry.by(),
                        entry.answer().orElseThrow(),
                        entry.how().orElse(How.HAND),
                        entry.part(),
                        List.of(),
                        entry.day(),
                        entry.at(),
                        entry.note()));
    }

    private static Optional<TaskOutcome> outcome(LogEntry entry) {
        return entry.task()
                .map(task -> new TaskOutcome(
                        entry.number(),
                        task,
                        !entry.deed().equals(NOT_DONE),
                        Optional.empty(),
                        entry.by(),
                        entry.day(),
                        entry.at(),
                        entry.note()));
    }
}
