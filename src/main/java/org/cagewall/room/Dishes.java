package org.cagewall.room;

import org.cagewall.text.Message;

/** Whether the birds of a cage whose feeding was not done have food and water all the same. */
public enum Dishes {
    FILLED,
    LOW,
    /** Nobody could see. */
    UNSEEN;

    /** Its name in the record and among the parts of a screen. */
    public String word() {
        return Message.word(this);
    }
}
