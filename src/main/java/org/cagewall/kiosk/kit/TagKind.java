package org.cagewall.kiosk.kit;

/** How pressing a tag is. Immutable; any thread, and free of Swing. */
public enum TagKind {
    /** Due: outlined. */
    DUE,
    /** Late: solid ink. */
    LATE,
    /** Reported different: its own ground and a sign. */
    DIFFERENT,
    /** Merely said. */
    PLAIN
}
