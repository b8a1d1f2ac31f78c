package org.cagewall.room.care;

/** What the owner lets the sitter do at a cage beyond feeding and looking. */
public enum Permission {
    LOOK_IN,
    COUNT,
    SOFT_FOOD
}
