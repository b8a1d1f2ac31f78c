package org.cagewall.room;

/** Where the cock of a breeding pair spends the night: beside the nest, or perhaps in it. */
public enum CockSleeps {
    OUTSIDE,
    INSIDE
}
