package org.cagewall.kiosk.birds;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.cagewall.deed.BirdDeed;
import org.cagewall.deed.DateOrYear;
import org.cagewall.deed.Deed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.list.LogFace;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Way;
import org.cagewall.room.bird.Whither;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Finds birds, shows what is known of one, and records what happens to it. Used on the event thread. */
public final class BirdsPresenter {

    private static final int MOST_ROWS = 40;
    private static final int MOST_ENTRIES = 12;
    private static final int MOST_COLOURS = 4;
    private static final int YEARS_OFFERED = 5;
    private static final int MOST_LETTERS = 40;

    private final Desk desk;
    private final Pen pen;
    private final Words words;
    private final Shown<BirdsState> shown;
    private final Refresher watch;
    private Optional<Bird> ofThePast = Optional.empty();

    /** What was filled in for a bird to be added. */
    /** A year as rings bear it. */
    private static final Pattern YEAR = Pattern.compile("(19[5-9]|20[0-9]|21[0-9])[0-9]");

    record Newcomer(
            String ring, String ringYear, Optional<Sex> sex, String colour, String hatched, Optional<String> cage) {}

    public BirdsPresenter(Desk desk, Pen pen, Words words, Consumer<BirdsState> view) {
        this.desk = desk;
        this.pen = pen;
        this.words = words;
        this.watch = new Refresher(desk, this::refresh, pen, this::refresh);
        this.shown = new Shown<>(first(), view);
    }

    Refresher watch() {
        return watch;
    }

    void search(String text) {
        look(text, shown.now().search().sexes(), shown.now().search().places());
    }

    void sexes(Set<Sex> only) {
        look(shown.now().search().text(), only, shown.now().search().places());
    }

    void places(Set<Whereabouts> only) {
        look(shown.now().search().text(), shown.now().search().sexes(), only);
    }

    private void look(String text, Set<Sex> sexes, Set<Whereabouts> places) {
        ofThePast = Optional.empty();
        shown.change(state -> state.finding(found(text, sexes, places)));
        if (shown.now().search().rows().isEmpty() && !text.isBlank()) {
            desk.study(book -> book.bird(text.strip()), pen.reading(this::takePast));
        }
    }

    private void takePast(Optional<Bird> bird) {
        ofThePast = bird;
        BirdsState.Search now = shown.now().search();
        shown.change(state -> state.finding(found(now.text(), now.sexes(), now.places())));
    }

    void open(String ring) {
        bird(ring).ifPresent(bird -> {
            shown.change(state -> state.at(BirdsState.Page.BIRD).of(Optional.of(sheet(bird, List.of()))));
            readEntries(bird);
        });
    }

    /** Back to all birds. */
    void all() {
        shown.change(state -> state.at(BirdsState.Page.SEARCH).of(Optional.empty()));
    }

    void newBird() {
        shown.change(state -> state.at(BirdsState.Page.NEW_BIRD));
    }

    void act(BirdAct act) {
        switch (act) {
            case LOOSE -> record(new BirdDeed.BirdLoose(Optional.of(ring()), Optional.empty()), BirdAct.LOOSE);
            case FOUND -> record(new BirdDeed.BirdFound(Optional.of(ring()), Optional.empty()), BirdAct.FOUND);
            default -> shown.change(state -> state.doing(Optional.of(act)));
        }
    }

    void leave() {
        shown.change(state -> state.doing(Optional.empty()));
    }

    void move(Optional<String> cage, BirdsState.Day day) {
        if (cage.isEmpty()) {
            wrong("cage", "birds.choose-cage");
            return;
        }
        record(
                new BirdDeed.BirdMoved(ring(), cage.get(), Optional.empty(), Optional.empty()),
                day,
                "",
                Message.of("birds.done.move", ring(), cage.get()));
    }

    void lookedOver(Optional<Condition> condition, OptionalInt grams, String note, BirdsState.Day day) {
        if (condition.isEmpty()) {
            wrong("condition", "birds.choose-condition");
            return;
        }
        Optional<BigDecimal> weight = grams.isPresent() && grams.getAsInt() > 0
                ? Optional.of(BigDecimal.valueOf(grams.getAsInt()))
                : Optional.empty();
        record(
                new BirdDeed.BirdLookedOver(
                        ring(),
                        condition.get(),
                        weight,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                day,
                note,
                done(BirdAct.LOOKED_OVER));
    }

    void treated(String product, Optional<BirdDeed.TreatedFor> reason, String note, BirdsState.Day day) {
        if (product.isBlank() || isLong(product)) {
            wrong("product", product.isBlank() ? "birds.write-product" : "birds.too-long");
        } else if (reason.isEmpty()) {
            wrong("reason", "birds.choose-reason");
        } else {
            record(
                    new BirdDeed.BirdTreated(
                            ring(),
                            product.strip(),
                            reason.get(),
                            Optional.empty(),
                            Optional.empty(),
                            Optional.empty()),
                    day,
                    note,
                    done(BirdAct.TREATED));
        }
    }

    void out(Optional<Whither> where, String place, String note, BirdsState.Day day) {
        if (where.isEmpty()) {
            wrong("where", "birds.choose-where");
        } else if (isLong(place)) {
            wrong("place", "birds.too-long");
        } else {
            record(
                    new BirdDeed.BirdOut(ring(), where.get(), written(place), Optional.empty()),
                    day,
                    note,
                    done(BirdAct.OUT));
        }
    }

    void back(String result, BirdsState.Day day) {
        record(new BirdDeed.BirdBack(ring(), written(result)), day, "", done(BirdAct.BACK));
    }

    void left(Optional<Way> how, String place, String likely, BirdsState.Day day) {
        if (how.isEmpty()) {
            wrong("how", "birds.choose-how");
        } else if (isLong(place)) {
            wrong("place", "birds.too-long");
        } else {
            Deed gone = new BirdDeed.BirdLeft(
                    Optional.of(ring()),
                    Optional.empty(),
                    Optional.empty(),
                    how.get(),
                    written(place),
                    written(likely));
            pen.record(List.of(gone), on(day), Optional.empty(), done(BirdAct.LEFT), room -> all());
        }
    }

    void sex(Optional<Sex> sex) {
        if (sex.isEmpty()) {
            wrong("sex", "birds.choose-sex");
            return;
        }
        record(new BirdDeed.BirdSexed(ring(), sex.get()), BirdAct.SEX);
    }

    void name(String name) {
        if (name.isBlank() || isLong(name)) {
            wrong("name", name.isBlank() ? "birds.write-name" : "birds.too-long");
            return;
        }
        record(new BirdDeed.BirdNamed(ring(), name.strip()), BirdAct.NAME);
    }

    void splitRing(String ring, BirdsState.Day day) {
        if (ring.isBlank() || isLong(ring)) {
            wrong("split", ring.isBlank() ? "birds.write-split" : "birds.too-long");
            return;
        }
        record(
                new BirdDeed.SplitRingPut(ring(), Optional.of(ring.strip())),
                day,
                "",
                Message.of("birds.done.split-ring", ring(), ring.strip()));
    }

    void splitRingOff(BirdsState.Day day) {
        record(
                new BirdDeed.SplitRingPut(ring(), Optional.empty()),
                day,
                "",
                Message.of("birds.done.split-ring-off", ring()));
    }

    void parents(String father, String mother) {
        if (father.isBlank() && mother.isBlank()) {
            wrong("father", "birds.write-parents");
            return;
        }
        record(new BirdDeed.ParentsSet(ring(), written(father), written(mother)), BirdAct.PARENTS);
    }

    void note(String text, BirdsState.Day day) {
        if (text.isBlank()) {
            wrong("note", "birds.write-note");
            return;
        }
        record(new VisitDeed.Noted(Optional.empty(), Optional.of(ring())), day, text, done(BirdAct.NOTE));
    }

    void add(Newcomer bird) {
        Optional<DateOrYear> hatched = DateOrYear.parse(bird.hatched().strip());
        if (bird.ring().isBlank() || isLong(bird.ring())) {
            wrong("ring", bird.ring().isBlank() ? "birds.write-ring" : "birds.too-long");
        } else if (bird.sex().isEmpty()) {
            wrong("sex", "birds.choose-sex");
        } else if (isLong(bird.colour())) {
            wrong("colour", "birds.too-long");
        } else if (!bird.hatched().isBlank() && hatched.isEmpty()) {
            wrong("hatched", "birds.write-hatched");
        } else if (!bird.ringYear().isBlank()
                && !YEAR.matcher(bird.ringYear().strip()).matches()) {
            wrong("ring-year", "birds.write-ring-year");
        } else if (bird.cage().isEmpty()) {
            wrong("cage", "birds.choose-cage");
        } else {
            Deed added = new BirdDeed.BirdAdded(
                    bird.ring().strip(),
                    bird.sex().get(),
                    Optional.empty(),
                    hatched,
                    written(bird.colour()),
                    Optional.empty(),
                    Optional.empty(),
                    bird.cage(),
                    Optional.empty(),
                    written(bird.ringYear()).map(Integer::valueOf));
            pen.record(
                    List.of(added),
                    desk.today(),
                    Optional.empty(),
                    Message.of(
                            "birds.done.added", bird.ring().strip(), bird.cage().get()),
                    room -> open(bird.ring().strip()));
        }
    }

    private void record(Deed deed, BirdAct act) {
        record(deed, BirdsState.Day.TODAY, "", done(act));
    }

    private void record(Deed deed, BirdsState.Day day, String note, Message done) {
        pen.record(List.of(deed), on(day), written(note), done, room -> {
            leave();
            refresh();
        });
    }

    private LocalDate on(BirdsState.Day day) {
        return day == BirdsState.Day.TODAY ? desk.today() : desk.today().minusDays(1);
    }

    private Message done(BirdAct act) {
        return Message.of("birds.done." + act.key(), ring());
    }

    private void wrong(String part, String key) {
        shown.change(state -> state.wrong(part, words.say(key)));
    }

    private static Optional<String> written(String text) {
        return text.isBlank() ? Optional.empty() : Optional.of(text.strip());
    }

    private static boolean isLong(String text) {
        String kept = text.strip();
        return kept.codePointCount(0, kept.length()) > MOST_LETTERS;
    }

    private String ring() {
        return shown.now().bird().map(BirdsState.Sheet::ring).orElse("");
    }

    private Optional<Bird> bird(String ring) {
        return desk.room().bird(ring).or(() -> ofThePast.filter(bird -> bird.answersTo(ring)));
    }

    private void readEntries(Bird bird) {
        desk.log(
                LogQuery.newest(MOST_ENTRIES).ofBird(bird.id()),
                answer -> answer.then(
                        log -> takeEntries(bird, log.stream().map(said()::entry).toList()),
                        why -> takeEntries(bird, unread("birds.not-read-why", why)),
                        code -> takeEntries(bird, unread("birds.not-read", code))));
    }

    /** Instead of the entries, why they could not be read. */
    private List<LogFace> unread(String key, Object why) {
        return List.of(new LogFace("", words.say(key, why), false));
    }

    private void takeEntries(Bird bird, List<LogFace> log) {
        shown.change(
                state -> state.of(state.bird().map(sheet -> sheet.id() == bird.id() ? sheet.withEntries(log) : sheet)));
    }

    private BirdsState first() {
        return new BirdsState(
                may(),
                BirdsState.Page.SEARCH,
                found("", Set.of(), Set.of()),
                Optional.empty(),
                Optional.empty(),
                Optional.empty(),
                said().walls(),
                colours(),
                years());
    }

    private void refresh() {
        BirdsState.Search search = shown.now().search();
        Optional<Bird> open = shown.now().bird().flatMap(sheet -> desk.room().bird(sheet.id()));
        shown.change(state -> new BirdsState(
                may(),
                state.page(),
                found(search.text(), search.sexes(), search.places()),
                open.map(bird -> sheet(
                                bird,
                                state.bird().map(BirdsState.Sheet::entries).orElse(List.of())))
                        .or(() -> state.bird().map(BirdsState.Sheet::ofThePast)),
                state.act(),
                state.problem(),
                said().walls(),
                colours(),
                years()));
        open.ifPresent(this::readEntries);
    }

    private BirdsState.May may() {
        return pen.holder().filter(person -> person.role() != Role.SITTER).isPresent()
                ? BirdsState.May.KEEP
                : BirdsState.May.WATCH;
    }

    private BirdWords said() {
        return new BirdWords(desk.room(), desk.today(), words);
    }

    private BirdsState.Search found(String text, Set<Sex> sexes, Set<Whereabouts> places) {
        Room room = desk.room();
        BirdWords said = said();
        List<Bird> present = room.birds().stream().filter(Bird::isPresent).toList();
        List<Bird> all = new ArrayList<>(present.stream()
                .filter(bird -> matches(bird, text.strip().toLowerCase(Locale.ROOT)))
                .filter(bird -> sexes.isEmpty() || sexes.contains(bird.sex()))
                .filter(bird -> places.isEmpty()
                        || Whereabouts.of(room, bird).filter(places::contains).isPresent())
                .sorted(Comparator.comparing(Bird::ring))
                .toList());
        if (all.isEmpty()) {
            ofThePast.filter(bird -> bird.answersTo(text.strip())).ifPresent(all::add);
        }
        boolean isAll = text.isBlank() && sexes.isEmpty() && places.isEmpty();
        int flock = room.cages().stream().mapToInt(cage -> cage.flock()).sum();
        return new BirdsState.Search(
                words.say("birds.subtitle", present.size(), flock) + (isAll ? "" : words.say("birds.fit", all.size())),
                text,
                sexes,
                places,
                offered(room, present),
                all.stream().limit(MOST_ROWS).map(said::row).toList(),
                Math.max(0, all.size() - MOST_ROWS));
    }

    private static List<Whereabouts> offered(Room room, List<Bird> present) {
        EnumSet<Whereabouts> offered = EnumSet.noneOf(Whereabouts.class);
        present.forEach(bird -> Whereabouts.of(room, bird).ifPresent(offered::add));
        return List.copyOf(offered);
    }

    private static boolean matches(Bird bird, String text) {
        return text.isEmpty()
                || List.of(Optional.of(bird.ring()), bird.called(), bird.colour()).stream()
                        .flatMap(Optional::stream)
                        .anyMatch(each -> each.toLowerCase(Locale.ROOT).contains(text));
    }

    private BirdsState.Sheet sheet(Bird bird, List<org.cagewall.kiosk.kit.list.LogFace> entries) {
        BirdWords said = said();
        return new BirdsState.Sheet(
                bird.id(), bird.ring(), bird.splitRing(), said.line(bird), said.known(bird), entries, acts(bird));
    }

    private List<BirdAct> acts(Bird bird) {
        if (!bird.isPresent()) {
            return List.of();
        }
        BirdAct loose = bird.loose() ? BirdAct.FOUND : BirdAct.LOOSE;
        if (may() == BirdsState.May.WATCH) {
            return List.of(BirdAct.NOTE, loose);
        }
        BirdAct out = bird.out().isPresent() ? BirdAct.BACK : BirdAct.OUT;
        return List.of(
                BirdAct.MOVE,
                BirdAct.LOOKED_OVER,
                BirdAct.TREATED,
                BirdAct.NOTE,
                out,
                loose,
                BirdAct.SEX,
                BirdAct.NAME,
                BirdAct.SPLIT_RING,
                BirdAct.PARENTS,
                BirdAct.LEFT);
    }

    private List<String> colours() {
        Map<String, Long> counted = desk.room().birds().stream()
                .flatMap(bird -> bird.colour().stream())
                .collect(Collectors.groupingBy(Function.identity(), Collectors.counting()));
        return counted.entrySet().stream()
                .sorted(Map.Entry.<String, Long>comparingByValue().reversed().thenComparing(Map.Entry.comparingByKey()))
                .limit(MOST_COLOURS)
                .map(Map.Entry::getKey)
                .toList();
    }

    private List<Integer> years() {
        int year = desk.today().getYear();
        return IntStream.range(0, YEARS_OFFERED)
                .map(back -> year - back)
                .boxed()
                .toList();
    }
}
