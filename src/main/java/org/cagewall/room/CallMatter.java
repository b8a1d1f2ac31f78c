package org.cagewall.room;

import java.util.stream.Stream;
import org.cagewall.text.Message;

/** What a call is about, named so that the record holds no language. */
public enum CallMatter {
    ILL,
    DEAD,
    LOOSE,
    STUCK,
    MISSING,
    HEAT,
    COLD,
    POWER,
    SMOKE,
    WATER,
    VERMIN,
    STRANGER,
    FOOD,
    OTHER;

    /** Its name in the record and among the parts of a screen. */
    public String word() {
        return Message.word(this);
    }

    /** What the record holds, in words: the name of one of these, or somebody's own words as they stand. */
    public static Message told(String kept) {
        return Stream.of(values())
                .filter(each -> each.word().equals(kept))
                .findFirst()
                .map(each -> Message.of("word.callmatter." + each.word()))
                .orElseGet(() -> Message.of("word.callmatter.as-said", kept));
    }
}
