package org.cagewall.almanac;

/** Where a value of a timetable comes from. */
public enum Origin {
    /** The species' timetable as it is shipped. */
    BOOK,
    /** The owner has set it for this room. */
    OWNER,
    /** The timetable, drawn towards what this room's own birds do. */
    OWN_NUMBERS
}
