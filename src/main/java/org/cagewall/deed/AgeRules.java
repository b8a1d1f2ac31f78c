package org.cagewall.deed;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.BreedingAge;
import org.cagewall.room.Cage;
import org.cagewall.room.Keeps;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Sittings;
import org.cagewall.room.Span;
import org.cagewall.room.Species;
import org.cagewall.room.Timing;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Stage;
import org.cagewall.text.Message;

/**
 * Rules about what is too soon or too late for a bird of its species. Every age is the owner's own or the book's; of a
 * species that is in no book only what none of those in it would do is asked about. Pure; any thread.
 */
final class AgeRules {

    /** A bird has its first moult at about twelve weeks (a breeder's pages in Canada); after it, it counts as grown. */
    private static final int GROWN_FROM_WEEKS = 12;

    /** Of a bird of which only the year is known, the day in the middle of that year. */
    private static final int MIDDLE_MONTH = 7;

    private AgeRules() {}

    /** Never below the age at which it is not grown itself; asked about below the age from which it is usual. */
    static Rule oldEnoughToBreed(String name, Sex sex) {
        return scene -> scene.bird(name)
                .flatMap(bird -> hatched(bird).map(hatched -> oldEnoughToBreed(scene, bird, hatched, sex)))
                .orElse(Ruling.ALLOWED);
    }

    private static Ruling oldEnoughToBreed(Scene scene, Bird bird, DateOrYear hatched, Sex sex) {
        Optional<BreedingAge> age = Species.of(scene.room().speciesOf(bird)).map(species -> species.breedingAge(sex));
        if (age.isEmpty()) {
            return Ruling.ALLOWED;
        }
        if (scene.on().isBefore(hatched.earliest().plusMonths(age.get().never()))) {
            return Ruling.refuses(
                    "deed.never-so-young",
                    bird.ring(),
                    months(hatched.earliest(), scene),
                    sex,
                    age.get().never());
        }
        LocalDate likely = likely(hatched);
        return Ruling.asksIf(
                scene.on().isBefore(likely.plusMonths(age.get().usual())),
                likely.equals(hatched.earliest()) ? "deed.so-young" : "deed.perhaps-so-young",
                bird.ring(),
                months(likely, scene),
                sex,
                age.get().usual());
    }

    private static long months(LocalDate hatched, Scene scene) {
        return Math.max(0, ChronoUnit.MONTHS.between(hatched, scene.on()));
    }

    private static Optional<DateOrYear> hatched(Bird bird) {
        return bird.hatched().flatMap(DateOrYear::parse);
    }

    private static LocalDate likely(DateOrYear hatched) {
        return hatched.isExact() ? hatched.earliest() : hatched.earliest().withMonth(MIDDLE_MONTH);
    }

    /** Parent and young, and young of one father or mother, are paired up only on purpose. */
    static Rule areNoNearKin(String cock, String hen) {
        return scene -> {
            Optional<Bird> one = scene.bird(cock);
            Optional<Bird> other = scene.bird(hen);
            if (one.isEmpty() || other.isEmpty()) {
                return Ruling.ALLOWED;
            }
            if (isParent(one.get(), other.get()) || isParent(other.get(), one.get())) {
                return new Ruling.Asks(Message.of(
                        "deed.parent-and-young", one.get().ring(), other.get().ring()));
            }
            return Ruling.asksIf(
                    areSiblings(one.get(), other.get()),
                    "deed.siblings",
                    one.get().ring(),
                    other.get().ring());
        };
    }

    private static boolean isParent(Bird parent, Bird young) {
        return Stream.of(young.father(), young.mother())
                .flatMap(Optional::stream)
                .anyMatch(id -> id == parent.id());
    }

    private static boolean areSiblings(Bird one, Bird other) {
        return one.father().isPresent() && one.father().equals(other.father())
                || one.mother().isPresent() && one.mother().equals(other.mother());
    }

    /** An egg hatches when it has been sat on so long; sooner it was perhaps another one. */
    static Rule notTooSoon(EggDeed.AboutEgg which) {
        return scene ->
                which.egg(scene).map(lying -> notTooSoon(scene, which, lying)).orElse(Ruling.ALLOWED);
    }

    private static Ruling notTooSoon(Scene scene, EggDeed.AboutEgg which, Lying lying) {
        LocalDate earliest = sat(scene, lying)
                .plusDays(usual(scene, lying.pair(), Timing.INCUBATION).earliest());
        return Ruling.asksIf(
                scene.on().isBefore(earliest),
                "nest.hatched-soon",
                which.mark(),
                ChronoUnit.DAYS.between(lying.egg().laid(), scene.on()),
                earliest);
    }

    private static LocalDate sat(Scene scene, Lying lying) {
        return Sittings.of(scene.room())
                .satFrom(lying)
                .map(SatFrom::day)
                .filter(day -> !day.isBefore(lying.egg().laid()))
                .orElse(lying.egg().laid());
    }

    /** A good egg shows nothing in its first days either: until they are over it looks clear. */
    static Rule notTooEarlyToTell(EggDeed.AboutEgg which, EggFinding finding) {
        return scene -> which.egg(scene)
                .filter(lying -> finding == EggFinding.CLEAR || finding == EggFinding.ADDLED)
                .map(lying -> notTooEarlyToTell(scene, which, lying, finding))
                .orElse(Ruling.ALLOWED);
    }

    private static Ruling notTooEarlyToTell(Scene scene, EggDeed.AboutEgg which, Lying lying, EggFinding finding) {
        LocalDate from = sat(scene, lying)
                .plusDays(usual(scene, lying.pair(), Timing.FIRST_LOOK).earliest());
        return Ruling.asksIf(scene.on().isBefore(from), "nest.candled-early", which.mark(), finding, from);
    }

    /** A hen of the species lays no egg of a cock so soon after the two were put together. */
    static Rule notTooSoonForThatCock(String cage) {
        return scene -> PairRules.pair(scene, cage)
                .filter(pair -> !pair.about())
                .map(pair -> Ruling.asksIf(
                        scene.on()
                                .isBefore(pair.since()
                                        .plusDays(usual(scene, pair, Timing.FIRST_EGG)
                                                .earliest())),
                        "nest.egg-soon",
                        cage,
                        ChronoUnit.DAYS.between(pair.since(), scene.on())))
                .orElse(Ruling.ALLOWED);
    }

    /** Once the cock is out the hen rests in the breeding cage, unless she has to go where the ill are. */
    static Rule henHasRested(String name, String to) {
        return scene -> scene.bird(name)
                .filter(hen -> scene.room()
                        .cage(to)
                        .filter(cage -> cage.use().isSickroom())
                        .isEmpty())
                .flatMap(hen -> pairOf(scene, hen).filter(pair -> pair.hen() == hen.id()))
                .filter(pair -> !pair.isSkipped(Stage.HEN_OUT))
                .flatMap(pair -> scene.register()
                        .bird(pair.cock())
                        .flatMap(cock -> cock.outOf(pair))
                        .filter(out -> !out.isAfter(scene.on()))
                        .map(out -> henHasRested(scene, pair, name, out)))
                .orElse(Ruling.ALLOWED);
    }

    private static Ruling henHasRested(Scene scene, Pair pair, String hen, LocalDate cockOut) {
        Span rest = usual(scene, pair, Timing.HENS_REST);
        return Ruling.asksIf(
                scene.on().isBefore(cockOut.plusDays(rest.earliest())),
                "nest.hen-rests",
                hen,
                cockOut,
                cockOut.plusDays(rest.earliest()));
    }

    /** A cock feeds the chicks until they feed themselves. */
    static Rule cockLeavesNoChicksToFeed(String name) {
        return scene -> scene.bird(name)
                .flatMap(cock -> pairOf(scene, cock).filter(pair -> pair.cock() == cock.id()))
                .map(pair -> cockLeavesNoChicksToFeed(scene, pair, name))
                .orElse(Ruling.ALLOWED);
    }

    private static Ruling cockLeavesNoChicksToFeed(Scene scene, Pair pair, String cock) {
        int fed = usual(scene, pair, Timing.INDEPENDENT).earliest();
        long chicks = scene.nest(pair.cage()).chicks().stream()
                .flatMap(lying -> lying.chick().stream())
                .map(chick -> ChronoUnit.DAYS.between(chick.hatched(), scene.on()))
                .filter(age -> age >= 0 && age < fed)
                .count();
        return Ruling.asksIf(
                chicks > 0,
                "nest.cock-leaves-chicks",
                cock,
                chicks,
                scene.room().cageName(pair.cage()));
    }

    /** The pair in whose cage a bird of it still stands that day. */
    private static Optional<Pair> pairOf(Scene scene, Bird bird) {
        return bird.cageOn(scene.on()).flatMap(scene.room()::cage).flatMap(scene::pairAt);
    }

    static Rule ringedAtAGoodAge(EggDeed.AboutEgg which) {
        return ofAChick(which, (scene, lying, days) -> {
            Span ages = usual(scene, lying.pair(), Timing.RINGING);
            return Ruling.asksIf(
                    days < ages.earliest() || days > ages.latest(),
                    "nest.ring-age",
                    which.mark(),
                    days,
                    ages.earliest(),
                    ages.latest());
        });
    }

    static Rule oldEnoughToFeedItself(EggDeed.AboutEgg which) {
        return ofAChick(which, (scene, lying, days) -> {
            int earliest = usual(scene, lying.pair(), Timing.INDEPENDENT).earliest();
            return Ruling.asksIf(days < earliest, "nest.weaned-young", which.mark(), days, earliest);
        });
    }

    private interface OfAge {
        Ruling judge(Scene scene, Lying chick, long days);
    }

    private static Rule ofAChick(EggDeed.AboutEgg which, OfAge rule) {
        return scene -> which.egg(scene)
                .flatMap(lying -> lying.chick()
                        .map(Chick::hatched)
                        .map(day -> rule.judge(scene, lying, ChronoUnit.DAYS.between(day, scene.on()))))
                .orElse(Ruling.ALLOWED);
    }

    /** What holds for the species of a pair's hen; where that is in no book, what is known of any. */
    static Span usual(Scene scene, Pair pair, Timing timing) {
        String species = scene.register()
                .bird(pair.hen())
                .map(scene.room()::speciesOf)
                .orElse(scene.room().settings().species());
        return Species.in(scene.room().settings(), species).span(timing).orElseGet(() -> Species.ofAny(timing));
    }

    /** Grown birds that are not its foster parents may set upon a chick. */
    static Rule noGrownBirdsWithAChick(EggDeed.AboutEgg which, String to) {
        return scene -> noGrownBirds(scene, which.mark(), to);
    }

    /** The same for a young bird that was weaned a short while ago. */
    static Rule noGrownBirdsWithAYoungBird(String name, String to) {
        return scene -> scene.bird(name)
                .filter(bird -> isJustWeaned(scene, bird))
                .map(bird -> noGrownBirds(scene, bird.ring(), to))
                .orElse(Ruling.ALLOWED);
    }

    private static boolean isJustWeaned(Scene scene, Bird bird) {
        Span weaned = Species.in(scene.room().settings(), scene.room().speciesOf(bird))
                .span(Timing.INDEPENDENT)
                .orElseGet(() -> Species.ofAny(Timing.INDEPENDENT));
        return hatched(bird)
                .filter(DateOrYear::isExact)
                .filter(day -> scene.on().isBefore(day.earliest().plusDays(weaned.latest())))
                .isPresent();
    }

    private static Ruling noGrownBirds(Scene scene, String young, String to) {
        Optional<Cage> cage = scene.room().cage(to);
        Optional<Pair> hosts = cage.flatMap(scene::pairAt);
        List<String> grown = cage.stream()
                .flatMap(there -> scene.room().birdsIn(there).stream())
                .filter(bird -> hosts.filter(pair -> pair.cock() == bird.id() || pair.hen() == bird.id())
                        .isEmpty())
                .filter(bird -> isGrown(scene, bird))
                .map(Bird::ring)
                .toList();
        if (!grown.isEmpty()) {
            return new Ruling.Asks(Message.of("nest.grown-birds-there", young, to, grown));
        }
        return Ruling.asksIf(cage.filter(AgeRules::isAGrownFlock).isPresent(), "nest.grown-flock-there", young, to);
    }

    private static boolean isGrown(Scene scene, Bird bird) {
        return hatched(bird)
                .map(day -> !scene.on().isBefore(likely(day).plusWeeks(GROWN_FROM_WEEKS)))
                .orElse(true);
    }

    private static boolean isAGrownFlock(Cage cage) {
        return cage.flock() > 0
                && cage.keeps().filter(keeps -> keeps != Keeps.YOUNG).isPresent();
    }
}
