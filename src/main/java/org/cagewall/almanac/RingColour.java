package org.cagewall.almanac;

/** The colours closed rings have had; the words of the world body and the national ones. */
public enum RingColour {
    RED,
    BLACK,
    DARK_GREEN,
    VIOLET,
    DARK_BROWN,
    DARK_BLUE,
    PINK,
    ORANGE,
    PASTEL_GREEN
}
