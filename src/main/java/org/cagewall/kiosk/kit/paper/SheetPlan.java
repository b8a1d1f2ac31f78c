package org.cagewall.kiosk.kit.paper;

import java.util.List;
import java.util.Optional;

/**
 * A sheet of paper as it is drawn to touch places on it. Lengths in millimetres. Immutable; any thread, and free of
 * Swing.
 *
 * @param width of the paper
 * @param height of the paper
 * @param places the places on it
 * @param picture what is to be printed, where it has been drawn already
 * @param touched whether a place does something when it is touched
 */
public record SheetPlan(double width, double height, List<Place> places, Optional<Picture> picture, boolean touched) {

    /** How a place stands. */
    public enum Look {
        /** A card is printed on it. */
        TAKEN,
        /** Nothing is printed on it, and something could be. */
        FREE,
        /** It was used before. */
        USED
    }

    /**
     * One place.
     *
     * @param name what tests know it by
     * @param title what stands on it, unless the picture shows it
     * @param said what it is, for those who cannot see it
     */
    public record Place(
            String name, double left, double top, double width, double height, String title, String said, Look look) {}

    /** The pixels of the whole paper, row by row. Nobody changes them. */
    public record Picture(int width, int height, int[] pixels) {}

    public SheetPlan {
        places = List.copyOf(places);
    }
}
