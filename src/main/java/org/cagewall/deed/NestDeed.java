package org.cagewall.deed;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.Crops;
import org.cagewall.room.nest.EggPlace;
import org.cagewall.room.nest.Feet;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;
import org.cagewall.text.Message;

/** Deeds about pairs, boxes, rounds and eggs laid. */
public sealed interface NestDeed extends Deed {

    record PairPlanned(String cage, String cock, String hen, Optional<String> pair) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>();
            rules.add(CageRules.inUse(cage));
            rules.addAll(mateRules(cock, hen));
            return rules;
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Plan(
                    scene.theCage(cage).id(),
                    scene.theBird(cock).id(),
                    scene.theBird(hen).id(),
                    pair));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.pair-planned", cock, hen, cage);
        }

        @Override
        public List<String> mentionsBirds() {
            return List.of(cock, hen);
        }
    }

    /** A cock and a hen put together; both are placed in the cage. */
    record PairedUp(String cage, String cock, String hen, Optional<String> pair) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            List<Rule> rules = new ArrayList<>();
            rules.add(CageRules.inUse(cage));
            rules.addAll(mateRules(cock, hen));
            rules.add(PairRules.cageHasNoOtherPair(cage));
            rules.add(PairRules.labelIsFree(pair));
            rules.add(Rule.together(
                    AgeRules.oldEnoughToBreed(cock, Sex.COCK),
                    AgeRules.oldEnoughToBreed(hen, Sex.HEN),
                    AgeRules.areNoNearKin(cock, hen),
                    PairRules.isFit(cock),
                    PairRules.isFit(hen),
                    PairRules.isUnpaired(cock),
                    PairRules.isUnpaired(hen),
                    PairRules.othersShareTheCage(cage, cock, hen),
                    CageRules.isForBreeding(cage)));
            return rules;
        }

        @Override
        public Deed resolved(Scene scene) {
            return pair.isPresent()
                    ? this
                    : new PairedUp(
                            cage,
                            cock,
                            hen,
                            Optional.of(Integer.toString(scene.register().highestPairLabel() + 1)));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Cage there = scene.theCage(cage);
            List<Fact> facts = new ArrayList<>();
            for (String name : List.of(cock, hen)) {
                Bird bird = scene.theBird(name);
                if (!bird.cageOn(scene.on()).equals(Optional.of(there.id()))) {
                    facts.add(new Fact.Move(bird.id(), there.id()));
                }
            }
            facts.add(new Fact.Pairing(
                    there.id(),
                    scene.theBird(cock).id(),
                    scene.theBird(hen).id(),
                    pair.orElseThrow(),
                    scene.told().about()));
            return facts;
        }

        @Override
        public Message words() {
            return Message.of("deed.did.paired-up", cock, hen, pair.orElse("-"));
        }

        @Override
        public List<String> mentionsBirds() {
            return List.of(cock, hen);
        }
    }

    record BoxOn(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), CageRules.noBoxHangs(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return box(scene, cage, BoxStep.ON);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.box-on");
        }
    }

    record BoxTurned(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), CageRules.boxHangs(cage), CageRules.noLiveEggs(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return box(scene, cage, BoxStep.TURNED);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.box-turned");
        }
    }

    record BoxOff(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), CageRules.boxHangs(cage), CageRules.noLiveEggs(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return box(scene, cage, BoxStep.OFF);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.box-off");
        }
    }

    record BoxCleaned(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return box(scene, cage, BoxStep.CLEANED);
        }

        @Override
        public Message words() {
            return Message.of("deed.did.box-cleaned");
        }
    }

    record RoundBegun(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), PairRules.hasPair(cage), PairRules.roundIsOver(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(nextRound(PairRules.pair(scene, cage).orElseThrow()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.round-begun");
        }
    }

    record RoundEnded(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), PairRules.hasPair(cage), PairRules.hasOpenRound(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Pair pair = PairRules.pair(scene, cage).orElseThrow();
            return List.of(
                    new Fact.RoundEnd(pair.id(), pair.openRound().orElseThrow().id()));
        }

        @Override
        public Message words() {
            return Message.of("deed.did.round-ended");
        }
    }

    /** An egg found; the first one after pairing up or after the end of a round begins a round. */
    record EggLaid(String cage, Optional<String> mark, Optional<EggPlace> place) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.inUse(cage),
                    PairRules.markIsFree(cage, mark),
                    PairRules.eggHasAPair(cage),
                    AgeRules.notTooSoonForThatCock(cage),
                    PairRules.roundIsNotLongOver(cage),
                    PairRules.gapIsNotLong(cage),
                    PairRules.isNotLongBefore(cage),
                    PairRules.notTheThirdEggSoSoon(cage),
                    PairRules.notTheSecondEggThatDay(cage),
                    PairRules.wasLaidInTheBox(cage, place),
                    PairRules.clutchIsNotFull(cage));
        }

        @Override
        public Deed resolved(Scene scene) {
            return mark.isPresent() ? this : new EggLaid(cage, Optional.of(PairRules.nextMark(scene, cage)), place);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Optional<Pair> found = PairRules.pair(scene, cage);
            if (found.isEmpty()) {
                return List.of();
            }
            Pair pair = found.get();
            List<Fact> facts = new ArrayList<>();
            Optional<Round> open = pair.openRound();
            if (open.isEmpty()) {
                facts.add(nextRound(pair));
            }
            facts.add(new Fact.Egg(
                    pair.id(),
                    open.map(Round::id).orElse(scene.entry()),
                    mark.orElseThrow(),
                    place.orElse(EggPlace.BOX),
                    scene.theCage(cage).id(),
                    scene.told().about(),
                    Optional.empty()));
            return facts;
        }

        @Override
        public Message words() {
            return place.filter(it -> it != EggPlace.BOX)
                    .map(it -> Message.of("deed.did.egg-laid-at", mark.orElse("-"), it))
                    .orElse(Message.of("deed.did.egg-laid", mark.orElse("-")));
        }
    }

    /**
     * What lies in a nest when a room is begun in mid-season: eggs beside chicks, which were looked at
     * that day. Dates are guesses: eggs n days apart from the first, or up to the day told; chicks as many days
     * apart, the eldest of the age told.
     */
    record EggsFound(
            String cage,
            @Bounds(least = 0, most = 20) int count,
            Optional<LocalDate> first,
            @Bounds(least = 0, most = 20) Optional<Integer> chicks,
            @Bounds(least = 0, most = 90) Optional<Integer> age,
            @Bounds(least = 1, most = 7) Optional<Integer> apart)
            implements NestDeed, AtCage {

        /** Old entries that do not tell it were reckoned so: laid every other day, as by a budgerigar. */
        private static final int ONCE_APART = 2;

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.inUse(cage),
                    PairRules.hasPair(cage),
                    scene -> Ruling.refusesIf(count + young() == 0, "nest.nothing-found", cage),
                    scene -> Ruling.refusesIf(
                            first.filter(day -> day.isAfter(scene.on())).isPresent(),
                            "deed.future",
                            first.map(LocalDate::toString).orElse("-"),
                            scene.on()));
        }

        /** As far apart as this pair's species lays, unless it is told. */
        @Override
        public Deed resolved(Scene scene) {
            return apart.isPresent() || PairRules.pair(scene, cage).isEmpty()
                    ? this
                    : new EggsFound(cage, count, first, chicks, age, Optional.of(PairRules.layGap(scene, cage)));
        }

        private int young() {
            return chicks.orElse(0);
        }

        private int gap() {
            return apart.orElse(ONCE_APART);
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Pair pair = PairRules.pair(scene, cage).orElseThrow();
            Optional<Round> open = pair.openRound();
            List<Fact> facts = new ArrayList<>();
            if (open.isEmpty()) {
                facts.add(nextRound(pair));
            }
            long round = open.map(Round::id).orElse(scene.entry());
            int mark = Integer.parseInt(PairRules.nextMark(scene, cage));
            for (int i = 0; i < young() + count; i++) {
                facts.add(new Fact.Egg(
                        pair.id(),
                        round,
                        Integer.toString(mark + i),
                        EggPlace.BOX,
                        scene.theCage(cage).id(),
                        true,
                        Optional.of(laid(i, scene.on()))));
            }
            for (int i = 0; i < young(); i++) {
                facts.add(new Fact.Hatching(
                        pair.id(), round, Integer.toString(mark + i), true, Optional.of(hatched(i, scene.on()))));
            }
            if (young() > 0) {
                facts.add(new Fact.NestLook(
                        scene.theCage(cage).id(),
                        chicks,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()));
            }
            return facts;
        }

        private LocalDate laid(int i, LocalDate on) {
            LocalDate reckoned = first.map(day -> day.plusDays((long) gap() * i))
                    .orElse(on.minusDays((long) gap() * (young() + count - 1 - i)));
            LocalDate latest = i < young() ? hatched(i, on) : on;
            return reckoned.isAfter(latest) ? latest : reckoned;
        }

        private LocalDate hatched(int i, LocalDate on) {
            return on.minusDays(Math.max(0, age.orElse(0) - gap() * i));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.eggs-found", count, young());
        }
    }

    /** The hen is seen to sit: from then on, and not from the egg she usually begins with. */
    record Sitting(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), PairRules.hasPair(cage), PairRules.hasOpenRound(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Pair pair = PairRules.pair(scene, cage).orElseThrow();
            return List.of(new Fact.Sitting(
                    pair.id(), pair.openRound().orElseThrow().id(), scene.told().about()));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.sitting");
        }
    }

    /**
     * Eggs that were taken up as they were laid lie in the nest again, under the numbers on their shells: from that day
     * on all are sat on, and no dummy lies with them.
     */
    record EggsPutBack(String cage) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(
                    CageRules.inUse(cage),
                    PairRules.hasPair(cage),
                    PairRules.hasOpenRound(cage),
                    PairRules.hasEggsToPutBack(cage),
                    PairRules.isTheMorningToPutThemBack(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            Pair pair = PairRules.pair(scene, cage).orElseThrow();
            return List.of(
                    new Fact.Sitting(
                            pair.id(),
                            pair.openRound().orElseThrow().id(),
                            scene.told().about()),
                    new Fact.Dummies(scene.theCage(cage).id(), 0));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.eggs-put-back");
        }
    }

    record Dummies(
            String cage, @Bounds(least = 0, most = 20) int count) implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Dummies(scene.theCage(cage).id(), count));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.dummies", count);
        }
    }

    record NestLookedAt(
            String cage,
            @Bounds(least = 0, most = 20) Optional<Integer> chicks,
            Optional<Crops> crops,
            Optional<Feet> feet,
            Optional<Boolean> damp,
            Optional<Boolean> plucked)
            implements NestDeed, AtCage {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.NestLook(scene.theCage(cage).id(), chicks, crops, feet, damp, plucked));
        }

        @Override
        public Message words() {
            return crops.map(it -> Message.of("nest.did.nest-crops", it)).orElse(Message.of("nest.did.nest-looked-at"));
        }
    }

    private static List<Rule> mateRules(String cock, String hen) {
        return List.of(
                BirdRules.present(cock),
                BirdRules.present(hen),
                BirdRules.mayBe(cock, Sex.COCK),
                BirdRules.mayBe(hen, Sex.HEN),
                scene -> Ruling.refusesIf(
                        scene.bird(cock).map(Bird::id).equals(scene.bird(hen).map(Bird::id)), "deed.same-bird", cock));
    }

    private static List<Fact> box(Scene scene, String cage, BoxStep step) {
        return List.of(new Fact.Box(scene.theCage(cage).id(), step, scene.told().about()));
    }

    private static Fact nextRound(Pair pair) {
        return new Fact.Round(
                pair.id(), pair.rounds().stream().mapToInt(Round::number).max().orElse(0) + 1);
    }
}
