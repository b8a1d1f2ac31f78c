package org.cagewall.room;

/** Why a pair is parted. */
public enum PartedFor {
    SEASON,
    ROUNDS,
    HEN_TIRED,
    DISASTER,
    QUALITY,
    FIGHTING,
    PLUCKING,
    COCK_NEEDED,
    ILLNESS,
    OTHER
}
