package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.RoomDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.RowFace;
import org.cagewall.kiosk.shell.Answer;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Seen;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.room.Bird;
import org.cagewall.room.Cage;
import org.cagewall.room.Condition;
import org.cagewall.room.EggPlace;
import org.cagewall.room.How;
import org.cagewall.room.LogEntry;
import org.cagewall.room.LogQuery;
import org.cagewall.room.Person;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Sex;
import org.cagewall.room.Use;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Records what is touched on a cage's page, and keeps the page as the cage is. Used on the event thread. */
public final class CagePresenter {

    private static final int ENTRIES = 12;
    private static final int MOST_BIRDS = 200;

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Picking picking;
    private final Words words;
    private final Destination.Cage here;
    private final Optional<String> scanned;
    private final Shown<CageState> shown;
    private final Watch watch;
    private List<LogEntry> log = List.of();

    public CagePresenter(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Picking picking,
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
        this.watch = new Watch(desk, this::refresh, pen, this::refresh);
        this.shown = new Shown<>(state(false), view);
    }

    Watch watch() {
        return watch;
    }

    private void refresh() {
        shown.change(state -> state(state.yesterday()));
        cage().ifPresent(cage -> desk.log(
                LogQuery.newest(ENTRIES).ofCage(cage.id()),
                answer -> answer.fold(
                        entries -> {
                            log = entries;
                            shown.change(state -> state(state.yesterday()));
                            return true;
                        },
                        refused -> false,
                        failed -> false)));
    }

    private CageState state(boolean yesterday) {
        Room room = desk.room();
        CageWords say = new CageWords(room, desk.today(), words);
        return cage().map(cage -> new CageState(
                        true,
                        words.say("cage.title", cage.name()),
                        say.subtitle(cage, scanned),
                        say.nest(cage),
                        say.birds(cage),
                        say.flock(cage),
                        say.entries(log),
                        Actions.at(room, cage, role()).stream()
                                .map(name -> new CageState.Action(name, words.say("cage.do." + name)))
                                .toList(),
                        yesterday,
                        say.card(cage)))
                .orElseGet(() -> new CageState(
                        false,
                        words.say("cage.title", here.name()),
                        words.say("cage.unknown"),
                        Optional.empty(),
                        List.of(),
                        Optional.empty(),
                        List.of(),
                        List.of(),
                        false,
                        Optional.empty()));
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

    void allWell() {
        record(check(org.cagewall.room.Answer.WELL, Optional.empty()), Message.of("cage.done.well", here.name()));
    }

    void different() {
        picking.different(Message.of("cage.different", here.name()), this::recordDifferent);
    }

    private void recordDifferent(Seen seen) {
        Optional<List<String>> signs = Optional.of(seen.signs()).filter(all -> !all.isEmpty());
        pen.record(
                List.of(check(org.cagewall.room.Answer.DIFFERENT, signs)),
                day(),
                seen.note(),
                Message.of("cage.done.different", here.name()),
                room -> offerPhone());
    }

    /** A sitter is led to the phones; a keeper knows whom to call. */
    private void offerPhone() {
        if (role() == Role.SITTER) {
            picking.ask(Question.of(
                    Message.of("cage.phone"),
                    Message.of("cage.phone-text"),
                    Answer.main("phone", Message.of("cage.phone-yes"), () -> navigator.go(new Destination.Phone())),
                    Answer.leave("later", Message.of("cage.phone-no"))));
        }
    }

    private Deed check(org.cagewall.room.Answer answer, Optional<List<String>> signs) {
        boolean byScan = here.came() == Destination.Came.BY_SCAN && !shown.now().yesterday();
        return new VisitDeed.Check(here.name(), answer, byScan ? How.SCAN : How.HAND, Optional.empty(), signs);
    }

    void yesterday(boolean yesterday) {
        shown.change(state -> state(yesterday));
    }

    // ------------------------------------------------------------------ what happened

    void act(String action) {
        String cage = here.name();
        switch (action) {
            case "egg" -> record(new NestDeed.EggLaid(cage, Optional.empty(), Optional.empty()), did("egg"));
            case "floor-egg" ->
                record(new NestDeed.EggLaid(cage, Optional.empty(), Optional.of(EggPlace.FLOOR)), did("floor-egg"));
            case "box-on" -> record(new NestDeed.BoxOn(cage), did("box-on"));
            case "box-turned" -> record(new NestDeed.BoxTurned(cage), did("box-turned"));
            case "box-off" -> record(new NestDeed.BoxOff(cage), did("box-off"));
            case "box-cleaned" -> record(new NestDeed.BoxCleaned(cage), did("box-cleaned"));
            case "round-over" -> record(new NestDeed.RoundEnded(cage), did("round-over"));
            case "cleaned" -> record(new RoomDeed.CageCleaned(cage), did("cleaned"));
            case "count" ->
                picking.count(
                        Message.of("cage.count", cage),
                        MOST_BIRDS,
                        birds -> record(new RoomDeed.Counted(cage, Optional.of(birds)), did("count")));
            case "note" ->
                picking.note(
                        Message.of("cage.note", cage),
                        text -> pen.record(
                                List.of(new VisitDeed.Noted(Optional.of(cage), Optional.empty())),
                                day(),
                                Optional.of(text),
                                did("note"),
                                room -> {}));
            case "pair-up" -> pairUp();
            case "put-in" -> putIn();
            case "take-out" -> takeOut();
            case "look-over" -> pickBirdHere("cage.look-over", this::lookOver);
            case "loose" -> loose();
            default -> throw new IllegalArgumentException("nothing is recorded by " + action);
        }
    }

    private Message did(String what) {
        return Message.of("cage.done." + what, here.name());
    }

    private void record(Deed deed, Message done) {
        pen.record(List.of(deed), day(), Optional.empty(), done, room -> {});
    }

    private void pairUp() {
        picking.pick(
                Message.of("cage.which-cock", here.name()),
                birds(Sex.COCK),
                cock -> picking.pick(
                        Message.of("cage.which-hen", cock.ring()),
                        birds(Sex.HEN),
                        hen -> record(
                                new NestDeed.PairedUp(here.name(), cock.ring(), hen.ring(), Optional.empty()),
                                did("pair-up"))));
    }

    private void putIn() {
        Optional<Cage> cage = cage();
        List<Option<Bird>> elsewhere =
                options(desk.room().birds().stream().filter(Bird::isPresent).filter(bird -> !bird.cage()
                        .equals(cage.map(Cage::id))));
        picking.pick(
                Message.of("cage.which-in", here.name()),
                elsewhere,
                bird -> record(
                        new BirdDeed.BirdMoved(bird.ring(), here.name(), Optional.empty(), Optional.empty()),
                        Message.of("cage.done.put-in", bird.ring(), here.name())));
    }

    private void takeOut() {
        pickBirdHere(
                "cage.which-out",
                bird -> picking.pick(
                        Message.of("cage.where-to", bird.ring()),
                        cages(),
                        to -> record(
                                new BirdDeed.BirdMoved(
                                        bird.ring(), to.name(), Optional.of(here.name()), Optional.empty()),
                                Message.of("cage.done.moved", bird.ring(), to.name()))));
    }

    private void loose() {
        pickBirdHere(
                "cage.which-loose",
                bird -> record(
                        new BirdDeed.BirdLoose(Optional.of(bird.ring()), Optional.empty()),
                        Message.of("cage.done.loose", bird.ring())));
    }

    private void lookOver(Bird bird) {
        picking.ask(Question.of(
                Message.of("cage.how-is", bird.ring()),
                Message.of("cage.how-is-text"),
                condition(bird, Condition.FIT),
                condition(bird, Condition.WATCH),
                condition(bird, Condition.ILL),
                Answer.leave("leave", Message.of("cage.leave"))));
    }

    private Answer condition(Bird bird, Condition condition) {
        String name = condition.name().toLowerCase(Locale.ROOT);
        return Answer.plain(
                name,
                Message.of("cage.condition." + name),
                () -> record(
                        new BirdDeed.BirdLookedOver(
                                bird.ring(),
                                condition,
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty(),
                                Optional.empty()),
                        Message.of("cage.done.looked-over", bird.ring())));
    }

    /** A bird's card was touched. */
    void bird(long id) {
        desk.room()
                .bird(id)
                .ifPresent(bird -> picking.ask(Question.of(
                        Message.of("cage.bird", bird.ring()),
                        Message.of("cage.bird-text"),
                        Answer.plain("look-over", Message.of("cage.do.look-over"), () -> lookOver(bird)),
                        Answer.plain(
                                "birds", Message.of("cage.all-birds"), () -> navigator.go(new Destination.Birds())),
                        Answer.leave("leave", Message.of("cage.leave")))));
    }

    // ------------------------------------------------------------------ mistakes and the card

    /** An entry was touched: it may be struck out, with a reason. */
    void entry(CageState.EntryFace entry) {
        if (entry.struck()) {
            picking.tell(Message.of("cage.struck"), Message.of("cage.struck-text", entry.what()));
            return;
        }
        picking.ask(Question.of(
                Message.of("cage.strike"),
                Message.of("cage.strike-text", entry.what()),
                strike(entry, "wrong-touch"),
                strike(entry, "wrong-cage"),
                strike(entry, "wrong-day"),
                Answer.leave("leave", Message.of("cage.strike-no"))));
    }

    private Answer strike(CageState.EntryFace entry, String why) {
        return Answer.plain(
                why,
                Message.of("cage.strike." + why),
                () -> pen.record(
                        new CardDeed.StruckOut(Math.toIntExact(entry.number()), words.say("cage.strike." + why)),
                        Message.of("cage.done.struck")));
    }

    /** An egg was touched. */
    void egg(CageState.EggFace egg) {
        shown.now().entries().stream()
                .filter(entry -> entry.number() == egg.entry())
                .findFirst()
                .ifPresentOrElse(
                        this::entry,
                        () -> entry(new CageState.EntryFace(egg.entry(), egg.entry(), egg.line(), egg.said(), false)));
    }

    void pencilled() {
        record(new CardDeed.CardPencilled(here.name()), did("pencilled"));
    }

    void printCard() {
        navigator.go(new Destination.Cards());
    }

    // ------------------------------------------------------------------ choices

    private void pickBirdHere(String title, Consumer<Bird> then) {
        List<Bird> birds = cage().map(desk.room()::birdsIn).orElse(List.of());
        if (birds.size() == 1) {
            then.accept(birds.get(0));
            return;
        }
        picking.pick(Message.of(title, here.name()), options(birds.stream()), then);
    }

    private List<Option<Bird>> birds(Sex sex) {
        Room room = desk.room();
        return options(room.birds().stream()
                .filter(bird -> bird.isPresent() && bird.out().isEmpty())
                .filter(bird -> bird.sex() == sex || bird.sex() == Sex.UNKNOWN)
                .filter(bird -> room.pairs().stream()
                        .filter(room::together)
                        .noneMatch(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())));
    }

    private List<Option<Bird>> options(Stream<Bird> birds) {
        return birds.sorted(Comparator.comparing(Bird::ring))
                .map(bird -> new Option<>(
                        bird.ring(),
                        RowFace.of(
                                bird.cage().map(desk.room()::cageName).orElse(""),
                                bird.ring(),
                                words.say(
                                        "cage.bird-line",
                                        bird.sex(),
                                        bird.colour().orElse(""))),
                        bird))
                .toList();
    }

    /** Where a bird may go: flights and stock cages first. */
    private List<Option<Cage>> cages() {
        Room room = desk.room();
        return room.walk()
                .filter(cage -> !cage.name().equalsIgnoreCase(here.name()))
                .sorted(Comparator.comparing((Cage cage) -> !isForMany(cage.use())))
                .map(cage -> new Option<>(
                        cage.name(),
                        RowFace.of(cage.name(), words.say("cage.use", cage.use(), room.headsIn(cage)), ""),
                        cage))
                .toList();
    }

    private static boolean isForMany(Use use) {
        return use == Use.FLIGHT || use == Use.STOCK;
    }
}
