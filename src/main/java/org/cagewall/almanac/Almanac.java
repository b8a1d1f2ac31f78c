package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Sittings;
import org.cagewall.room.Species;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;

/**
 * What comes next in every cage, and when: the one way into the arithmetic of dates. Made of one room and true for it
 * alone. Pure; any thread.
 */
public final class Almanac {

    private final Room room;
    private final Map<String, Timetable> timetables;
    private final Map<String, OwnNumbers> ownNumbers;
    private final Function<Pair, Timetable> ofPairs;
    private final Sittings sittings;

    private Almanac(Room room, Map<String, Timetable> timetables, Map<String, OwnNumbers> ownNumbers) {
        this.room = room;
        this.timetables = timetables;
        this.ownNumbers = ownNumbers;
        Map<Long, Timetable> ofPairs = room.pairs().stream()
                .collect(Collectors.toMap(Pair::id, pair -> holding(room, timetables, room.speciesOf(pair))));
        this.ofPairs = pair -> ofPairs.get(pair.id());
        this.sittings = new Sittings(room, this.ofPairs);
    }

    /** The almanac of a room as it stands. Everything that is the same for all cages is worked out here, once. */
    public static Almanac of(Room room) {
        Map<String, Timetable> timetables = new HashMap<>();
        Map<String, OwnNumbers> ownNumbers = new HashMap<>();
        Stream.concat(
                        Stream.of(room.settings().species()),
                        room.pairs().stream().map(pair -> room.speciesOf(pair)))
                .distinct()
                .forEach(species -> {
                    Timetable set = Timetables.in(room.settings(), species);
                    OwnNumbers own = OwnNumbers.of(room, set);
                    ownNumbers.put(Species.nameOf(species), own);
                    timetables.put(Species.nameOf(species), own.draw(set));
                });
        return new Almanac(room, Map.copyOf(timetables), Map.copyOf(ownNumbers));
    }

    /** What is expected of one cage. */
    public Outlook nest(Cage cage) {
        return new OneNest(
                        room, sittings, ofPairs, cage, timetable(room.settings().species()))
                .outlook();
    }

    /** What is usual for a species in this room: the book, the owner's own values, the room's own numbers. */
    public Timetable timetable(String species) {
        return holding(room, timetables, species);
    }

    /** The timetable of a pair of this room: by the hen's species, else the room's. */
    public Timetable timetable(Pair pair) {
        return ofPairs.apply(pair);
    }

    /** From when an egg is sat on, or is expected to be; empty where nothing is known of the species. */
    public Optional<SatFrom> satFrom(Lying lying) {
        return sittings.satFrom(lying);
    }

    /** What this room's own birds of a species do. */
    public OwnNumbers ownNumbers(String species) {
        OwnNumbers known = ownNumbers.get(Species.nameOf(species));
        return known != null ? known : OwnNumbers.of(room, Timetables.in(room.settings(), species));
    }

    /**
     * What a pair has done, and what speaks for parting it.
     *
     * @param today the day for which it is asked: the next absence is looked for from here
     */
    public Evidence evidence(Pair pair, LocalDate today) {
        return new Evidences(room, ofPairs).of(pair, today);
    }

    /**
     * From when a chick may leave its box, by what is set or usual for its species; so little takes no almanac of the
     * whole room. Empty where nothing is known of the species.
     */
    public static Optional<LocalDate> mayLeaveBoxFrom(Room room, Lying chick) {
        return Timetables.in(room.settings(), room.speciesOf(chick.pair()))
                .span(Timing.OUT_OF_BOX)
                .flatMap(age -> chick.chick().map(hatched -> hatched.hatched().plusDays(age.earliest())));
    }

    private static Timetable holding(Room room, Map<String, Timetable> timetables, String species) {
        Timetable known = timetables.get(Species.nameOf(species));
        if (known != null) {
            return known;
        }
        Timetable set = Timetables.in(room.settings(), species);
        return OwnNumbers.of(room, set).draw(set);
    }
}
