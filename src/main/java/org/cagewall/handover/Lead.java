package org.cagewall.handover;

/** Where a line of what is to be ready leads. Immutable; any thread. */
public sealed interface Lead {

    /** A page of the kiosk. */
    enum Place implements Lead {
        AHEAD,
        TODAY,
        CARDS,
        SETUP,
        /** The plan of the days away itself. */
        PLAN
    }

    /** The page of one cage. */
    record ToCage(String cage) implements Lead {}

    /**
     * Nowhere: nothing in the record shows it, so a person says that it is done.
     *
     * @param task its id, by which it is recorded as done or as not needed
     */
    record ByHand(String task) implements Lead {}
}
