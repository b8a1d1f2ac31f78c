package org.cagewall.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickTrait;
import org.cagewall.room.nest.Lying;
import org.cagewall.text.Message;

/** Deeds about one chick, from its ring to its weaning. */
public sealed interface ChickDeed extends Deed, EggDeed.AboutEgg {

    record ChickRinged(String cage, String mark, Optional<String> round, String ring) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(
                    this, EggRules.hasNoRing(this), EggRules.ringIsFree(ring), AgeRules.ringedAtAGoodAge(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(
                    scene,
                    (pair, round, egg) -> new Fact.Ringing(
                            pair, round, egg, ring, scene.told().about()));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-ringed", mark, ring);
        }
    }

    record RingChecked(String cage, String mark, Optional<String> round) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(this, EggRules.isRinged(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, Fact.RingCheck::new);
        }

        @Override
        public Message words() {
            return Message.of("nest.did.ring-checked", mark);
        }
    }

    record ChickLeftBox(String cage, String mark, Optional<String> round) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(this, EggRules.isInTheBox(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return trip(this, scene, true);
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-left-box", mark);
        }
    }

    record ChickPutBack(String cage, String mark, Optional<String> round) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(this, EggRules.isOutOfTheBox(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return trip(this, scene, false);
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-put-back", mark);
        }
    }

    record ChickMissing(
            String cage,
            String mark,
            Optional<String> round,
            @Prose Optional<String> likely) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(this, EggRules.notWeanedAtAll(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, (pair, round, egg) -> new Fact.ChickLoss(pair, round, egg, false, likely));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-missing", mark);
        }
    }

    record ChickDied(
            String cage,
            String mark,
            Optional<String> round,
            @Prose Optional<String> likely) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(this, EggRules.notWeanedAtAll(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, (pair, round, egg) -> new Fact.ChickLoss(pair, round, egg, true, likely));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-died", mark);
        }
    }

    record ChickMarked(String cage, String mark, Optional<String> round, ChickTrait trait) implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(this);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, (pair, round, egg) -> new Fact.ChickMark(pair, round, egg, trait));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-marked", mark, trait);
        }
    }

    /** A chick put under another pair. */
    record ChickMoved(String cage, String mark, Optional<String> round, String to, Optional<String> letter)
            implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>(EggRules.ofAChick(this));
            rules.addAll(FosterRules.of(cage, mark, to, letter));
            rules.add(FosterRules.hasRoomForAChick(to));
            rules.add(AgeRules.noGrownBirdsWithAChick(this, to));
            return rules;
        }

        @Override
        public Deed resolved(Scene scene) {
            return letter.isPresent()
                    ? this
                    : new ChickMoved(cage, mark, round, to, Optional.of(FosterRules.letterFor(theEgg(scene), scene)));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(
                    scene,
                    (pair, round, egg) -> new Fact.NestMove(
                            pair, round, egg, scene.theCage(to).id(), letter.orElseThrow()));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-moved", mark, cage, to, letter.orElse("-"));
        }

        @Override
        public List<String> mentionsCages() {
            return List.of(cage, to);
        }
    }

    /** A chick taken from its parents: from then on it is a bird, under its ring or under pair, round and mark. */
    record ChickWeaned(
            String cage, String mark, Optional<String> round, String to, Optional<Sex> sex, Optional<String> colour)
            implements ChickDeed {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAChick(
                    this,
                    EggRules.notWeanedAtAll(this),
                    CageRules.inUse(to),
                    AgeRules.oldEnoughToFeedItself(this),
                    AgeRules.noGrownBirdsWithAChick(this, to),
                    CageRules.takesAnother(to));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Lying lying = theEgg(scene);
            Chick chick = lying.chick().orElseThrow();
            List<Fact> facts = new ArrayList<>();
            facts.add(new Fact.Bird(
                    name(lying, scene),
                    scene.register().bird(lying.pair().hen()).flatMap(hen -> hen.species()),
                    Optional.of(chick.hatched().toString()),
                    colour,
                    Optional.empty(),
                    Optional.empty(),
                    Optional.empty()));
            sex.ifPresent(it -> facts.add(new Fact.Sexing(scene.entry(), it)));
            facts.add(new Fact.Parentage(
                    scene.entry(),
                    Optional.of(lying.pair().cock()),
                    Optional.of(lying.pair().hen())));
            facts.add(new Fact.Move(scene.entry(), scene.theCage(to).id()));
            facts.add(new Fact.Weaning(
                    lying.pair().id(),
                    lying.round().id(),
                    lying.egg().mark(),
                    scene.told().about()));
            return facts;
        }

        /** Its ring, or pair, round and mark; the year behind them where another bird has that name already. */
        private static String name(Lying lying, Scene scene) {
            String plain = lying.pair().label() + "-" + lying.round().number() + "-"
                    + lying.egg().mark();
            return lying.chick()
                    .flatMap(Chick::ringWorn)
                    .orElse(
                            scene.bird(plain).isEmpty()
                                    ? plain
                                    : plain + "-" + lying.egg().laid().getYear());
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-weaned", mark, to);
        }

        @Override
        public List<String> mentionsCages() {
            return List.of(cage, to);
        }
    }

    private static List<Fact> trip(ChickDeed deed, Scene scene, boolean outside) {
        Lying chick = deed.theEgg(scene);
        return List.of(new Fact.BoxTrip(
                chick.pair().id(),
                chick.round().id(),
                chick.egg().mark(),
                outside,
                scene.told().about()));
    }
}
