package org.cagewall.scan;

import org.cagewall.room.card.CardCode;

/**
 * A symbol in a picture: what it says, and where it lies, so that the next picture can be looked at there first.
 * Immutable; any thread.
 *
 * @param text what it says
 * @param x its middle, pixels from the left edge
 * @param y its middle, pixels from the upper edge
 * @param side about how long its sides are, pixels
 */
public record Sighting(String text, double x, double y, double side) {

    static Sighting of(String text, Pose pose) {
        double[] middle = new double[2];
        pose.see(pose.side() / 2.0, pose.side() / 2.0, middle);
        return new Sighting(text, middle[0], middle[1], pose.module() * pose.side());
    }

    /** Whether it is a cage card's, of whatever room, and even if a letter is wrong. */
    boolean isCard() {
        return !(CardCode.read(text) instanceof CardCode.Foreign);
    }

    Sighting scaled(double times) {
        return new Sighting(text, x * times, y * times, side * times);
    }

    Sighting moved(double right, double down) {
        return new Sighting(text, x + right, y + down, side);
    }

    double distance(double otherX, double otherY) {
        return Math.hypot(x - otherX, y - otherY);
    }

    boolean covers(double otherX, double otherY) {
        return distance(otherX, otherY) < 0.75 * side;
    }
}
