package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartingBegun;
import org.cagewall.room.nest.Stage;

/** Works out the stages in which one pair is parted. Pure; any thread. */
record Parting(Room room, Cage cage, Pair pair, Timetable timetable, List<EggOutlook> eggs, List<ChickOutlook> chicks) {

    /** From one stage to the next, in every column. */
    private static final Span BETWEEN_STAGES = new Span(
            PartingOutlook.BETWEEN_STAGES_DAYS, PartingOutlook.BETWEEN_STAGES_DAYS, PartingOutlook.BETWEEN_STAGES_DAYS);

    PartingOutlook outlook() {
        Map<Stage, StageOutlook> stages = new EnumMap<>(Stage.class);
        Optional<Window> ready = boxLeft();
        ready = put(stages, Stage.BOX_TURNED, turned(), ready, BETWEEN_STAGES);
        ready = put(stages, Stage.BOX_OFF, off(), ready, BETWEEN_STAGES);
        Optional<Window> fed = independent();
        ready = Stream.of(ready, fed).flatMap(Optional::stream).reduce(Window::and);
        Optional<Window> rested = put(
                stages,
                Stage.COCK_OUT,
                room.cockOut(pair),
                ready,
                timetable.span(Timing.HENS_REST).orElse(BETWEEN_STAGES));
        Optional<Window> free = rested.map(window -> careIsOver(window, fed));
        put(stages, Stage.HEN_OUT, room.henOut(pair), free, BETWEEN_STAGES);
        return new PartingOutlook(pair.parting(), stages, henOutEarly(), new Flights(room.absences()));
    }

    /** Notes the stage, and answers when the next may follow; a stage that is left out holds nobody up. */
    private Optional<Window> put(
            Map<Stage, StageOutlook> stages,
            Stage stage,
            Optional<LocalDate> happened,
            Optional<Window> ready,
            Span until) {
        boolean skipped = happened.isEmpty() && (pair.isSkipped(stage) || isTooLateToTurn(stage));
        Optional<Due> due = Due.of(happened, ready.filter(window -> !skipped));
        stages.put(stage, new StageOutlook(skipped, due, until));
        return skipped ? ready : due.map(it -> it.window().plus(until));
    }

    /** A box that is off is not turned any more. */
    private boolean isTooLateToTurn(Stage stage) {
        return stage == Stage.BOX_TURNED && off().isPresent();
    }

    /** When the youngest has left the box, what still lies there as an egg with it; not before the parting was begun. */
    private Optional<Window> boxLeft() {
        Stream<Window> young = Stream.concat(
                living().flatMap(chick -> chick.outOfBox().stream()).map(Due::window), toCome(Timing.OUT_OF_BOX));
        return Stream.concat(young, begun()).reduce(Window::and);
    }

    private Optional<Window> independent() {
        return Stream.concat(
                        living().flatMap(chick -> chick.independent().stream()).map(Due::window),
                        toCome(Timing.INDEPENDENT))
                .reduce(Window::and);
    }

    private Stream<ChickOutlook> living() {
        return chicks.stream().filter(each -> each.here() && each.chick().lost().isEmpty());
    }

    private Stream<Window> toCome(Timing timing) {
        return eggs.stream()
                .filter(egg -> egg.here() && egg.lying().egg().mayHatch())
                .flatMap(egg -> egg.hatch().stream())
                .flatMap(hatch -> timetable.span(timing).map(hatch.window()::plus).stream());
    }

    private Stream<Window> begun() {
        return pair.parting().map(PartingBegun::day).map(Window::on).stream();
    }

    /** A hen who rears alone does not go before the last chick feeds itself. */
    private Window careIsOver(Window rested, Optional<Window> fed) {
        return fed.filter(window -> room.cockOut(pair).isPresent())
                .map(rested::and)
                .orElse(rested);
    }

    private Optional<LocalDate> turned() {
        return cage.box()
                .turned()
                .filter(day -> !day.isBefore(pair.since()) && !cage.box().isOn())
                .filter(day -> cage.box().on().filter(day::isBefore).isEmpty());
    }

    private Optional<LocalDate> off() {
        return cage.box()
                .off()
                .filter(day ->
                        !day.isBefore(pair.since()) && cage.box().hanging().isEmpty());
    }

    private Optional<LocalDate> henOutEarly() {
        boolean eggsToSit =
                eggs.stream().anyMatch(egg -> egg.here() && egg.lying().egg().mayHatch());
        return chicks.stream()
                .filter(ChickOutlook::here)
                .map(ChickOutlook::chick)
                .filter(Chick::isInCare)
                .map(Chick::hatched)
                .max(Comparator.naturalOrder())
                .filter(youngest -> room.together(pair) && !eggsToSit)
                .map(youngest -> youngest.plusDays(Chick.COCK_REARS_FROM_DAYS));
    }
}
