package org.cagewall.paper;

/**
 * A rectangle on the paper, measured from its upper left corner as a keeper measures with a ruler. Immutable; any
 * thread.
 *
 * @param left from the left edge of the paper, in millimetres
 * @param top from the upper edge of the paper, in millimetres
 * @param width across, in millimetres
 * @param height down, in millimetres
 */
public record Area(double left, double top, double width, double height) {

    public double right() {
        return left + width;
    }

    public double bottom() {
        return top + height;
    }

    /** The rectangle that is smaller by this much on each side, in millimetres. */
    public Area within(double margin) {
        return new Area(left + margin, top + margin, width - 2 * margin, height - 2 * margin);
    }
}
