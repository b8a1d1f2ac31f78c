package org.cagewall.paper;

/**
 * A flat opaque colour: anything else makes a printer's driver turn the page into a huge picture. Immutable; any
 * thread.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Ink(int red, int green, int blue) {

    public static final Ink BLACK = grey(0);
    public static final Ink WHITE = grey(255);

    public Ink {
        if (Math.min(red, Math.min(green, blue)) < 0 || Math.max(red, Math.max(green, blue)) > 255) {
            throw new IllegalArgumentException("a colour's parts are 0 to 255");
        }
    }

    /** A grey, printed with black alone. */
    public static Ink grey(int level) {
        return new Ink(level, level, level);
    }

    boolean isGrey() {
        return red == green && green == blue;
    }
}
