package org.cagewall.room;

/** What a check found. */
public enum Answer {
    WELL,
    DIFFERENT
}
