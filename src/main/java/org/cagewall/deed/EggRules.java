package org.cagewall.deed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.cagewall.room.Cage;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Nest;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Message;

/** Rules about eggs and chicks in a nest. Pure; any thread. */
final class EggRules {

    private EggRules() {}

    /** It is an egg that lies there that day. */
    static List<Rule> ofAnEgg(EggDeed.AboutEgg which, Rule... more) {
        List<Rule> rules = new ArrayList<>(List.of(
                CageRules.inUse(which.cage()),
                isThere(which),
                laidByThen(which),
                notOutYet(which),
                notHatchedYet(which)));
        rules.addAll(Arrays.asList(more));
        return rules;
    }

    /** It is a chick in the care of that nest that day. */
    static List<Rule> ofAChick(EggDeed.AboutEgg which, Rule... more) {
        List<Rule> rules = new ArrayList<>(
                List.of(CageRules.inUse(which.cage()), isThere(which), hatchedByThen(which), inCareThen(which)));
        rules.addAll(Arrays.asList(more));
        return rules;
    }

    private static Rule isThere(EggDeed.AboutEgg which) {
        return scene -> {
            Optional<Lying> found = which.egg(scene);
            Cage cage = scene.theCage(which.cage());
            if (found.isEmpty()) {
                List<String> known = scene.nest(cage.id()).all().stream()
                        .filter(lying ->
                                lying.egg().nest() == cage.id() && lying.egg().isInNest())
                        .map(lying -> lying.name(cage.id()))
                        .toList();
                return known.isEmpty()
                        ? Ruling.refuses("nest.no-egg", which.mark(), cage.name())
                        : Ruling.refuses("nest.egg-unknown", which.mark(), cage.name(), known);
            }
            Egg egg = found.get().egg();
            return Ruling.refusesIf(
                    !egg.wasIn(cage.id(), scene.on()),
                    "nest.egg-elsewhere",
                    which.mark(),
                    scene.room().cageName(egg.nestOn(scene.on())),
                    scene.on());
        };
    }

    private static Rule laidByThen(EggDeed.AboutEgg which) {
        return of(which, egg -> egg.laid(), (scene, laid) -> laid.isAfter(scene.on()), "nest.not-laid-yet");
    }

    private static Rule notOutYet(EggDeed.AboutEgg which) {
        return scene -> which.egg(scene)
                .flatMap(lying -> lying.egg().removed())
                .filter(gone -> gone.day().isBefore(scene.on()) || which.endsTheEgg())
                .map(gone -> Ruling.refuses("nest.egg-out", which.mark(), gone.day(), gone.why()))
                .orElse(Ruling.ALLOWED);
    }

    private static Rule notHatchedYet(EggDeed.AboutEgg which) {
        return scene -> which.egg(scene)
                .flatMap(Lying::chick)
                .filter(chick -> chick.hatched().isBefore(scene.on()) || which.endsTheEgg())
                .map(chick -> Ruling.refuses("nest.hatched-already", which.mark(), chick.hatched()))
                .orElse(Ruling.ALLOWED);
    }

    private static Rule hatchedByThen(EggDeed.AboutEgg which) {
        return scene -> {
            Optional<LocalDate> hatched = which.egg(scene).flatMap(Lying::chick).map(Chick::hatched);
            return hatched.isEmpty()
                    ? Ruling.refuses("nest.not-hatched", which.mark(), which.cage())
                    : Ruling.refusesIf(
                            hatched.get().isAfter(scene.on()), "nest.hatched-later", which.mark(), hatched.get());
        };
    }

    private static Rule inCareThen(EggDeed.AboutEgg which) {
        return scene -> {
            Optional<Chick> chick = which.egg(scene).flatMap(Lying::chick);
            Optional<Ruling> weaned = chick.flatMap(Chick::weaned)
                    .filter(it -> !it.day().isAfter(scene.on()))
                    .map(it -> Ruling.refuses("nest.weaned-already", which.mark(), it.day()));
            return weaned.or(() -> chick.flatMap(Chick::lost)
                            .filter(it -> it.dead() && !it.day().isAfter(scene.on()))
                            .map(it -> Ruling.refuses("nest.died-already", which.mark(), it.day())))
                    .orElse(Ruling.ALLOWED);
        };
    }

    static Rule notWeanedAtAll(EggDeed.AboutEgg which) {
        return scene -> which.egg(scene)
                .flatMap(Lying::chick)
                .flatMap(Chick::weaned)
                .map(it -> Ruling.refuses("nest.weaned-already", which.mark(), it.day()))
                .orElse(Ruling.ALLOWED);
    }

    /** An egg known as clear or addled that is said to pip or hatch was full after all: asked, and then taken. */
    static Rule mayHatch(EggDeed.AboutEgg which) {
        return scene -> which.egg(scene)
                .map(lying -> lying.egg().state())
                .filter(state -> state == EggState.CLEAR || state == EggState.ADDLED)
                .map(state -> (Ruling) new Ruling.Asks(Message.of("nest.full-after-all", which.mark(), state)))
                .orElse(Ruling.ALLOWED);
    }

    /** A full egg is not thrown away in passing. */
    static Rule notFullAndWhole(EggDeed.AboutEgg which, WhyRemoved why) {
        return scene -> Ruling.asksIf(
                (why == WhyRemoved.CLEAR || why == WhyRemoved.OTHER)
                        && which.egg(scene)
                                .filter(lying ->
                                        lying.egg().mayHatch() && lying.egg().wasFull())
                                .isPresent(),
                "nest.egg-is-full",
                which.mark());
    }

    static Rule oneIsDue(String cage) {
        return scene -> Ruling.refusesIf(dueNext(scene, cage).isEmpty(), "nest.none-due", cage);
    }

    /** Of the eggs in the nest that may hatch, the one laid first. */
    static Optional<Lying> dueNext(Scene scene, String cage) {
        Nest nest = scene.nest(scene.theCage(cage).id());
        return nest.eggs().stream()
                .filter(lying -> lying.egg().mayHatch() && !lying.egg().laid().isAfter(scene.on()))
                .findFirst();
    }

    static Rule hasNoRing(EggDeed.AboutEgg which) {
        return scene -> which.egg(scene)
                .flatMap(Lying::chick)
                .flatMap(Chick::ring)
                .map(ring -> Ruling.refuses("nest.ringed-already", which.mark(), ring.ring()))
                .orElse(Ruling.ALLOWED);
    }

    static Rule isRinged(EggDeed.AboutEgg which) {
        return scene -> Ruling.refusesIf(
                which.egg(scene).flatMap(Lying::chick).flatMap(Chick::ring).isEmpty(), "nest.no-ring", which.mark());
    }

    /** No bird and no chick wears that ring, and it was not spoilt. */
    static Rule ringIsFree(String ring) {
        return scene -> {
            boolean spoilt = scene.room().ringsSpoilt().stream().anyMatch(each -> Names.same(each, ring));
            return spoilt
                    ? Ruling.refuses("nest.ring-spoilt", ring)
                    : BirdRules.nameIsFree(ring).judge(scene);
        };
    }

    static Rule noChickWears(String ring) {
        return scene -> scene.room().pairs().stream()
                .flatMap(pair -> pair.allEggs())
                .filter(egg -> egg.chick()
                        .filter(chick -> chick.weaned().isEmpty())
                        .flatMap(Chick::ringWorn)
                        .filter(worn -> Names.same(worn, ring))
                        .isPresent())
                .findFirst()
                .map(egg -> Ruling.refuses("nest.ring-taken", ring, scene.room().cageName(egg.nest())))
                .orElse(Ruling.ALLOWED);
    }

    static Rule isOutOfTheBox(EggDeed.AboutEgg which) {
        return scene -> Ruling.refusesIf(
                which.egg(scene).flatMap(Lying::chick).flatMap(Chick::outOfBox).isEmpty(),
                "nest.not-out-of-box",
                which.mark());
    }

    static Rule isInTheBox(EggDeed.AboutEgg which) {
        return scene -> which.egg(scene)
                .flatMap(Lying::chick)
                .flatMap(Chick::outOfBox)
                .map(day -> Ruling.refuses("nest.out-of-box-already", which.mark(), day))
                .orElse(Ruling.ALLOWED);
    }

    private interface Test<T> {
        boolean holds(Scene scene, T value);
    }

    private static <T> Rule of(EggDeed.AboutEgg which, Function<Egg, T> value, Test<T> refused, String key) {
        return scene -> which.egg(scene)
                .map(lying -> value.apply(lying.egg()))
                .filter(it -> refused.holds(scene, it))
                .map(it -> Ruling.refuses(key, which.mark(), it))
                .orElse(Ruling.ALLOWED);
    }
}
