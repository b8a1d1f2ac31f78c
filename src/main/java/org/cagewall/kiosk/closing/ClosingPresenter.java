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
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.room.DayPart;
import org.cagewall.room.LogEntry;
import org.cagewall.room.LogQuery;
import org.cagewall.room.Person;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Task;
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
        boolean done = open.isEmpty();
        String name = pen.holder().map(Person::name).orElse("");
        return new ClosingState(
                words.say("closing.title"),
                words.say(
                        "closing.subtitle",
                        words.longDay(desk.today()),
                        tasks.size() - open.size(),
                        tasks.size(),
                        tasks.size() - evening,
                        evening),
                words.say(done ? "closing.done" : "closing.left", done ? name : open.size()),
                words.say(done ? "closing.done-text" : "closing.left-text"),
                open.stream().map(this::face).toList(),
                done ? ClosingState.Step.DONE : ClosingState.Step.LEFT,
                Optional.empty());
    }

    private RowFace face(Task task) {
        String when = words.say(isOfTheEvening(task) ? "closing.evening" : "closing.morning");
        return RowFace.of(task.cage().orElse(""), words.say(task.words()), when);
    }

    private static boolean isOfTheEvening(Task task) {
        return task.part().filter(part -> part == DayPart.EVENING).isPresent();
    }

    void toTheList() {
        navigator.go(new Destination.Today());
    }

    void askWhy() {
        shown.change(state -> state.at(ClosingState.Step.WHY));
    }

    void back() {
        shown.change(state -> state());
    }

    /** Why what is left was not done is told, for all of it at once. */
    void tellWhy(Optional<String> reason, String inWords) {
        String why = Stream.concat(reason.stream(), text(inWords).stream()).collect(Collectors.joining(": "));
        if (why.isBlank()) {
            asking.tell(Message.of("closing.why"), Message.of("closing.why-text"));
            return;
        }
        List<VisitDeed.TaskNotDone> undone = DailyList.of(desk.room(), desk.today(), Audience.SITTER).stream()
                .filter(Task::isOpen)
                .map(task -> new VisitDeed.TaskNotDone(task.id(), Optional.of(why)))
                .toList();
        if (!undone.isEmpty()) {
            pen.record(
                    undone, desk.today(), Optional.empty(), Message.of("closing.kept", undone.size()), room -> back());
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
