package org.cagewall.kiosk.kit;

/** What a button is for; how that looks is the theme's matter. Immutable; any thread, and free of Swing. */
public enum ButtonKind {
    /** The likeliest thing to do: filled. */
    MAIN,
    /** One of several things: white. */
    PLAIN,
    /** The other answer to the main one: white with a strong line. */
    OUTLINED,
    /** What is due now among plain ones: tinted, with a strong line. */
    LIKELY,
    /** Something to be careful about. */
    ATTENTION,
    /** Something that harms if pressed by mistake, or must be done at once. */
    URGENT,
    /** Seldom used: a line on the ground. */
    QUIET,
    /** On the dark bar at the bottom. */
    ON_SOLID
}
