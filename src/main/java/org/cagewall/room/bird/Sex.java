package org.cagewall.room.bird;

/** A bird's sex as far as it is known. */
public enum Sex {
    COCK,
    HEN,
    UNKNOWN
}
