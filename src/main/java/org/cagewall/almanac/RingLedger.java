package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.RingCustom;
import org.cagewall.room.RingForm;
import org.cagewall.room.RingIssue;
import org.cagewall.room.Room;
import org.cagewall.room.Species;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.RingStock;

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
     * @param colour of its year: the owner's own word, else by the page of the body whose rings they are
     * @param worn how many a bird or chick wears or wore
     * @param writtenOff how many were spoilt or lost
     * @param left those that can still be put on, in the order of their numbers
     */
    public record Line(RingStock stock, Optional<Colour> colour, int worn, int writtenOff, List<String> left) {

        public Line {
            left = List.copyOf(left);
        }

        public Optional<String> next() {
            return left.stream().findFirst();
        }
    }

    /** The year that a ring bears, and its colour as far as it is known. */
    public record Year(int year, Optional<Colour> colour) {}

    /** A colour by a body's page, or in the owner's own word. */
    public sealed interface Colour {
        /** What it is called: a word of the bundle, or the owner's own. */
        Object word();
    }

    /** By the page of the body whose rings they are. */
    public record OfPage(RingColour colour) implements Colour {
        @Override
        public Object word() {
            return colour;
        }
    }

    /** In the owner's own word. */
    public record OfOwner(String colour) implements Colour {
        @Override
        public Object word() {
            return colour;
        }
    }

    public static RingLedger of(Room room) {
        Set<String> worn = folded(room.ringsWorn());
        Set<String> writtenOff = folded(room.ringsSpoilt());
        RingCustom custom = room.settings().rings();
        return new RingLedger(room.rings().stream()
                .sorted((one, other) -> Integer.compare(other.year(), one.year()))
                .map(stock -> line(stock, colour(custom, stock.year()), worn, writtenOff))
                .toList());
    }

    /** The colour of a year's rings in a room, as far as it is known. */
    static Optional<Colour> colour(RingCustom custom, int year) {
        return Optional.ofNullable(custom.colours().get(year))
                .<Colour>map(OfOwner::new)
                .or(() -> custom.body()
                        .flatMap(body -> RingYears.colour(body, year))
                        .map(OfPage::new));
    }

    private static Line line(RingStock stock, Optional<Colour> colour, Set<String> worn, Set<String> writtenOff) {
        List<String> rings = stock.rings();
        return new Line(
                stock,
                colour,
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
     * be the year of the hatch, and of a size that the species wears; of several sizes the one of which most have been
     * put on.
     *
     * @param species one of no book wears any size
     */
    public Optional<String> next(LocalDate day, RingIssue issue, String species) {
        int year = issue.ringYear(day);
        return lines.stream()
                .filter(line -> line.stock().year() == year && !line.left().isEmpty())
                .filter(line -> fits(line.stock(), species))
                .max((one, other) -> Integer.compare(one.worn(), other.worn()))
                .flatMap(Line::next);
    }

    private static boolean fits(RingStock stock, String species) {
        return Species.of(species).map(book -> book.rings().fits(stock.size())).orElse(true);
    }

    /** The year that a ring bears, with its colour; empty where it was never bought here, as with a bird from elsewhere. */
    public static Optional<Year> year(Room room, String ring) {
        return room.rings().stream()
                .filter(stock -> stock.holds(ring))
                .findFirst()
                .map(stock -> new Year(stock.year(), colour(room.settings().rings(), stock.year())));
    }

    /** The year that a bird's ring bears: as it was said of it, as it was bought here, or as it is printed in the usual form. */
    public static Optional<Year> year(Room room, Bird bird) {
        Optional<Year> bought = year(room, bird.ring());
        return bird.ringYear()
                .filter(said -> bought.filter(own -> own.year() == said).isEmpty())
                .or(() -> RingForm.year(
                                bird.ring(),
                                bird.hatched().map(text -> Integer.parseInt(text.substring(0, 4))),
                                room.day().getYear() + 1)
                        .filter(read -> bought.isEmpty()))
                .map(year -> new Year(year, Optional.empty()))
                .or(() -> bought);
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
