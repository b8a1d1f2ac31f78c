package org.cagewall.room;

/** What was done with a nest box. */
public enum BoxStep {
    ON,
    TURNED,
    OFF,
    CLEANED
}
