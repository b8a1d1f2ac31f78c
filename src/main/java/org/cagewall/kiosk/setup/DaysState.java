package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.room.Timing;

/**
 * What the part of the timetable shows: what is usual for a species in this room, and the value that is being changed.
 * Immutable; free of Swing.
 *
 * @param species whose timetable it is
 * @param kinds all species of which there are timetables, this one among them
 */
record DaysState(
        String species, List<String> kinds, List<Line> lines, Optional<Timing> changing, Optional<Problem> problem) {

    /** Whose value it is. */
    enum Whose {
        BOOK,
        OWNER,
        OWN_NUMBERS
    }

    /**
     * One value.
     *
     * @param days {@code 18}, the usual one
     * @param between from the earliest to the latest, in words
     * @param source where it comes from, in words
     */
    record Line(
            Timing timing,
            String days,
            String name,
            String between,
            String source,
            Whose whose,
            int earliest,
            int expected,
            int latest) {}

    DaysState {
        kinds = List.copyOf(kinds);
        lines = List.copyOf(lines);
    }

    Optional<Line> line() {
        return changing.flatMap(
                timing -> lines.stream().filter(line -> line.timing() == timing).findFirst());
    }

    DaysState changing(Optional<Timing> other) {
        return new DaysState(species, kinds, lines, other, Optional.empty());
    }

    DaysState wrong(String part, String words) {
        return new DaysState(species, kinds, lines, changing, Optional.of(new Problem(part, words)));
    }
}
