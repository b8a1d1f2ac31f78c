package org.cagewall.deed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Species;
import org.cagewall.room.WhoSits;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.text.Message;

/** Rules about birds. Pure; any thread. */
final class BirdRules {

    /** How long after her last egg a hen counts as laying, in days: the longest usual gap, twice. Common practice, no
     * source. */
    private static final int LAYING_DAYS = 10;

    private BirdRules() {}

    /** The record knows the bird, present or gone. */
    static Rule known(String name) {
        return scene -> scene.bird(name).isPresent() ? Ruling.ALLOWED : unknown(scene, name);
    }

    /** The bird was in the room on the day told. */
    static Rule present(String name) {
        return scene -> {
            Optional<Bird> found = scene.bird(name);
            if (found.isEmpty()) {
                return unknown(scene, name);
            }
            return found.get()
                    .left()
                    .filter(gone -> !gone.day().isAfter(scene.on()))
                    .map(gone -> Ruling.refuses("deed.bird-gone", found.get().ring(), gone.how(), gone.day()))
                    .orElse(Ruling.ALLOWED);
        };
    }

    static Rule nameIsFree(String name) {
        return scene -> scene.bird(name)
                .map(other -> Ruling.refuses(
                        "deed.bird-taken",
                        name,
                        other.cage().map(scene.room()::cageName).orElse("-")))
                .orElseGet(() -> EggRules.noChickWears(name).judge(scene));
    }

    static Rule nameIsFreeFor(String name, String bird) {
        return scene -> scene.bird(name).map(Bird::id).equals(scene.bird(bird).map(Bird::id))
                ? Ruling.ALLOWED
                : nameIsFree(name).judge(scene);
    }

    static Rule hatchedByThen(DateOrYear hatched) {
        return scene -> hatched.earliest().isBefore(CommonRules.EARLIEST)
                ? Ruling.refuses("deed.long-ago", hatched.text())
                : Ruling.refusesIf(hatched.earliest().isAfter(scene.today()), "deed.hatched-future", hatched.text());
    }

    static Rule notItsOwnParent(String bird, Optional<String> father, Optional<String> mother) {
        return scene -> Ruling.refusesIf(
                father.filter(it -> Names.same(it, bird)).isPresent()
                        || mother.filter(it -> Names.same(it, bird)).isPresent(),
                "deed.own-parent",
                bird);
    }

    static Rule mayBe(String name, Sex sex) {
        return scene -> scene.bird(name)
                .filter(bird -> bird.sex() != Sex.UNKNOWN && bird.sex() != sex)
                .map(bird -> Ruling.refuses("deed.wrong-sex", bird.ring(), bird.sex(), sex))
                .orElse(Ruling.ALLOWED);
    }

    static Rule standsIn(String name, String cage) {
        return scene -> {
            Optional<Long> there = scene.bird(name).flatMap(bird -> bird.cageOn(scene.on()));
            boolean right = there.equals(scene.room().cage(cage).map(Cage::id));
            return Ruling.refusesIf(
                    !right,
                    "deed.bird-elsewhere",
                    name,
                    cage,
                    there.map(scene.room()::cageName).orElse("-"));
        };
    }

    static Rule notThereYet(String name, String cage) {
        return scene -> {
            Optional<Long> there = scene.bird(name).flatMap(bird -> bird.cageOn(scene.on()));
            boolean same =
                    there.isPresent() && there.equals(scene.room().cage(cage).map(Cage::id));
            return Ruling.refusesIf(same, "deed.bird-there-already", name, cage);
        };
    }

    /** A third bird put to a pair is odd. */
    static Rule disturbsNoPair(String name, String cage) {
        return scene -> scene.room()
                .cage(cage)
                .flatMap(scene.room()::pairIn)
                .filter(scene.room()::together)
                .filter(pair -> scene.bird(name)
                        .filter(bird -> bird.id() != pair.cock() && bird.id() != pair.hen())
                        .isPresent())
                .map(pair -> (Ruling) new Ruling.Asks(Message.of("deed.joins-pair", cage, pair.label(), name)))
                .orElse(Ruling.ALLOWED);
    }

    /**
     * A hen sits on her eggs, and broods chicks until the cock can rear them without her. Of some species the cock sits
     * as well.
     */
    static Rule leavesNoYoungToTheCold(String name) {
        return scene -> {
            Optional<Bird> bird = scene.bird(name);
            Optional<Cage> cage = bird.flatMap(it -> it.cageOn(scene.on())).flatMap(scene.room()::cage);
            Optional<Pair> pair = cage.flatMap(scene::pairAt);
            if (bird.isEmpty() || pair.isEmpty()) {
                return Ruling.ALLOWED;
            }
            if (pair.get().hen() == bird.get().id()) {
                return henLeavesNoYoungToTheCold(scene, cage.orElseThrow());
            }
            boolean cockSits = pair.get().cock() == bird.get().id()
                    && Species.of(scene.room().speciesOf(pair.get()))
                            .filter(species -> species.sits() != WhoSits.HEN)
                            .isPresent();
            long eggs = eggsThatMayHatch(scene, cage.orElseThrow());
            return Ruling.asksIf(
                    cockSits && eggs > 0,
                    "nest.cock-leaves-eggs",
                    cage.orElseThrow().name(),
                    eggs);
        };
    }

    private static long eggsThatMayHatch(Scene scene, Cage cage) {
        return scene.nest(cage.id()).eggs().stream()
                .map(Lying::egg)
                .filter(egg -> egg.mayHatch() && !egg.laid().isAfter(scene.on()))
                .count();
    }

    private static Ruling henLeavesNoYoungToTheCold(Scene scene, Cage cage) {
        long eggs = eggsThatMayHatch(scene, cage);
        if (eggs > 0) {
            return new Ruling.Asks(Message.of("nest.hen-leaves-eggs", cage.name(), eggs));
        }
        return scene.nest(cage.id()).chicks().stream()
                .flatMap(lying -> lying.chick().stream())
                .map(chick -> ChronoUnit.DAYS.between(chick.hatched(), scene.on()))
                .filter(age -> age >= 0 && age < Chick.COCK_REARS_FROM_DAYS)
                .min(Comparator.naturalOrder())
                .map(age -> (Ruling) new Ruling.Asks(Message.of("nest.hen-leaves-chicks", cage.name(), age)))
                .orElse(Ruling.ALLOWED);
    }

    /** The same for a bird that is new to the record. */
    static Rule newcomerDisturbsNoPair(String name, String cage) {
        return scene -> scene.room()
                .cage(cage)
                .flatMap(scene.room()::pairIn)
                .filter(scene.room()::together)
                .map(pair -> (Ruling) new Ruling.Asks(Message.of("deed.joins-pair", cage, pair.label(), name)))
                .orElse(Ruling.ALLOWED);
    }

    static Rule notOutAlready(String name) {
        return scene -> scene.bird(name)
                .flatMap(Bird::out)
                .map(out -> Ruling.refuses("deed.out-already", name, out.where(), out.since()))
                .orElse(Ruling.ALLOWED);
    }

    static Rule isOut(String name) {
        return scene -> Ruling.refusesIf(
                scene.bird(name).filter(bird -> bird.out().isPresent()).isEmpty(), "deed.not-out", name);
    }

    static Rule isLoose(String name) {
        return scene -> Ruling.refusesIf(scene.bird(name).filter(Bird::loose).isEmpty(), "deed.not-loose", name);
    }

    /** A hen with fresh eggs is not treated without asking: common practice, no source; labels and vets decide. */
    static Rule isNoLayingHen(String name) {
        return scene -> {
            Optional<Bird> bird = scene.bird(name);
            Optional<Pair> pair = bird.flatMap(hen -> scene.room().pairs().stream()
                    .filter(each -> each.hen() == hen.id())
                    .reduce((earlier, later) -> later));
            Optional<LocalDate> lastEgg = pair.flatMap(Pair::openRound)
                    .flatMap(round -> round.eggs().stream().map(Egg::laid).max(LocalDate::compareTo));
            return Ruling.asksIf(
                    lastEgg.filter(day -> !day.plusDays(LAYING_DAYS).isBefore(scene.on()))
                            .isPresent(),
                    "deed.laying-hen",
                    name);
        };
    }

    /** Either one bird by name, or n birds from a cage whose birds are not known one by one. */
    static Rule birdOrCount(Optional<String> bird, Optional<Integer> count, Optional<String> cage) {
        return scene -> {
            if (bird.isPresent() == count.isPresent()) {
                return Ruling.refuses("deed.bird-or-count");
            }
            if (bird.isPresent()) {
                List<Rule> rules = new ArrayList<>(List.of(present(bird.get())));
                cage.ifPresent(it -> rules.add(CageRules.known(it)));
                cage.ifPresent(it -> rules.add(standsIn(bird.get(), it)));
                return Rule.judgeAll(rules, scene);
            }
            if (cage.isEmpty()) {
                return Ruling.refuses("deed.count-needs-cage");
            }
            Ruling there = CageRules.inUse(cage.get()).judge(scene);
            if (there instanceof Ruling.Refused) {
                return there;
            }
            int flock = scene.theCage(cage.get()).flock();
            return Ruling.refusesIf(flock < count.get(), "deed.flock-too-small", cage.get(), flock, count.get());
        };
    }

    static Ruling unknown(Scene scene, String name) {
        Stream<String> names = scene.room().birds().stream().map(Bird::ring);
        return Names.nearest(name, names)
                .map(near -> Ruling.refuses("deed.bird-unknown", name, near))
                .orElse(Ruling.refuses("deed.no-bird", name));
    }
}
