package org.cagewall.deed;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Way;
import org.cagewall.room.bird.Whither;
import org.cagewall.text.Message;

/** Deeds about birds. */
public sealed interface BirdDeed extends Deed {

    /** What a keeper marks a bird for. */
    enum Trait {
        GOOD_FEEDER,
        PLUCKER,
        EGG_EATER,
        STEADY
    }

    /** Why a bird was treated. */
    enum TreatedFor {
        ENTERING,
        LEAVING,
        YEARLY,
        AFTER_SHOW,
        MITES_SEEN,
        NEW_BIRD,
        VET
    }

    record BirdAdded(
            String bird,
            Sex sex,
            Optional<String> species,
            Optional<DateOrYear> hatched,
            Optional<String> colour,
            Optional<String> father,
            Optional<String> mother,
            Optional<String> cage,
            Optional<String> origin,
            @Bounds(least = 1950, most = 2200) Optional<Integer> ringYear)
            implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>();
            rules.add(BirdRules.nameIsFree(bird));
            hatched.ifPresent(it -> rules.add(BirdRules.hatchedByThen(it)));
            rules.add(BirdRules.notItsOwnParent(bird, father, mother));
            rules.addAll(parentRules(father, mother));
            cage.ifPresent(it -> rules.add(CageRules.inUse(it)));
            cage.ifPresent(it -> rules.add(BirdRules.newcomerDisturbsNoPair(bird, it)));
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact.Bird(
                    bird,
                    species,
                    hatched.map(DateOrYear::text),
                    colour,
                    cage.map(it -> scene.theCage(it).id()),
                    origin,
                    ringYear));
            facts.add(new Fact.Sexing(scene.entry(), sex));
            if (father.isPresent() || mother.isPresent()) {
                facts.add(parentage(scene, scene.entry(), father, mother));
            }
            return facts;
        }

        @Override
        public Message words() {
            return cage.map(it -> Message.of("deed.did.bird-added-to", bird, it))
                    .orElse(Message.of("deed.did.bird-added", bird));
        }

        @Override
        public List<String> mentionsCages() {
            return cage.stream().toList();
        }
    }

    /** Birds of a flight that are not known one by one. */
    record BirdsAdded(@Bounds(least = 1, most = 500) int count, String cage) implements BirdDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Flock(scene.theCage(cage).id(), count));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.birds-added", count);
        }
    }

    /** A bird put into another cage; out of a breeding cage it is that pair's cock out or hen out. */
    record BirdMoved(String bird, String to, Optional<String> from, Optional<String> reason)
            implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>();
            rules.add(BirdRules.present(bird));
            rules.add(CageRules.inUse(to));
            from.ifPresent(it -> rules.add(CageRules.known(it)));
            from.ifPresent(it -> rules.add(BirdRules.standsIn(bird, it)));
            rules.add(BirdRules.notThereYet(bird, to));
            rules.add(BirdRules.disturbsNoPair(bird, to));
            rules.add(Rule.together(
                    BirdRules.leavesNoYoungToTheCold(bird),
                    AgeRules.henHasRested(bird, to),
                    AgeRules.cockLeavesNoChicksToFeed(bird)));
            rules.add(AgeRules.noGrownBirdsWithAYoungBird(bird, to));
            return rules;
        }

        @Override
        public Deed resolved(Scene scene) {
            Optional<String> left =
                    from.or(() -> scene.theBird(bird).cageOn(scene.on()).map(scene.room()::cageName));
            return new BirdMoved(bird, to, left, reason);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(
                    new Fact.Move(scene.theBird(bird).id(), scene.theCage(to).id()));
        }

        @Override
        public Message words() {
            return from.map(it -> Message.of("deed.did.bird-moved-from", bird, to, it))
                    .orElse(Message.of("deed.did.bird-moved", bird, to));
        }

        @Override
        public List<String> mentionsCages() {
            return Stream.concat(from.stream(), Stream.of(to)).toList();
        }
    }

    record BirdSexed(String bird, Sex sex) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.known(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Sexing(scene.theBird(bird).id(), sex));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.bird-sexed", bird, sex);
        }
    }

    record BirdNamed(String bird, String name) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.known(bird), BirdRules.nameIsFreeFor(name, bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Naming(scene.theBird(bird).id(), name));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.bird-named", bird, name);
        }
    }

    record ParentsSet(String bird, Optional<String> father, Optional<String> mother) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>();
            rules.add(BirdRules.known(bird));
            rules.add(scene -> Ruling.refusesIf(father.isEmpty() && mother.isEmpty(), "deed.no-parents"));
            rules.add(BirdRules.notItsOwnParent(bird, father, mother));
            rules.addAll(parentRules(father, mother));
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(parentage(scene, scene.theBird(bird).id(), father, mother));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.parents-set", bird, father.orElse("-"), mother.orElse("-"));
        }
    }

    record RingCorrected(
            String bird,
            String ring,
            @Prose Optional<String> why,
            @Bounds(least = 1950, most = 2200) Optional<Integer> ringYear)
            implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.known(bird), BirdRules.nameIsFreeFor(ring, bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Ring(scene.theBird(bird).id(), ring, ringYear));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.ring-corrected", bird, ring);
        }
    }

    /** The ring cut off; the bird keeps its number as a name. */
    record RingRemoved(String bird, @Prose Optional<String> why) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Trait(scene.theBird(bird).id(), "ring-removed"));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.ring-removed", bird);
        }
    }

    /** A second ring that opens, of colour or with a number, put on or taken off. */
    record SplitRingPut(String bird, Optional<String> ring) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.SplitRing(scene.theBird(bird).id(), ring));
        }

        @Override
        public Message words() {
            return ring.map(it -> Message.of("nest.did.split-ring", bird, it))
                    .orElse(Message.of("nest.did.split-ring-off", bird));
        }
    }

    /** A bird caught up and looked over; weight in grams. */
    record BirdLookedOver(
            String bird,
            Condition condition,
            @Bounds(least = 1, most = 500) Optional<BigDecimal> weight,
            Optional<String> cere,
            Optional<String> moult,
            Optional<String> keel,
            Optional<String> vent,
            Optional<String> feet)
            implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Finding(scene.theBird(bird).id(), condition, weight));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.bird-looked-over", bird, condition);
        }
    }

    /** What was given, as its label says; the program knows no doses. */
    record BirdTreated(
            String bird,
            String product,
            TreatedFor reason,
            Optional<String> strength,
            Optional<String> batch,
            Optional<LocalDate> expiry)
            implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird), BirdRules.isNoLayingHen(bird), this::inDate);
        }

        private Ruling inDate(Scene scene) {
            return Ruling.asksIf(expiry.filter(day -> day.isBefore(scene.on())).isPresent(), "deed.expired", product);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Treatment(
                    scene.theBird(bird).id(), product, Message.word(reason), strength, batch, expiry));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.bird-treated", bird, product);
        }
    }

    record BirdTrimmed(String bird) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of();
        }

        @Override
        public Message words() {
            return Message.of("deed.did.bird-trimmed", bird);
        }
    }

    record BirdMarked(String bird, Optional<Trait> trait) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.known(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return trait.<Fact>map(it -> new Fact.Trait(scene.theBird(bird).id(), Message.word(it))).stream()
                    .toList();
        }

        @Override
        public Message words() {
            return trait.map(it -> Message.of("deed.did.bird-marked-as", bird, it))
                    .orElse(Message.of("deed.did.bird-marked", bird));
        }
    }

    /** Out for a time: the place is the name of a show, or with whom the bird is. */
    record BirdOut(
            String bird,
            Whither where,
            Optional<String> place,
            @Prose Optional<String> result) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird), BirdRules.notOutAlready(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Outing(scene.theBird(bird).id(), Optional.of(where), place));
        }

        @Override
        public Message words() {
            return place.map(name -> Message.of("deed.did.bird-out-at", bird, where, name))
                    .orElse(Message.of("deed.did.bird-out", bird, where));
        }
    }

    record BirdBack(String bird, @Prose Optional<String> result) implements BirdDeed, AboutBird {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.present(bird), BirdRules.isOut(bird));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Outing(scene.theBird(bird).id(), Optional.empty(), Optional.empty()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.bird-back", bird);
        }
    }

    record BirdLoose(
            Optional<String> bird,
            @Bounds(least = 1, most = 500) Optional<Integer> count) implements BirdDeed {

        @Override
        public List<Rule> judgedBy() {
            return looseRules(bird, count);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return bird.<Fact>map(it -> new Fact.Loose(scene.theBird(it).id(), true)).stream()
                    .toList();
        }

        @Override
        public Message words() {
            return bird.map(it -> Message.of("deed.did.bird-loose", it))
                    .orElse(Message.of("deed.did.birds-loose", count.orElse(0)));
        }

        @Override
        public List<String> mentionsBirds() {
            return bird.stream().toList();
        }
    }

    record BirdFound(
            Optional<String> bird,
            @Bounds(least = 1, most = 500) Optional<Integer> count) implements BirdDeed {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>(looseRules(bird, count));
            bird.ifPresent(it -> rules.add(BirdRules.isLoose(it)));
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return bird.<Fact>map(it -> new Fact.Loose(scene.theBird(it).id(), false)).stream()
                    .toList();
        }

        @Override
        public Message words() {
            return bird.map(it -> Message.of("deed.did.bird-found", it))
                    .orElse(Message.of("deed.did.birds-found", count.orElse(0)));
        }

        @Override
        public List<String> mentionsBirds() {
            return bird.stream().toList();
        }
    }

    /** A bird gone for good, or n birds of a flight not known one by one. */
    record BirdLeft(
            Optional<String> bird,
            @Bounds(least = 1, most = 500) Optional<Integer> count,
            Optional<String> cage,
            Way how,
            Optional<String> place,
            @Prose Optional<String> likely)
            implements BirdDeed {

        @Override
        public List<Rule> judgedBy() {
            return List.of(BirdRules.birdOrCount(bird, count, cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return bird.<List<Fact>>map(
                            it -> List.of(new Fact.Departure(scene.theBird(it).id(), how, place, likely)))
                    .orElseGet(() -> List.of(
                            new Fact.Flock(scene.theCage(cage.orElseThrow()).id(), -count.orElseThrow())));
        }

        @Override
        public Message words() {
            return bird.map(it -> Message.of("deed.did.bird-left", it, how))
                    .orElse(Message.of("deed.did.birds-left", count.orElse(0), how));
        }

        @Override
        public List<String> mentionsCages() {
            return cage.stream().toList();
        }

        @Override
        public List<String> mentionsBirds() {
            return bird.stream().toList();
        }
    }

    private static List<Rule> parentRules(Optional<String> father, Optional<String> mother) {
        List<Rule> rules = new ArrayList<>();
        father.ifPresent(it -> rules.add(BirdRules.known(it)));
        father.ifPresent(it -> rules.add(BirdRules.mayBe(it, Sex.COCK)));
        mother.ifPresent(it -> rules.add(BirdRules.known(it)));
        mother.ifPresent(it -> rules.add(BirdRules.mayBe(it, Sex.HEN)));
        return rules;
    }

    private static Fact parentage(Scene scene, long bird, Optional<String> father, Optional<String> mother) {
        return new Fact.Parentage(
                bird,
                father.map(scene::theBird).map(Bird::id),
                mother.map(scene::theBird).map(Bird::id));
    }

    private static List<Rule> looseRules(Optional<String> bird, Optional<Integer> count) {
        List<Rule> rules = new ArrayList<>();
        rules.add(scene -> Ruling.refusesIf(bird.isPresent() == count.isPresent(), "deed.bird-or-count"));
        bird.ifPresent(it -> rules.add(BirdRules.present(it)));
        return rules;
    }
}
