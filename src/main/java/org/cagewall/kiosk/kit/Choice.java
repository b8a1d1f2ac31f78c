package org.cagewall.kiosk.kit;

import java.util.Arrays;
import java.util.List;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** One of several things to choose from: its name in tests, its word, its value. Immutable; any thread. */
public record Choice<T>(String name, String word, T value) {

    /** All of these constants, each with the word that follows the area: {@code HEN} in "birds.sex." is "birds.sex.hen". */
    public static <E extends Enum<E>> List<Choice<E>> of(E[] constants, Words words, String area) {
        return of(Arrays.asList(constants), words, area);
    }

    /** Some constants, each with the word that follows the area. */
    public static <E extends Enum<E>> List<Choice<E>> of(List<E> constants, Words words, String area) {
        return constants.stream()
                .map(constant -> {
                    String name = Message.word(constant);
                    return new Choice<>(name, words.say(area + name), constant);
                })
                .toList();
    }
}
