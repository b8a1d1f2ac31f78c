package org.cagewall.kiosk.wall;

import java.util.List;
import org.cagewall.kiosk.kit.wall.TileFace;

/**
 * What the wall shows. Immutable; any thread.
 *
 * @param parts the walls to choose from; a wide wall is shown in parts
 * @param chosen the one shown
 * @param tiles the cages of that part, each with its place in it
 */
public record WallState(String subtitle, List<Part> parts, int chosen, List<Tile> tiles) {

    public WallState {
        parts = List.copyOf(parts);
        tiles = List.copyOf(tiles);
    }

    /** A wall, or as many of its columns as fit side by side. */
    public record Part(String name, long wall, int rows, int firstColumn, int columns) {}

    /** A cage in its place, counted from 0. */
    public record Tile(int row, int column, TileFace face) {}

    public boolean isEmpty() {
        return parts.isEmpty();
    }
}
