package org.cagewall.room;

import java.util.stream.Stream;
import org.cagewall.text.Message;

/** What is agreed by phone so often that one touch says it; what else is agreed stands in somebody's own words. */
public enum Agreement {
    WATCH,
    LEAVE,
    SOMEBODY_COMES,
    VET_COMES,
    TO_THE_VET,
    PHONE_AGAIN;

    /** Its name in the record and among the parts of a screen. */
    public String word() {
        return Message.word(this);
    }

    /** What the record holds, in words: the name of one of these, or somebody's own words as they stand. */
    public static Message told(String kept) {
        return Stream.of(values())
                .filter(each -> each.word().equals(kept))
                .findFirst()
                .map(each -> Message.of("word.agreement." + each.word()))
                .orElseGet(() -> Message.of("word.agreement.as-said", kept));
    }
}
