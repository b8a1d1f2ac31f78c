package org.cagewall.kiosk.cage;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.Coming;
import org.cagewall.almanac.NestState;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.StageOutlook;
import org.cagewall.room.Cage;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.Stage;

/** What can be recorded at a cage as it stands, the likeliest first. Pure; any thread. */
final class Actions {

    /** More than MOST large buttons cannot be taken in at a glance. */
    static final int MOST = 6;

    /** So many days before the eldest usually leaves the box it is looked for outside. Common practice, no source. */
    private static final int EARLY_DAYS = 3;

    private static final List<String> ALL = List.of(
            "egg",
            "floor-egg",
            "dish-egg",
            "broken",
            "candle",
            "hatched",
            "egg-out",
            "move-egg",
            "sitting",
            "eggs-back",
            "hen-off",
            "dummies",
            "nest-look",
            "ring",
            "ring-on",
            "left-box",
            "put-back",
            "wean",
            "move-chick",
            "died",
            "box-on",
            "box-turned",
            "box-off",
            "box-cleaned",
            "cock-out",
            "hen-out",
            "round-over",
            "eggs-found",
            "not-agreeing",
            "pair-up",
            "put-in",
            "take-out",
            "count",
            "look-over",
            "treat",
            "cleaned",
            "change-use",
            "note");

    private final Room room;
    private final Cage cage;
    private final Outlook nest;
    private final LocalDate today;
    private final Optional<Pair> pair;

    Actions(Room room, Cage cage, Outlook nest, LocalDate today) {
        this.room = room;
        this.cage = cage;
        this.nest = nest;
        this.today = today;
        this.pair = nest.pair();
    }

    /** Names of what can be recorded, at most six. */
    List<String> likeliest(Role role) {
        if (role == Role.SITTER) {
            return List.of("count", "note", "floor-egg", "loose");
        }
        List<String> usual = ofState().filter(this::isPossible).distinct().toList();
        List<String> names = new ArrayList<>(usual.subList(0, Math.min(MOST, usual.size())));
        dueStep().filter(name -> !names.contains(name)).ifPresent(name -> {
            names.add(0, name);
            if (names.size() > MOST) {
                names.remove(MOST);
            }
        });
        return List.copyOf(names);
    }

    /** Whatever else is possible. */
    List<String> others(Role role) {
        if (role == Role.SITTER) {
            return List.of();
        }
        List<String> shown = likeliest(role);
        return ALL.stream()
                .filter(name -> !shown.contains(name) && isPossible(name))
                .toList();
    }

    /** The one whose time has come; else the first, where there is no other clue. */
    Optional<String> due(Role role) {
        List<String> names = likeliest(role);
        return dueStep().or(this::expected).filter(names::contains).or(() -> names.stream()
                .findFirst());
    }

    boolean mayBeginParting(Role role) {
        return role != Role.SITTER && pair.filter(it -> it.parting().isEmpty()).isPresent();
    }

    boolean isBeingParted() {
        return pair.filter(it -> it.parting().isPresent()).isPresent();
    }

    /** What the keeper has to do, by its last day; a look into the box, which comes round every second day, last. */
    private Optional<String> dueStep() {
        return Coming.at(nest, today).stream()
                .filter(coming -> coming.what().isKeepers() && coming.isDue(today))
                .sorted(Comparator.comparing((Coming coming) -> coming.what() == Coming.What.NEST_LOOK)
                        .thenComparing(coming -> coming.window().latest()))
                .map(Actions::step)
                .filter(this::isPossible)
                .findFirst();
    }

    private Optional<String> expected() {
        return Coming.at(nest, today).stream()
                .filter(coming -> !coming.what().isKeepers() && coming.isDue(today))
                .map(Actions::step)
                .filter(this::isPossible)
                .findFirst();
    }

    private static String step(Coming coming) {
        return switch (coming.what()) {
            case FIRST_EGG, NEXT_EGG, NEXT_ROUND -> "egg";
            case PUT_BACK -> "eggs-back";
            case CANDLE -> "candle";
            case HATCH -> "hatched";
            case RING -> "ring";
            case RING_CHECK -> "ring-on";
            case NEST_LOOK, BACKS -> "nest-look";
            case LEAVE_BOX -> "left-box";
            case WEAN -> "wean";
            case CLEAR_EGGS -> "egg-out";
            case BOX_TURNED -> "box-turned";
            case BOX_OFF -> "box-off";
            case COCK_OUT -> "cock-out";
            case HEN_OUT -> "hen-out";
        };
    }

    private Stream<String> ofState() {
        NestState state = nest.state(today);
        return switch (state) {
            case EMPTY -> ofEmpty();
            case PAIRED -> Stream.of("box-on", "eggs-found", "look-over", "treat", "not-agreeing", "take-out", "note");
            case BOX_ON ->
                Stream.of("egg", "floor-egg", "eggs-found", "box-off", "not-agreeing", "take-out", "look-over");
            case LAYING ->
                besideYoung(
                        Stream.of("egg", "broken"), Stream.of("floor-egg", "move-egg", "candle", "sitting", "hen-off"));
            case SITTING ->
                besideYoung(
                        Stream.of("candle", "hatched"),
                        Stream.of("egg-out", "move-egg", "dummies", "hen-off", "egg", "floor-egg"));
            case CHICKS_IN_BOX -> ofChicksInBox();
            case CHICKS_OUT -> Stream.of("wean", "egg", "hen-out", "box-turned", "put-back", "died", "nest-look");
            case PARTING -> ofParting();
        };
    }

    private Stream<String> ofEmpty() {
        if (room.headsIn(cage) == 0) {
            return Stream.of("pair-up", "put-in", "cleaned", "change-use", "note");
        }
        return cage.use() == Use.BREEDING
                ? Stream.of("count", "take-out", "put-in", "look-over", "pair-up", "treat", "note")
                : Stream.of("count", "take-out", "put-in", "look-over", "treat", "cleaned", "note");
    }

    private Stream<String> ofChicksInBox() {
        boolean oneIsOut = chicks().anyMatch(chick -> chick.outOfBox().isPresent());
        Stream<String> growing = oneIsOut || isTheEldestAlmostOut()
                ? Stream.of("left-box", oneIsOut ? "wean" : "move-chick", "died", "ring")
                : Stream.of("ring", "move-chick", "died", "box-cleaned");
        boolean isLaying =
                nest.nextEgg().filter(egg -> today.isBefore(egg.givenUp())).isPresent();
        return Stream.concat(
                Stream.of("nest-look", isLaying ? "egg" : mayHatch() ? "hatched" : "egg-out"),
                Stream.concat(growing, Stream.of("box-cleaned", "egg", "egg-out")));
    }

    private boolean mayHatch() {
        return nest.eggsHere().stream().anyMatch(egg -> egg.lying().egg().mayHatch());
    }

    /** The young of the last round are weaned while the next one is laid and sat on. */
    private static Stream<String> besideYoung(Stream<String> first, Stream<String> then) {
        return Stream.of(first, Stream.of("wean"), then).flatMap(names -> names);
    }

    private boolean isTheEldestAlmostOut() {
        return nest.chicksHere().stream()
                .flatMap(chick -> chick.outOfBox().stream())
                .anyMatch(due -> !today.isBefore(due.window().earliest().minusDays(EARLY_DAYS)));
    }

    private Stream<String> ofParting() {
        Stream<String> next = Stream.of(Stage.values())
                .filter(stage -> nest.parting()
                        .map(parting -> parting.stage(stage))
                        .filter(StageOutlook::isOpen)
                        .isPresent())
                .map(Actions::nameOf)
                .limit(1);
        boolean inBox = chicks().anyMatch(chick -> chick.outOfBox().isEmpty());
        Stream<String> young = chicks().findAny().isEmpty()
                ? Stream.empty()
                : inBox ? Stream.of("left-box", "nest-look") : Stream.of("wean");
        return Stream.of(next, young, Stream.of("cock-out", "hen-out", "look-over", "treat", "floor-egg", "take-out"))
                .flatMap(names -> names);
    }

    static String nameOf(Stage stage) {
        return switch (stage) {
            case BOX_TURNED -> "box-turned";
            case BOX_OFF -> "box-off";
            case COCK_OUT -> "cock-out";
            case HEN_OUT -> "hen-out";
        };
    }

    private Stream<Chick> chicks() {
        return nest.chicksHere().stream().map(ChickOutlook::chick);
    }

    private boolean isPossible(String name) {
        return switch (name) {
            case "egg", "dish-egg" ->
                pair.filter(it -> room.henOut(it).isEmpty()).isPresent();
            case "floor-egg" -> pair.isPresent();
            case "broken", "hatched", "egg-out", "move-egg", "hen-off" ->
                !nest.eggsHere().isEmpty();
            case "candle" ->
                nest.eggsHere().stream()
                        .anyMatch(egg -> egg.lying().egg().pipped().isEmpty());
            case "sitting" ->
                hasRound(round -> !round.eggs().isEmpty() && round.sitting().isEmpty());
            case "eggs-back" -> nest.putBack().isPresent();
            case "round-over" -> hasRound(round -> !round.eggs().isEmpty());
            case "eggs-found" ->
                pair.filter(it -> it.rounds().isEmpty()).isPresent()
                        && cage.box().hanging().isPresent();
            case "dummies" -> pair.isPresent() || cage.dummies() > 0;
            case "nest-look", "wean", "move-chick", "died" -> chicks().findAny().isPresent();
            case "ring" -> chicks().anyMatch(chick -> chick.ring().isEmpty());
            case "ring-on" ->
                chicks().anyMatch(chick ->
                        chick.ring().filter(ring -> ring.checked().isEmpty()).isPresent());
            case "left-box" -> chicks().anyMatch(chick -> chick.outOfBox().isEmpty());
            case "put-back" -> chicks().anyMatch(chick -> chick.outOfBox().isPresent());
            case "box-on" -> !cage.box().isOn() && cage.use() == Use.BREEDING;
            case "box-turned" -> cage.box().isOn();
            case "box-off" -> cage.box().hanging().isPresent();
            case "box-cleaned" -> cage.use() == Use.BREEDING;
            case "cock-out" -> pair.filter(it -> room.cockOut(it).isEmpty()).isPresent();
            case "hen-out" -> pair.filter(it -> room.henOut(it).isEmpty()).isPresent();
            case "not-agreeing" ->
                pair.filter(it -> room.together(it) && it.parting().isEmpty()).isPresent();
            case "pair-up" -> pair.isEmpty() && cage.use() == Use.BREEDING;
            case "take-out", "look-over", "treat" -> !room.birdsIn(cage).isEmpty();
            case "change-use" -> pair.isEmpty();
            default -> true;
        };
    }

    private boolean hasRound(Predicate<Round> like) {
        return pair.flatMap(Pair::openRound).filter(like).isPresent();
    }
}
