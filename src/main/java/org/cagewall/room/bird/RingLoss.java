package org.cagewall.room.bird;

/** Why a ring will never be on a bird. */
public enum RingLoss {
    SPOILT,
    LOST
}
