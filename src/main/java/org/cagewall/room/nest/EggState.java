package org.cagewall.room.nest;

/** How an egg stands: the last thing that is known of it. */
public enum EggState {
    NOT_CANDLED,
    UNSURE,
    CLEAR,
    FULL,
    ADDLED,
    PIPPED,
    HATCHED,
    REMOVED
}
