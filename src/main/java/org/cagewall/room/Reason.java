package org.cagewall.room;

import java.util.Optional;
import org.cagewall.text.Message;

/**
 * Why something was not done, was lost or was struck out, as screens offer it, named so that the record holds no
 * language. Whoever has another reason gives it in words of their own.
 */
public enum Reason {
    COULD_NOT_OPEN,
    NO_TIME,
    NO_FOOD,
    NOT_SURE,
    BIRD_IN_THE_WAY,
    NOT_NEEDED,
    SOMETHING_ELSE,
    NEXT_ROUND,
    EMPTY_CROP,
    FOUND_DEAD,
    WRONG_TOUCH,
    WRONG_CAGE,
    WRONG_DAY,
    RING_MISREAD,
    RINGS_SWAPPED,
    RING_CAME_OFF,
    TAKEN_BACK;

    /** Its name in the record and among the parts of a screen: {@code no-time}. */
    public String id() {
        return Message.word(this);
    }

    /** A reason that the record holds, in words. */
    public static Message told(String kept) {
        return OwnWords.or(Reason.class, kept);
    }

    /** The same with what was added to it. */
    public static Message told(String kept, Optional<String> added) {
        Message reason = told(kept);
        return added.map(words -> Message.of("word.reason-and", reason, words)).orElse(reason);
    }
}
