package org.cagewall.room.bird;

/** How a bird left the birdroom. */
public enum Way {
    SOLD,
    GIVEN,
    LENT,
    DIED,
    PUT_TO_SLEEP,
    LOST
}
