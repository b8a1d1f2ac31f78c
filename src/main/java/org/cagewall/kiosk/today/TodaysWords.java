package org.cagewall.kiosk.today;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.room.Cage;
import org.cagewall.room.Call;
import org.cagewall.room.Person;
import org.cagewall.room.Room;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Alarms;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.tasks.Unfed;
import org.cagewall.tasks.Warmth;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts a day's tasks into the lines of the list. Used on the event thread, free of Swing. */
final class TodaysWords {

    private static final List<String> CAUTIONS =
            List.of("dust", "lungs", "hands", "fumes", "sprays", "medicine", "hide", "signs", "dish", "night");

    /** What is done at every cage; what else stands there is particular to the one. */
    private static final Set<String> EVERY_CAGE =
            Set.of("tasks.how-husks", "tasks.how-seed", "tasks.how-water", "tasks.how-look", "tasks.how-count");

    /** It stands where a cage is fed as on every other day. */
    private static final Message EVERY_CAGE_FIRST = Message.of("tasks.how-husks");

    private static final List<Message> EVERY_DAY =
            List.of(Message.of("tasks.brief-husks"), Message.of("tasks.brief-seed"), Message.of("tasks.brief-water"));

    private final Room room;
    private final LocalDate today;
    private final Words words;

    TodaysWords(Room room, LocalDate today, Words words) {
        this.room = room;
        this.today = today;
        this.words = words;
    }

    TodayState.Next next(Task task) {
        boolean daily = task.kind() == Kind.MORNING;
        Map<Boolean, List<Message>> how = task.how().stream()
                .collect(Collectors.partitioningBy(message -> !daily || EVERY_CAGE.contains(message.key())));
        return new TodayState.Next(
                task.id(),
                lead(task),
                first(task),
                sentences(how.get(true)),
                daily && task.how().contains(EVERY_CAGE_FIRST) ? sentences(EVERY_DAY) : sentences(how.get(true)),
                sentences(how.get(false)),
                daily ? "" : words.say(task.why()),
                acts(task));
    }

    TodayState.Line line(Task task) {
        return new TodayState.Line(task.id(), face(task));
    }

    private RowFace face(Task task) {
        Optional<String> reported = reported(task);
        if (task.isOpen() && reported.isPresent()) {
            return RowFace.of(lead(task), first(task), reported.get())
                    .tagged(TagKind.DIFFERENT, words.say("today.different"));
        }
        if (task.isOpen()) {
            RowFace face = RowFace.of(lead(task), first(task), sentences(task.brief()));
            return task.late() ? face.tagged(TagKind.LATE, words.say("today.late", task.lateBy())) : face;
        }
        if (task.closing().isEmpty()) {
            return RowFace.of(lead(task), words.say(task.words()), words.say("today.recorded"))
                    .in(RowFace.State.DONE);
        }
        Task.Closing closing = task.closing().get();
        String what = task.see().map(words::say).orElseGet(() -> words.say(task.words()));
        if (task.isDifferent()) {
            return RowFace.of(
                            lead(task), what, words.say("today.reported", closed(closing), Sign.told(closing.signs())))
                    .tagged(TagKind.DIFFERENT, words.say("today.different"))
                    .in(RowFace.State.DIFFERENT);
        }
        if (task.state() == Task.State.NOT_DONE) {
            return RowFace.of(
                            lead(task),
                            what,
                            words.say(
                                    "today.not-done-why",
                                    closing.reason().map(words::say).orElse("-")))
                    .tagged(TagKind.PLAIN, words.say("today.not-done"))
                    .in(RowFace.State.DONE);
        }
        if (reported.isPresent()) {
            String done = words.say("today.done", closed(closing));
            return RowFace.of(lead(task), what, words.say("today.done-but", done, reported.get()))
                    .tagged(TagKind.DIFFERENT, words.say("today.different"))
                    .in(RowFace.State.DONE);
        }
        String key = closing.answer().isPresent() ? "today.done-well" : "today.done";
        return RowFace.of(lead(task), what, words.say(key, closed(closing))).in(RowFace.State.DONE);
    }

    /** What was reported today at the cage of a line, or at the cages of its row. */
    private Optional<String> reported(Task task) {
        List<String> cages =
                task.row().map(Task.WallRow::cages).orElse(task.cage().stream().toList());
        List<String> reports = cages.stream()
                .flatMap(
                        name -> reportedAt(name)
                                .map(what ->
                                        task.row().isPresent() ? words.say("today.different-at", name, what) : what)
                                .stream())
                .toList();
        return Optional.of(String.join(", ", reports))
                .filter(said -> !said.isEmpty() && task.part().isPresent());
    }

    private Optional<String> reportedAt(String cage) {
        List<Visit> reports = room.cage(cage).stream()
                .flatMap(it -> room.visitsOf(it, today).stream())
                .filter(Visit::isDifferent)
                .toList();
        List<Message> signs = Sign.told(reports.stream()
                .flatMap(visit -> visit.signs().stream())
                .distinct()
                .toList());
        return Optional.of(
                        signs.isEmpty() ? words.say("today.different-only") : words.say("today.different-signs", signs))
                .filter(said -> !reports.isEmpty());
    }

    private String closed(Task.Closing closing) {
        return closing.at().map(words::time).orElse(closing.person());
    }

    String lead(Task task) {
        if (task.row().isPresent()) {
            List<String> cages = task.row().get().cages();
            return cages.size() == 1
                    ? cages.get(0)
                    : words.say("today.span", cages.get(0), cages.get(cages.size() - 1));
        }
        return task.cage().orElse("");
    }

    private String first(Task task) {
        boolean looksIn = task.kind() == Kind.MORNING || task.kind() == Kind.CHECK;
        return looksIn && task.see().isPresent()
                ? words.say("tasks.see-should", task.see().get())
                : words.say(task.words());
    }

    /** Where something different was reported, nobody is asked to say that all is well to have it fed. */
    private boolean isReported(Task task) {
        return task.cage().flatMap(room::cage).stream()
                .flatMap(cage -> room.visitsOf(cage, today).stream())
                .anyMatch(Visit::isDifferent);
    }

    private List<TaskAct> acts(Task task) {
        return switch (task.kind()) {
            case MORNING ->
                List.of(isReported(task) ? TaskAct.DONE : TaskAct.ALL_WELL, TaskAct.DIFFERENT, TaskAct.NOT_DONE);
            case EVENING -> List.of(TaskAct.ALL_WELL, TaskAct.DIFFERENT, TaskAct.NOT_DONE);
            case EVENING_ROW -> List.of(TaskAct.ROW_WELL, TaskAct.DIFFERENT, TaskAct.NOT_DONE);
            case EVENING_FOOD -> List.of(TaskAct.DONE, TaskAct.NOT_DONE);
            case CHECK -> List.of(TaskAct.ALL_WELL, TaskAct.DIFFERENT, TaskAct.OPEN_CAGE);
            case REPORT -> List.of(TaskAct.READ, TaskAct.OPEN_CAGE);
            case CARD -> List.of(TaskAct.PENCILLED, TaskAct.OPEN_CARDS);
            case AWAY, BACK -> List.of(TaskAct.OPEN_HANDOVER, TaskAct.TICK);
            case QUARANTINE -> List.of(TaskAct.OPEN_CAGE);
            default -> List.of(TaskAct.OPEN_CAGE, TaskAct.DONE, TaskAct.NOT_DONE);
        };
    }

    String foot(List<Task> tasks) {
        boolean more = tasks.stream().anyMatch(task -> task.isOpen() && task.kind() == Kind.MORNING);
        return more ? words.say("today.then") : "";
    }

    TodayState.AllDone allDone(Audience audience, DayPart part, String person) {
        if (audience == Audience.OWNER) {
            return new TodayState.AllDone(
                    words.say("today.owner-done"), words.say("today.owner-done-text"), Optional.empty());
        }
        if (part == DayPart.MORNING) {
            return unfed(TaskAct.EVENING)
                    .or(() -> butNot(part))
                    .orElseGet(() -> new TodayState.AllDone(
                            words.say("today.morning-done", person),
                            words.say("today.morning-done-text"),
                            Optional.of(TaskAct.EVENING)));
        }
        long morning = DailyList.of(room, today, Audience.SITTER).stream()
                .filter(task -> task.isOpen()
                        && task.part().filter(its -> its == DayPart.MORNING).isPresent())
                .count();
        if (morning > 0) {
            return new TodayState.AllDone(
                    words.say("today.morning-open", morning),
                    words.say("today.morning-open-text"),
                    Optional.of(TaskAct.MORNING));
        }
        return unfed(TaskAct.CLOSE_THE_DAY)
                .or(() -> butNot(part))
                .orElseGet(() -> new TodayState.AllDone(
                        words.say("today.evening-done", person),
                        words.say("today.evening-done-text"),
                        Optional.of(TaskAct.CLOSE_THE_DAY)));
    }

    /** Nobody is thanked for birds that were not fed. */
    private Optional<TodayState.AllDone> unfed(TaskAct then) {
        int unfed = Unfed.at(room, today).size();
        boolean phoned = Unfed.unphoned(room, today).isEmpty();
        return Optional.of(new TodayState.AllDone(
                        words.say("today.unfed", unfed),
                        words.say(phoned ? "today.unfed-phoned" : "today.unfed-text", owner()),
                        Optional.of(phoned ? then : TaskAct.PHONE)))
                .filter(done -> unfed > 0);
    }

    private Optional<TodayState.AllDone> butNot(DayPart part) {
        long undone = DailyList.of(room, today, Audience.SITTER).stream()
                .filter(task -> task.state() == Task.State.NOT_DONE
                        && task.part().filter(part::equals).isPresent())
                .count();
        boolean morning = part == DayPart.MORNING;
        return Optional.of(new TodayState.AllDone(
                        words.say(morning ? "today.morning-but" : "today.evening-but", undone),
                        words.say(morning ? "today.morning-but-text" : "today.evening-but-text", owner()),
                        Optional.of(morning ? TaskAct.EVENING : TaskAct.CLOSE_THE_DAY)))
                .filter(done -> undone > 0);
    }

    private String owner() {
        return room.owner().map(Person::name).orElse("-");
    }

    /** What was read today stands there in place of the question; a reading of the morning is taken again at night. */
    RowFace degrees(Optional<LogEntry> reading, DayPart now) {
        Optional<String> read = reading.flatMap(entry -> Warmth.told(entry).latest())
                .map(degrees -> degrees.stripTrailingZeros().toPlainString());
        if (read.isPresent()) {
            Optional<LocalTime> at = reading.flatMap(LogEntry::at);
            boolean isOfTheMorning =
                    at.map(DailyList::roundAt).orElse(now) == DayPart.MORNING && now == DayPart.EVENING;
            return RowFace.of(
                    "\u00b0C",
                    at.map(time -> words.say("today.degrees-at", read.get(), time))
                            .orElseGet(() -> words.say("today.degrees-today", read.get())),
                    isOfTheMorning ? words.say("today.degrees-again") : "");
        }
        return RowFace.of("\u00b0C", words.say("today.how-warm"), words.say("today.how-warm-when"));
    }

    TodayState.Stop stop() {
        return new TodayState.Stop(
                Alarms.of(room, today).rules().stream().map(words::say).toList(),
                phones(Optional.empty()),
                room.agreedOn(today).stream().map(this::agreed).toList());
    }

    private String agreed(Call call) {
        String said = words.say(call.agreement());
        return call.cage()
                .map(cage -> words.say("today.agreed-at", room.cageName(cage), said))
                .orElse(said);
    }

    List<TodayState.Phone> phones(Optional<Danger> about) {
        Alarms alarms = Alarms.of(room, today);
        return about.map(alarms::phones).orElse(alarms.phones()).stream()
                .map(this::phone)
                .toList();
    }

    private TodayState.Phone phone(Alarms.Phone phone) {
        String name = phone.name().isBlank() ? words.say("today.vet") : phone.name();
        String said = phone.first()
                .map(first -> words.say("phone.person-first", name, first))
                .orElse(name);
        return new TodayState.Phone(said, phone.number().orElseGet(() -> words.say("today.no-number")));
    }

    TodayState.Safety safety() {
        List<TodayState.Caution> cautions = new ArrayList<>();
        cautions.add(new TodayState.Caution(
                words.say("safety.rules"),
                Stream.concat(room.settings().rules().stream(), Stream.of(words.say("safety.rules-text")))
                        .collect(Collectors.joining(" "))));
        CAUTIONS.forEach(about -> cautions.add(new TodayState.Caution(
                words.say("safety." + about),
                words.say("safety." + about + "-text", Danger.OWN_HEAT, Danger.EMERGENCY))));
        Stream.of(Danger.values())
                .forEach(danger ->
                        cautions.add(new TodayState.Caution(words.say(danger.title()), words.say(danger.rule(room)))));
        return new TodayState.Safety(cautions);
    }

    /** How many lines of a sitter's list are done, and what they are, so that they can be told from cages on the wall. */
    String progress(List<Task> tasks, DayPart part) {
        long closed = countIn(tasks, Task.State.DONE);
        long undone = countIn(tasks, Task.State.NOT_DONE);
        if (part == DayPart.EVENING) {
            long food = count(tasks, Kind.EVENING_FOOD);
            return words.say("today.evening-lines", closed, tasks.size(), tasks.size() - food, food, undone);
        }
        long cages = count(tasks, Kind.MORNING);
        return words.say("today.morning-lines", closed, tasks.size(), cages, tasks.size() - cages, undone);
    }

    private static long countIn(List<Task> tasks, Task.State state) {
        return tasks.stream().filter(task -> task.state() == state).count();
    }

    private static long count(List<Task> tasks, Kind kind) {
        return tasks.stream().filter(task -> task.kind() == kind).count();
    }

    /** How many of the cages that hold birds have been looked at today. */
    String cagesSeen() {
        List<Cage> cages = room.walk().filter(cage -> room.headsIn(cage) > 0).toList();
        long seen = cages.stream()
                .filter(cage -> room.lookedInto(cage, today).equals(Optional.of(today)))
                .count();
        return words.say("today.cages-seen", seen, cages.size());
    }

    private String sentences(List<Message> all) {
        return all.stream().map(words::say).collect(Collectors.joining(" "));
    }
}
