package org.cagewall.room;

/** Which bird of a pair sits on the eggs. */
public enum WhoSits {
    HEN,
    COCK_BY_DAY,
    BOTH
}
