package org.cagewall.almanac;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.Bird;
import org.cagewall.room.Cage;
import org.cagewall.room.Lying;
import org.cagewall.room.Pair;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;

/**
 * What comes next in every cage, and when: the one way into the arithmetic of dates. Made of one room and true for it
 * alone. Pure; any thread.
 */
public final class Almanac {

    private final Room room;
    private final Map<String, Timetable> timetables;
    private final Sittings sittings;

    private Almanac(Room room, Map<String, Timetable> timetables) {
        this.room = room;
        this.timetables = timetables;
        this.sittings = new Sittings(room, pair -> holding(timetables, room.settings(), speciesOf(room, pair)));
    }

    /** The almanac of a room as it stands. */
    public static Almanac of(Room room) {
        Map<String, Timetable> timetables = new HashMap<>();
        put(timetables, room.settings(), room.settings().species());
        room.pairs().forEach(pair -> put(timetables, room.settings(), speciesOf(room, pair)));
        return new Almanac(room, Map.copyOf(timetables));
    }

    /** What is expected of one cage. */
    public Outlook nest(Cage cage) {
        return new OneNest(room, sittings, cage, timetable(room.settings().species())).outlook();
    }

    /** What is usual for a species in this room: the book, the owner's own values, the room's own numbers. */
    public Timetable timetable(String species) {
        return holding(timetables, room.settings(), species);
    }

    /** The timetable of a pair: by the hen's species, else the room's. */
    public Timetable timetable(Pair pair) {
        return sittings.timetable().apply(pair);
    }

    /** From when an egg is sat on, or is expected to be; empty where nothing is known of the species. */
    public Optional<SatFrom> satFrom(Lying lying) {
        return sittings.satFrom(lying);
    }

    static String speciesOf(Room room, Pair pair) {
        return room.bird(pair.hen())
                .flatMap(Bird::species)
                .orElse(room.settings().species());
    }

    private static void put(Map<String, Timetable> timetables, Settings settings, String species) {
        timetables.computeIfAbsent(Timetables.nameOf(species), name -> Timetables.in(settings, species));
    }

    private static Timetable holding(Map<String, Timetable> timetables, Settings settings, String species) {
        Timetable known = timetables.get(Timetables.nameOf(species));
        return known != null ? known : Timetables.in(settings, species);
    }
}
