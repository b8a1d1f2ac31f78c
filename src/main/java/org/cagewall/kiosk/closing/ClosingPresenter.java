package org.cagewall.kiosk.closing;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.handover.DayNote;
import org.cagewall.kiosk.kit.RowFace;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.TouchedOrWritten;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.room.CallMatter;
import org.cagewall.room.DayPart;
import org.cagewall.room.LogEntry;
import org.cagewall.room.LogQuery;
import org.cagewall.room.Person;
import org.cagewall.room.Reason;
import org.cagewall.room.Sign;
import org.cagewall.room.Visit;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Task;
import org.cagewall.tasks.Unphoned;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Says at the end of the day what is left, and keeps why, and a note for the owner. Used on the event thread. */
public final class ClosingPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Words words;
    private final Shown<ClosingState> shown;
    private final Watch watch;
    private List<LogEntry> log = List.of();

    public ClosingPresenter(
            Desk desk, Pen pen, Navigator navigator, Asking asking, Words words, Consumer<ClosingState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.words = words;
        this.watch = new Watch(desk, this::refresh);
        this.shown = new Shown<>(state(), view);
    }

    Watch watch() {
        return watch;
    }

    private void refresh() {
        showAnew();
        desk.log(LogQuery.between(desk.today(), desk.today()), pen.reading(this::keepLog));
    }

    private void keepLog(List<LogEntry> read) {
        log = read;
        showAnew();
    }

    private void showAnew() {
        shown.change(state -> {
            ClosingState anew = state();
            boolean asking = state.step() == ClosingState.Step.WHY && anew.step() == ClosingState.Step.LEFT;
            return (asking ? anew.at(ClosingState.Step.WHY) : anew).sending(state.sending());
        });
    }

    private ClosingState state() {
        List<Task> tasks = DailyList.of(desk.room(), desk.today(), Audience.SITTER);
        List<Task> open = tasks.stream().filter(Task::isOpen).toList();
        long evening = tasks.stream().filter(ClosingPresenter::isOfTheEvening).count();
        List<Visit> unphoned = Unphoned.at(desk.room(), desk.today());
        List<Unphoned.Raised> alarms = Unphoned.alarms(desk.room(), log, desk.today());
        int toPhone = unphoned.size() + alarms.size();
        long undone = tasks.stream()
                .filter(task -> task.state() == Task.State.NOT_DONE)
                .count();
        boolean done = open.isEmpty() && toPhone == 0;
        String name = pen.holder().map(Person::name).orElse("");
        return new ClosingState(
                words.say("closing.title"),
                words.say(
                        "closing.subtitle",
                        words.longDay(desk.today()),
                        tasks.size() - open.size() - undone,
                        tasks.size(),
                        tasks.size() - evening,
                        evening,
                        undone),
                done ? words.say("closing.done", name) : words.say("closing.left", open.size() + toPhone),
                words.say(
                        done
                                ? undone > 0 ? "closing.done-but" : "closing.done-text"
                                : toPhone == 0 ? "closing.left-text" : "closing.left-phone",
                        done ? undone : named(unphoned, alarms)),
                Stream.of(
                                alarms.stream().map(this::unphoned),
                                unphoned.stream().map(this::unphoned),
                                open.stream()
                                        .map(task ->
                                                new ClosingState.Left(face(task), Destination.Today.at(task.id()))))
                        .flatMap(left -> left)
                        .toList(),
                done ? ClosingState.Step.DONE : ClosingState.Step.LEFT,
                Optional.empty());
    }

    /** The cages, and what went wrong in the room. */
    private List<String> named(List<Visit> visits, List<Unphoned.Raised> alarms) {
        return Stream.concat(
                        alarms.stream()
                                .map(Unphoned.Raised::matter)
                                .map(matter -> words.say(CallMatter.told(matter.word()))),
                        visits.stream().map(visit -> desk.room().cageName(visit.cage())))
                .distinct()
                .toList();
    }

    /** An alarm about which nobody has been spoken to leads to the phones. */
    private ClosingState.Left unphoned(Unphoned.Raised raised) {
        return new ClosingState.Left(
                RowFace.of("", words.say(raised.entry().what()), words.say("closing.unphoned"))
                        .tagged(TagKind.DIFFERENT, words.say("closing.phone"))
                        .in(RowFace.State.DIFFERENT),
                new Destination.Phone(Stream.of(Danger.values())
                        .filter(danger -> danger.matter() == raised.matter())
                        .findFirst()));
    }

    /** A report that cannot wait and about which nobody has been spoken to leads to the phones. */
    private ClosingState.Left unphoned(Visit visit) {
        String cage = desk.room().cageName(visit.cage());
        String signs = Sign.told(visit.signs()).stream().map(words::say).collect(Collectors.joining(", "));
        Optional<Danger> about = visit.signs().stream()
                .flatMap(id -> Sign.of(id).stream())
                .flatMap(sign -> Danger.of(sign).stream())
                .sorted()
                .findFirst();
        return new ClosingState.Left(
                RowFace.of(cage, signs, words.say("closing.unphoned"))
                        .tagged(TagKind.DIFFERENT, words.say("closing.phone"))
                        .in(RowFace.State.DIFFERENT),
                new Destination.Phone(about, Optional.of(cage)));
    }

    private RowFace face(Task task) {
        String when = words.say(isOfTheEvening(task) ? "closing.evening" : "closing.morning");
        return RowFace.of(task.cage().orElse(""), words.say(task.words()), when);
    }

    private static boolean isOfTheEvening(Task task) {
        return task.part().filter(part -> part == DayPart.EVENING).isPresent();
    }

    /** To the first of what is left: a list that is done would only lead back here. */
    void toTheList() {
        navigator.go(shown.now().left().stream()
                .findFirst()
                .map(ClosingState.Left::to)
                .orElse(new Destination.Today()));
    }

    void open(ClosingState.Left left) {
        navigator.go(left.to());
    }

    void askWhy() {
        shown.change(state -> state.at(ClosingState.Step.WHY));
    }

    void back() {
        shown.change(state -> state());
    }

    /** Why what is left was not done is told, for all of it at once. */
    void tellWhy(Optional<Reason> reason, String inWords) {
        TouchedOrWritten.of(reason, inWords)
                .ifPresentOrElse(
                        this::keep, () -> asking.tell(Message.of("closing.why"), Message.of("closing.why-text")));
    }

    private void keep(TouchedOrWritten why) {
        List<VisitDeed.TaskNotDone> undone = DailyList.of(desk.room(), desk.today(), Audience.SITTER).stream()
                .filter(Task::isOpen)
                .map(task -> new VisitDeed.TaskNotDone(task.id(), Optional.of(why.kept())))
                .toList();
        if (!undone.isEmpty()) {
            pen.record(undone, desk.today(), why.note(), Message.of("closing.kept", undone.size()), room -> back());
        }
    }

    /** A note for the owner. */
    void note(String said) {
        text(said)
                .ifPresentOrElse(
                        note -> pen.record(
                                List.of(new VisitDeed.Noted(Optional.empty(), Optional.empty())),
                                desk.today(),
                                Optional.of(note),
                                Message.of("closing.noted"),
                                room -> {}),
                        () -> asking.tell(Message.of("closing.note"), Message.of("closing.note-text")));
    }

    /** The note of the day is made of what is recorded now, and shown as messages for a phone. */
    void send() {
        LocalDate today = desk.today();
        desk.log(
                LogQuery.between(today, today),
                answer -> answer.then(this::show, why -> cannotShow(), code -> cannotShow()));
    }

    private void show(List<LogEntry> log) {
        List<ClosingState.Way> ways =
                new SendingWords(desk.room(), words).ways(DayNote.of(desk.room(), log, desk.today()));
        shown.change(state -> state.sending(Optional.of(new ClosingState.Sending(ways, 0, 0))));
    }

    private void cannotShow() {
        asking.tell(Message.of("closing.no-note"), Message.of("closing.no-note-text"));
    }

    /** Whether the messages are shown, on which nothing is filled in. */
    boolean isSending() {
        return shown.now().sending().isPresent();
    }

    void sendBy(int way) {
        shown.change(state -> state.sending(state.sending().map(it -> it.by(way))));
    }

    void nextMessage() {
        shown.change(state -> state.sending(state.sending().map(ClosingState.Sending::next)));
    }

    private static Optional<String> text(String said) {
        return Optional.of(said.strip()).filter(it -> !it.isEmpty());
    }
}
