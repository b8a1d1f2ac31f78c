package org.cagewall.kiosk.setup;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.deed.RoomDeed;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.room.Cage;
import org.cagewall.room.Keeps;
import org.cagewall.room.Place;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.Wall;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** The places of the walls: which are free, what a cage there would be called, and how they are drawn. Pure. */
final class Places {

    private static final int LETTERS = 26;

    private final Room room;
    private final Words words;

    Places(Room room, Words words) {
        this.room = room;
        this.words = words;
    }

    /** The walls with their cages and their free places, to be touched. */
    List<WallPlan> plans() {
        return room.walls().stream().map(this::plan).toList();
    }

    private WallPlan plan(Wall wall) {
        List<WallPlan.Spot> spots = new ArrayList<>();
        for (int row = 1; row <= wall.rows(); row++) {
            for (int column = 1; column <= wall.columns(); column++) {
                Place place = new Place(wall.id(), row, column);
                spots.add(room.cageAt(place).map(cage -> cageSpot(cage, place)).orElseGet(() -> freeSpot(wall, place)));
            }
        }
        return new WallPlan(wall.name(), wall.rows(), wall.columns(), spots);
    }

    private WallPlan.Spot cageSpot(Cage cage, Place place) {
        String line = cage.joinedTo()
                .map(partner -> words.say("setup.part-of", room.cageName(partner)))
                .orElseGet(() -> words.say("setup.use-line." + Message.word(cage.use())));
        return new WallPlan.Spot(
                place.row(),
                place.column(),
                cage.name(),
                cage.name(),
                line,
                words.say("setup.cage-said", cage.name(), line, room.headsIn(cage)),
                cage.joinedTo().isPresent() ? WallPlan.Look.PART : WallPlan.Look.CAGE);
    }

    private WallPlan.Spot freeSpot(Wall wall, Place place) {
        return new WallPlan.Spot(
                place.row(),
                place.column(),
                spotName(place),
                "+",
                "",
                words.say("setup.free-said", wall.name(), place.row(), place.column()),
                WallPlan.Look.FREE);
    }

    /** What a free place is known by on the drawing. */
    String spotName(Place place) {
        return "free-" + place.wall() + "-" + place.row() + "-" + place.column();
    }

    /** The free place that is known by this. */
    Optional<Place> freePlace(String spotName) {
        return room.walls().stream()
                .flatMap(wall -> free(wall).stream())
                .filter(place -> spotName(place).equals(spotName))
                .findFirst();
    }

    List<Place> free(Wall wall) {
        List<Place> free = new ArrayList<>();
        for (int row = 1; row <= wall.rows(); row++) {
            for (int column = 1; column <= wall.columns(); column++) {
                Place place = new Place(wall.id(), row, column);
                if (room.cageAt(place).isEmpty()) {
                    free.add(place);
                }
            }
        }
        return free;
    }

    /** A letter for the row, going on from wall to wall, and a number for the column: C6. */
    String suggestedName(Place place) {
        int above = 0;
        for (Wall wall : room.walls()) {
            if (wall.id() == place.wall()) {
                break;
            }
            above += wall.rows();
        }
        String name = letters(above + place.row()) + place.column();
        return room.cage(name).isEmpty() ? name : name + "b";
    }

    private static String letters(int number) {
        String last = String.valueOf((char) ('A' + (number - 1) % LETTERS));
        return number > LETTERS ? letters((number - 1) / LETTERS) + last : last;
    }

    /** A cage in every free place of the wall. */
    List<RoomDeed.CageAdded> cagesInEveryFreePlace(Wall wall, Use use, Optional<Keeps> keeps) {
        return free(wall).stream()
                .map(place -> new RoomDeed.CageAdded(
                        suggestedName(place), wall.name(), place.row(), place.column(), use, keeps))
                .toList();
    }
}
