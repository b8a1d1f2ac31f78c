package org.cagewall.room.care;

/** What a check found. */
public enum Answer {
    WELL,
    DIFFERENT
}
