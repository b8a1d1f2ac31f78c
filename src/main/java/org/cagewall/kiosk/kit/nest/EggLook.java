package org.cagewall.kiosk.kit.nest;

/** What lies in a nest and how it looks, an egg as far as it was held against the light. Immutable; any thread, and free of Swing. */
public enum EggLook {
    NOT_CANDLED,
    UNSURE,
    CLEAR,
    FULL,
    ADDLED,
    PIPPED,
    DUMMY,
    /** It lies in another nest now. */
    MOVED_AWAY,
    /** A chick on the day on which it hatched, the half shell beside it. */
    HATCHLING,
    /** A chick in the hollow of the box. */
    CHICK,
    /** A young bird that has left the box. */
    FLEDGED
}
