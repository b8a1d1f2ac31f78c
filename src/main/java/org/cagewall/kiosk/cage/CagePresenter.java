package org.cagewall.kiosk.cage;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Outlook;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Reason;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.room.care.Sign;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Danger;
import org.cagewall.tasks.Lapsed;
import org.cagewall.tasks.Sight;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Records what is touched on a cage's page, and keeps the page as the cage is. Used on the event thread. */
final class CagePresenter {

    private static final int ENTRIES = 12;
    private static final int MOST_BIRDS = 200;

    /** Common practice, no source: who looks at a cage is done with it by then; later its card was not read just now. */
    private static final Duration VISIT = Duration.ofMinutes(5);

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Picking picking;
    private final Words words;
    private final Destination.Cage here;
    private final Optional<String> scanned;
    private final Instant opened;
    private final Shown<CageState> shown;
    private final Refresher watch;
    private final Scribe scribe;
    private final NestActs nestActs;
    private final BirdActs birdActs;
    private final PartingActs partingActs;
    private Optional<List<LogEntry>> log = Optional.empty();
    private Optional<String> unread = Optional.empty();
    private List<Lapsed> lapsed = List.of();

    CagePresenter(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Picking picking,
            NestForms forms,
            Words words,
            Destination.Cage here,
            Consumer<CageState> view) {
        this.desk = desk;
        this.pen = pen;
        this.navigator = navigator;
        this.picking = picking;
        this.words = words;
        this.here = here;
        this.scanned = here.came() == Destination.Came.BY_SCAN
                ? Optional.of(words.say("cage.scanned", desk.time()))
                : Optional.empty();
        this.opened = desk.instant();
        this.scribe = new Scribe(desk, pen, here.name(), this::day);
        this.nestActs = new NestActs(scribe, picking, forms, words);
        this.birdActs = new BirdActs(scribe, picking, forms, words, () -> navigator.go(new Destination.Birds()));
        this.partingActs = new PartingActs(scribe, picking, forms, words, this::act);
        this.watch = new Refresher(desk, this::refresh, pen, this::refresh);
        this.shown = new Shown<>(state(false), view);
    }

    Refresher watch() {
        return watch;
    }

    private void refresh() {
        shown.change(state -> state(state.yesterday()));
        lapsed = cage().map(cage -> Lapsed.of(desk.room(), cage, desk.today())).orElse(List.of());
        cage().ifPresent(cage -> desk.log(
                LogQuery.newest(ENTRIES).ofCage(cage.id()),
                answer -> answer.then(
                        entries -> took(Optional.of(entries), Optional.empty()),
                        why -> took(log, Optional.of(words.say("cage.not-read-why", why))),
                        code -> took(log, Optional.of(words.say("cage.not-read", code))))));
    }

    private void took(Optional<List<LogEntry>> read, Optional<String> why) {
        log = read;
        unread = why;
        shown.change(state -> state(state.yesterday()));
    }

    private CageState state(boolean yesterday) {
        return cage().map(cage -> known(cage, yesterday))
                .orElseGet(() -> CageState.unknown(words.say("cage.title", here.name()), words.say("cage.unknown")));
    }

    private CageState known(Cage cage, boolean yesterday) {
        Room room = desk.room();
        LocalDate today = desk.today();
        Role role = role();
        Outlook outlook = Almanac.of(room).nest(cage);
        CageWords say = new CageWords(room, today, words);
        NestWords nest = new NestWords(room, cage, outlook, today, words);
        boolean mayLook = role != Role.SITTER || DailyList.looksIn(room, today, cage.name());
        return new CageState(
                true,
                words.say("cage.title", cage.name()),
                withAgreements(cage, say.subtitle(cage, mayLook ? Optional.of(outlook) : Optional.empty(), scanned)),
                mayLook ? nest.nest(role) : say.leftAlone(cage),
                mayLook && role != Role.SITTER ? nest.parting() : Optional.empty(),
                say.birds(cage),
                say.flock(cage),
                log.map(read -> say.past(
                        read.stream()
                                .filter(entry -> mayLook || !NestEntries.holds(entry))
                                .toList(),
                        role == Role.SITTER ? List.of() : lapsed)),
                unread,
                actions(new Actions(room, cage, outlook, today), role),
                below(new Actions(room, cage, outlook, today), role),
                yesterday,
                say.card(cage)
                        .map(sentence -> new CageState.CardNotice(
                                sentence,
                                role == Role.SITTER
                                        ? CageState.CardNotice.Ways.PENCIL
                                        : CageState.CardNotice.Ways.PENCIL_OR_PRINT)),
                yesterday ? Optional.empty() : task().map(say::chore));
    }

    /** What whoever follows the sitter's list has to do here at this hour. */
    private Optional<Task> task() {
        return followsTheSittersList()
                ? DailyList.openAt(desk.room(), desk.today(), desk.time(), here.name()).stream()
                        .findFirst()
                : Optional.empty();
    }

    private boolean followsTheSittersList() {
        return pen.holder()
                .filter(person -> Audience.of(desk.room(), desk.today(), person) == Audience.SITTER)
                .isPresent();
    }

    private Optional<Actions> actions() {
        return cage().map(cage ->
                new Actions(desk.room(), cage, Almanac.of(desk.room()).nest(cage), desk.today()));
    }

    private List<CageState.Action> actions(Actions actions, Role role) {
        Optional<String> due = actions.due(role);
        return actions.likeliest(role).stream()
                .map(name -> action(name, due.filter(name::equals).isPresent()))
                .toList();
    }

    private List<CageState.Action> below(Actions actions, Role role) {
        List<CageState.Action> below = new ArrayList<>();
        if (actions.mayBeginParting(role)) {
            below.add(action("part", false));
        } else if (role != Role.SITTER && actions.isBeingParted()) {
            below.add(action("evidence", false));
        }
        if (!actions.others(role).isEmpty()) {
            below.add(action("more", false));
        }
        return below;
    }

    private CageState.Action action(String name, boolean due) {
        return new CageState.Action(name, words.say("cage.do." + name), due);
    }

    private Optional<Cage> cage() {
        return desk.room().cage(here.name());
    }

    private Role role() {
        return pen.holder().map(Person::role).orElse(Role.OWNER);
    }

    private LocalDate day() {
        return shown.now().yesterday() ? desk.today().minusDays(1) : desk.today();
    }

    // ------------------------------------------------------------------ checks

    /** Where the page shows a task that a look answers, it is answered with the look. */
    void allWell() {
        List<Deed> deeds = new ArrayList<>();
        deeds.add(
                new VisitDeed.Check(here.name(), org.cagewall.room.care.Answer.WELL, how(), round(), Optional.empty()));
        shown.now()
                .chore()
                .filter(chore -> chore.by() == CageState.Chore.Answered.ALL_WELL)
                .flatMap(chore -> task())
                .map(task -> new VisitDeed.TaskDone(task.id(), Optional.of(how())))
                .ifPresent(deeds::add);
        scribe.record(deeds, Message.of("cage.done.well", here.name()));
    }

    /** The task that the page shows is done. */
    void choreDone() {
        task().ifPresent(task -> scribe.record(
                new VisitDeed.TaskDone(task.id(), Optional.of(how())), Message.of("cage.done.chore", here.name())));
    }

    /** The sitter's looks belong to a round; a keeper's do not. */
    private Optional<DayPart> round() {
        return followsTheSittersList() && !shown.now().yesterday()
                ? Optional.of(DailyList.roundAt(desk.time()))
                : Optional.empty();
    }

    void different() {
        navigator.go(new Destination.Different(here.name(), round(), how(), day(), here.comingBack()));
    }

    private How how() {
        boolean justNow =
                here.came() == Destination.Came.BY_SCAN && !desk.instant().isAfter(opened.plus(VISIT));
        return justNow && !shown.now().yesterday() ? How.SCAN : How.HAND;
    }

    void yesterday(boolean yesterday) {
        shown.change(state -> state(yesterday));
    }

    // ------------------------------------------------------------------ what happened

    void act(String action) {
        if (nestActs.does(action) || birdActs.does(action) || partingActs.does(action)) {
            return;
        }
        String cage = here.name();
        switch (action) {
            case "cleaned" -> scribe.record(new RoomDeed.CageCleaned(cage), scribe.did("cleaned"));
            case "count" -> picking.count(Message.of("cage.count", cage), MOST_BIRDS, this::counted);
            case "note" ->
                picking.note(
                        Message.of("cage.note", cage),
                        text -> scribe.note(
                                new VisitDeed.Noted(Optional.of(cage), Optional.empty()), text, scribe.did("note")));
            case "change-use" -> changeUse();
            case "more" -> more();
            default -> throw new IllegalArgumentException("nothing is recorded by " + action);
        }
    }

    /** A count that is not what it should be is made twice; if it stays so, somebody has to know of it. */
    private void counted(int birds) {
        RoomDeed.Counted counted = new RoomDeed.Counted(here.name(), Optional.of(birds));
        Optional<Sight.Heads> other =
                cage().map(cage -> Sight.heads(desk.room(), cage, day())).filter(heads -> !heads.fits(birds));
        if (other.isEmpty()) {
            scribe.record(counted, scribe.did("count"));
            return;
        }
        Sight.Heads heads = other.get();
        boolean fewer = birds < heads.least();
        picking.ask(Question.of(
                Message.of("cage.count-other", here.name(), birds),
                Message.of(fewer ? "cage.count-fewer" : "cage.count-more", heads.least(), heads.most()),
                AnswerButton.main("again", Message.of("cage.count-again"), () -> act("count")),
                AnswerButton.plain(
                        "sure",
                        Message.of(fewer ? "cage.count-missing" : "cage.count-too-many"),
                        () -> isOff(counted, fewer ? Sign.MISSING : Sign.MORE_BIRDS)),
                AnswerButton.leave("leave", Message.of("cage.count-leave"))));
    }

    /** A sitter reports it, and is led to the phones; a keeper knows. */
    private void isOff(RoomDeed.Counted counted, Sign sign) {
        if (!followsTheSittersList()) {
            scribe.record(counted, scribe.did("count"));
            return;
        }
        scribe.record(
                List.of(counted, VisitDeed.Check.different(here.name(), how(), round(), List.of(sign))),
                scribe.did("count-other"),
                room -> navigator.go(new Destination.Phone(Danger.of(sign), Optional.of(here.name()))));
    }

    private void more() {
        picking.pick(
                Message.of("cage.more", here.name()),
                actions().stream()
                        .flatMap(actions -> actions.others(role()).stream())
                        .map(name -> new Option<>(name, RowFace.of("", words.say("cage.do." + name), ""), name))
                        .toList(),
                this::act);
    }

    private void changeUse() {
        picking.pick(
                Message.of("cage.which-use", here.name()),
                Stream.of(Use.values())
                        .map(use -> new Option<>(
                                use.name().toLowerCase(Locale.ROOT),
                                RowFace.of("", words.say("cage.as", use), ""),
                                use))
                        .toList(),
                use -> scribe.record(
                        new RoomDeed.CageUseChanged(here.name(), use, Optional.empty()), scribe.did("change-use")));
    }

    /** An egg or chick was touched in the box. */
    void lying(CageState.LyingFace face) {
        if (role() == Role.SITTER) {
            picking.tell(Message.of("cage.an-egg", face.said()), Message.of("cage.look-and-shut"));
            return;
        }
        if (face.look() == EggLook.MOVED_AWAY) {
            face.lying()
                    .map(lying -> desk.room().cageName(lying.egg().nest()))
                    .ifPresent(cage -> navigator.go(Destination.Cage.byHand(cage)));
            return;
        }
        List<Option<Runnable>> menu = new ArrayList<>(nestActs.menu(face));
        face.lying()
                .ifPresent(lying -> menu.add(new Option<>(
                        "strike",
                        RowFace.of("", words.say("cage.never-laid"), ""),
                        () -> entry(entryOf(lying.egg().entry(), face)))));
        picking.pick(Message.of("cage.an-egg", face.said()), menu, Runnable::run);
    }

    private CageState.EntryFace entryOf(long number, CageState.LyingFace face) {
        return shown.now().entries().stream()
                .flatMap(List::stream)
                .filter(CageState.EntryFace.class::isInstance)
                .map(CageState.EntryFace.class::cast)
                .filter(entry -> entry.number() == number)
                .findFirst()
                .orElseGet(() ->
                        new CageState.EntryFace(number, number, face.line(), face.said(), false, 1, Optional.empty()));
    }

    /** A stage of parting was touched in its list. */
    void stage(CageState.StageFace stage) {
        if (stage.state() == RowFace.State.DONE) {
            picking.tell(Message.of("cage.stage-ask", stage.first()), Message.of("cage.stage-was", stage.second()));
        } else {
            partingActs.stage(stage.stage());
        }
    }

    /** A bird's card was touched. */
    void bird(long id) {
        desk.room()
                .bird(id)
                .ifPresent(bird -> picking.ask(Question.of(
                        Message.of("cage.bird", bird.ring()),
                        Message.of("cage.bird-text"),
                        AnswerButton.plain(
                                "look-over", Message.of("cage.do.look-over"), () -> birdActs.lookOver(bird, () -> {})),
                        AnswerButton.plain(
                                "treat",
                                Message.of("cage.do.treat"),
                                () -> birdActs.treat(bird, BirdDeed.TreatedFor.MITES_SEEN)),
                        AnswerButton.plain(
                                "birds", Message.of("cage.all-birds"), () -> navigator.go(new Destination.Birds())),
                        AnswerButton.leave("leave", Message.of("cage.leave")))));
    }

    // ------------------------------------------------------------------ mistakes and the card

    /** What was agreed about the cage by phone stands at its head as long as it holds. */
    private String withAgreements(Cage cage, String subtitle) {
        return Stream.concat(
                        desk.room().agreedAt(cage, desk.today()).stream().map(call -> words.say(call.agreement())),
                        Stream.of(subtitle))
                .collect(Collectors.joining(" \u00b7 "));
    }

    /** A line of the past was touched: nothing can be done about what lapsed. */
    void past(CageState.PastFace face) {
        if (face instanceof CageState.EntryFace entry) {
            entry(entry);
        } else {
            picking.tell(Message.of("cage.lapsed-title"), Message.of("cage.lapsed-text", face.what()));
        }
    }

    /** An entry was touched: it may be struck out, with a reason. */
    private void entry(CageState.EntryFace entry) {
        if (entry.struck()) {
            picking.tell(Message.of("cage.struck"), Message.of("cage.struck-text", entry.what()));
            return;
        }
        picking.ask(Question.of(
                Message.of("cage.strike", Math.max(1, entry.cages())),
                Message.of("cage.strike-text", entry.what()),
                strike(entry, Reason.WRONG_TOUCH),
                strike(entry, Reason.WRONG_CAGE),
                strike(entry, Reason.WRONG_DAY),
                AnswerButton.leave("leave", Message.of("cage.strike-no"))));
    }

    private AnswerButton strike(CageState.EntryFace entry, Reason why) {
        return AnswerButton.plain(
                why.id(),
                Message.of("cage.strike." + why.id()),
                () -> pen.strikeOut(entry.number(), entry.line(), why, Message.of("cage.done.struck")));
    }

    void pencilled() {
        scribe.record(new CardDeed.CardPencilled(here.name()), scribe.did("pencilled"));
    }

    void printCard() {
        navigator.go(Destination.Cards.of(here.name()));
    }
}
