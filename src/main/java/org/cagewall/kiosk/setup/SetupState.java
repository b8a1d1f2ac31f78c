package org.cagewall.kiosk.setup;

import java.util.Locale;
import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;

/**
 * What the page of setting up shows. Immutable; any thread, and free of Swing.
 *
 * @param tab the part that is open, once the first steps are done
 * @param wall the wall of the first steps, and how many cages fit on it
 * @param owner whom to ask, where somebody else records
 */
public record SetupState(
        Stage stage, Tab tab, Optional<FirstWall> wall, String owner, String subtitle, Optional<Problem> problem) {

    /** How far the birdroom is. */
    public enum Stage {
        /** Nobody is in it. */
        OWNER,
        /** There is no wall yet. */
        FIRST_WALL,
        /** The first wall is bare. */
        FIRST_CAGES,
        /** All parts are open. */
        OPEN,
        /** Somebody records who does not set up. */
        CLOSED
    }

    /** The parts. */
    public enum Tab {
        WALLS,
        PEOPLE,
        FOOD,
        ROOM,
        RINGS,
        DAYS,
        BACKUP;

        /** Its name in tests and in the file of sentences. */
        String key() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** A bare wall: its name, how many places it has, and the names of the first and the last cage on it. */
    public record FirstWall(String name, int places, String first, String last) {}

    SetupState on(Tab other) {
        return new SetupState(stage, other, wall, owner, subtitle, Optional.empty());
    }

    SetupState wrong(String part, String words) {
        return new SetupState(stage, tab, wall, owner, subtitle, Optional.of(new Problem(part, words)));
    }
}
