package org.cagewall.almanac;

import java.time.LocalDate;
import java.time.Month;
import java.time.MonthDay;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cagewall.room.Shipped;

/**
 * Which year's rings are put on, and their colour. A ring's year is that of its issue, and need not be that of the hatch.
 * Read once; immutable; any thread.
 */
public final class RingYears {

    /** The body whose cycle holds where nothing else is said. */
    private static final String WORLD = "world";

    /** Rings issued in this month or later are those of the year that follows: most of Europe issues them in October. */
    private static final Month NEXT_YEARS_FROM = Month.JULY;

    private static final Map<String, Map<Integer, RingColour>> COLOURS = read();

    private RingYears() {}

    /** The colour of a year's rings by the world body's table; empty for a year that it does not tell. */
    public static Optional<RingColour> colour(int year) {
        return Optional.ofNullable(COLOURS.get(WORLD).get(year));
    }

    /** What a year's rings were with bodies that kept to another colour; none for almost every year. */
    public static List<RingColour> elsewhere(int year) {
        return COLOURS.entrySet().stream()
                .filter(body -> !body.getKey().equals(WORLD))
                .flatMap(body -> Stream.ofNullable(body.getValue().get(year)))
                .toList();
    }

    /** The year of the rings that are the newest on a day, where they are issued each year on that day. */
    public static int ringYear(LocalDate day, MonthDay issued) {
        int year = day.getYear() + (isBeforeItsYear(issued) ? 1 : 0);
        return day.isBefore(issued.atYear(day.getYear())) ? year - 1 : year;
    }

    /** The day on which a year's rings are issued. */
    public static LocalDate issued(int ringYear, MonthDay issued) {
        return issued.atYear(isBeforeItsYear(issued) ? ringYear - 1 : ringYear);
    }

    private static boolean isBeforeItsYear(MonthDay issued) {
        return issued.getMonth().compareTo(NEXT_YEARS_FROM) >= 0;
    }

    private static Map<String, Map<Integer, RingColour>> read() {
        Map<String, Map<Integer, RingColour>> colours = new TreeMap<>();
        for (String line : Shipped.lines(RingYears.class, "ring-colours.txt")) {
            List<String> parts = List.of(line.split("\\s+"));
            colours.computeIfAbsent(parts.get(0), body -> new TreeMap<>())
                    .put(
                            Integer.valueOf(parts.get(1)),
                            RingColour.valueOf(
                                    parts.get(2).toUpperCase(Locale.ROOT).replace('-', '_')));
        }
        return Collections.unmodifiableMap(colours);
    }
}
