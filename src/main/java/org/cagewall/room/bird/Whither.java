package org.cagewall.room.bird;

/** Where a bird is while it is out for a time. */
public enum Whither {
    SHOW,
    VET,
    LOAN
}
