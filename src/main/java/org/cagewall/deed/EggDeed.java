package org.cagewall.deed;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Message;

/** Deeds about one egg, up to its hatching. */
public sealed interface EggDeed extends Deed {

    record EggCandled(String cage, String mark, Optional<String> round, EggFinding finding)
            implements EggDeed, AboutEgg {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAnEgg(this, AgeRules.notTooEarlyToTell(this, finding));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, (pair, round, egg) -> new Fact.Candling(pair, round, egg, finding));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.egg-candled", mark, finding);
        }
    }

    record EggPipped(String cage, String mark, Optional<String> round) implements EggDeed, AboutEgg {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAnEgg(this, EggRules.mayHatch(this));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, Fact.Pip::new);
        }

        @Override
        public Message words() {
            return Message.of("nest.did.egg-pipped", mark);
        }
    }

    record EggRemoved(String cage, String mark, Optional<String> round, Optional<WhyRemoved> why)
            implements EggDeed, AboutEgg {

        @Override
        public List<Rule> judgedBy() {
            return EggRules.ofAnEgg(this, EggRules.notFullAndWhole(this, reason()));
        }

        @Override
        public boolean endsTheEgg() {
            return true;
        }

        private WhyRemoved reason() {
            return why.orElse(WhyRemoved.OTHER);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return tells(scene, (pair, round, egg) -> new Fact.Removal(pair, round, egg, reason()));
        }

        @Override
        public Message words() {
            return why.map(it -> Message.of("nest.did.egg-removed-for", mark, it))
                    .orElse(Message.of("nest.did.egg-removed", mark));
        }
    }

    /** An egg put under another hen; it keeps its round and its mark, and gets a letter. */
    record EggMoved(String cage, String mark, Optional<String> round, String to, Optional<String> letter)
            implements EggDeed, AboutEgg {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>(EggRules.ofAnEgg(this));
            rules.addAll(FosterRules.of(cage, mark, to, letter));
            rules.add(FosterRules.hasRoomForAnEgg(to));
            return rules;
        }

        @Override
        public Deed resolved(Scene scene) {
            return letter.isPresent()
                    ? this
                    : new EggMoved(cage, mark, round, to, Optional.of(FosterRules.letterFor(theEgg(scene), scene)));
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
            return Message.of("nest.did.egg-moved", mark, cage, to, letter.orElse("-"));
        }

        @Override
        public List<String> mentionsCages() {
            return List.of(cage, to);
        }
    }

    /** A chick hatched; without a mark the egg that is due next is meant. */
    record ChickHatched(String cage, Optional<String> mark, Optional<String> round) implements EggDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            if (mark.isEmpty()) {
                return List.of(CageRules.inUse(cage), EggRules.oneIsDue(cage), this::theOneDueIsNotTooSoon);
            }
            Hatching which = new Hatching(cage, mark.get(), round);
            return EggRules.ofAnEgg(which, EggRules.mayHatch(which), AgeRules.notTooSoon(which));
        }

        private Ruling theOneDueIsNotTooSoon(Scene scene) {
            return EggRules.dueNext(scene, cage)
                    .map(lying -> new Hatching(
                            cage,
                            lying.name(scene.theCage(cage).id()),
                            Optional.of(Integer.toString(lying.round().number()))))
                    .map(due -> AgeRules.notTooSoon(due).judge(scene))
                    .orElse(Ruling.ALLOWED);
        }

        @Override
        public Deed resolved(Scene scene) {
            return mark.isPresent()
                    ? this
                    : new ChickHatched(
                            cage,
                            EggRules.dueNext(scene, cage)
                                    .map(egg -> egg.name(scene.theCage(cage).id())),
                            EggRules.dueNext(scene, cage)
                                    .map(egg -> Integer.toString(egg.round().number())));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Lying egg = new Hatching(cage, mark.orElseThrow(), round).theEgg(scene);
            return List.of(new Fact.Hatching(
                    egg.pair().id(),
                    egg.round().id(),
                    egg.egg().mark(),
                    scene.told().about(),
                    Optional.empty()));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.chick-hatched", mark.orElse("-"));
        }
    }

    /** An egg or chick as a deed names it. */
    interface AboutEgg extends AtCage {

        String mark();

        Optional<String> round();

        /** The egg or chick that is meant, if there is one. */
        default Optional<Lying> egg(Scene scene) {
            return scene.room().cage(cage()).map(Cage::id).flatMap(id -> scene.nest(id)
                    .find(mark(), round(), scene.on()));
        }

        /** What the deed tells of it. */
        default List<Fact> tells(Scene scene, Telling telling) {
            Lying egg = theEgg(scene);
            return List.of(
                    telling.fact(egg.pair().id(), egg.round().id(), egg.egg().mark()));
        }

        /** Whether there is no egg after it: it is taken out, or it hatches. */
        default boolean endsTheEgg() {
            return false;
        }

        /** The egg or chick, which the rules have made sure of. */
        default Lying theEgg(Scene scene) {
            return egg(scene).orElseThrow(() -> new IllegalStateException("no egg " + mark()));
        }
    }

    /** A fact about the egg that is known by these three. */
    interface Telling {
        Fact fact(long pair, long round, String mark);
    }

    /** Which egg of which cage hatches. */
    record Hatching(String cage, String mark, Optional<String> round) implements AboutEgg {

        @Override
        public boolean endsTheEgg() {
            return true;
        }
    }
}
