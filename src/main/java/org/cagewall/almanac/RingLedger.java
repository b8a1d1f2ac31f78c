package org.cagewall.almanac;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.RingStock;
import org.cagewall.room.Room;

/**
 * The rings there are: what was bought, what is on birds and chicks, what was written off, and what is left. Immutable;
 * any thread.
 *
 * @param lines a stock each, the youngest year first
 */
public record RingLedger(List<Line> lines) {

    public RingLedger {
        lines = List.copyOf(lines);
    }

    /**
     * One stock.
     *
     * @param colour of its year, by the world body's table
     * @param worn how many a bird or chick wears or wore
     * @param writtenOff how many were spoilt or lost
     * @param left those that can still be put on, in the order of their numbers
     */
    public record Line(RingStock stock, Optional<RingColour> colour, int worn, int writtenOff, List<String> left) {

        public Line {
            left = List.copyOf(left);
        }

        public Optional<String> next() {
            return left.stream().findFirst();
        }
    }

    public static RingLedger of(Room room) {
        Set<String> worn = folded(room.ringsWorn());
        Set<String> writtenOff = folded(room.ringsSpoilt());
        return new RingLedger(room.rings().stream()
                .sorted((one, other) -> Integer.compare(other.year(), one.year()))
                .map(stock -> line(stock, worn, writtenOff))
                .toList());
    }

    private static Line line(RingStock stock, Set<String> worn, Set<String> writtenOff) {
        List<String> rings = stock.rings();
        return new Line(
                stock,
                RingYears.colour(stock.year()),
                (int) rings.stream().filter(ring -> worn.contains(fold(ring))).count(),
                (int) rings.stream()
                        .filter(ring -> writtenOff.contains(fold(ring)))
                        .count(),
                rings.stream()
                        .filter(ring -> !worn.contains(fold(ring)) && !writtenOff.contains(fold(ring)))
                        .toList());
    }

    /**
     * The ring to put on next: the first that is left of the year whose rings are the newest on that day, which need not
     * be the year of the hatch; of several sizes the one of which most have been put on.
     *
     * @param issued the day of the year on which new rings are issued
     */
    public Optional<String> next(LocalDate day, MonthDay issued) {
        int year = RingYears.ringYear(day, issued);
        return lines.stream()
                .filter(line -> line.stock().year() == year && !line.left().isEmpty())
                .max((one, other) -> Integer.compare(one.worn(), other.worn()))
                .flatMap(Line::next);
    }

    private static Set<String> folded(List<String> rings) {
        Set<String> folded = new HashSet<>();
        rings.forEach(ring -> folded.add(fold(ring)));
        return folded;
    }

    private static String fold(String ring) {
        return ring.toLowerCase(Locale.ROOT);
    }
}
