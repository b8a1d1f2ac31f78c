package org.cagewall.room.care;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.OwnWords;
import org.cagewall.text.Message;

/**
 * What somebody who never held a bird can see that is different, named so that the record holds no language: first what
 * is touched, the most pressing first, then the answers to the questions about a bird and its food, what a count showed,
 * and last what an alarm says of a cage.
 */
public enum Sign {
    ON_FLOOR,
    PUFFED_UP,
    NOT_EATING,
    GASPING,
    TAIL_BOBS,
    STRAINING,
    BLEEDING,
    DEAD,
    MISSING,
    LOOSE,
    STUCK,
    FIGHTING,
    CHICK_OUT,
    EGG_ON_FLOOR,
    DISH_EMPTY,
    WRONG_FOOD,
    OTHER,
    EATING,
    UPRIGHT,
    NOT_UPRIGHT,
    HURT,
    NOT_HURT,
    FOOD_LOW,
    MORE_BIRDS,
    SICK,
    HARD_BREATH;

    /** Its name in the record and among the parts of a screen: {@code on-floor}. */
    public String id() {
        return Message.word(this);
    }

    /** The sign of that name. */
    public static Optional<Sign> of(String id) {
        return Arrays.stream(values()).filter(sign -> sign.id().equals(id)).findFirst();
    }

    /** What a check holds, in words. The checks of early versions hold words instead of names: they stand as they were said. */
    public static List<Message> told(List<String> kept) {
        return kept.stream().map(each -> OwnWords.or(Sign.class, each)).toList();
    }

    public Message words() {
        return Message.of("word.sign." + id());
    }
}
