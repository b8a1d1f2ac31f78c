package org.cagewall.room.care;

/** Whether a check was made with the card read at that moment, or by hand. */
public enum How {
    SCAN,
    HAND
}
