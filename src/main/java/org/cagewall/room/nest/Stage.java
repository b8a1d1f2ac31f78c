package org.cagewall.room.nest;

/** The stages in which a pair is parted, in their usual order. */
public enum Stage {
    BOX_TURNED,
    BOX_OFF,
    COCK_OUT,
    HEN_OUT
}
