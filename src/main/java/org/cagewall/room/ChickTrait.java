package org.cagewall.room;

/** What a chick is marked for. */
public enum ChickTrait {
    FEATHER_TROUBLE,
    SPLAYED,
    GOING_LIGHT,
    SMALL
}
