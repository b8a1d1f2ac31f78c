package org.cagewall.text;

import java.util.List;
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

    public static Message of(String key, Object... args) {
        return new Message(key, List.of(args));
    }
}
