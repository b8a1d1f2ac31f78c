package org.cagewall.room;

/** The feet and beaks of a nest's chicks. */
public enum Feet {
    CLEAN,
    CAKED
}
