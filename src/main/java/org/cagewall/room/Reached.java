package org.cagewall.room;

import org.cagewall.text.Message;

/** How a call came about, and whether anybody was spoken to. */
public enum Reached {
    SPOKE,
    NO_ANSWER,
    /** The other one phoned. */
    PHONED_ME;

    /** Its name in the record and among the parts of a screen. */
    public String word() {
        return Message.word(this);
    }
}
