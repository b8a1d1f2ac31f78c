package org.cagewall.room;

/** Which birds a stock cage or flight holds. */
public enum Keeps {
    COCKS,
    HENS,
    YOUNG,
    MIXED
}
