package org.cagewall.kiosk.today;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.AwayDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.TouchedOrWritten;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Dishes;
import org.cagewall.room.Person;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Reply;
import org.cagewall.tasks.Report;
import org.cagewall.tasks.Task;
import org.cagewall.tasks.Unfed;
import org.cagewall.tasks.Urgency;
import org.cagewall.tasks.Vital;
import org.cagewall.tasks.Warmth;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Keeps the day's list as the room is, and records what is answered to it. Used on the event thread. */
public final class TodayPresenter {

    /** A reading of the thermometer is at no cage, and the room as it stands does not hold it. */
    private static final long OF_NO_CAGE = 0;

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Words words;
    private final Optional<Destination.Different> different;
    private final Shown<TodayState> shown;
    private LocalDate listed;
    private final Refresher watch;
    private final Halfway<TodayDraft> halfway;
    private Optional<String> touched;
    private Optional<LogEntry> reading = Optional.empty();

    /**
     * Begins with the list, or with what is different somewhere.
     *
     * @param different the cage at which something is different, where one came for that
     */
    public TodayPresenter(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Words words,
            Halfway<TodayDraft> halfway,
            Destination.Today here,
            Optional<Destination.Different> different,
            Consumer<TodayState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.words = words;
        this.halfway = halfway;
        this.touched = here.task();
        this.listed = desk.today();
        this.watch = new Refresher(desk, this::refresh, pen, this::handedOn);
        this.different = different;
        DayPart part = here.task().flatMap(this::partOf).orElseGet(this::partNow);
        this.shown = new Shown<>(list(ownAudience(), part), view);
    }

    /** Opens what one came for, or what was half-way when the list was left. To be called once the screen is made. */
    void takeUp() {
        different.ifPresent(at -> shown.change(state -> state.showing(different(at))));
        halfway.kept()
                .filter(draft -> draft.person().equals(person()))
                .filter(draft -> different.isEmpty() || draft.page().reports().equals(different))
                .ifPresent(draft -> shown.change(state -> state.showing(draft.page())));
    }

    private Optional<DayPart> partOf(String task) {
        return DailyList.of(desk.room(), desk.today(), ownAudience()).stream()
                .filter(each -> each.id().equals(task))
                .findFirst()
                .flatMap(Task::part);
    }

    /** Keeps what was touched on a page, until it is recorded or left by a touch. */
    void keep(TodayState.Page page, Collection<Sign> signs, String note) {
        halfway.keep(new TodayDraft(page, List.copyOf(signs), note, Map.of(), person()));
    }

    /** Keeps which questions were answered, and how. */
    void keep(TodayState.Asked page, Map<Vital, Reply> replies) {
        halfway.keep(new TodayDraft(page, page.signs(), page.note(), replies, person()));
    }

    Optional<TodayDraft> draftOf(TodayState.Page page) {
        return halfway.kept().filter(draft -> draft.page().equals(page));
    }

    Refresher watch() {
        return watch;
    }

    private DayPart partNow() {
        return DailyList.roundAt(desk.time());
    }

    private Audience ownAudience() {
        return pen.holder()
                .map(person -> Audience.of(desk.room(), desk.today(), person))
                .orElse(Audience.OWNER);
    }

    /** The list of whoever holds the pen now. */
    private void handedOn() {
        touched = Optional.empty();
        shown.change(state -> home(ownAudience(), state.part()));
    }

    /** Where this screen begins. */
    private TodayState home(Audience audience, DayPart part) {
        TodayState list = list(audience, part);
        return different.map(at -> list.showing(different(at))).orElse(list);
    }

    private void refresh() {
        showAnew();
        desk.log(LogQuery.between(desk.today(), desk.today()), pen.reading(this::keepReading));
    }

    /** The thermometer's last reading of the day, which the room as it stands does not hold. */
    private void keepReading(List<LogEntry> log) {
        Optional<LogEntry> last = log.stream()
                .filter(entry -> entry.deed().equals("room-read") && !entry.isStruck())
                .max(Comparator.comparing(LogEntry::number));
        if (!last.equals(reading)) {
            reading = last;
            showAnew();
        }
    }

    /** The same page with what the room says now; a new day begins with its own list. */
    private void showAnew() {
        if (!desk.today().equals(listed)) {
            listed = desk.today();
            shown.change(state -> home(ownAudience(), partNow()));
            return;
        }
        shown.change(state -> {
            TodayState anew = list(state.audience(), state.part());
            return stillHolds(state.page()) ? anew.showing(state.page()) : home(state.audience(), state.part());
        });
    }

    /** Whether a page may stay: the list is made anew, and what was recorded may have been taken back since. */
    private boolean stillHolds(TodayState.Page page) {
        if (page instanceof TodayState.Recorded recorded && recorded.entry() != OF_NO_CAGE) {
            Room room = desk.room();
            return room.visits().stream().anyMatch(visit -> visit.entry() == recorded.entry())
                    || room.outcomes().stream().anyMatch(outcome -> outcome.entry() == recorded.entry());
        }
        return !(page instanceof TodayState.Lines);
    }

    private TodayState list(Audience audience, DayPart part) {
        TodaysWords say = new TodaysWords(desk.room(), desk.today(), words);
        List<Task> tasks = tasks(audience, part);
        Optional<Task> next = tasks.stream()
                .filter(Task::isOpen)
                .filter(task -> touched.filter(task.id()::equals).isPresent())
                .findFirst()
                .or(() -> tasks.stream()
                        .filter(Task::isOpen)
                        .filter(task ->
                                task.kind() != Kind.QUARANTINE || !task.due().isAfter(desk.today()))
                        .findFirst());
        List<TodayState.Line> lines = Stream.of(
                        tasks.stream().filter(Task::isOpen).filter(task -> next.filter(task::equals)
                                .isEmpty()),
                        tasks.stream().filter(task -> task.state() == Task.State.NOT_DONE),
                        tasks.stream().filter(task -> task.state() == Task.State.DONE))
                .flatMap(each -> each)
                .map(say::line)
                .toList();
        TodayState.Lines page = new TodayState.Lines(
                next.map(say::next),
                tasks.stream().map(say::next).toList(),
                lines,
                next.isPresent() ? Optional.empty() : Optional.of(say.allDone(audience, part, person())),
                audience == Audience.SITTER ? Optional.of(say.degrees(reading, partNow())) : Optional.empty(),
                audience == Audience.SITTER ? say.foot(tasks) : "");
        return new TodayState(
                words.say(part == DayPart.MORNING ? "today.good-morning" : "today.good-evening", person()),
                words.say(
                        "today.subtitle",
                        words.longDay(desk.today()),
                        audience == Audience.SITTER ? say.progress(tasks, part) : say.cagesSeen()),
                audience,
                ownAudience() == Audience.OWNER ? List.of(Audience.OWNER, Audience.SITTER) : List.of(Audience.SITTER),
                part,
                page,
                say.stop());
    }

    private List<Task> tasks(Audience audience, DayPart part) {
        return DailyList.of(desk.room(), desk.today(), audience).stream()
                .filter(task -> task.part().filter(its -> its != part).isEmpty())
                .toList();
    }

    private String owner() {
        return desk.room().owner().map(Person::name).orElse("-");
    }

    private String person() {
        return pen.holder().map(Person::name).orElse("");
    }

    void choose(Audience audience) {
        touched = Optional.empty();
        shown.change(state -> list(audience, state.part()));
    }

    void choose(DayPart part) {
        touched = Optional.empty();
        shown.change(state -> list(state.audience(), part));
    }

    /** Back to the list from any other page. */
    void backToTheList() {
        halfway.clear();
        if (different.isPresent()) {
            navigator.go(different.get().from());
        } else {
            shown.change(state -> list(state.audience(), state.part()));
        }
    }

    void safety() {
        shown.change(state -> state.showing(new TodaysWords(desk.room(), desk.today(), words).safety()));
    }

    /** A line was touched: an open one is opened out, a closed one may be answered anew. */
    void touch(String id) {
        task(id).ifPresent(task -> {
            if (task.isOpen()) {
                touched = Optional.of(id);
                backToTheList();
            } else {
                answerAnew(task);
            }
        });
    }

    private void answerAnew(Task task) {
        Message title = Message.of("today.again", label(task));
        AnswerButton leave = AnswerButton.leave("leave", Message.of("today.again-no"));
        if (!task.kind().isALook()) {
            asking.ask(Question.of(
                    title,
                    Message.of("today.again-text"),
                    AnswerButton.main("done", Message.of("today.act.done"), () -> act(task.id(), TaskAct.DONE)),
                    AnswerButton.plain(
                            "not-done", Message.of("today.act.not-done"), () -> act(task.id(), TaskAct.NOT_DONE)),
                    takeBack(task),
                    leave));
            return;
        }
        TaskAct well = task.kind() == Kind.EVENING_ROW ? TaskAct.ROW_WELL : TaskAct.ALL_WELL;
        asking.ask(Question.of(
                title,
                Message.of("today.again-text"),
                AnswerButton.plain(
                        "different", Message.of("today.act.different"), () -> act(task.id(), TaskAct.DIFFERENT)),
                AnswerButton.plain("well", Message.of("today.act." + well.word()), () -> act(task.id(), well)),
                takeBack(task),
                leave));
    }

    private AnswerButton takeBack(Task task) {
        return AnswerButton.plain("take-back", Message.of("today.again-back"), () -> findAnswer(task));
    }

    /** The touch that closed the line is sought in the record, and said before it is taken back. */
    private void findAnswer(Task task) {
        long entry = task.closing().map(Task.Closing::entry).orElse(-1L);
        desk.log(
                LogQuery.between(task.due().isBefore(desk.today()) ? task.due() : desk.today(), desk.today()),
                answer -> answer.then(
                        log -> askToTakeBack(log, entry), why -> cannotTakeBack(), code -> cannotTakeBack()));
    }

    private boolean askToTakeBack(List<LogEntry> log, long number) {
        Optional<LogEntry> found =
                log.stream().filter(entry -> entry.number() == number).findFirst();
        found.ifPresentOrElse(
                entry -> asking.ask(Question.of(
                        Message.of("today.back", Math.max(1, entry.cages().size())),
                        Message.of("today.back-text", entry.by(), entry.what()),
                        AnswerButton.main(
                                "yes",
                                Message.of("today.back-yes"),
                                () -> pen.strike(entry.touch(), Reason.WRONG_TOUCH)),
                        AnswerButton.leave("leave", Message.of("today.again-no")))),
                this::cannotTakeBack);
        return found.isPresent();
    }

    private boolean cannotTakeBack() {
        asking.tell(Message.of("today.back-gone"), Message.of("today.back-gone-text"));
        return false;
    }

    private Optional<Task> task(String id) {
        return DailyList.of(desk.room(), desk.today(), shown.now().audience()).stream()
                .filter(task -> task.id().equals(id))
                .findFirst();
    }

    private String label(Task task) {
        return new TodaysWords(desk.room(), desk.today(), words).lead(task);
    }

    /** A button that stands outside the lines. */
    void act(TaskAct act) {
        switch (act) {
            case EVENING -> choose(DayPart.EVENING);
            case MORNING -> choose(DayPart.MORNING);
            case CLOSE_THE_DAY -> navigator.go(new Destination.CloseTheDay());
            case PHONE ->
                navigator.go(Destination.Phone.about(Danger.UNFED, Unfed.unphoned(desk.room(), desk.today())));
            default -> throw new IllegalArgumentException(act + " needs a task");
        }
    }

    void act(String id, TaskAct act) {
        task(id).ifPresent(task -> act(task, act));
    }

    private void act(Task task, TaskAct act) {
        switch (act) {
            case ALL_WELL -> allWell(task);
            case ROW_WELL -> rowWell(task);
            case DONE, TICK ->
                record(
                        new VisitDeed.TaskDone(task.id(), Optional.of(How.HAND)),
                        Message.of("today.did.done", label(task)));
            case READ -> read(task);
            case DIFFERENT -> different(task);
            case PENCILLED ->
                record(new CardDeed.CardPencilled(label(task)), Message.of("today.did.pencilled", label(task)));
            case OPEN_CAGE -> navigator.go(Destination.Cage.byHand(task.cage().orElseThrow()));
            case OPEN_CARDS -> navigator.go(new Destination.Cards());
            case OPEN_HANDOVER -> navigator.go(new Destination.Handover());
            case NOT_DONE ->
                shown.change(state -> state.showing(new TodayState.NotDone(
                        task.id(),
                        words.say("today.why-not", label(task)),
                        Optional.of(words.say("today.dishes")).filter(question -> feeds(task)))));
            case EVENING, MORNING, CLOSE_THE_DAY, PHONE -> act(act);
        }
    }

    /** Whether birds go without food and water where it is not done. */
    private boolean feeds(Task task) {
        return task.kind() == Kind.MORNING
                && task.cage()
                        .flatMap(name -> desk.room().cage(name))
                        .filter(cage -> desk.room().isLivedIn(cage))
                        .isPresent();
    }

    /** A page that shows the feeding answers it with the look. */
    private void allWell(Task task) {
        String cage = task.cage().orElseThrow();
        List<Deed> deeds = new ArrayList<>();
        deeds.add(
                new VisitDeed.Check(cage, org.cagewall.room.care.Answer.WELL, How.HAND, task.part(), Optional.empty()));
        if (task.kind() == Kind.MORNING) {
            deeds.add(new VisitDeed.TaskDone(task.id(), Optional.of(How.HAND)));
        }
        record(deeds, Optional.empty(), Message.of("today.did.well", cage));
    }

    /** Nobody walks past a cage that was reported today without having been told of it. */
    private void rowWell(Task task) {
        Map<String, Visit> reported = reportedIn(task.row().orElseThrow());
        if (reported.isEmpty()) {
            walked(task);
            return;
        }
        List<String> cages = List.copyOf(reported.keySet());
        String what = reported.entrySet().stream()
                .map(each -> words.say(
                        "today.row-reported-at",
                        each.getKey(),
                        Sign.told(each.getValue().signs())))
                .collect(Collectors.joining(" "));
        asking.ask(Question.of(
                Message.of("today.row-reported", cages),
                Message.of("today.row-reported-text", what),
                AnswerButton.plain("worse", Message.of("today.row-reported-more"), () -> whichOf(task, cages)),
                AnswerButton.plain("same", Message.of("today.row-reported-same"), () -> walked(task)),
                AnswerButton.leave("leave", Message.of("today.go-back"))));
    }

    /** The newest report of each cage of a row that was reported today, or before and not read since. */
    private Map<String, Visit> reportedIn(Task.WallRow row) {
        Room room = desk.room();
        Map<String, Visit> reported = new LinkedHashMap<>();
        row.cages().forEach(name -> room.cage(name).ifPresent(cage -> Stream.concat(
                        room.visitsOf(cage, desk.today()).stream().filter(Visit::isDifferent),
                        room.unreadAt(cage).stream())
                .max(Comparator.comparing(Visit::entry))
                .ifPresent(visit -> reported.put(name, visit))));
        return reported;
    }

    private void whichOf(Task task, List<String> cages) {
        if (cages.size() == 1) {
            differentAt(cages.get(0), task.part());
        } else {
            shown.change(state -> state.showing(new TodayState.Which(task.id(), words.say("today.which"), cages)));
        }
    }

    private void walked(Task task) {
        Task.WallRow row = task.row().orElseThrow();
        record(
                new VisitDeed.RowChecked(row.wall(), row.number(), task.part()),
                Message.of("today.did.row", label(task)));
    }

    private void read(Task task) {
        List<AwayDeed.EntrySeen> seen = desk.room().unread().stream()
                .filter(visit -> visit.day().equals(task.due()))
                .filter(visit ->
                        desk.room().cageName(visit.cage()).equals(task.cage().orElse("")))
                .map(Visit::entry)
                .map(entry -> new AwayDeed.EntrySeen(Math.toIntExact(entry)))
                .toList();
        record(seen, Optional.empty(), Message.of("today.did.read", label(task)));
    }

    private void different(Task task) {
        if (task.row().isPresent()) {
            shown.change(state -> state.showing(new TodayState.Which(
                    task.id(), words.say("today.which"), task.row().get().cages())));
        } else {
            differentAt(task.cage().orElseThrow(), task.part());
        }
    }

    /** The cage of a row was touched. */
    void which(String id, String cage) {
        task(id).ifPresent(task -> differentAt(cage, task.part()));
    }

    private void differentAt(String cage, Optional<DayPart> part) {
        navigator.go(new Destination.Different(cage, part, How.HAND, desk.today(), new Destination.Today()));
    }

    private TodayState.Page different(Destination.Different at) {
        return new TodayState.Different(
                at, words.say("today.what-different", at.cage()), ownAudience() == Audience.SITTER);
    }

    /** What was seen is told. */
    void tell(TodayState.Different page, Collection<Sign> signs, String note) {
        if (signs.isEmpty() && note.isBlank()) {
            asking.tell(Message.of("today.nothing-told"), Message.of("today.nothing-told-text"));
            return;
        }
        List<Sign> seen = signs.stream().sorted().toList();
        List<Vital> questions = Report.questions(seen);
        if (!page.thenAsked() && saysNothing(new Report(seen, Map.of()), note)) {
            asking.tell(Message.of("today.nothing-told"), Message.of("today.other-told-text"));
        } else if (page.thenAsked() && !questions.isEmpty() && !Report.cannotWait(seen)) {
            shown.change(state -> state.showing(asked(page.at(), seen, note)));
            keep(shown.now().page(), seen, note);
        } else {
            record(page.at(), new Report(seen, Map.of()), note);
        }
    }

    private TodayState.Asked asked(Destination.Different at, List<Sign> seen, String note) {
        return new TodayState.Asked(at, words.say("today.how-is-it", at.cage()), seen, note, Report.questions(seen));
    }

    /** The questions that had to wait until somebody was phoned. */
    void askAfter(TodayState.Asked asked) {
        shown.change(state -> state.showing(asked));
    }

    /** The questions are answered, as far as they can be. */
    void answer(TodayState.Asked asked, Map<Vital, Reply> replies) {
        Report report = new Report(asked.signs(), replies);
        if (saysNothing(report, asked.note())) {
            asking.tell(Message.of("today.nothing-told"), Message.of("today.other-asked-text"));
        } else {
            record(asked.at(), report, asked.note());
        }
    }

    /** "Something else" alone tells nobody whether to come. */
    private static boolean saysNothing(Report report, String note) {
        return note.isBlank() && report.told().equals(List.of(Sign.OTHER));
    }

    private void record(Destination.Different at, Report report, String note) {
        Deed check = VisitDeed.Check.different(at.cage(), at.how(), at.part(), report.told());
        pen.record(
                List.of(check),
                at.day(),
                note(note),
                Message.of("today.did.different", at.cage()),
                room -> told(at, report, room.head()));
    }

    /** A sitter is told what to do and whom to phone; a keeper knows. */
    private void told(Destination.Different at, Report report, long entry) {
        halfway.clear();
        touched = Optional.empty();
        if (ownAudience() == Audience.OWNER) {
            backToTheList();
            return;
        }
        Optional<Danger> danger = desk.room().cage(at.cage()).flatMap(cage -> report.dangers(cage).stream()
                .findFirst());
        boolean now = danger.filter(it -> it.urgency() == Urgency.PHONE_NOW).isPresent();
        String seen = report.told().stream().map(Sign::words).map(words::say).collect(Collectors.joining(", "));
        TodayState.Page page = new TodayState.Recorded(
                words.say(now ? "today.phone-now" : "today.in-the-book"),
                words.say(
                        now
                                ? Message.of("today.phone-now-text", at.cage(), seen)
                                : Message.of("today.in-the-book-text", at.cage(), owner())),
                danger,
                now ? Urgency.PHONE_NOW : Urgency.PHONE_IF_UNSURE,
                steps(danger),
                new TodaysWords(desk.room(), desk.today(), words).phones(danger),
                entry,
                after(at, report));
        shown.change(state -> list(state.audience(), state.part()).showing(page));
    }

    private Optional<TodayState.Asked> after(Destination.Different at, Report report) {
        boolean unasked = report.replies().isEmpty() && Report.cannotWait(report.signs());
        return unasked ? Optional.of(asked(at, report.signs(), "")) : Optional.empty();
    }

    /** The line that asks how warm the room is was touched. */
    void degrees() {
        shown.change(state ->
                state.showing(new TodayState.Degrees(words.say("today.how-warm"), words.say("today.how-warm-text"))));
    }

    /** How warm the room is. */
    void tellDegrees(OptionalInt read) {
        if (read.isEmpty() || read.getAsInt() < RoomDeed.RoomRead.COLDEST) {
            asking.tell(Message.of("today.no-degrees"), Message.of("today.no-degrees-text"));
            return;
        }
        Optional<BigDecimal> degrees = Optional.of(BigDecimal.valueOf(read.getAsInt()));
        pen.record(
                List.of(new RoomDeed.RoomRead(degrees, degrees, Optional.empty(), Optional.empty())),
                desk.today(),
                Optional.empty(),
                Message.of("today.did.degrees", read.getAsInt()),
                room -> warm(Warmth.of(read.getAsInt())));
    }

    private void warm(Warmth warmth) {
        Settings settings = desk.room().settings();
        Optional<Danger> danger = warmth.danger(settings);
        if (danger.isEmpty()) {
            backToTheList();
            return;
        }
        Urgency urgency = warmth.urgency(settings);
        shown.change(state -> state.showing(new TodayState.Recorded(
                words.say(
                        urgency == Urgency.PHONE_NOW
                                ? Message.of("today.phone-now")
                                : danger.get().title()),
                words.say(danger.get().rule(desk.room())),
                danger,
                urgency,
                steps(danger),
                new TodaysWords(desk.room(), desk.today(), words).phones(danger),
                OF_NO_CAGE)));
    }

    private List<String> steps(Optional<Danger> danger) {
        return danger.stream()
                .flatMap(it -> it.steps(desk.room()).stream())
                .map(words::say)
                .toList();
    }

    /** What was touched half-way stays, and is there again when one comes back. */
    void alarm(Danger danger) {
        navigator.go(new Destination.Alarm(Optional.of(danger)));
    }

    void phoned(Optional<Danger> about) {
        backToTheList();
        navigator.go(new Destination.Phone(about));
    }

    /** Why something was not done is told. */
    void tellWhy(TodayState.NotDone of, Optional<Reason> reason, Optional<Dishes> dishes, String note) {
        Optional<TouchedOrWritten> given = TouchedOrWritten.of(reason, note);
        if (given.isEmpty()) {
            asking.tell(Message.of("today.nothing-told"), Message.of("today.no-reason-text"));
            return;
        }
        if (of.ofDishes().isPresent() && dishes.isEmpty()) {
            asking.tell(Message.of("today.dishes-ask"), Message.of("today.dishes-ask-text"));
            return;
        }
        String label = task(of.task()).map(this::label).orElse("");
        Optional<Dishes> asked = of.ofDishes().flatMap(question -> dishes);
        boolean low = asked.filter(seen -> seen == Dishes.LOW).isPresent();
        List<Deed> deeds = new ArrayList<>();
        if (low) {
            deeds.add(VisitDeed.Check.different(label, How.HAND, Optional.of(DayPart.MORNING), List.of(Sign.FOOD_LOW)));
        }
        TouchedOrWritten why = given.get();
        deeds.add(new VisitDeed.TaskNotDone(of.task(), Optional.of(why.kept()), asked));
        pen.record(deeds, desk.today(), why.note(), Message.of("today.did.not-done", label), room -> {
            touched = Optional.empty();
            backToTheList();
            asked.filter(seen -> seen != Dishes.FILLED).ifPresent(seen -> hungry(label, seen, room.head()));
        });
    }

    /** Birds that nobody knows to have food and water cannot wait for the owner to read of it. */
    private void hungry(String cage, Dishes seen, long entry) {
        shown.change(state -> state.showing(new TodayState.Recorded(
                words.say("today.phone-now"),
                words.say("today.dishes-" + seen.word(), cage),
                Optional.of(Danger.UNFED),
                Urgency.PHONE_NOW,
                steps(Optional.of(Danger.UNFED)),
                new TodaysWords(desk.room(), desk.today(), words).phones(Optional.of(Danger.UNFED)),
                entry)));
    }

    private static Optional<String> note(String text) {
        return Optional.of(text.strip()).filter(said -> !said.isEmpty());
    }

    private void record(Deed deed, Message done) {
        record(List.of(deed), Optional.empty(), done);
    }

    private void record(List<? extends Deed> deeds, Optional<String> note, Message done) {
        if (deeds.isEmpty()) {
            return;
        }
        pen.record(deeds, desk.today(), note, done, room -> {
            touched = Optional.empty();
            backToTheList();
        });
    }
}
