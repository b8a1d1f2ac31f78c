package org.cagewall.kiosk.birds;

import org.cagewall.text.Message;

/** What can be recorded of a bird on its page. */
enum BirdAct {
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
        return Message.word(this);
    }
}
