package org.cagewall.room.nest;

/** What a chick is marked for. */
public enum ChickTrait {
    FEATHER_TROUBLE,
    SPLAYED,
    GOING_LIGHT,
    SMALL
}
