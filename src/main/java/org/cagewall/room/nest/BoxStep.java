package org.cagewall.room.nest;

/** What was done with a nest box. */
public enum BoxStep {
    ON,
    TURNED,
    OFF,
    CLEANED
}
