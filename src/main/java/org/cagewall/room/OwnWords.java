package org.cagewall.room;

import java.util.Arrays;
import java.util.Locale;
import org.cagewall.text.Message;

/**
 * Reads what the record holds either as a name or as somebody's own words: a name gets its words in the reader's
 * language; anything else, as early versions also kept what they showed, stands as it was said. Pure; any thread.
 */
public final class OwnWords {

    private OwnWords() {}

    public static <E extends Enum<E>> Message or(Class<E> names, String kept) {
        return Arrays.stream(names.getEnumConstants())
                .filter(name -> Message.word(name).equals(kept))
                .findFirst()
                .map(name -> Message.of("word." + names.getSimpleName().toLowerCase(Locale.ROOT) + "." + kept))
                .orElseGet(() -> Message.of("word.as-said", kept));
    }
}
