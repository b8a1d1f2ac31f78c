package org.cagewall.kiosk.cage;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.NestState;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.RingLedger;
import org.cagewall.deed.ChickDeed;
import org.cagewall.deed.Deed;
import org.cagewall.deed.EggDeed;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.VisitDeed;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.plan.MoveByHand;
import org.cagewall.room.Cage;
import org.cagewall.room.Keeps;
import org.cagewall.room.Noticed;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.Use;
import org.cagewall.room.care.LogQuery;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.ChickTrait;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** What happens to the eggs and chicks of one cage, from the touch to the record. Free of Swing; event thread. */
final class NestActs {

    private static final int MOST_DUMMIES = 6;

    private final Scribe scribe;
    private final Picking picking;
    private final NestForms forms;
    private final Words words;

    NestActs(Scribe scribe, Picking picking, NestForms forms, Words words) {
        this.scribe = scribe;
        this.picking = picking;
        this.forms = forms;
        this.words = words;
    }

    /** Whether there was something to do under this name. */
    boolean does(String action) {
        String cage = scribe.name();
        switch (action) {
            case "egg" -> laid(EggPlace.BOX, "egg");
            case "floor-egg" -> laid(EggPlace.FLOOR, "floor-egg");
            case "dish-egg" -> laid(EggPlace.DISH, "dish-egg");
            case "broken" -> pickEgg("cage.which-broken", egg -> removed(egg, Optional.of(WhyRemoved.BROKEN)));
            case "candle" -> candle();
            case "hatched" -> pickEgg("cage.which-hatched", this::hatched);
            case "egg-out" -> forms.takeOut(title("cage.which-out-egg"), faces().eggs(), this::takenOut);
            case "move-egg" -> pickEgg("cage.which-moved", this::moveEgg);
            case "sitting" -> scribe.record(new NestDeed.Sitting(cage), scribe.did("sitting"));
            case "eggs-back" -> scribe.record(new NestDeed.EggsPutBack(cage), scribe.did("eggs-back"));
            case "hen-off" -> henOff();
            case "dummies" -> dummies();
            case "all-fed" -> allFed();
            case "nest-look" -> look();
            case "ring" -> ring();
            case "ring-on" ->
                pickChick("cage.which-ring-on", NestActs::hasUncheckedRing, chick -> chick("ring-on", chick));
            case "left-box" ->
                pickChick(
                        "cage.which-left-box", chick -> chick.outOfBox().isEmpty(), chick -> chick("left-box", chick));
            case "put-back" ->
                pickChick(
                        "cage.which-put-back",
                        chick -> chick.outOfBox().isPresent(),
                        chick -> chick("put-back", chick));
            case "wean" -> pickChick("cage.which-wean", chick -> true, this::wean);
            case "move-chick" -> pickChick("cage.which-moved-chick", chick -> true, this::moveChick);
            case "died" -> pickChick("cage.which-died", chick -> true, this::died);
            case "eggs-found" -> found();
            default -> {
                return false;
            }
        }
        return true;
    }

    private Message title(String key) {
        return Message.of(key, scribe.name());
    }

    private NestWords faces() {
        Cage cage = scribe.cage().orElseThrow();
        return new NestWords(scribe.room(), cage, Almanac.of(scribe.room()).nest(cage), scribe.day(), words);
    }

    // ------------------------------------------------------------------ eggs

    private void laid(EggPlace place, String done) {
        Optional<EggPlace> told = Optional.of(place).filter(it -> it != EggPlace.BOX);
        scribe.record(new NestDeed.EggLaid(scribe.name(), Optional.empty(), told), scribe.did(done));
    }

    private void pickEgg(String title, Consumer<Lying> then) {
        pick(title, faces().eggs(), then);
    }

    private void pickChick(String title, Predicate<Chick> which, Consumer<Lying> then) {
        List<CageState.LyingFace> chicks = faces().chicks().stream()
                .filter(face -> face.lying().flatMap(Lying::chick).filter(which).isPresent())
                .toList();
        pick(title, chicks, then);
    }

    private void pick(String title, List<CageState.LyingFace> faces, Consumer<Lying> then) {
        if (faces.size() == 1) {
            faces.get(0).lying().ifPresent(then);
        } else {
            forms.choose(title(title), faces, face -> face.lying().ifPresent(then));
        }
    }

    private void candle() {
        List<CageState.LyingFace> eggs = faces().eggs().stream()
                .filter(face -> face.lying()
                        .filter(lying -> lying.egg().pipped().isEmpty())
                        .isPresent())
                .toList();
        forms.candle(title("cage.candle"), eggs, dueALook(eggs), findings -> {
            List<Deed> deeds = new ArrayList<>();
            findings.forEach((face, finding) -> face.lying().ifPresent(egg -> deeds.add(candled(egg, finding))));
            if (!deeds.isEmpty()) {
                scribe.record(deeds, Message.of("cage.done.candled", scribe.name(), deeds.size()));
            }
        });
    }

    /** Those whose look against the light has come; all of them where none is due one. */
    private List<CageState.LyingFace> dueALook(List<CageState.LyingFace> eggs) {
        Set<Lying> due = scribe.outlook().stream()
                .flatMap(nest -> nest.eggsHere().stream())
                .filter(egg -> egg.nextLook()
                        .filter(look -> !look.window().earliest().isAfter(scribe.day()))
                        .isPresent())
                .map(EggOutlook::lying)
                .collect(Collectors.toSet());
        List<CageState.LyingFace> faces = eggs.stream()
                .filter(face -> face.lying().filter(due::contains).isPresent())
                .toList();
        return faces.isEmpty() ? eggs : faces;
    }

    private Deed candled(Lying egg, EggFinding finding) {
        return new EggDeed.EggCandled(scribe.name(), mark(egg), round(egg), finding);
    }

    private void hatched(Lying egg) {
        scribe.record(
                new EggDeed.ChickHatched(scribe.name(), Optional.of(mark(egg)), round(egg)), done("hatched", egg));
    }

    private void takenOut(CageState.LyingFace face, Optional<WhyRemoved> why) {
        face.lying().ifPresent(egg -> removed(egg, why.or(() -> plainReason(egg))));
    }

    private static Optional<WhyRemoved> plainReason(Lying egg) {
        return switch (egg.egg().state()) {
            case CLEAR -> Optional.of(WhyRemoved.CLEAR);
            case ADDLED -> Optional.of(WhyRemoved.ADDLED);
            case PIPPED -> Optional.of(WhyRemoved.DEAD_IN_SHELL);
            default -> Optional.empty();
        };
    }

    private void removed(Lying egg, Optional<WhyRemoved> why) {
        scribe.record(new EggDeed.EggRemoved(scribe.name(), mark(egg), round(egg), why), done("egg-out", egg));
    }

    private void henOff() {
        scribe.record(VisitDeed.Noted.at(scribe.name(), Noticed.HEN_OFF_EGGS), scribe.did("hen-off"));
    }

    private void dummies() {
        picking.count(
                title("cage.how-many-dummies"),
                MOST_DUMMIES,
                count -> scribe.record(new NestDeed.Dummies(scribe.name(), count), scribe.did("dummies")));
    }

    private void found() {
        forms.found(
                title("cage.found"),
                scribe.day(),
                found -> scribe.record(
                        new NestDeed.EggsFound(
                                scribe.name(),
                                found.eggs(),
                                found.first(),
                                Optional.of(found.chicks()).filter(chicks -> chicks > 0),
                                Optional.of(found.age()).filter(age -> found.chicks() > 0),
                                daysApart()),
                        scribe.did("eggs-found")));
    }

    /** How far apart the eggs of this pair's species are usually laid. */
    private Optional<Integer> daysApart() {
        return scribe.outlook()
                .flatMap(nest -> nest.timetable().span(Timing.LAY_GAP))
                .map(Span::expected)
                .filter(days -> days > 0);
    }

    // ------------------------------------------------------------------ chicks

    private void allFed() {
        int chicks = faces().chicks().size();
        scribe.record(
                new NestDeed.NestLookedAt(
                        scribe.name(),
                        Optional.of(chicks),
                        Optional.of(Crops.FULL),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                scribe.did("all-fed"));
    }

    private void look() {
        forms.look(title("cage.nest-look"), faces().chicks().size(), looked -> {
            List<Deed> deeds = new ArrayList<>();
            deeds.add(new NestDeed.NestLookedAt(
                    scribe.name(),
                    Optional.of(looked.chicks()),
                    Optional.of(looked.crops()),
                    Optional.of(looked.feet()),
                    Optional.of(looked.damp()),
                    Optional.of(looked.plucked())));
            if (looked.cleaned()) {
                deeds.add(new NestDeed.BoxCleaned(scribe.name()));
            }
            scribe.record(deeds, scribe.did("nest-look"));
        });
    }

    private void ring() {
        List<CageState.LyingFace> chicks = faces().chicks().stream()
                .filter(face -> face.lying()
                        .flatMap(Lying::chick)
                        .filter(chick -> chick.ring().isEmpty())
                        .isPresent())
                .toList();
        ring(chicks);
    }

    private void ring(List<CageState.LyingFace> chicks) {
        forms.ring(title("cage.ring"), nextRing(chicks), chicks, (face, ring) -> face.lying()
                .ifPresent(chick -> scribe.record(
                        new ChickDeed.ChickRinged(scribe.name(), mark(chick), round(chick), ring),
                        Message.of("cage.done.ringed", scribe.name(), mark(chick), ring))));
    }

    /** The sheet for a ring again, with the number that is told now. */
    private void correctRing(CageState.LyingFace face, Lying chick, ChickRing worn) {
        forms.ring(
                Message.of("cage.correct-ring", mark(chick)),
                Optional.of(worn.ring()),
                List.of(face),
                (same, other) -> {
                    if (!other.equals(worn.ring())) {
                        ringEntries(chick, worn, told -> scribe.pen()
                                .record(
                                        told.corrected(other, Reason.RING_MISREAD, scribe.day()),
                                        Message.of("cage.done.ringed", scribe.name(), mark(chick), other)));
                    }
                });
    }

    /** Two chicks each wear the ring that was told of the other. */
    private void swapRings(Lying chick, ChickRing worn) {
        pickChick("cage.which-swapped", it -> wearsAnother(it, worn), other -> {
            ChickRing its = other.chick().flatMap(Chick::ring).orElseThrow();
            Message done =
                    Message.of("cage.done.swapped", scribe.name(), mark(chick), its.ring(), mark(other), worn.ring());
            ringEntries(
                    chick,
                    worn,
                    told -> ringEntries(other, its, ofOther -> scribe.pen()
                            .record(told.swapped(ofOther, Reason.RINGS_SWAPPED, scribe.day()), done)));
        });
    }

    private boolean anotherWearsARing(ChickRing worn) {
        return faces().chicks().stream()
                .flatMap(face -> face.lying().flatMap(Lying::chick).stream())
                .anyMatch(chick -> wearsAnother(chick, worn));
    }

    private static boolean wearsAnother(Chick chick, ChickRing worn) {
        return chick.ring().filter(ring -> !ring.ring().equals(worn.ring())).isPresent();
    }

    private void lostRing(Lying chick, ChickRing worn) {
        picking.ask(Question.of(
                Message.of("cage.lost-ring", mark(chick)),
                Message.of("cage.lost-ring-text", worn.ring()),
                AnswerButton.main(
                        "lost",
                        Message.of("cage.lost-ring-yes"),
                        () -> ringEntries(chick, worn, told -> scribe.pen()
                                .record(told.lost(Reason.RING_CAME_OFF, scribe.day()), done("lost-ring", chick)))),
                AnswerButton.leave("leave", Message.of("cage.leave"))));
    }

    private void ringEntries(Lying chick, ChickRing worn, Consumer<RingEntries> then) {
        scribe.desk()
                .log(
                        LogQuery.between(worn.day(), scribe.desk().today()),
                        scribe.pen().reading(log -> then.accept(new RingEntries(scribe.room(), chick, worn, log))));
    }

    /** For chicks of this nest, which are of its hen's species or came from one of the same. */
    private Optional<String> nextRing(List<CageState.LyingFace> chicks) {
        Room room = scribe.room();
        return RingLedger.of(room)
                .next(
                        scribe.day(),
                        room.settings().ringIssue(),
                        chicks.stream()
                                .flatMap(face -> face.lying().stream())
                                .findFirst()
                                .map(chick -> room.speciesOf(chick.pair()))
                                .orElse(room.settings().species()));
    }

    private static boolean hasUncheckedRing(Chick chick) {
        return chick.ring().filter(ring -> ring.checked().isEmpty()).isPresent();
    }

    private void chick(String what, Lying chick) {
        String cage = scribe.name();
        Deed deed =
                switch (what) {
                    case "ring-on" -> new ChickDeed.RingChecked(cage, mark(chick), round(chick));
                    case "left-box" -> new ChickDeed.ChickLeftBox(cage, mark(chick), round(chick));
                    case "put-back" -> new ChickDeed.ChickPutBack(cage, mark(chick), round(chick));
                    default -> throw new IllegalArgumentException("no chick does " + what);
                };
        scribe.record(deed, done(what, chick));
    }

    private void wean(Lying chick) {
        picking.cage(
                Message.of("cage.wean-to", mark(chick)),
                cages(Comparator.comparing((Cage cage) -> cage.use() != Use.NURSERY)
                        .thenComparing(cage -> !keepsYoung(cage))
                        .thenComparing(cage -> cage.use() != Use.FLIGHT)
                        .thenComparing(cage -> cage.use() != Use.STOCK)),
                to -> scribe.record(
                        new ChickDeed.ChickWeaned(
                                scribe.name(),
                                mark(chick),
                                round(chick),
                                to.name(),
                                Optional.empty(),
                                Optional.empty()),
                        Message.of("cage.done.weaned", mark(chick), to.name())));
    }

    private static boolean keepsYoung(Cage cage) {
        return cage.keeps().filter(kept -> kept == Keeps.YOUNG).isPresent();
    }

    private void died(Lying chick) {
        picking.ask(Question.of(
                Message.of("cage.died", mark(chick)),
                Message.of("cage.died-text"),
                likely(chick, Reason.EMPTY_CROP),
                likely(chick, Reason.FOUND_DEAD),
                AnswerButton.plain(
                        "missing",
                        Message.of("cage.likely.missing"),
                        () -> scribe.record(
                                new ChickDeed.ChickMissing(scribe.name(), mark(chick), round(chick), Optional.empty()),
                                done("missing", chick))),
                AnswerButton.leave("leave", Message.of("cage.leave"))));
    }

    private AnswerButton likely(Lying chick, Reason why) {
        return AnswerButton.plain(
                why.id(),
                Message.of("cage.likely." + why.id()),
                () -> scribe.record(
                        new ChickDeed.ChickDied(scribe.name(), mark(chick), round(chick), Optional.of(why.id())),
                        done("died", chick)));
    }

    // ------------------------------------------------------------------ moves

    private void moveEgg(Lying egg) {
        String letter = letter(egg);
        picking.cage(
                Message.of("cage.move-to", mark(egg), letter),
                hosts(egg),
                to -> ifItMay(
                        egg,
                        to,
                        () -> scribe.record(
                                new EggDeed.EggMoved(
                                        scribe.name(), mark(egg), round(egg), to.name(), Optional.of(letter)),
                                Message.of("cage.done.egg-moved", mark(egg), to.name(), letter))));
    }

    private void moveChick(Lying chick) {
        String letter = letter(chick);
        picking.cage(
                Message.of("cage.move-chick-to", mark(chick)),
                hosts(chick),
                to -> ifItMay(
                        chick,
                        to,
                        () -> scribe.record(
                                new ChickDeed.ChickMoved(
                                        scribe.name(), mark(chick), round(chick), to.name(), Optional.of(letter)),
                                Message.of("cage.done.chick-moved", mark(chick), to.name(), letter))));
    }

    /** A nest at quite another stage is asked about. */
    private void ifItMay(Lying young, Cage to, Runnable move) {
        MoveByHand.warning(scribe.room(), scribe.day(), young, scribe.cage().orElseThrow(), to)
                .ifPresentOrElse(
                        why -> picking.ask(Question.of(
                                Message.of("shell.sure"),
                                why,
                                AnswerButton.main("sure", Message.of("shell.record-it"), move),
                                AnswerButton.leave("no", Message.of("shell.leave-it")))),
                        move);
    }

    private String letter(Lying lying) {
        return lying.egg().letter().orElseGet(() -> scribe.room().nextLetter());
    }

    /** Cages with a pair and a box that may take another's young; the nearest stage first, then who sits, then who has least. */
    private List<Option<Cage>> hosts(Lying young) {
        Room room = scribe.room();
        Almanac almanac = Almanac.of(room);
        return room.walk()
                .filter(cage -> !isHere(cage) && isHost(room, cage))
                .sorted(MoveByHand.nearest(
                                room, scribe.day(), young, scribe.cage().orElseThrow())
                        .thenComparing(cage -> almanac.nest(cage).state(scribe.day()) != NestState.SITTING)
                        .thenComparing(cage -> room.nest(cage).eggs().size()
                                + room.nest(cage).chicks().size()))
                .map(cage -> option(cage, host(room, cage, almanac.nest(cage))))
                .toList();
    }

    private boolean isHere(Cage cage) {
        return cage.name().equalsIgnoreCase(scribe.name());
    }

    private static boolean isHost(Room room, Cage cage) {
        return cage.use() != Use.QUARANTINE
                && cage.use() != Use.HOSPITAL
                && cage.box().hanging().isPresent()
                && room.pairIn(cage).filter(pair -> pair.parting().isEmpty()).isPresent()
                && room.birdsIn(cage).stream()
                        .flatMap(bird -> bird.traits().stream())
                        .noneMatch(trait -> trait.equals("egg-eater") || trait.equals("plucker"));
    }

    private String host(Room room, Cage cage, Outlook nest) {
        int eggs = nest.eggsHere().size();
        int chicks = nest.chicksHere().size();
        return nest.sittingFrom()
                .filter(sat -> !sat.foreseen() && eggs > 0)
                .map(sat -> words.say("cage.host-sitting", eggs, chicks, words.shortDay(sat.day())))
                .orElse(words.say("cage.host", eggs, chicks));
    }

    private List<Option<Cage>> cages(Comparator<Cage> first) {
        Room room = scribe.room();
        return room.walk()
                .filter(cage -> !isHere(cage))
                .sorted(first)
                .map(cage -> option(cage, held(room, cage)))
                .toList();
    }

    private String held(Room room, Cage cage) {
        return cage.keeps()
                .map(kept -> words.say("cage.use-keeps", cage.use(), kept, room.headsIn(cage)))
                .orElse(words.say("cage.use", cage.use(), room.headsIn(cage)));
    }

    private static Option<Cage> option(Cage cage, String line) {
        return new Option<>(cage.name(), RowFace.of(cage.name(), line, ""), cage);
    }

    // ------------------------------------------------------------------ one egg or chick, touched in its place

    /** What can be told of an egg or chick that was touched in the box. */
    List<Option<Runnable>> menu(CageState.LyingFace face) {
        return face.lying()
                .map(lying -> lying.chick().isPresent() ? ofChick(face, lying) : ofEgg(face, lying))
                .orElse(List.of(does("dummies", "cage.do.dummies", this::dummies)));
    }

    private List<Option<Runnable>> ofEgg(CageState.LyingFace face, Lying egg) {
        List<Option<Runnable>> menu = new ArrayList<>();
        EggState state = egg.egg().state();
        boolean given = state == EggState.CLEAR || state == EggState.ADDLED;
        if (given) {
            menu.add(finding("full-after-all", "cage.full-after-all", egg, EggFinding.FULL));
        }
        menu.add(does("hatched", "cage.do.hatched", () -> hatched(egg)));
        menu.add(does(
                "pipped",
                "cage.do.pipped",
                () -> scribe.record(new EggDeed.EggPipped(scribe.name(), mark(egg), round(egg)), done("pipped", egg))));
        Stream.of(EggFinding.FULL, EggFinding.CLEAR, EggFinding.ADDLED, EggFinding.UNSURE)
                .filter(finding -> !(given && finding == EggFinding.FULL))
                .filter(finding -> !egg.egg().finding().equals(Optional.of(finding)))
                .map(finding -> finding(
                        finding.name().toLowerCase(Locale.ROOT),
                        "cage.finding." + finding.name().toLowerCase(Locale.ROOT),
                        egg,
                        finding))
                .forEach(menu::add);
        menu.add(does(
                "egg-out",
                "cage.do.egg-out",
                () -> forms.takeOut(title("cage.which-out-egg"), List.of(face), this::takenOut)));
        menu.add(does("move-egg", "cage.do.move-egg", () -> moveEgg(egg)));
        return menu;
    }

    private Option<Runnable> finding(String name, String key, Lying egg, EggFinding finding) {
        return does(name, key, () -> scribe.record(candled(egg, finding), done("candled-one", egg)));
    }

    private List<Option<Runnable>> ofChick(CageState.LyingFace face, Lying lying) {
        Chick chick = lying.chick().orElseThrow();
        List<Option<Runnable>> menu = new ArrayList<>();
        if (chick.ring().isEmpty()) {
            menu.add(does("ring", "cage.do.ring", () -> ring(List.of(face))));
        }
        chick.ring().ifPresent(worn -> {
            menu.add(does("correct-ring", "cage.do.correct-ring", () -> correctRing(face, lying, worn)));
            if (anotherWearsARing(worn)) {
                menu.add(does("swap-rings", "cage.do.swap-rings", () -> swapRings(lying, worn)));
            }
            menu.add(does("lost-ring", "cage.do.lost-ring", () -> lostRing(lying, worn)));
        });
        if (hasUncheckedRing(chick)) {
            menu.add(does("ring-on", "cage.do.ring-on", () -> chick("ring-on", lying)));
        }
        menu.add(
                chick.outOfBox().isEmpty()
                        ? does("left-box", "cage.do.left-box", () -> chick("left-box", lying))
                        : does("put-back", "cage.do.put-back", () -> chick("put-back", lying)));
        menu.add(does("wean", "cage.do.wean", () -> wean(lying)));
        menu.add(does("move-chick", "cage.do.move-chick", () -> moveChick(lying)));
        menu.add(does("died", "cage.do.died", () -> died(lying)));
        for (ChickTrait trait : ChickTrait.values()) {
            if (!chick.traits().contains(trait)) {
                menu.add(new Option<>(
                        Message.word(trait),
                        RowFace.of("", words.say("cage.mark-as", trait), ""),
                        () -> scribe.record(
                                new ChickDeed.ChickMarked(scribe.name(), mark(lying), round(lying), trait),
                                done("marked", lying))));
            }
        }
        return menu;
    }

    private Option<Runnable> does(String name, String key, Runnable then) {
        return new Option<>(name, RowFace.of("", words.say(key), ""), then);
    }

    private Message done(String what, Lying lying) {
        return Message.of("cage.done." + what, scribe.name(), mark(lying));
    }

    private String mark(Lying lying) {
        return lying.name(scribe.cage().orElseThrow().id());
    }

    private static Optional<String> round(Lying lying) {
        return Optional.of(Integer.toString(lying.round().number()));
    }
}
