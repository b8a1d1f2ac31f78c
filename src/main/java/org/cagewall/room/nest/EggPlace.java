package org.cagewall.room.nest;

/** Where an egg lay. */
public enum EggPlace {
    BOX,
    FLOOR,
    DISH
}
