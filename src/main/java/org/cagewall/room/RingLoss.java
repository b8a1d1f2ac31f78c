package org.cagewall.room;

/** Why a ring will never be on a bird. */
public enum RingLoss {
    SPOILT,
    LOST
}
