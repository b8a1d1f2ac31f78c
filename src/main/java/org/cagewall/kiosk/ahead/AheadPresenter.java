package org.cagewall.kiosk.ahead;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.deed.EggDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.Draws;
import org.cagewall.plan.Policy;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * Asks what is ahead each time something of the question or of the room has changed, aside, and shows the answer when it
 * is there. Free of Swing; used on the event thread.
 */
public final class AheadPresenter {

    /** Always the same, so that a chance changes only where the room has. */
    private static final long SEED = 1;

    /** Where no days away are planned, about as far ahead as an egg laid today takes until its chick feeds itself. */
    private static final int USUAL_DAYS_AHEAD = 60;

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Words words;
    private final AheadWords said;
    private final CalendarJob job;
    private final Shown<AheadState> shown;
    private final Refresher watch;

    AheadPresenter(Desk desk, Pen pen, Navigator navigator, Asking asking, Words words, Consumer<AheadState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.words = words;
        this.said = new AheadWords(words);
        this.job = new CalendarJob(words, desk.folder().path());
        this.watch = new Refresher(desk, this::ask);
        LocalDate day = usualDay(desk.room(), desk.today());
        this.shown = new Shown<>(
                new AheadState(
                        words.say("ahead.working"),
                        AheadState.Tab.DATES,
                        desk.today(),
                        day,
                        words.date(day),
                        Policy.WEANED,
                        1,
                        AheadState.Picking.NOTHING,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                view);
    }

    Refresher watch() {
        return watch;
    }

    private static LocalDate usualDay(Room room, LocalDate today) {
        return room.absenceAfter(today).map(Absence::from).orElse(today.plusDays(USUAL_DAYS_AHEAD));
    }

    private void ask() {
        AheadState now = shown.now();
        org.cagewall.plan.AheadQuestion question = new org.cagewall.plan.AheadQuestion(
                now.clearBy(), now.policy(), now.rounds(), new Draws(Draws.USUAL, SEED));
        Room room = desk.room();
        LocalDate today = desk.today();
        desk.study(
                book -> Ahead.of(room, today, question),
                answer -> answer.then(
                        this::show, reason -> fail(words.say(reason)), code -> fail(words.say("ahead.failed", code))));
    }

    private void show(Ahead ahead) {
        shown.change(state ->
                state.answered(said.subtitle(ahead) + supposed(ahead), Optional.of(said.answer(ahead, desk.today()))));
    }

    /** Where no days away are planned and no other day was asked about, the day is nobody's. */
    private String supposed(Ahead ahead) {
        Room room = desk.room();
        LocalDate today = desk.today();
        boolean supposed =
                room.absenceAfter(today).isEmpty() && ahead.question().clearBy().equals(usualDay(room, today));
        return supposed ? words.say("ahead.supposed") : "";
    }

    private void fail(String why) {
        shown.change(state -> state.answered(why, Optional.empty()));
    }

    void turnTo(AheadState.Tab tab) {
        shown.change(state -> state.turnedTo(tab));
    }

    void pickDay() {
        shown.change(state -> state.picking(AheadState.Picking.DAY));
    }

    void leaveDay() {
        shown.change(state -> state.picking(AheadState.Picking.NOTHING));
    }

    void day(LocalDate day) {
        AheadState now = shown.now();
        askAnew(day, now.policy(), now.rounds());
    }

    void policy(Policy policy) {
        AheadState now = shown.now();
        askAnew(now.clearBy(), policy, now.rounds());
    }

    void rounds(int rounds) {
        AheadState now = shown.now();
        askAnew(now.clearBy(), now.policy(), rounds);
    }

    private void askAnew(LocalDate day, Policy policy, int rounds) {
        shown.change(state -> state.asking(day, words.date(day), policy, rounds));
        ask();
    }

    void nest(String cage) {
        shown.change(state -> state.of(Optional.of(cage)));
    }

    void allNests() {
        shown.change(state -> state.of(Optional.empty()));
    }

    void toTheCage(String cage) {
        navigator.go(Destination.Cage.byHand(cage));
    }

    /** The room as it is at this moment, for a phone's calendar. */
    void saveCalendar() {
        Room room = desk.room();
        LocalDate today = desk.today();
        desk.work(
                book -> job.save(book, room, today),
                answer -> answer.then(
                        result -> say(result.came(), words.say(result.what())),
                        reason -> say(AheadState.Came.NOT, words.sentence(reason)),
                        code -> say(AheadState.Came.NOT, words.say("ahead.calendar-failed", code))));
    }

    private void say(AheadState.Came came, String what) {
        shown.change(state -> state.saying(new AheadState.Said(came, what)));
    }

    /** An egg that was moved as it was proposed is recorded as moved; it gets the next free letter. */
    void move(AheadState.Egg egg) {
        asking.ask(Question.of(
                Message.of("ahead.move", egg.mark(), egg.from(), egg.to()),
                Message.of("ahead.move-text"),
                AnswerButton.main("moved", Message.of("ahead.moved"), () -> record(List.of(egg))),
                AnswerButton.leave("not-yet", Message.of("ahead.not-yet"))));
    }

    /** All of them, as one touch that one undo takes back. */
    void moveAll() {
        List<AheadState.Egg> eggs =
                shown.now().answer().map(AheadState.Answer::eggs).orElse(List.of());
        asking.ask(Question.of(
                Message.of("ahead.move-all", eggs.size()),
                Message.of("ahead.move-text"),
                AnswerButton.main("moved", Message.of("ahead.all-moved"), () -> record(eggs)),
                AnswerButton.leave("not-yet", Message.of("ahead.not-yet"))));
    }

    private void record(List<AheadState.Egg> eggs) {
        pen.record(
                eggs.stream()
                        .map(egg -> new EggDeed.EggMoved(
                                egg.from(), egg.mark(), Optional.empty(), egg.to(), Optional.empty()))
                        .toList(),
                desk.today(),
                Optional.empty(),
                Message.of("ahead.recorded", eggs.size()),
                room -> {});
    }
}
