package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.ClearEggs;
import org.cagewall.almanac.Coming;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Overdue;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.StageOutlook;
import org.cagewall.almanac.Window;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.room.Cage;
import org.cagewall.room.Reason;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.Stage;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Puts what lies in a nest, and what comes next there, into the words of the cage's page. Pure; any thread. */
final class NestWords {

    /** More sentences below the eggs are not read by somebody with wet hands. */
    private static final int MOST_SENTENCES = 4;

    private final Room room;
    private final Cage cage;
    private final Outlook outlook;
    private final LocalDate today;
    private final Words words;

    NestWords(Room room, Cage cage, Outlook outlook, LocalDate today, Words words) {
        this.room = room;
        this.cage = cage;
        this.outlook = outlook;
        this.today = today;
        this.words = words;
    }

    /** What a keeper sees: everything that lies in the box. Nothing where there is no pair and nothing in a nest. */
    Optional<CageState.Nest> nest(Role role) {
        List<CageState.Lot> lots = lots();
        if (outlook.pair().isEmpty() && lots.isEmpty()) {
            return Optional.empty();
        }
        boolean fed = role != Role.SITTER && !outlook.chicksHere().isEmpty();
        return Optional.of(new CageState.Nest(
                words.say(heading(lots)),
                line(),
                lots,
                role == Role.SITTER ? List.of(words.say("cage.look-and-shut")) : sentences(),
                fed ? Optional.of(words.say("cage.do.all-fed")) : Optional.empty()));
    }

    private String heading(List<CageState.Lot> lots) {
        boolean noneOut = outlook.chicksHere().stream().noneMatch(NestWords::isOut);
        if (noneOut) {
            return lots.isEmpty() && hasNoBox() ? "cage.nest-box" : "cage.in-the-box";
        }
        boolean onlyOut = outlook.eggsHere().isEmpty()
                && cage.dummies() == 0
                && outlook.chicksHere().stream().allMatch(NestWords::isOut);
        return onlyOut ? "cage.young-out" : "cage.in-and-out";
    }

    private static boolean isOut(ChickOutlook chick) {
        return chick.chick().outOfBox().isPresent();
    }

    private boolean hasNoBox() {
        return cage.box().hanging().isEmpty();
    }

    // ------------------------------------------------------------------ what lies there

    List<CageState.LyingFace> eggs() {
        return outlook.eggsHere().stream().map(this::egg).toList();
    }

    List<CageState.LyingFace> chicks() {
        return outlook.chicksHere().stream().map(this::chick).toList();
    }

    private List<CageState.Lot> lots() {
        Map<Long, List<CageState.LyingFace>> byRound = new LinkedHashMap<>();
        Map<Long, Round> rounds = new LinkedHashMap<>();
        for (CageState.LyingFace face : all()) {
            Lying lying = face.lying().orElseThrow();
            long key = isOwn(lying) ? lying.round().id() : youngestRound();
            byRound.computeIfAbsent(key, none -> new ArrayList<>()).add(face);
            if (isOwn(lying)) {
                rounds.put(key, lying.round());
            }
        }
        if (cage.dummies() > 0) {
            byRound.computeIfAbsent(youngestRound(), none -> new ArrayList<>()).addAll(dummies());
        }
        boolean several = byRound.size() > 1;
        return byRound.entrySet().stream()
                .map(lot -> new CageState.Lot(
                        several
                                ? Optional.ofNullable(rounds.get(lot.getKey()))
                                        .map(round -> words.say("cage.lot", round.number()))
                                        .orElse(words.say("cage.lot-moved-in"))
                                : "",
                        lot.getValue()))
                .toList();
    }

    private List<CageState.LyingFace> all() {
        Stream<CageState.LyingFace> away = outlook.eggs().stream()
                .filter(egg -> !egg.here() && egg.lying().egg().isInNest() && isOwn(egg.lying()))
                .map(this::away);
        return Stream.of(chicks().stream(), eggs().stream(), away)
                .flatMap(faces -> faces)
                .toList();
    }

    private boolean isOwn(Lying lying) {
        return lying.egg().cage() == cage.id();
    }

    private long youngestRound() {
        return outlook.underWay().map(each -> each.round().id()).orElse(-1L);
    }

    private CageState.LyingFace egg(EggOutlook it) {
        Lying lying = it.lying();
        Egg egg = lying.egg();
        EggState state = egg.state();
        String word =
                words.say(state == EggState.NOT_CANDLED ? "cage.to-candle" : "word.eggstate." + Message.word(state));
        String second = isOwn(lying)
                ? it.hatch().map(due -> due(due.window())).orElse("")
                : words.say("cage.from", room.cageName(egg.cage()));
        return face(
                "egg",
                EggLook.valueOf(state.name()),
                lying,
                word,
                second,
                words.say("cage.egg-said", lying.name(cage.id()), words.date(egg.laid()), state)
                        + said(lying, second)
                        + (egg.place() == EggPlace.BOX ? "" : ", " + words.say("cage.laid-at", egg.place())));
    }

    private CageState.LyingFace chick(ChickOutlook it) {
        Lying lying = it.lying();
        Chick chick = it.chick();
        boolean out = chick.outOfBox().isPresent();
        int age = it.age(today);
        String line = words.say(chick.about() ? "cage.about-days" : "cage.days", age);
        String second = next(it).orElse("");
        return face(
                "chick",
                out ? EggLook.FLEDGED : age == 0 ? EggLook.HATCHLING : EggLook.CHICK,
                lying,
                line,
                second,
                words.say(
                                out ? "cage.chick-said-out" : "cage.chick-said",
                                lying.name(cage.id()),
                                line,
                                chick.ringWorn().orElse(words.say("cage.no-ring")))
                        + said(lying, second));
    }

    private Optional<String> next(ChickOutlook chick) {
        Optional<String> ring = chick.ringing()
                .filter(due ->
                        due.isOpen() && !today.isAfter(due.window().latest().plusDays(Coming.RING_DAYS)))
                .map(due -> words.say(
                        by("cage.ring-by", due), day(due.window(), due.window().latest())));
        Optional<String> check = chick.ringCheck()
                .filter(due ->
                        due.isOpen() && !today.isAfter(due.window().latest().plusDays(Coming.RING_DAYS)))
                .map(due -> words.say("cage.ring-on"));
        Optional<String> leave = chick.outOfBox()
                .filter(Due::isOpen)
                .map(due -> words.say(
                        by("cage.out-by", due), day(due.window(), due.window().latest())));
        Optional<String> wean = chick.independent()
                .filter(Due::isOpen)
                .map(due -> due.window().earliest().isAfter(today)
                        ? words.say(
                                "cage.wean-from", day(due.window(), due.window().earliest()))
                        : words.say(
                                "cage.wean-by", day(due.window(), due.window().latest())));
        return ring.or(() -> check).or(() -> leave).or(() -> wean);
    }

    /** A guessed day is about, and not by. */
    private static String by(String key, Due due) {
        return due.window().about() ? key + "-about" : key;
    }

    private CageState.LyingFace away(EggOutlook it) {
        Lying lying = it.lying();
        String to = words.say("cage.to", room.cageName(lying.egg().nest()));
        return face(
                "away",
                EggLook.MOVED_AWAY,
                lying,
                words.say("cage.moved"),
                to,
                words.say(
                        "cage.away-said",
                        lying.egg().mark(),
                        room.cageName(lying.egg().nest()),
                        lying.egg().letter().orElse("-")));
    }

    private List<CageState.LyingFace> dummies() {
        return IntStream.rangeClosed(1, cage.dummies())
                .mapToObj(i -> new CageState.LyingFace(
                        "dummy." + i,
                        EggLook.DUMMY,
                        "\u2013",
                        words.say("cage.dummy"),
                        "",
                        words.say("cage.dummy-said"),
                        Optional.empty()))
                .toList();
    }

    private CageState.LyingFace face(String kind, EggLook look, Lying lying, String line, String second, String said) {
        String mark = kind.equals("away") ? lying.egg().mark() : lying.name(cage.id());
        boolean twice = outlook.eggs().stream()
                .filter(other -> other.lying().egg().isInNest() && other.here())
                .map(EggOutlook::lying)
                .anyMatch(other -> !other.equals(lying) && other.name(cage.id()).equals(mark));
        String name = kind + "." + (twice ? lying.round().number() + "." : "") + mark;
        return new CageState.LyingFace(name, look, mark, line, second, said, Optional.of(lying));
    }

    private String said(Lying lying, String second) {
        String from = isOwn(lying)
                ? ""
                : ", " + words.say("cage.from", room.cageName(lying.egg().cage()));
        return second.isEmpty() || !isOwn(lying) ? from : ", " + second;
    }

    // ------------------------------------------------------------------ what comes next

    private String line() {
        return Coming.at(outlook, today).stream()
                .filter(coming -> coming.what() == Coming.What.HATCH
                        || coming.what() == Coming.What.FIRST_EGG
                        || !coming.window().isPast(today)
                                && (coming.what() == Coming.What.NEXT_EGG || coming.what() == Coming.What.NEXT_ROUND))
                .min(Comparator.comparing(coming -> coming.what() != Coming.What.HATCH))
                .map(this::line)
                .or(() -> outlook.underWay()
                        .map(each -> words.say(
                                "cage.round",
                                each.round().number(),
                                each.round().eggs().size())))
                .orElse(outlook.pair().isEmpty() ? "" : words.say(hasNoBox() ? "cage.no-box-on" : "cage.no-round"));
    }

    private String line(Coming coming) {
        String what = Message.word(coming.what());
        if (coming.window().isPast(today)) {
            return words.say(
                    "cage.line-past." + what,
                    day(coming.window(), coming.window().latest()));
        }
        boolean again = coming.what() == Coming.What.HATCH && hasHatched(coming.whom());
        return words.say("cage.line." + what + (again ? "-again" : ""), expected(coming.window()));
    }

    /** Whether a chick came of the same round before. */
    private boolean hasHatched(List<Lying> eggs) {
        return eggs.stream().flatMap(egg -> egg.round().eggs().stream()).anyMatch(egg -> egg.chick()
                .isPresent());
    }

    private List<String> sentences() {
        List<String> all = new ArrayList<>();
        trampled().ifPresent(all::add);
        List<Coming> coming = Coming.at(outlook, today);
        boolean backs = coming.stream().anyMatch(each -> each.what() == Coming.What.BACKS && each.isDue(today));
        List<Coming> toDo = coming.stream()
                .filter(each -> each.what().isKeepers() && !each.isStage())
                .filter(each -> !(backs && each.what() == Coming.What.NEST_LOOK))
                .toList();
        toDo.stream().filter(each -> each.isDue(today)).forEach(each -> all.add(toDo(each)));
        toDo.stream().filter(each -> !each.isDue(today)).limit(1).forEach(each -> all.add(toDo(each)));
        overdue().ifPresent(all::add);
        missedRings().ifPresent(all::add);
        unsat().ifPresent(all::add);
        nothingLaid().ifPresent(all::add);
        clear().ifPresent(all::add);
        fledging().ifPresent(all::add);
        if (all.size() < 2) {
            box().ifPresent(all::add);
        }
        return all.subList(0, Math.min(MOST_SENTENCES, all.size()));
    }

    /** Young that can leave the box tread on the eggs of the next round. */
    private Optional<String> trampled() {
        boolean eggs =
                outlook.eggsHere().stream().anyMatch(egg -> egg.lying().egg().mayHatch());
        boolean big = outlook.timetable()
                .span(Timing.OUT_OF_BOX)
                .filter(days -> outlook.chicksHere().stream().anyMatch(chick -> chick.age(today) >= days.earliest()))
                .isPresent();
        return eggs && big ? Optional.of(words.say("cage.trampled")) : Optional.empty();
    }

    private String toDo(Coming coming) {
        String what = words.say(
                "cage.next." + (isSecondLook(coming) ? "candle-again" : Message.word(coming.what())),
                names(coming.whom()),
                coming.whom().size());
        if (coming.isLate(today)) {
            return words.say("cage.late", what, words.shortDay(coming.window().latest()));
        }
        Window window = coming.window();
        if (window.earliest().equals(window.latest())) {
            return words.say(
                    "cage.sentence", what, window.latest().equals(today) ? words.say("cage.on-today") : on(window));
        }
        if (coming.isDue(today)) {
            return words.say("cage.by", what, day(window, window.latest()));
        }
        return words.say("cage.sentence", what, between(window));
    }

    private boolean isSecondLook(Coming coming) {
        return coming.what() == Coming.What.CANDLE
                && coming.whom().stream()
                        .allMatch(lying -> lying.egg().finding().isPresent());
    }

    private Optional<String> overdue() {
        return Overdue.at(outlook, today, Overdue.What.HATCH)
                .map(late -> words.say(
                        "cage.overdue", names(late.whom()), late.whom().size()));
    }

    /** What nobody can act on any more stays said here. */
    private Optional<String> missedRings() {
        List<ChickOutlook> missed = outlook.chicksHere().stream()
                .filter(chick -> Overdue.missed(chick)
                        .filter(from -> !today.isBefore(from))
                        .isPresent())
                .toList();
        return missed.stream()
                .flatMap(chick -> chick.ringing().stream())
                .map(due -> due.window().latest())
                .max(Comparator.naturalOrder())
                .map(last -> words.say(
                        "cage.missed-ring",
                        names(missed.stream().map(ChickOutlook::lying).toList()),
                        words.shortDay(last)));
    }

    private Optional<String> unsat() {
        return outlook.eggsHere().stream()
                .filter(egg -> egg.liesUnsat(today))
                .findFirst()
                .map(egg -> words.say(
                        "cage.unsat",
                        egg.lying().name(cage.id()),
                        words.shortDay(egg.unsat().orElseThrow().staleFrom())));
    }

    private Optional<String> nothingLaid() {
        return outlook.nextEgg()
                .filter(egg ->
                        egg.tooLongFrom().filter(from -> !today.isBefore(from)).isPresent()
                                && today.isBefore(egg.givenUp()))
                .flatMap(egg -> outlook.underWay().flatMap(each -> each.round().lastLaid()))
                .map(day -> words.say("cage.no-egg-since", words.shortDay(day)));
    }

    private Optional<String> clear() {
        Optional<ClearEggs> mayGo = outlook.clearEggs().stream()
                .filter(clear -> !today.isBefore(clear.from()))
                .findFirst();
        if (mayGo.isPresent()) {
            return Optional.of(words.say(
                    "cage.clear-may-go",
                    names(mayGo.get().eggs()),
                    mayGo.get().eggs().size()));
        }
        List<Lying> clear = outlook.eggsHere().stream()
                .map(EggOutlook::lying)
                .filter(lying -> lying.egg().state() == EggState.CLEAR)
                .toList();
        return clear.isEmpty()
                ? Optional.empty()
                : Optional.of(words.say("cage.clear-stays", names(clear), clear.size()));
    }

    private Optional<String> fledging() {
        return Coming.at(outlook, today).stream()
                .filter(coming -> coming.what() == Coming.What.LEAVE_BOX && coming.isDue(today))
                .findFirst()
                .map(coming -> words.say(
                        "cage.sentence",
                        words.say(
                                "cage.next.leave-box",
                                names(coming.whom()),
                                coming.whom().size()),
                        between(coming.window())));
    }

    private Optional<String> box() {
        if (outlook.pair().isEmpty()) {
            return Optional.empty();
        }
        Pair pair = outlook.pair().get();
        if (room.henOut(pair).isPresent()) {
            return room.henOut(pair).map(day -> words.say("cage.hen-out", words.shortDay(day)));
        }
        if (room.cockOut(pair).isPresent()) {
            return room.cockOut(pair).map(day -> words.say("cage.cock-out", words.shortDay(day)));
        }
        if (cage.box().isTurned()) {
            return cage.box().turned().map(day -> words.say("cage.box-turned", words.shortDay(day)));
        }
        if (cage.box().isOn()) {
            return cage.box().on().map(day -> words.say("cage.box-on", words.shortDay(day)));
        }
        return Optional.of(words.say("cage.box-none"));
    }

    // ------------------------------------------------------------------ parting

    Optional<CageState.Parting> parting() {
        return outlook.parting().map(parting -> parting.on(today)).flatMap(parting -> parting.begun()
                .map(begun -> new CageState.Parting(
                        words.say("cage.parting", words.shortDay(begun.day()), begun.reason()),
                        Stream.of(Stage.values())
                                .map(stage -> stage(stage, parting))
                                .toList())));
    }

    private CageState.StageFace stage(Stage stage, PartingOutlook parting) {
        StageOutlook outlook = parting.stage(stage);
        String name = words.say("cage.stage." + Message.word(stage), bird(stage));
        if (!outlook.isOpen()) {
            String how = outlook.due()
                    .flatMap(Due::happened)
                    .map(day -> words.say("cage.stage-done", words.shortDay(day)))
                    .or(() -> skippedFor(stage).map(why -> words.say("cage.stage-skipped", why)))
                    .orElseGet(() -> words.say("cage.stage-left-out"));
            return new CageState.StageFace(stage, name, how, RowFace.State.DONE);
        }
        String when = stage == Stage.HEN_OUT && parting.toFlight().isPresent()
                ? toFlight(parting) + henFirst(parting)
                : outlook.due().map(due -> when(due.window())).orElse("");
        return new CageState.StageFace(stage, name, when, RowFace.State.OPEN);
    }

    private String toFlight(PartingOutlook parting) {
        return parting.toFlight()
                .map(flight -> words.say("cage.to-flight", words.shortDay(flight.morning()))
                        + flight.moved().map(why -> " " + words.say(why)).orElse(""))
                .orElse("");
    }

    /** While the cock is there too she may go before him, as soon as he can rear alone. */
    private String henFirst(PartingOutlook parting) {
        return parting.henOutEarly()
                .map(day -> " "
                        + (day.isAfter(today)
                                ? words.say("cage.hen-first-from", words.shortDay(day))
                                : words.say("cage.hen-first")))
                .orElse("");
    }

    private String when(Window window) {
        return window.isPast(today)
                ? words.say("cage.stage-late", words.shortDay(window.latest()))
                : window.earliest().equals(window.latest()) ? on(window) : between(window);
    }

    private String bird(Stage stage) {
        return outlook.pair()
                .map(pair -> stage == Stage.COCK_OUT
                        ? room.ring(pair.cock())
                        : stage == Stage.HEN_OUT ? room.ring(pair.hen()) : "")
                .map(ring -> ring.replace(' ', '\u00A0'))
                .orElse("");
    }

    private Optional<String> skippedFor(Stage stage) {
        return outlook.pair().stream()
                .flatMap(pair -> pair.skipped().stream())
                .filter(skip -> skip.stage() == stage)
                .map(skip -> words.say(Reason.told(skip.why())))
                .findFirst();
    }

    // ------------------------------------------------------------------ words

    private String names(List<Lying> lyings) {
        return lyings.stream().map(lying -> lying.name(cage.id())).collect(Collectors.joining(",\u00A0"));
    }

    private String between(Window window) {
        if (window.about()) {
            return words.say("cage.about", words.shortDay(window.expected()));
        }
        return words.say("cage.between", words.days(window.earliest(), window.latest()));
    }

    private String on(Window window) {
        return words.say(window.about() ? "cage.about" : "cage.on", words.shortDay(window.expected()));
    }

    private String expected(Window window) {
        return window.about() || window.earliest().equals(window.latest())
                ? about(window)
                : about(window) + ", " + between(window);
    }

    /** The day on which it is expected; about that day where it leans on a guess. */
    /** When an egg is to hatch. Beside a guess there is no room for the word. */
    private String due(Window window) {
        return window.about() ? about(window) : words.say("cage.due", about(window));
    }

    private String about(Window window) {
        return day(window, window.expected());
    }

    private String day(Window window, LocalDate day) {
        return window.about() ? words.say("cage.about", words.shortDay(day)) : words.shortDay(day);
    }
}
