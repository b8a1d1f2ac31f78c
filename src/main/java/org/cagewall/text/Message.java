package org.cagewall.text;

import java.util.List;
import java.util.Locale;
import java.util.Objects;

/**
 * A sentence that has not been put into words yet, so that every package may answer in sentences without knowing the
 * reader's language. Immutable; any thread.
 *
 * @param key what is said: the part before the first dot names the bundle file, the rest the line in it
 * @param args what is filled in: strings, numbers, dates, times, enums, lists, other messages
 */
public record Message(String key, List<Object> args) {

    public Message {
        Objects.requireNonNull(key, "key");
        args = List.copyOf(args);
    }

    /** A constant as keys, the record and files write it: {@code DEAD_IN_SHELL} is dead-in-shell. */
    public static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Message of(String key, Object... args) {
        return new Message(key, List.of(args));
    }
}
