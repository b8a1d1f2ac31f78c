package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.room.Keeps;
import org.cagewall.room.Use;

/**
 * What the part of walls and cages shows. Immutable; any thread, and free of Swing.
 *
 * @param walls the walls with their cages and free places
 * @param panel what is done beside them
 */
record WallsState(List<WallPlan> walls, Panel panel, Optional<Problem> problem) {

    /** What stands beside the walls. */
    sealed interface Panel {

        /** What is ringed on the walls. */
        default List<String> marked() {
            return List.of();
        }
    }

    /** Nothing is touched yet. */
    record Nothing() implements Panel {}

    /** A wall is being added. */
    record NewWall(String suggested) implements Panel {}

    /**
     * A free place was touched.
     *
     * @param free how many places of its wall are free
     */
    record FreePlace(String spot, String wall, int row, int column, String suggested, int free) implements Panel {

        @Override
        public List<String> marked() {
            return List.of(spot);
        }
    }

    /**
     * A cage was touched.
     *
     * @param line how many birds stand in it
     * @param neighbours the cages it can be made one with
     * @param parts the cages that are part of it now
     */
    record TheCage(
            String name, Use use, Optional<Keeps> keeps, String line, List<String> neighbours, List<String> parts)
            implements Panel {

        TheCage {
            neighbours = List.copyOf(neighbours);
            parts = List.copyOf(parts);
        }

        @Override
        public List<String> marked() {
            return List.of(name);
        }
    }

    /** A cage is being moved: its new place is to be touched. */
    record Moving(String name) implements Panel {

        @Override
        public List<String> marked() {
            return List.of(name);
        }
    }

    WallsState {
        walls = List.copyOf(walls);
    }

    WallsState beside(Panel other) {
        return new WallsState(walls, other, Optional.empty());
    }

    WallsState wrong(String part, String words) {
        return new WallsState(walls, panel, Optional.of(new Problem(part, words)));
    }
}
