package org.cagewall.almanac;

import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cagewall.room.RingBody;
import org.cagewall.room.Shipped;

/** The colours of closed rings by year, each of the body on whose page it stands. Read once; immutable; any thread. */
public final class RingYears {

    private static final Map<RingBody, Map<Integer, RingColour>> COLOURS = read();

    private RingYears() {}

    /** The colour of a year's rings by a body's own page; empty for a year, or a body, that is not told. */
    public static Optional<RingColour> colour(RingBody body, int year) {
        return Optional.ofNullable(COLOURS.getOrDefault(body, Map.of()).get(year));
    }

    private static Map<RingBody, Map<Integer, RingColour>> read() {
        Map<RingBody, Map<Integer, RingColour>> colours = new EnumMap<>(RingBody.class);
        for (String line : Shipped.lines(RingYears.class, "ring-colours.txt")) {
            List<String> parts = List.of(line.toUpperCase(Locale.ROOT).split("\\s+"));
            colours.computeIfAbsent(RingBody.valueOf(parts.get(0)), body -> new TreeMap<>())
                    .put(
                            Integer.valueOf(parts.get(1)),
                            RingColour.valueOf(parts.get(2).replace('-', '_')));
        }
        colours.replaceAll((body, years) -> Map.copyOf(years));
        return Map.copyOf(colours);
    }
}
