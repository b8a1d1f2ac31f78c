package org.cagewall.deed;

import java.util.List;
import org.cagewall.room.Reason;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartedFor;
import org.cagewall.room.nest.Stage;
import org.cagewall.text.Message;

/** Deeds about parting a pair. The stages themselves are what is done to the box and to the birds. */
public sealed interface PartingDeed extends Deed, AtCage {

    record PartingBegun(String cage, PartedFor reason) implements PartingDeed {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), PairRules.hasPair(cage), PairRules.isNotBeingParted(cage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.Parting(thePair(cage, scene).id(), reason));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.parting-begun", reason);
        }
    }

    record StageSkipped(String cage, Stage stage, @Prose String why) implements PartingDeed {

        @Override
        public List<Rule> judgedBy() {
            return List.of(CageRules.inUse(cage), PairRules.hasPair(cage), PairRules.isNotSkipped(cage, stage));
        }

        @Override
        public List<Fact> facts(Scene scene) {
            return List.of(new Fact.StageSkip(thePair(cage, scene).id(), stage, why));
        }

        @Override
        public Message words() {
            return Message.of("nest.did.stage-skipped", stage, Reason.told(why));
        }
    }

    private static Pair thePair(String cage, Scene scene) {
        return PairRules.pair(scene, cage).orElseThrow();
    }
}
