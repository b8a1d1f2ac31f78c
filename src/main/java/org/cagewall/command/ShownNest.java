package org.cagewall.command;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.NestCandling;
import org.cagewall.almanac.NestState;
import org.cagewall.almanac.NextEgg;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.RoundOutlook;
import org.cagewall.almanac.StageOutlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.SatFrom;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickLoss;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartingBegun;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Stage;
import org.cagewall.tasks.WindowWords;
import org.cagewall.text.Words;

/** The nest of one cage and what is expected of it, as sentences and as JSON. Immutable; any thread. */
record ShownNest(Room room, Cage cage, Outlook outlook, Words words) {

    /** What became of an egg or a chick that is no longer in this nest. */
    private static final String MOVED_AWAY = "moved-away";

    static ShownNest of(Room room, Cage cage, Words words) {
        return new ShownNest(room, cage, Almanac.of(room).nest(cage), words);
    }

    NestState state() {
        return outlook.state(room.day());
    }

    Optional<LocalDate> sittingFrom() {
        return outlook.sittingFrom().map(SatFrom::day);
    }

    List<Json> eggs() {
        return outlook.eggs().stream().map(this::egg).toList();
    }

    List<Json> chicks() {
        return outlook.chicks().stream().map(this::chick).toList();
    }

    Json next() {
        return Json.object()
                .with(
                        "firstEgg",
                        outlook.firstEgg()
                                .filter(Due::isOpen)
                                .map(Due::window)
                                .filter(this::isToCome)
                                .map(Json::of))
                .with(
                        "sitting",
                        outlook.underWay()
                                .flatMap(RoundOutlook::sitting)
                                .filter(Due::isOpen)
                                .map(Due::window)
                                .filter(this::isToCome)
                                .map(Json::of))
                .with(
                        "nextEgg",
                        outlook.nextEgg()
                                .map(NextEgg::window)
                                .filter(this::isToCome)
                                .map(Json::of))
                .with(
                        "candle",
                        candling()
                                .map(NestCandling::window)
                                .filter(this::isToCome)
                                .map(Json::of))
                .with("nestLook", outlook.nestLook().map(this::notBeforeToday))
                .with(
                        "backs",
                        outlook.backs()
                                .filter(Due::isOpen)
                                .map(Due::window)
                                .filter(this::isToCome)
                                .map(Json::of))
                .with(
                        "clearEggs",
                        outlook.clearEggs().stream()
                                .map(clear -> clear.from())
                                .min(Comparator.naturalOrder())
                                .map(this::notBeforeToday))
                .with("nextRound", nextRound().map(Json::of));
    }

    /** How the cage's pair is parted; after both are gone, how it was, as long as no other pair came. */
    Json parting() {
        return Json.object()
                .with("begun", begun().map(PartingBegun::day))
                .with("reason", begun().map(PartingBegun::reason))
                .with("boxTurned", stage(Stage.BOX_TURNED))
                .with("boxOff", stage(Stage.BOX_OFF))
                .with("cockOut", stage(Stage.COCK_OUT))
                .with("henOut", stage(Stage.HEN_OUT))
                .with("toFlight", partingNow().flatMap(PartingOutlook::toFlight).map(move -> move.morning()));
    }

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        outlook.firstEgg()
                .filter(Due::isOpen)
                .ifPresent(due -> lines.add(
                        words.say(key("command.show.first-egg", due.window()), WindowWords.of(due.window()))));
        outlook.rounds().stream().filter(each -> each.round().isOpen()).forEach(each -> lines.add(round(each)));
        outlook.eggs().stream().filter(this::isToldOf).map(this::eggLine).forEach(lines::add);
        outlook.chicks().stream()
                .filter(each -> isToldOf(each.lying()))
                .map(this::chickLine)
                .forEach(lines::add);
        if (cage.dummies() > 0) {
            lines.add(words.say("command.show.dummies", cage.dummies()));
        }
        candling()
                .ifPresent(look -> lines.add(words.say(
                        key("command.show.candle", look.window()), names(look.eggs()), WindowWords.of(look.window()))));
        outlook.nestLook()
                .map(this::notBeforeToday)
                .ifPresent(day -> lines.add(words.say("command.show.nest-look", day)));
        nextRound().ifPresent(window -> lines.add(words.say("command.show.next-round", WindowWords.of(window))));
        begun().ifPresent(parting -> {
            lines.add(words.say("command.show.parting", parting.day(), parting.reason()));
            Stream.of(Stage.values())
                    .flatMap(stage -> stageLine(stage).stream())
                    .forEach(lines::add);
        });
        return lines;
    }

    private Optional<NestCandling> candling() {
        return outlook.firstLook().or(outlook::secondLook);
    }

    private Optional<Window> nextRound() {
        return outlook.rounds().stream()
                .flatMap(each -> each.nextRound().stream())
                .filter(Due::isOpen)
                .map(Due::window)
                .filter(this::isToCome)
                .findFirst();
    }

    /** Of what comes next no day is told that has gone by. */
    private boolean isToCome(Window window) {
        return !window.isPast(room.day());
    }

    private LocalDate notBeforeToday(LocalDate day) {
        return Window.later(day, room.day());
    }

    /** The same sentence, or its fellow that says that the days have gone by. */
    private String key(String key, Window window) {
        return isToCome(window) ? key : key + "-past";
    }

    /** Eggs of rounds that are over and gone are left to the log. */
    private boolean isToldOf(EggOutlook egg) {
        return egg.lying().chick().isEmpty() && isToldOf(egg.lying());
    }

    private boolean isToldOf(Lying lying) {
        return lying.round().isOpen()
                || lying.egg().nest() == cage.id() && lying.egg().isInNest();
    }

    private String names(List<Lying> lyings) {
        return String.join(
                ", ", lyings.stream().map(lying -> lying.name(cage.id())).toList());
    }

    private String round(RoundOutlook outlook) {
        return outlook.start()
                .map(start -> words.say(
                        start.foreseen()
                                ? "command.show.round-will-sit"
                                : start.about() ? "command.show.round-about-sits" : "command.show.round-sits",
                        outlook.round().number(),
                        start.day()))
                .orElseGet(() -> words.say(
                        "command.show.round-begun",
                        outlook.round().number(),
                        outlook.round().begun()));
    }

    private String eggLine(EggOutlook outlook) {
        Lying lying = outlook.lying();
        Egg egg = lying.egg();
        String laid = words.say(
                egg.about() ? "command.show.egg-about" : "command.show.egg", lying.name(cage.id()), egg.laid());
        String origin = outlook.here() && egg.cage() != cage.id()
                ? words.say("command.show.egg-from", laid, room.cageName(egg.cage()), egg.mark())
                : laid;
        String stands = outlook.here()
                ? words.say("command.show.egg-state", origin, egg.state())
                : words.say(
                        "command.show.moved-away",
                        origin,
                        room.cageName(egg.nest()),
                        egg.letter().orElse(egg.mark()));
        return outlook.hatch()
                .filter(Due::isOpen)
                .map(due ->
                        words.say(key("command.show.egg-hatch", due.window()), stands, WindowWords.of(due.window())))
                .orElse(stands);
    }

    private String chickLine(ChickOutlook outlook) {
        Lying lying = outlook.lying();
        Chick chick = outlook.chick();
        String name = lying.name(cage.id());
        String hatched =
                words.say(chick.about() ? "command.show.chick-about" : "command.show.chick", name, chick.hatched());
        String ringed = chick.ringWorn()
                .map(ring -> words.say("command.show.chick-ring", hatched, ring))
                .orElse(hatched);
        String stands = outlook.here()
                ? words.say("command.show.chick-" + chickState(outlook), ringed)
                : words.say(
                        "command.show.moved-away",
                        ringed,
                        room.cageName(lying.egg().nest()),
                        lying.egg().letter().orElse(lying.egg().mark()));
        return Stream.of(
                        outlook.ringing().map(due -> new Next("command.show.chick-to-ring", due)),
                        outlook.outOfBox().map(due -> new Next("command.show.chick-to-leave", due)),
                        outlook.independent().map(due -> new Next("command.show.chick-to-feed", due)))
                .flatMap(Optional::stream)
                .filter(next -> next.due().isOpen())
                .findFirst()
                .map(next -> words.say(
                        key(next.key(), next.due().window()),
                        stands,
                        WindowWords.of(next.due().window())))
                .orElse(stands);
    }

    private record Next(String key, Due due) {}

    private Optional<String> stageLine(Stage stage) {
        return partingNow().flatMap(parting -> {
            StageOutlook is = parting.stage(stage);
            if (is.skipped()) {
                return Optional.of(words.say("command.show.stage-skipped", stage));
            }
            return is.due()
                    .map(due -> words.say(
                            due.isOpen() ? key("command.show.stage-open", due.window()) : "command.show.stage-done",
                            stage,
                            WindowWords.of(due.window())));
        });
    }

    private Json egg(EggOutlook outlook) {
        Egg egg = outlook.lying().egg();
        return Json.object()
                .with("round", outlook.lying().round().number())
                .with("mark", egg.mark())
                .with("letter", egg.letter())
                .with("from", from(egg))
                .with("lies", room.cageName(egg.nest()))
                .with("laid", egg.laid())
                .with("about", egg.about())
                .with("place", egg.place())
                .with("satFrom", outlook.satFrom().map(SatFrom::day))
                .with("state", outlook.here() ? egg.state() : MOVED_AWAY)
                .with("finding", egg.finding())
                .with("candled", egg.candlings().stream().map(Candling::day).reduce((earlier, later) -> later))
                .with("look", outlook.nextLook().map(Due::window).map(Json::of))
                .with("pip", outlook.pip().map(Due::window).map(Json::of))
                .with("hatch", outlook.hatch().map(Due::window).map(Json::of))
                .with("overdueFrom", outlook.overdueFrom())
                .with("removed", egg.removed().map(Removal::day))
                .with("why", egg.removed().map(Removal::why));
    }

    private Json chick(ChickOutlook outlook) {
        Chick chick = outlook.chick();
        Egg egg = outlook.lying().egg();
        return Json.object()
                .with("round", outlook.lying().round().number())
                .with("mark", egg.mark())
                .with("letter", egg.letter())
                .with("from", from(egg))
                .with("lies", room.cageName(egg.nest()))
                .with("hatched", chick.hatched())
                .with("about", chick.about())
                .with("state", outlook.here() ? chickState(outlook) : MOVED_AWAY)
                .with("ring", chick.ringWorn())
                .with("traits", chick.traits())
                .with("eyes", outlook.eyes().map(Json::of))
                .with("ringing", outlook.ringing().map(Due::window).map(Json::of))
                .with("ringCheck", outlook.ringCheck().map(Due::window).map(Json::of))
                .with("outOfBox", outlook.outOfBox().map(Due::window).map(Json::of))
                .with("independent", outlook.independent().map(Due::window).map(Json::of))
                .with("lost", chick.lost().map(ChickLoss::day));
    }

    private static String chickState(ChickOutlook outlook) {
        Chick chick = outlook.chick();
        if (chick.weaned().isPresent()) {
            return "weaned";
        }
        return chick.lost()
                .map(lost -> lost.dead() ? "died" : "missing")
                .orElse(chick.outOfBox().isPresent() ? "out-of-box" : "in-box");
    }

    private Optional<String> from(Egg egg) {
        return Optional.of(egg.cage()).filter(home -> home != cage.id()).map(room::cageName);
    }

    private Optional<Pair> lastPair() {
        return outlook.pair().or(() -> room.pairs().stream()
                .filter(pair -> pair.cage() == cage.id())
                .max(Comparator.comparing(Pair::since).thenComparing(Pair::id)));
    }

    private Optional<PartingOutlook> partingNow() {
        return outlook.parting().map(parting -> parting.on(room.day()));
    }

    private Optional<PartingBegun> begun() {
        return lastPair().flatMap(Pair::parting);
    }

    private Json stage(Stage stage) {
        Optional<StageOutlook> is = partingNow().map(parting -> parting.stage(stage));
        Optional<Window> window = is.flatMap(StageOutlook::due).map(Due::window);
        return Json.object()
                .with(
                        "happened",
                        is.flatMap(StageOutlook::due).flatMap(Due::happened).or(() -> happened(stage)))
                .with("earliest", window.map(Window::earliest))
                .with("expected", window.map(Window::expected))
                .with("latest", window.map(Window::latest))
                .with("about", window.filter(Window::about).isPresent())
                .with(
                        "skipped",
                        lastPair().filter(pair -> pair.isSkipped(stage)).isPresent());
    }

    /** What was done of it while no pair is left for which anything could be expected. */
    private Optional<LocalDate> happened(Stage stage) {
        return lastPair().filter(pair -> outlook.pair().isEmpty()).flatMap(pair -> switch (stage) {
            case BOX_TURNED -> since(pair, cage.box().turned());
            case BOX_OFF -> since(pair, cage.box().off());
            case COCK_OUT -> room.cockOut(pair);
            case HEN_OUT -> room.henOut(pair);
        });
    }

    private static Optional<LocalDate> since(Pair pair, Optional<LocalDate> done) {
        return done.filter(day -> !day.isBefore(pair.since()));
    }
}
