package org.cagewall.room.nest;

/** The feet and beaks of a nest's chicks. */
public enum Feet {
    CLEAN,
    CAKED
}
