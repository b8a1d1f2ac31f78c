package org.cagewall.room;

/** Where an egg lay. */
public enum EggPlace {
    BOX,
    FLOOR,
    DISH
}
