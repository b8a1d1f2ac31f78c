package org.cagewall.scan;

/** What is odd about a code that hangs on no cage, one thing at a time. */
public enum Oddity {
    NONE,
    TILT,
    BLUR,
    SMALL,
    BENT,
    DENSE,
    /** Light on dark, as on a screen. */
    INVERTED,
    /** A picture in its middle. */
    PICTURE_WITHIN,
    /** Hardly any white around it. */
    TIGHT,
    /** Its modules do not touch. */
    DOTS,
    /** It fills the picture, or is cut. */
    CLOSE,
    SHADOW,
    FAINT,
    /** Saved with little care. */
    COMPRESSED,
    MIRRORED,
    /** Much of it together. */
    HARD
}
