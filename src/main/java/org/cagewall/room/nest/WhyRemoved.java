package org.cagewall.room.nest;

/** Why an egg was taken out. */
public enum WhyRemoved {
    CLEAR,
    ADDLED,
    DEAD_IN_SHELL,
    BROKEN,
    DENTED,
    MISSING,
    OTHER
}
