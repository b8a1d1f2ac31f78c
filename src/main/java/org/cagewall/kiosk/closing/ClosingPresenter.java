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
import org.cagewall.handover.Spans;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.TouchedOrWritten;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Dishes;
import org.cagewall.room.Person;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Task;
import org.cagewall.tasks.Unfed;
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
    private final Refresher watch;
    private List<LogEntry> log = List.of();

    public ClosingPresenter(
            Desk desk, Pen pen, Navigator navigator, Asking asking, Words words, Consumer<ClosingState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(state(), view);
    }

    Refresher watch() {
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
            boolean asking =
                    state.step() == ClosingState.Step.WHY && !toExplain().isEmpty();
            return (asking ? anew.at(ClosingState.Step.WHY) : anew).sending(state.sending());
        });
    }

    private ClosingState state() {
        Room room = desk.room();
        List<Task> tasks = DailyList.of(room, desk.today(), Audience.SITTER);
        List<Task> open = tasks.stream().filter(Task::isOpen).toList();
        long evening = tasks.stream().filter(ClosingPresenter::isOfTheEvening).count();
        long undone = tasks.stream()
                .filter(task -> task.state() == Task.State.NOT_DONE)
                .count();
        ToPhone toPhone = toPhone();
        boolean done = open.isEmpty() && toPhone.isEmpty();
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
                words.say(word(open, toPhone)),
                words.say(text(open, toPhone, undone)),
                Stream.concat(
                                toPhone.rows(this),
                                open.stream()
                                        .map(task ->
                                                new ClosingState.Left(face(task), Destination.Today.at(task.id()))))
                        .toList(),
                Optional.of(words.say("today.dishes"))
                        .filter(question -> toExplain().stream().anyMatch(Task::isFeeding)),
                done ? ClosingState.Step.DONE : ClosingState.Step.LEFT,
                Optional.empty());
    }

    /** About what nobody has been spoken to. */
    private record ToPhone(List<Unphoned.Raised> alarms, List<Visit> visits, List<String> unfed) {

        boolean isEmpty() {
            return size() == 0;
        }

        int size() {
            return alarms.size() + visits.size() + (unfed.isEmpty() ? 0 : 1);
        }

        Stream<ClosingState.Left> rows(ClosingPresenter presenter) {
            return Stream.of(
                            alarms.stream().map(presenter::unphoned),
                            visits.stream().map(presenter::unphoned),
                            Stream.of(unfed).filter(cages -> !cages.isEmpty()).map(presenter::unfed))
                    .flatMap(rows -> rows);
        }
    }

    private ToPhone toPhone() {
        Room room = desk.room();
        List<Visit> visits = Unphoned.at(room, desk.today());
        List<String> reported =
                visits.stream().map(visit -> room.cageName(visit.cage())).toList();
        return new ToPhone(
                Unphoned.alarms(room, log, desk.today()),
                visits,
                Unfed.unphoned(room, desk.today()).stream()
                        .filter(cage -> !reported.contains(cage))
                        .toList());
    }

    /** Nobody is thanked for birds that were not fed. */
    private Message word(List<Task> open, ToPhone toPhone) {
        int unfed = Unfed.at(desk.room(), desk.today()).size();
        boolean done = open.isEmpty() && toPhone.isEmpty();
        if (unfed > 0 && (done || !toPhone.isEmpty())) {
            return Message.of("closing.unfed", unfed);
        }
        if (done) {
            return Message.of("closing.done", pen.holder().map(Person::name).orElse(""));
        }
        return isTheEveningToCome(open, toPhone)
                ? Message.of("closing.evening-to-come")
                : Message.of("closing.left", open.size() + toPhone.size());
    }

    private Message text(List<Task> open, ToPhone toPhone, long undone) {
        String owner = desk.room().owner().map(Person::name).orElse("-");
        if (!toPhone.isEmpty()) {
            return Message.of("closing.left-phone", named(toPhone));
        }
        if (!open.isEmpty()) {
            return Message.of(isTheEveningToCome(open, toPhone) ? "closing.evening-to-come-text" : "closing.left-text");
        }
        if (!Unfed.at(desk.room(), desk.today()).isEmpty()) {
            return Message.of("closing.unfed-phoned", undone, owner);
        }
        return undone > 0 ? Message.of("closing.done-but", undone, owner) : Message.of("closing.done-text");
    }

    /** What is open can only be done once the evening has begun. */
    private boolean isTheEveningToCome(List<Task> open, ToPhone toPhone) {
        return toPhone.isEmpty() && open.stream().noneMatch(task -> DailyList.hasCome(task, desk.time()));
    }

    /** What is open and belongs to the part of the day that has come: nobody can say in the morning why the evening failed. */
    private List<Task> toExplain() {
        return DailyList.of(desk.room(), desk.today(), Audience.SITTER).stream()
                .filter(task -> task.isOpen() && DailyList.hasCome(task, desk.time()))
                .toList();
    }

    /** The cages, and what went wrong in the room. */
    private List<Object> named(ToPhone toPhone) {
        List<String> cages = Stream.concat(
                        toPhone.visits().stream().map(visit -> desk.room().cageName(visit.cage())),
                        toPhone.unfed().stream())
                .toList();
        return Stream.concat(
                        toPhone.alarms().stream()
                                .map(Unphoned.Raised::matter)
                                .map(matter -> words.say(CallMatter.told(matter.word())))
                                .distinct(),
                        Spans.of(desk.room(), cages).stream())
                .toList();
    }

    /** One call tells of all the cages that were not fed. */
    private ClosingState.Left unfed(List<String> cages) {
        return new ClosingState.Left(
                RowFace.of(
                                "",
                                words.say("closing.unfed-at", Spans.of(desk.room(), cages)),
                                words.say("closing.unphoned"))
                        .tagged(TagKind.DIFFERENT, words.say("closing.phone"))
                        .in(RowFace.State.DIFFERENT),
                Destination.Phone.about(Danger.UNFED, cages));
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

    void alarm(Danger danger) {
        navigator.go(new Destination.Alarm(Optional.of(danger)));
    }

    void askWhy() {
        if (toExplain().isEmpty()) {
            sayThatNothingIsToExplain();
        } else {
            shown.change(state -> state.at(ClosingState.Step.WHY));
        }
    }

    private void sayThatNothingIsToExplain() {
        asking.tell(
                Message.of("closing.nothing-to-say"),
                Message.of(toPhone().isEmpty() ? "closing.evening-to-come-text" : "closing.only-phone"));
    }

    void back() {
        shown.change(state -> state());
    }

    /** Why what is left was not done is told, for all of it at once. */
    void tellWhy(Optional<Reason> reason, Optional<Dishes> dishes, String inWords) {
        Optional<TouchedOrWritten> why = TouchedOrWritten.of(reason, inWords);
        List<Task> undone = toExplain();
        if (undone.isEmpty()) {
            sayThatNothingIsToExplain();
        } else if (why.isEmpty()) {
            asking.tell(Message.of("closing.why"), Message.of("closing.why-text"));
        } else if (dishes.isEmpty() && undone.stream().anyMatch(Task::isFeeding)) {
            asking.tell(Message.of("today.dishes-ask"), Message.of("today.dishes-ask-text"));
        } else {
            keep(undone, why.get(), dishes);
        }
    }

    private void keep(List<Task> tasks, TouchedOrWritten why, Optional<Dishes> dishes) {
        List<VisitDeed.TaskNotDone> undone = tasks.stream()
                .map(task -> new VisitDeed.TaskNotDone(
                        task.id(), Optional.of(why.kept()), dishes.filter(seen -> task.isFeeding())))
                .toList();
        List<String> unfed = tasks.stream()
                .filter(Task::isFeeding)
                .flatMap(task -> task.cage().stream())
                .toList();
        pen.record(undone, desk.today(), why.note(), Message.of("closing.kept", undone.size()), room -> {
            back();
            dishes.filter(seen -> !unfed.isEmpty()).ifPresent(seen -> sayToPhone(seen, unfed));
        });
    }

    /** Birds that were not fed cannot wait for the owner to read of it. */
    private void sayToPhone(Dishes seen, List<String> unfed) {
        asking.ask(Question.of(
                Message.of(seen == Dishes.FILLED ? "closing.unfed" : "today.phone-now", unfed.size()),
                Message.of(seen == Dishes.FILLED ? "closing.hungry" : "closing.hungry-" + seen.word()),
                AnswerButton.main(
                        "phone",
                        Message.of("closing.phone"),
                        () -> navigator.go(Destination.Phone.about(Danger.UNFED, unfed))),
                AnswerButton.leave("leave", Message.of("closing.back"))));
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
