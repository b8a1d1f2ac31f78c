package org.cagewall.room;

/** Which year the rings bear that are issued on a day of the calendar. */
public enum RingsOf {
    THIS_YEAR,
    NEXT_YEAR
}
