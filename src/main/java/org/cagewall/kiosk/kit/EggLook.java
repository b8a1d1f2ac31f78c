package org.cagewall.kiosk.kit;

/** What an egg looks like against the light, as far as it was looked at. Immutable; any thread, and free of Swing. */
public enum EggLook {
    NOT_CANDLED,
    UNSURE,
    CLEAR,
    FULL,
    ADDLED,
    PIPPED,
    DUMMY
}
