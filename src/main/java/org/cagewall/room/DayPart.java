package org.cagewall.room;

/** The two rounds of a day. */
public enum DayPart {
    MORNING,
    EVENING
}
