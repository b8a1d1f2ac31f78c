package org.cagewall.kiosk.kit.strip;

/**
 * One cell of a strip of days. Immutable; any thread, and free of Swing.
 *
 * @param shape what it looks like
 * @param ground whether it stands out from the others
 */
public record DayMark(Shape shape, Ground ground) {

    /** Told apart by shape, not by colour. */
    public enum Shape {
        /** A filled square. */
        SQUARE,
        /** A ring. */
        RING,
        /** A cross. */
        CROSS,
        /** A short line. */
        LINE,
        /** Three dots in a row. */
        DOTS,
        /** A dot. */
        DOT
    }

    /** What it stands on. */
    public enum Ground {
        PLAIN,
        /** Framed, with the sign of something different. */
        DIFFERENT
    }
}
