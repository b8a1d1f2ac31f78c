package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Sittings;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Lying;

/** What is to be done to the eggs of one nest together, rather than to each. Pure; any thread. */
final class Clutches {

    /** Days past their time after which a nest of clear eggs may be cleared; common practice. */
    private static final int ALL_CLEAR_DAYS = 3;

    private final Timetable timetable;
    private final List<List<EggOutlook>> clutches;

    Clutches(long cage, Sittings sittings, Timetable timetable, List<EggOutlook> eggs) {
        this.timetable = timetable;
        this.clutches = clutches(cage, eggs);
    }

    /** A round each; what was moved in counts with the youngest round of the nest, by itself where there is none. */
    private static List<List<EggOutlook>> clutches(long cage, List<EggOutlook> eggs) {
        Map<Long, List<EggOutlook>> own = new LinkedHashMap<>();
        List<EggOutlook> movedIn = new ArrayList<>();
        for (EggOutlook egg : eggs) {
            if (egg.lying().pair().cage() == cage) {
                own.computeIfAbsent(egg.lying().round().id(), round -> new ArrayList<>())
                        .add(egg);
            } else if (egg.here()) {
                movedIn.add(egg);
            }
        }
        List<List<EggOutlook>> clutches = new ArrayList<>(own.values());
        if (clutches.isEmpty()) {
            clutches.add(movedIn);
        } else {
            clutches.get(clutches.size() - 1).addAll(movedIn);
        }
        return clutches;
    }

    /** When the first two eggs are due: what they and those as old have not shown yet. */
    Optional<NestCandling> firstLook() {
        return clutches.stream()
                .flatMap(clutch -> firstLook(clutch).stream())
                .min(Comparator.comparing(look -> look.window().expected()));
    }

    /** When the last egg is due a first look and the first two a second one. */
    Optional<NestCandling> secondLook() {
        return clutches.stream()
                .flatMap(clutch -> secondLook(clutch).stream())
                .min(Comparator.comparing(look -> look.window().expected()));
    }

    private Optional<NestCandling> firstLook(List<EggOutlook> clutch) {
        return satOfFirstTwo(clutch).flatMap(sat -> timetable
                .span(Timing.FIRST_LOOK)
                .map(days -> Window.after(sat.day(), days).guessed(sat.about()))
                .flatMap(window -> candling(
                        window,
                        mayHatch(clutch)
                                .filter(egg -> !satFrom(egg).isAfter(sat.day()))
                                .filter(egg ->
                                        egg.firstLook().filter(Due::isOpen).isPresent()))));
    }

    private Optional<NestCandling> secondLook(List<EggOutlook> clutch) {
        Optional<SatFrom> last =
                mayHatch(clutch).flatMap(egg -> egg.satFrom().stream()).max(Comparator.comparing(SatFrom::day));
        Optional<Span> first = timetable.span(Timing.FIRST_LOOK);
        Optional<Span> second = timetable.span(Timing.SECOND_LOOK);
        Optional<SatFrom> firstTwo = satOfFirstTwo(clutch);
        if (last.isEmpty() || first.isEmpty() || second.isEmpty() || firstTwo.isEmpty()) {
            return Optional.empty();
        }
        Window window = Window.after(firstTwo.get().day(), second.get())
                .and(Window.after(last.get().day(), first.get()))
                .guessed(firstTwo.get().about() || last.get().about());
        LocalDate pivot = firstTwo.get().day();
        return candling(
                window,
                mayHatch(clutch).filter(egg -> (satFrom(egg).isAfter(pivot) ? egg.firstLook() : egg.secondLook())
                        .filter(Due::isOpen)
                        .isPresent()));
    }

    private static Optional<NestCandling> candling(Window window, Stream<EggOutlook> eggs) {
        List<Lying> open = eggs.map(EggOutlook::lying).toList();
        return open.isEmpty() ? Optional.empty() : Optional.of(new NestCandling(window, open));
    }

    /** From when the second egg is sat on, or the only one, whatever became of them; empty once one has hatched. */
    private static Optional<SatFrom> satOfFirstTwo(List<EggOutlook> clutch) {
        if (clutch.stream().anyMatch(egg -> egg.lying().egg().chick().isPresent())) {
            return Optional.empty();
        }
        return clutch.stream()
                .flatMap(egg -> egg.satFrom().stream())
                .sorted(Comparator.comparing(SatFrom::day))
                .limit(2)
                .reduce((earlier, later) -> later);
    }

    private static Stream<EggOutlook> mayHatch(List<EggOutlook> clutch) {
        return clutch.stream()
                .filter(egg -> egg.here() && egg.lying().egg().mayHatch())
                .filter(egg -> egg.satFrom().isPresent());
    }

    private static LocalDate satFrom(EggOutlook egg) {
        return egg.satFrom().map(SatFrom::day).orElseThrow();
    }

    List<ClearEggs> clearEggs() {
        return clutches.stream().flatMap(clutch -> clearEggs(clutch).stream()).toList();
    }

    private static Optional<ClearEggs> clearEggs(List<EggOutlook> clutch) {
        List<EggOutlook> clear = clutch.stream()
                .filter(egg -> egg.here() && isClear(egg.lying().egg()))
                .toList();
        Optional<LocalDate> from = mayHatch(clutch).findAny().isPresent()
                ? mayHatch(clutch).flatMap(egg -> egg.overdueFrom().stream()).max(Comparator.naturalOrder())
                : lastHatched(clutch).or(() -> clear.stream()
                        .flatMap(egg -> egg.wouldHatch().stream())
                        .map(window -> window.expected().plusDays(ALL_CLEAR_DAYS))
                        .max(Comparator.naturalOrder()));
        return from.filter(day -> !clear.isEmpty())
                .map(day ->
                        new ClearEggs(day, clear.stream().map(EggOutlook::lying).toList()));
    }

    private static boolean isClear(Egg egg) {
        return egg.isLying() && (egg.state() == EggState.CLEAR || egg.state() == EggState.ADDLED);
    }

    private static Optional<LocalDate> lastHatched(List<EggOutlook> clutch) {
        return clutch.stream()
                .filter(EggOutlook::here)
                .flatMap(egg -> egg.lying().chick().stream())
                .map(Chick::hatched)
                .max(Comparator.naturalOrder());
    }
}
