package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.PartingBegun;
import org.cagewall.room.Stage;

/**
 * How a pair is parted, or would be: its stages, each in its own time and in any order. Immutable; any thread.
 *
 * @param toFlight when the hen goes to the flight; empty once she is out
 * @param henOutEarly the day from which she may go and leave the cock to rear: the youngest is three weeks then
 */
public record PartingOutlook(
        Optional<PartingBegun> begun,
        Map<Stage, StageOutlook> stages,
        Optional<FlightMove> toFlight,
        Optional<LocalDate> henOutEarly) {

    /** From one stage of the box to the next, in days; common practice, no source. */
    public static final int BETWEEN_STAGES_DAYS = 2;

    public PartingOutlook {
        stages = Map.copyOf(stages);
    }

    public StageOutlook stage(Stage stage) {
        return stages.get(stage);
    }

    /** Her window, drawn to the morning that suits the days away. */
    Window henOutFor(Window window) {
        return toFlight.map(FlightMove::morning)
                .filter(day -> !day.isBefore(window.earliest()))
                .map(day -> new Window(window.earliest(), day, Window.later(day, window.latest()), window.about()))
                .orElse(window);
    }

    /** The stage that comes next; empty when all are done or left out. */
    public Optional<Stage> next() {
        return Arrays.stream(Stage.values())
                .filter(stage -> stage(stage).isOpen())
                .findFirst();
    }
}
