package org.cagewall.room;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.NestMove;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Round;

/**
 * From which day each nest and each egg is sat on, whichever nests the egg has lain in. Pure; any thread.
 *
 * @param usual what is usual of a pair, by the hen's species
 */
public record Sittings(Room room, Function<Pair, ? extends Usual> usual) {

    /** Of one room as it stands, by what its owner has set and the book says; its own numbers are not asked. */
    public static Sittings of(Room room) {
        return new Sittings(room, pair -> Species.in(room.settings(), room.speciesOf(pair)));
    }

    private static final Comparator<Egg> AS_LAID = Comparator.comparing(Egg::laid)
            .thenComparing(egg -> egg.mark().length())
            .thenComparing(Egg::mark);

    /** Eggs by the day they were laid, then by the number on the shell. */
    public static List<Egg> asLaid(Round round) {
        return round.eggs().stream().sorted(AS_LAID).toList();
    }

    /**
     * When the hen begins to sit on a round: the day it was seen; else the day of the egg she usually sits from, whatever
     * became of it since; else the day on which that egg is expected. Empty before her first egg, and where the species
     * is not known.
     */
    public Optional<SatFrom> start(Pair pair, Round round) {
        return round.sitting()
                .map(seen -> new SatFrom(seen.day(), seen.about(), false))
                .or(() -> nthEgg(pair, round, usual.apply(pair).expected(Timing.SITS_FROM)));
    }

    /** The day the hen's nth egg of a round was laid or, as long as it was not, is expected. */
    public Optional<SatFrom> nthEgg(Pair pair, Round round, Optional<Integer> wanted) {
        List<Egg> laid = asLaid(round);
        if (laid.isEmpty() || wanted.isEmpty()) {
            return Optional.empty();
        }
        int n = Math.max(wanted.get(), 1);
        boolean about = laid.stream().limit(n).anyMatch(Egg::about);
        if (laid.size() >= n) {
            return Optional.of(new SatFrom(laid.get(n - 1).laid(), about, false));
        }
        LocalDate last = laid.get(laid.size() - 1).laid();
        return usual.apply(pair)
                .expected(Timing.LAY_GAP)
                .map(gap -> new SatFrom(last.plusDays((long) gap * (n - laid.size())), about, true));
    }

    /**
     * From when an egg is sat on: in the first nest in which the hen sat before it was moved on, from the day it came
     * there or the day she began, whichever is later. Once sat it stays so. A nest with no eggs of its own counts from the
     * day the egg came there. Moves are taken as where the egg lay at each day's end. Empty where nothing is known of the
     * species.
     */
    public Optional<SatFrom> satFrom(Lying lying) {
        List<Place> places = places(lying.egg());
        for (int i = 0; i < places.size(); i++) {
            Place place = places.get(i);
            boolean guess = i == 0 && lying.egg().about();
            Optional<SatFrom> sat = startAt(lying, place).map(start -> start.notBefore(place.begin(), guess));
            if (sat.isPresent()
                    && (i == places.size() - 1
                            || sat.get().day().isBefore(places.get(i + 1).begin()))) {
                return sat;
            }
        }
        return Optional.empty();
    }

    /** A nest in which an egg lay at a day's end, and since when. */
    private record Place(long cage, LocalDate begin) {}

    private static List<Place> places(Egg egg) {
        Map<LocalDate, Long> atDaysEnd = new TreeMap<>();
        LocalDate day = egg.laid();
        atDaysEnd.put(day, egg.cage());
        for (NestMove move : egg.moves()) {
            day = move.day().isAfter(day) ? move.day() : day;
            atDaysEnd.put(day, move.cage());
        }
        List<Place> places = new ArrayList<>();
        atDaysEnd.forEach((begin, cage) -> {
            if (places.isEmpty() || places.get(places.size() - 1).cage() != cage) {
                places.add(new Place(cage, begin));
            }
        });
        return places;
    }

    private Optional<SatFrom> startAt(Lying lying, Place place) {
        if (place.cage() == lying.pair().cage()) {
            return start(lying.pair(), lying.round());
        }
        return hosts(place)
                .flatMap(host -> underWay(host, place.begin()).flatMap(round -> start(host, round).stream()))
                .findFirst()
                .or(() -> Optional.of(new SatFrom(place.begin(), false, false)));
    }

    /** The pair that stood in a cage when an egg came there. */
    private Stream<Pair> hosts(Place place) {
        return room.pairs().stream()
                .filter(pair -> pair.cage() == place.cage())
                .filter(pair -> !pair.since().isAfter(place.begin()) && !isGone(pair, place.begin()))
                .max(Comparator.comparing(Pair::since).thenComparing(Pair::id))
                .stream();
    }

    private boolean isGone(Pair pair, LocalDate day) {
        return Stream.of(room.cockOut(pair), room.henOut(pair))
                .allMatch(out -> out.filter(gone -> gone.isBefore(day)).isPresent());
    }

    private static Stream<Round> underWay(Pair host, LocalDate day) {
        return host.rounds().stream()
                .filter(round ->
                        round.eggs().stream().anyMatch(egg -> !egg.laid().isAfter(day)))
                .filter(round -> round.ended().filter(end -> !end.isAfter(day)).isEmpty())
                .reduce((earlier, later) -> later)
                .stream();
    }
}
