package org.cagewall.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.SatFrom;

/**
 * At what stage a nest is, so that young from another can be told to fit or not: by the days on which its eggs that may
 * hatch and its chicks in the box hatch, or hatched; where it has none of these, by those on which its clear eggs would
 * have. Immutable; any thread.
 */
record HostStage(Outlook nest, HatchDays hatches, On on) {

    /** On what its hen sits. */
    enum On {
        YOUNG,
        CLEAR_EGGS
    }

    /** Nothing, where there is neither egg nor chick to tell it by. */
    static Optional<HostStage> of(Outlook nest) {
        List<Integer> young = young(nest);
        if (!young.isEmpty()) {
            return Optional.of(new HostStage(nest, HatchDays.of(young), On.YOUNG));
        }
        return Optional.of(clearOnes(nest))
                .filter(clear -> !clear.isEmpty())
                .map(clear -> new HostStage(nest, HatchDays.of(clear), On.CLEAR_EGGS));
    }

    /** The eggs of which something may come, as they were laid. */
    static List<EggOutlook> live(Outlook nest) {
        return nest.eggsHere().stream()
                .filter(egg -> egg.lying().egg().mayHatch() && egg.hatch().isPresent())
                .toList();
    }

    static LocalDate hatch(EggOutlook egg) {
        return egg.hatch().map(Due::window).map(Window::expected).orElseThrow();
    }

    private static List<Integer> young(Outlook nest) {
        return Stream.concat(
                        live(nest).stream().map(HostStage::hatch),
                        nest.chicksHere().stream()
                                .map(ChickOutlook::chick)
                                .filter(chick -> chick.outOfBox().isEmpty())
                                .map(chick -> chick.hatched()))
                .map(Course::day)
                .toList();
    }

    private static List<Integer> clearOnes(Outlook nest) {
        return nest.eggsHere().stream()
                .filter(egg -> !egg.lying().egg().mayHatch())
                .flatMap(egg -> egg.wouldHatch().stream())
                .map(would -> Course.day(would.expected()))
                .toList();
    }

    /** From the hatching of an egg that is moved here on this day to the nest's own range; less than 0 for before it. */
    int gap(EggOutlook egg, LocalDate moved) {
        return gap(hatchesHere(egg, moved));
    }

    /** From that day to the nest's own range, in days; less than 0 for before it. */
    int gap(LocalDate hatch) {
        return hatches.gap(Course.day(hatch));
    }

    private LocalDate hatchesHere(EggOutlook egg, LocalDate moved) {
        LocalDate sat = egg.satFrom().map(SatFrom::day).orElseThrow();
        LocalDate satHere = nest.sittingFrom()
                .map(SatFrom::day)
                .filter(start -> start.isAfter(moved))
                .orElse(moved);
        long later = sat.isBefore(moved) ? 0 : satHere.toEpochDay() - sat.toEpochDay();
        return hatch(egg).plusDays(later);
    }
}
