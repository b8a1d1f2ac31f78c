package org.cagewall.plan;

import java.util.Optional;
import java.util.OptionalInt;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.PartingOutlook;
import org.cagewall.almanac.StageOutlook;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.PartingBegun;
import org.cagewall.room.nest.Stage;

/** How the pair of one nest is parted once its young are off its hands. Days as counted from 1970. Immutable; any thread. */
record Stages(boolean ofAPair, OptionalInt begun, Step boxTurned, Step boxOff, Step cockOut, Step henOut) {

    /** One stage: done on a day, left out, or to come. */
    private record Step(OptionalInt happened, boolean skipped) {

        /** The day of it, and the day itself where it is left out. */
        private int day(int ready) {
            return skipped ? ready : happened.orElse(ready);
        }

        /** From when the next may follow; a stage that is left out holds nobody up. */
        private int then(int ready, int days) {
            return skipped ? ready : day(ready) + days;
        }
    }

    static Stages of(Outlook nest) {
        boolean boxless = nest.box().hanging().isEmpty();
        return new Stages(
                nest.parting().isPresent(),
                nest.parting()
                        .flatMap(PartingOutlook::begun)
                        .map(PartingBegun::day)
                        .map(day -> OptionalInt.of(Course.day(day)))
                        .orElse(OptionalInt.empty()),
                step(nest, Stage.BOX_TURNED, boxless),
                step(nest, Stage.BOX_OFF, boxless),
                step(nest, Stage.COCK_OUT, false),
                step(nest, Stage.HEN_OUT, false));
    }

    /** Where no box hangs and no parting was begun, there is none to turn. */
    private static Step step(Outlook nest, Stage stage, boolean boxless) {
        boolean begun = nest.parting().flatMap(PartingOutlook::begun).isPresent();
        Optional<StageOutlook> outlook = nest.parting().map(parting -> parting.stage(stage));
        boolean skipped = outlook.map(StageOutlook::skipped).orElse(true);
        OptionalInt happened = outlook.flatMap(StageOutlook::due)
                .flatMap(Due::happened)
                .map(day -> OptionalInt.of(Course.day(day)))
                .orElse(OptionalInt.empty());
        return new Step(happened, happened.isEmpty() && (skipped || boxless && !begun));
    }

    /**
     * The day on which the hen is in the flight and the cock too; for a nest without a pair, on which the last is fed.
     *
     * @param out the day the youngest leaves the box, of those that do; {@link Integer#MIN_VALUE} for none
     * @param fed the day the last feeds itself; likewise
     */
    int apart(Law law, int today, int out, int fed) {
        int left = Math.max(out, begun.orElse(out));
        int turn = Math.max(left, today);
        int off = Math.max(boxTurned.then(turn, PartingOutlook.BETWEEN_STAGES_DAYS), today);
        int part = Math.max(Math.max(boxOff.then(off, PartingOutlook.BETWEEN_STAGES_DAYS), fed), today);
        int alone = cockOut.day(part);
        int rested = cockOut.then(part, law.of(Timing.HENS_REST, today - alone));
        int free = Math.max(cockOut.happened().isPresent() ? Math.max(rested, fed) : rested, today);
        return ofAPair ? Math.max(henOut.day(free), alone) : Math.max(fed, today);
    }
}
