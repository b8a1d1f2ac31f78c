package org.cagewall.room;

/** What an egg showed against the light. */
public enum EggFinding {
    UNSURE,
    CLEAR,
    FULL,
    ADDLED
}
