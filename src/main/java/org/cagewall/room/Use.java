package org.cagewall.room;

/** What a cage is for. */
public enum Use {
    BREEDING,
    STOCK,
    FLIGHT,
    NURSERY,
    QUARANTINE,
    HOSPITAL,
    SHOW
}
