package org.cagewall.room.care;

/** The two rounds of a day. */
public enum DayPart {
    MORNING,
    EVENING
}
