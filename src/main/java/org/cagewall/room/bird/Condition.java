package org.cagewall.room.bird;

/** How a bird was when it was looked over. */
public enum Condition {
    FIT,
    WATCH,
    ILL
}
