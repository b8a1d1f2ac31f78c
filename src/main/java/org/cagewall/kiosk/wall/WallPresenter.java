package org.cagewall.kiosk.wall;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.shell.Shown;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.Wall;
import org.cagewall.text.Words;

/** Keeps the wall as the room is, and leads from a tile to its cage. Used on the event thread. */
public final class WallPresenter {

    private final Desk desk;
    private final Navigator navigator;
    private final Words words;
    private final int readable;
    private int mostColumns;
    private final Shown<WallState> shown;
    private final Refresher watch;

    /** A wall with more columns than {@code mostColumns} is shown piece by piece. */
    public WallPresenter(Desk desk, Navigator navigator, Words words, int mostColumns, Consumer<WallState> view) {
        this.desk = desk;
        this.navigator = navigator;
        this.words = words;
        this.readable = mostColumns;
        this.mostColumns = mostColumns;
        this.watch = new Refresher(desk, this::refresh);
        this.shown = new Shown<>(state(0), view);
    }

    Refresher watch() {
        return watch;
    }

    /** There is room for so many columns. */
    void fit(int columns) {
        int most = Math.min(readable, columns);
        if (most != mostColumns) {
            mostColumns = most;
            shown.change(state -> state(0));
        }
    }

    void choose(int part) {
        shown.change(state -> state(part));
    }

    void open(String cage) {
        navigator.go(Destination.Cage.byHand(cage));
    }

    void scan() {
        navigator.go(new Destination.Scan());
    }

    void setUp() {
        navigator.go(new Destination.Setup());
    }

    private void refresh() {
        shown.change(state -> state(state.chosen()));
    }

    private WallState state(int wanted) {
        Room room = desk.room();
        LocalDate today = desk.today();
        List<WallState.Part> parts = parts(room);
        int chosen = Math.min(wanted, Math.max(0, parts.size() - 1));
        Tiles tiles = new Tiles(room, today, words);
        List<WallState.Tile> placed = parts.isEmpty() ? List.of() : placed(room, parts.get(chosen), tiles);
        return new WallState(subtitle(room, today), parts, chosen, placed);
    }

    private List<WallState.Part> parts(Room room) {
        List<WallState.Part> parts = new ArrayList<>();
        for (Wall wall : room.walls()) {
            int pieces = (wall.columns() + mostColumns - 1) / mostColumns;
            int each = (wall.columns() + pieces - 1) / pieces;
            for (int piece = 0; piece < pieces; piece++) {
                int first = piece * each + 1;
                int columns = Math.min(each, wall.columns() - first + 1);
                String name = pieces == 1 ? wall.name() : wall.name() + " " + (piece + 1);
                parts.add(new WallState.Part(name, wall.id(), wall.rows(), first, columns));
            }
        }
        return parts;
    }

    private static List<WallState.Tile> placed(Room room, WallState.Part part, Tiles tiles) {
        List<WallState.Tile> placed = new ArrayList<>();
        room.cages().stream().filter(cage -> cage.retired().isEmpty()).forEach(cage -> cage.place()
                .filter(place -> place.wall() == part.wall()
                        && place.column() >= part.firstColumn()
                        && place.column() < part.firstColumn() + part.columns())
                .ifPresent(place -> placed.add(
                        new WallState.Tile(place.row() - 1, place.column() - part.firstColumn(), tiles.of(cage)))));
        return placed;
    }

    private String subtitle(Room room, LocalDate today) {
        List<Cage> occupied = room.walk().filter(cage -> room.headsIn(cage) > 0).toList();
        long seen = occupied.stream()
                .filter(cage -> room.lookedInto(cage, today).equals(Optional.of(today)))
                .count();
        long pairs = room.pairs().stream().filter(room::together).count();
        return words.say("wall.subtitle", words.longDay(today), pairs, seen, occupied.size());
    }
}
