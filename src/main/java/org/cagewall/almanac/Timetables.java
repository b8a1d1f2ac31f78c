package org.cagewall.almanac;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.Settings;
import org.cagewall.room.Species;
import org.cagewall.room.Timing;

/** The timetables that the book of species gives, and what holds of them in a room. Read once; immutable; any thread. */
public final class Timetables {

    private static final List<Timetable> SHIPPED =
            Species.shipped().stream().map(Timetables::ofBook).toList();

    private Timetables() {}

    /** All of them, the budgerigar's first. */
    public static List<Timetable> shipped() {
        return SHIPPED;
    }

    /** The shipped timetable of a species; empty where there is none. */
    public static Optional<Timetable> of(String species) {
        return Species.of(species).map(Species.shipped()::indexOf).map(SHIPPED::get);
    }

    /** What holds in a room: the shipped values, and the owner's in their place. A value nobody can read is left out. */
    static Timetable in(Settings settings, String species) {
        Timetable table = of(species).orElseGet(() -> new Timetable(species, Map.of()));
        for (Timing timing : settings.timetable().isEmpty() ? new Timing[0] : Timing.values()) {
            Timetable book = table;
            table = Species.set(settings, species, timing)
                    .map(span -> book.with(book.value(timing)
                            .map(value -> value.setByOwner(span))
                            .orElseGet(() -> Value.ofOwner(timing, span))))
                    .orElse(table);
        }
        return table;
    }

    private static Timetable ofBook(Species species) {
        Map<Timing, Value> values = new EnumMap<>(Timing.class);
        Arrays.stream(Timing.values())
                .forEach(timing -> values.put(
                        timing,
                        Value.ofBook(
                                timing,
                                species.span(timing).orElseThrow(),
                                species.source(timing).orElseThrow())));
        return new Timetable(species.name(), values);
    }
}
