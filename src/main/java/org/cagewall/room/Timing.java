package org.cagewall.room;

/** What a species' timetable says: a span of days, or a count, for each of these. */
public enum Timing {
    /** From the box on, or from pairing up where that is later, to the first egg, in days. */
    FIRST_EGG,
    /** From one egg to the next, in days. */
    LAY_GAP,
    /** With which egg of the round the hen begins to sit. */
    SITS_FROM,
    /** From the day an egg is sat on to its hatching, in days. */
    INCUBATION,
    /** Days sat when the first eggs are looked at against the light. */
    FIRST_LOOK,
    /** Days sat when they are looked at again. */
    SECOND_LOOK,
    /** Age of a chick whose eyes open, in days; the day it hatches is day 0. */
    EYES,
    /** Age at which a chick is ringed, in days. */
    RINGING,
    /** Age of the eldest from which backs and napes are looked at, in days. */
    BACKS,
    /** Age at which a chick leaves the box, in days. */
    OUT_OF_BOX,
    /** Age from which a chick feeds itself, in days. */
    INDEPENDENT,
    /** The hen's rest after the cock is out, in days. */
    HENS_REST,
    /** From the first egg of a round to that of the next, in days. */
    NEXT_ROUND,
    /** Settling after weaning, in days. */
    SETTLING,
    /** Eggs in a clutch. */
    CLUTCH
}
