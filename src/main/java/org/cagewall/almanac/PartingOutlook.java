package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.Span;
import org.cagewall.room.nest.PartingBegun;
import org.cagewall.room.nest.Stage;

/**
 * How a pair is parted, or would be: its stages, each in its own time and in any order. Immutable; any thread.
 *
 * @param stages as they follow from what was recorded, whatever the day
 * @param henOutEarly the day from which she may go and leave the cock to rear: the youngest is three weeks then
 */
public record PartingOutlook(
        Optional<PartingBegun> begun,
        Map<Stage, StageOutlook> stages,
        Optional<LocalDate> henOutEarly,
        Flights flights) {

    /** From one stage of the box to the next, in days; common practice, no source. */
    public static final int BETWEEN_STAGES_DAYS = 2;

    public PartingOutlook {
        stages = Map.copyOf(stages);
    }

    public StageOutlook stage(Stage stage) {
        return stages.get(stage);
    }

    /**
     * The same as it stands on a day: a stage that is open counts for those behind it from that day where it was due before,
     * and none begins before the one before it has ended. So the hen is never due before the cock is out or stays.
     */
    public PartingOutlook on(LocalDate today) {
        Map<Stage, StageOutlook> asOf = new EnumMap<>(Stage.class);
        Optional<Window> before = Optional.empty();
        for (Stage stage : Stage.values()) {
            StageOutlook outlook = stage(stage).after(before);
            asOf.put(stage, outlook);
            if (!outlook.skipped()) {
                before = outlook.due().filter(Due::isOpen).map(due -> ended(due.window(), outlook.until(), today));
            }
        }
        return new PartingOutlook(begun, asOf, henOutEarly, flights);
    }

    /** Not before its last day, and where that has gone by as many days from today on as lie between the two. */
    private static Window ended(Window open, Span until, LocalDate today) {
        Window last = Window.on(open.latest()).guessed(open.about());
        return open.and(Window.on(today)).plus(until).and(last);
    }

    /** When the hen goes to the flight; empty once she is out. */
    public Optional<FlightMove> toFlight() {
        return Optional.of(stage(Stage.HEN_OUT))
                .filter(StageOutlook::isOpen)
                .flatMap(StageOutlook::due)
                .map(due -> flights.toFlight(due.window()));
    }

    /** Her window, drawn to the morning that suits the days away. */
    Window henOutFor(Window window) {
        return toFlight()
                .map(FlightMove::morning)
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
