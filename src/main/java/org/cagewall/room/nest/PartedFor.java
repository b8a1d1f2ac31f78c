package org.cagewall.room.nest;

import org.cagewall.room.Formerly;

/** Why a pair is parted. */
public enum PartedFor {
    SEASON,
    ROUNDS,
    @Formerly("hen-tired")
    HEN_WORN,
    @Formerly("disaster")
    BROOD_LOST,
    NO_EGGS,
    @Formerly("quality")
    CHICKS_POOR,
    FIGHTING,
    PLUCKING,
    COCK_NEEDED,
    ILLNESS,
    OTHER
}
