package org.cagewall.almanac;

/** How far a breeding cage is: what its page shows first, and what can be recorded there. */
public enum NestState {
    /** No pair and nothing in the nest, whatever else the cage holds. */
    EMPTY,
    /** A pair, and no box. */
    PAIRED,
    /** A pair with its box, and no egg. */
    BOX_ON,
    LAYING,
    SITTING,
    CHICKS_IN_BOX,
    CHICKS_OUT,
    PARTING
}
