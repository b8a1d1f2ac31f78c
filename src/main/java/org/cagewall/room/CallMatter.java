package org.cagewall.room;

import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.text.Message;

/** What a call or an alarm is about, named so that the record holds no language. */
public enum CallMatter {
    ILL,
    DEAD,
    LOOSE,
    STUCK,
    MISSING,
    CHICK_OUT,
    HEAT,
    COLD,
    POWER,
    SMOKE,
    WATER,
    VERMIN,
    STRANGER,
    FOOD,
    OTHER,
    BREATH,
    BLEEDING,
    STRAINING,
    UNFED,
    WRONG_FOOD,
    HEATER,
    FROZEN_WATER,
    FIGHT,
    EGG_ON_FLOOR,
    EMPTY_DISH,
    MISSED;

    /** Those that are offered when a call is told; the rest are what an alarm says. */
    public static Set<CallMatter> ofCalls() {
        return EnumSet.range(ILL, OTHER);
    }

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
