package org.cagewall.kiosk.birds;

import java.util.Locale;

/** What can be recorded of a bird on its page. */
enum Act {
    MOVE,
    LOOKED_OVER,
    TREATED,
    NOTE,
    OUT,
    BACK,
    LOOSE,
    FOUND,
    SEX,
    NAME,
    SPLIT_RING,
    PARENTS,
    LEFT;

    /** Its name in tests and in the file of sentences. */
    String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
