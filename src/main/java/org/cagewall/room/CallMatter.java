package org.cagewall.room;

import org.cagewall.text.Message;

/** What a call was about, as screens offer it, named so that the record holds no language. */
public enum CallMatter {
    ILL,
    DEAD,
    LOOSE,
    HEAT,
    FOOD,
    OTHER;

    /** Its name in the record and among the parts of a screen. */
    public String id() {
        return Message.word(this);
    }

    /** What the record holds, in words. */
    public static Message told(String kept) {
        return OwnWords.or(CallMatter.class, kept);
    }
}
