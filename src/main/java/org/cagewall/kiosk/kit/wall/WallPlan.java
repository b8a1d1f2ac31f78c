package org.cagewall.kiosk.kit.wall;

import java.util.List;

/**
 * A wall as it is drawn small, to lay it out or to touch a cage on it. Immutable; any thread, and free of Swing.
 *
 * @param name the wall's name
 * @param rows how many rows of places it has
 * @param columns how many places a row has
 * @param spots what stands in its places, each place at most once
 */
public record WallPlan(String name, int rows, int columns, List<Spot> spots) {

    /** How a place looks. */
    public enum Look {
        /** No cage: a dashed outline. */
        FREE,
        /** A cage. */
        CAGE,
        /** A cage that is part of its neighbour for now. */
        PART
    }

    /**
     * What stands in one place.
     *
     * @param row counted from 1 at the top
     * @param column counted from 1 at the left
     * @param name what tests and choices know it by: the cage's name, or ROW-COLUMN for a free place
     * @param title the large word
     * @param line the small line below; may be empty
     * @param said what it is, for those who cannot see it
     */
    public record Spot(int row, int column, String name, String title, String line, String said, Look look) {}

    public WallPlan {
        spots = List.copyOf(spots);
    }
}
