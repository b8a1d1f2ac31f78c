package org.cagewall.room.nest;

/** What an egg showed against the light. */
public enum EggFinding {
    UNSURE,
    CLEAR,
    FULL,
    ADDLED
}
