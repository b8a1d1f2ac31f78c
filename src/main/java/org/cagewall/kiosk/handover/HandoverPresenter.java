package org.cagewall.kiosk.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import org.cagewall.deed.AwayDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.NewValue;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.handover.Lead;
import org.cagewall.handover.Ready;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.paper.Printers;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Reason;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.care.How;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Plans days away, ends them, and has what happened read and ticked. Used on the event thread. */
public final class HandoverPresenter {

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Words words;
    private final Shown<HandoverState> shown;
    private final PackActs pack;
    private final Refresher watch;
    private final ReviewActs review;

    public HandoverPresenter(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Notices notices,
            Words words,
            Printers printers,
            Consumer<HandoverState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.asking = asking;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(goingAway(), view);
        this.pack = new PackActs(desk, pen, asking, notices, words, printers, shown);
        this.review = new ReviewActs(desk, pen, navigator, asking, notices, words, shown);
    }

    PackActs pack() {
        return pack;
    }

    ReviewActs review() {
        return review;
    }

    Refresher watch() {
        return watch;
    }

    /** Whoever is back from days away reads first what happened. */
    void arrived() {
        if (waits(desk.room(), desk.today())) {
            choose(HandoverState.Tab.WHAT_HAPPENED);
        }
    }

    /** Whether days away are over and what happened on them is not wholly read. */
    public static boolean waits(Room room, LocalDate today) {
        return ReviewActs.waits(room, today);
    }

    private void refresh() {
        if (shown.now().tab() == HandoverState.Tab.WHAT_HAPPENED) {
            review.read();
        } else if (shown.now().page() instanceof HandoverState.Rehearsing rehearsing) {
            rehearse(rehearsing.day());
        } else if (!(shown.now().page() instanceof HandoverState.Editing)
                && !(shown.now().page() instanceof HandoverState.Packing)) {
            shown.change(state -> goingAway());
        }
    }

    void choose(HandoverState.Tab tab) {
        if (tab == HandoverState.Tab.GOING_AWAY) {
            shown.change(state -> goingAway());
        } else {
            shown.change(state -> new HandoverState(
                    state.title(), state.subtitle(), HandoverState.Tab.WHAT_HAPPENED, new HandoverState.OneMoment()));
            review.open();
        }
    }

    // ------------------------------------------------------------------ going away

    private Optional<Absence> absence() {
        Room room = desk.room();
        return room.absenceOn(desk.today()).or(() -> room.absenceAfter(desk.today()));
    }

    private HandoverState goingAway() {
        HandoverState.Page page = absence()
                .map(this::planned)
                .orElseGet(() -> overByPlan().map(this::overByPlan).orElseGet(this::nothing));
        return new HandoverState(words.say("handover.title"), subtitle(), HandoverState.Tab.GOING_AWAY, page);
    }

    private HandoverState.Nothing nothing() {
        return new HandoverState.Nothing(
                words.say("handover.nothing"), words.say("handover.nothing-text"), HandoverState.Lately.NOBODY_AWAY);
    }

    private HandoverState.Nothing overByPlan(Absence away) {
        return new HandoverState.Nothing(
                words.say("handover.nothing"),
                words.say("handover.longer-text", words.longDay(away.to())),
                HandoverState.Lately.OVER_BY_PLAN);
    }

    /** Days away that are over by the plan, while nobody has said that the owner is back or read what happened. */
    private Optional<Absence> overByPlan() {
        return desk.room()
                .absenceBefore(desk.today())
                .filter(away -> away.ended().isEmpty() && waits(desk.room(), desk.today()));
    }

    private String subtitle() {
        return absence()
                .map(away -> words.say(
                        away.runsOn(desk.today()) ? "handover.running" : "handover.planned",
                        words.shortDay(away.from()),
                        words.shortDay(away.to())))
                .orElseGet(() -> words.longDay(desk.today()));
    }

    private HandoverState.Page planned(Absence away) {
        Room room = desk.room();
        List<HandoverState.Fact> facts = new ArrayList<>();
        facts.add(fact("sitter", withPhone(away.sitter())));
        facts.add(fact("second", away.second().map(this::withPhone).orElseGet(() -> words.say("handover.nobody"))));
        facts.add(fact("vet", away.vet().orElseGet(() -> words.say("handover.no-vet"))));
        facts.add(fact(
                "owner", room.owner().map(Person::name).map(this::withPhone).orElse("-")));
        facts.add(fact(
                "alone",
                away.leaveAlone().isEmpty()
                        ? words.say("handover.none-alone")
                        : String.join(
                                ", ",
                                away.leaveAlone().stream().map(room::cageName).toList())));
        if (!away.leaveAlone().isEmpty()) {
            facts.add(fact("feeder", away.feeder().map(this::withPhone).orElseGet(() -> words.say("handover.nobody"))));
        }
        return new HandoverState.Planned(
                words.say("handover.days-away", words.longDay(away.from()), words.longDay(away.to()), days(away)),
                facts,
                readiness(away),
                away.runsOn(desk.today()) ? HandoverState.Running.NOW : HandoverState.Running.LATER);
    }

    private static long days(Absence away) {
        return away.from().datesUntil(away.to().plusDays(1)).count();
    }

    private HandoverState.Fact fact(String label, String text) {
        return new HandoverState.Fact(words.say("handover.fact." + label), text);
    }

    private String withPhone(String name) {
        return desk.room()
                .person(name)
                .flatMap(Person::phone)
                .map(phone -> words.say("handover.with-phone", name, phone))
                .orElseGet(() -> words.say("handover.without-phone", name));
    }

    private HandoverState.Readiness readiness(Absence away) {
        Ready ready = Ready.of(desk.room(), desk.today(), away);
        return new HandoverState.Readiness(
                words.say(
                        away.runsOn(desk.today()) ? "handover.ready-away" : "handover.ready",
                        ready.open(),
                        ready.lines().size()),
                words.say(
                        away.runsOn(desk.today()) ? "handover.effort-away" : "handover.effort",
                        away.sitter(),
                        ready.effort().words()),
                ready.lines().stream()
                        .sorted(Comparator.comparing(Ready.Line::state))
                        .map(this::toDo)
                        .toList());
    }

    private HandoverState.ToDo toDo(Ready.Line line) {
        RowFace face = RowFace.of("", words.say(line.title()), words.say(line.text()));
        RowFace told = line.state() == Ready.State.OPEN
                ? face
                : face.tagged(
                                TagKind.PLAIN,
                                words.say(line.state() == Ready.State.DONE ? "handover.done" : "handover.not-needed"))
                        .in(RowFace.State.DONE);
        return new HandoverState.ToDo(line.matter().word(), told, line.state(), line.lead());
    }

    /** A line of what is to be ready was touched: it leads where it is seen to, or is ticked. */
    void see(HandoverState.ToDo line) {
        if (line.lead() instanceof Lead.ByHand byHand) {
            if (line.state() == Ready.State.OPEN) {
                tickReady(line, byHand);
            } else {
                tickAnew(line, byHand);
            }
        } else if (line.lead() instanceof Lead.ToCage toCage) {
            navigator.go(Destination.Cage.byHand(toCage.cage()));
        } else if (line.lead() instanceof Lead.Place place) {
            go(place);
        }
    }

    private void go(Lead.Place place) {
        switch (place) {
            case AHEAD -> navigator.go(new Destination.Ahead());
            case TODAY -> navigator.go(new Destination.Today());
            case CARDS -> navigator.go(new Destination.Cards());
            case SETUP -> navigator.go(new Destination.Setup());
            case PLAN -> change();
        }
    }

    private void tickReady(HandoverState.ToDo line, Lead.ByHand byHand) {
        pen.record(
                new VisitDeed.TaskDone(byHand.task(), Optional.of(How.HAND)),
                Message.of("handover.ready-done", line.face().first()));
    }

    private void tickAnew(HandoverState.ToDo line, Lead.ByHand byHand) {
        asking.ask(Question.of(
                Message.of("handover.ready-again", line.face().first()),
                Message.of("handover.ready-again-text"),
                AnswerButton.main("done", Message.of("handover.done"), () -> tickReady(line, byHand)),
                AnswerButton.plain(
                        "not-needed",
                        Message.of("handover.not-needed-here"),
                        () -> pen.record(
                                new VisitDeed.TaskNotDone(byHand.task(), Optional.of(Reason.NOT_NEEDED.id())),
                                Message.of(
                                        "handover.ready-not-needed", line.face().first()))),
                AnswerButton.leave("leave", Message.of("handover.go-back"))));
    }

    // ------------------------------------------------------------------ a rehearsal

    /** The first day that the sitter has still before them. */
    void rehearse() {
        absence().ifPresent(away -> rehearse(away.from().isAfter(desk.today()) ? away.from() : desk.today()));
    }

    void rehearse(LocalDate day) {
        absence()
                .filter(away -> !day.isBefore(away.from()) && !day.isAfter(away.to()))
                .ifPresent(away -> page(new RehearsalWords(words).day(desk.room(), desk.today(), away, day)));
    }

    // ------------------------------------------------------------------ the plan

    void plan() {
        Room room = desk.room();
        List<String> people = people();
        if (people.isEmpty()) {
            asking.ask(Question.of(
                    Message.of("handover.no-sitter"),
                    Message.of("handover.no-sitter-text"),
                    AnswerButton.main(
                            "setup", Message.of("handover.to-setup"), () -> navigator.go(new Destination.Setup())),
                    AnswerButton.leave("leave", Message.of("handover.go-back"))));
            return;
        }
        Optional<String> sitter = room.people().stream()
                .filter(person -> person.role() == Role.SITTER)
                .map(Person::name)
                .findFirst();
        LocalDate today = desk.today();
        edit(new HandoverState.Draft(
                today.plusDays(1),
                today.plusDays(7),
                sitter,
                Optional.empty(),
                room.absenceBefore(today).flatMap(Absence::vet).orElse(""),
                List.of(),
                Optional.empty(),
                HandoverState.Changes.NEW));
    }

    void change() {
        absence().ifPresent(away -> edit(draft(away, away.to())));
    }

    /** The owner is held up, and the days away are over by the plan. */
    void longer() {
        overByPlan().ifPresent(away -> {
            edit(draft(away, desk.today()));
            side(HandoverState.Side.LAST_DAY);
        });
    }

    private HandoverState.Draft draft(Absence away, LocalDate last) {
        return new HandoverState.Draft(
                away.from(),
                last,
                Optional.of(away.sitter()),
                away.second(),
                away.vet().orElse(""),
                away.leaveAlone().stream().map(desk.room()::cageName).toList(),
                away.feeder(),
                HandoverState.Changes.PLANNED);
    }

    private List<String> people() {
        return desk.room().people().stream()
                .filter(person -> person.role() != Role.OWNER)
                .map(Person::name)
                .toList();
    }

    private void edit(HandoverState.Draft draft) {
        List<String> cages = desk.room().walk().map(Cage::name).toList();
        page(new HandoverState.Editing(draft, HandoverState.Side.FIRST_DAY, desk.today(), people(), cages));
    }

    private void page(HandoverState.Page page) {
        shown.change(state -> new HandoverState(state.title(), state.subtitle(), state.tab(), page));
    }

    private void editing(UnaryOperator<HandoverState.Editing> to) {
        if (shown.now().page() instanceof HandoverState.Editing now) {
            page(to.apply(now));
        }
    }

    private void draft(UnaryOperator<HandoverState.Draft> to) {
        editing(now ->
                new HandoverState.Editing(to.apply(now.draft()), now.side(), now.today(), now.people(), now.cages()));
    }

    void side(HandoverState.Side side) {
        editing(now -> new HandoverState.Editing(now.draft(), side, now.today(), now.people(), now.cages()));
    }

    /** A day was picked: the first day draws the last one along, so that the plan stays as long as it was. */
    void day(LocalDate day) {
        editing(now -> {
            HandoverState.Draft draft = now.draft();
            boolean first = now.side() == HandoverState.Side.FIRST_DAY;
            long length = draft.from().datesUntil(draft.to().plusDays(1)).count() - 1;
            HandoverState.Draft next = first
                    ? draft.on(day, day.plusDays(length))
                    : draft.on(day.isBefore(draft.from()) ? day : draft.from(), day);
            return new HandoverState.Editing(next, HandoverState.Side.LAST_DAY, now.today(), now.people(), now.cages());
        });
    }

    void sitter(String name) {
        draft(draft -> draft.by(Optional.of(name)));
    }

    void second(Optional<String> name) {
        draft(draft -> draft.helpedBy(name));
    }

    void leaveAlone(List<String> cages) {
        draft(draft -> draft.leavingAlone(cages));
    }

    void feeder(Optional<String> name) {
        draft(draft -> draft.fedBy(name));
    }

    void vet(String text) {
        draft(draft -> draft.vet(text));
    }

    void backToThePlan() {
        shown.change(state -> goingAway());
    }

    void save() {
        if (!(shown.now().page() instanceof HandoverState.Editing editing)) {
            return;
        }
        HandoverState.Draft draft = editing.draft();
        if (draft.sitter().isEmpty()) {
            asking.tell(Message.of("handover.who"), Message.of("handover.who-text"));
            return;
        }
        pen.record(
                List.of(deed(draft)),
                desk.today(),
                Optional.empty(),
                Message.of("handover.saved", draft.from(), draft.to()),
                room -> backToThePlan());
    }

    private Deed deed(HandoverState.Draft draft) {
        Optional<String> vet = Optional.of(draft.vet().strip()).filter(text -> !text.isEmpty());
        return absence()
                .or(this::overByPlan)
                .filter(away -> draft.changes() == HandoverState.Changes.PLANNED)
                .map(away -> changed(away, draft, vet))
                .orElseGet(() -> new AwayDeed.AwayPlanned(
                        draft.from(),
                        draft.to(),
                        draft.sitter().orElseThrow(),
                        draft.second(),
                        vet,
                        Optional.of(draft.leaveAlone()),
                        draft.feeder()));
    }

    /** Only what is different, so that the entry tells what was changed. */
    private Deed changed(Absence away, HandoverState.Draft draft, Optional<String> vet) {
        List<String> alone =
                away.leaveAlone().stream().map(desk.room()::cageName).toList();
        return new AwayDeed.AwayChanged(
                Optional.of(draft.from()).filter(day -> !day.equals(away.from())),
                Optional.of(draft.to()).filter(day -> !day.equals(away.to())),
                draft.sitter().filter(name -> !name.equals(away.sitter())),
                anew(away.second(), draft.second()),
                anew(away.vet(), vet),
                Optional.of(draft.leaveAlone())
                        .filter(cages -> !Set.copyOf(cages).equals(Set.copyOf(alone))),
                anew(away.feeder(), draft.feeder()));
    }

    private static Optional<NewValue<String>> anew(Optional<String> before, Optional<String> after) {
        return after.equals(before) ? Optional.empty() : Optional.of(new NewValue<>(after));
    }

    void end() {
        asking.ask(Question.of(
                Message.of("handover.end"),
                Message.of("handover.end-text"),
                AnswerButton.main("end", Message.of("handover.end-yes"), this::ended),
                AnswerButton.leave("leave", Message.of("handover.go-back"))));
    }

    private void ended() {
        pen.record(
                List.of(new AwayDeed.AwayEnded()),
                desk.today(),
                Optional.empty(),
                Message.of("handover.ended"),
                room -> choose(HandoverState.Tab.WHAT_HAPPENED));
    }
}
