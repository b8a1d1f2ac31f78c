package org.cagewall.room.nest;

/** How full the crops of a nest's chicks were. */
public enum Crops {
    FULL,
    PART,
    EMPTY
}
