package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;

/**
 * The room as a sitter will meet it on a day while the owner is away: an egg that had to hatch since the owner left, and of
 * which nothing else is recorded, has hatched on its expected day. Pure; any thread.
 */
public final class Reckoned {

    private Reckoned() {}

    /** Where nobody is away that day, the room as it is recorded. */
    public static Room of(Room room, LocalDate date) {
        return room.absenceOn(date).map(absence -> of(room, date, absence)).orElse(room);
    }

    private static Room of(Room room, LocalDate date, Absence absence) {
        Almanac almanac = Almanac.of(room);
        Map<Egg, LocalDate> hatched = new HashMap<>();
        room.walk().flatMap(cage -> almanac.nest(cage).eggsHere().stream()).forEach(egg -> window(egg)
                .filter(window -> !window.latest().isAfter(date))
                .filter(window -> !window.latest().isBefore(absence.from()))
                .ifPresent(window -> hatched.put(egg.lying().egg(), window.expected())));
        return hatched.isEmpty()
                ? room
                : room.withPairs(room.pairs().stream()
                        .map(pair -> hatched(pair, hatched))
                        .toList());
    }

    private static Optional<Window> window(EggOutlook egg) {
        return Optional.of(egg)
                .filter(it -> it.lying().egg().mayHatch())
                .flatMap(EggOutlook::hatch)
                .filter(Due::isOpen)
                .map(Due::window);
    }

    private static Pair hatched(Pair pair, Map<Egg, LocalDate> days) {
        List<Round> rounds =
                pair.rounds().stream().map(round -> hatched(round, days)).toList();
        return new Pair(
                pair.id(),
                pair.label(),
                pair.cage(),
                pair.cock(),
                pair.hen(),
                pair.since(),
                pair.about(),
                rounds,
                pair.parting(),
                pair.skipped());
    }

    private static Round hatched(Round round, Map<Egg, LocalDate> days) {
        return new Round(
                round.id(),
                round.number(),
                round.begun(),
                round.ended(),
                round.sitting(),
                round.eggs().stream()
                        .map(egg -> Optional.ofNullable(days.get(egg))
                                .map(day -> egg.hatching(day))
                                .orElse(egg))
                        .toList());
    }
}
