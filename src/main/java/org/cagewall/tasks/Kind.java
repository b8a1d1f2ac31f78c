package org.cagewall.tasks;

import org.cagewall.text.Message;

/** What a task is about; its word stands in the task's id. */
public enum Kind {
    /** One cage's feed, water and look. */
    MORNING,
    /** What goes bad out of one cage, and what it is given at night. */
    EVENING_FOOD,
    /** A whole row walked by. */
    EVENING_ROW,
    /** A cage or flight that hangs in no row, looked at. */
    EVENING,
    /** A cage the owner has not looked at today. */
    CHECK,
    /** Something different was reported and not yet read. */
    REPORT,
    /** A card that no longer tells what it should. */
    CARD,
    /** The owner goes away. */
    AWAY,
    /** The owner is back, and what happened is to be read. */
    BACK,
    /** New birds that are kept apart. */
    QUARANTINE,
    /** Birds that came back from a show and were not treated since. */
    AFTER_SHOW,
    /** Birds of a planned pair that were not treated for a year. */
    YEARLY,
    /** No egg has come since the box was put on. */
    FIRST_EGG,
    /** The next egg has not come for too long. */
    EGG_GAP,
    /** Eggs that were taken up as they were laid are put back together. */
    PUT_BACK,
    /** A nest's eggs are held against the light. */
    CANDLE,
    /** Eggs that have lain unsat for long. */
    UNSAT,
    /** Eggs are about to hatch, or overdue. */
    HATCH,
    /** Chicks are ringed. */
    RING,
    /** Whether yesterday's ring is still on. */
    RING_CHECK,
    /** Chicks that are too old for a closed ring. */
    RING_MISSED,
    /** The look into a box with chicks, every second day. */
    NEST_LOOK,
    /** Backs and napes are looked at for plucking. */
    BACKS,
    /** Chicks are about to leave the box. */
    OUT_OF_BOX,
    /** Chicks feed themselves and are taken away. */
    WEAN,
    /** Eggs that will not hatch may come out. */
    CLEAR_EGGS,
    /** The first egg of the round that follows. */
    NEXT_ROUND,
    /** Stages of parting a pair. */
    BOX_TURNED,
    BOX_OFF,
    COCK_OUT,
    HEN_OUT;

    /** Whether it follows from what is expected of a nest. */
    public boolean isOfANest() {
        return compareTo(FIRST_EGG) >= 0;
    }

    /** Whether it is answered by what a look at the birds showed, rather than by done or not done. */
    public boolean isALook() {
        return this == MORNING || this == EVENING || this == EVENING_ROW || this == CHECK;
    }

    /** The word in an id: {@code evening-row}. */
    public String word() {
        return Message.word(this);
    }
}
