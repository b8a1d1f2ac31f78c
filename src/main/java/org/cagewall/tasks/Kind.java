package org.cagewall.tasks;

import java.util.Locale;

/** What a task is about; its word stands in the task's id. */
public enum Kind {
    /** One cage's feed, water and look. */
    MORNING,
    /** What is left of soft food out of one cage, and what it is given at night. */
    EVENING_FOOD,
    /** A whole row walked by. */
    EVENING_ROW,
    /** A cage or flight that hangs in no row, looked at. */
    EVENING,
    /** A cage the owner has not looked at today. */
    CHECK,
    /** Something different was reported and not yet read. */
    REPORT,
    /** A card that no longer tells what it should. */
    CARD,
    /** The owner goes away. */
    AWAY,
    /** The owner is back, and what happened is to be read. */
    BACK,
    /** New birds that are kept apart. */
    QUARANTINE;

    /** The word in an id: {@code evening-row}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
