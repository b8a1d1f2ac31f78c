package org.cagewall.deed;

import org.cagewall.text.Message;

/** What a rule says of a deed: it may be, it is odd and must be confirmed, or it cannot be. Immutable; any thread. */
public sealed interface Ruling {

    Ruling ALLOWED = new Allowed();

    /** Nothing stands against it. */
    record Allowed() implements Ruling {}

    /** It is odd: the person is asked. */
    record Asks(Message question) implements Ruling {}

    /** It cannot be. */
    record Refused(Message reason) implements Ruling {}

    static Ruling asksIf(boolean odd, String key, Object... args) {
        return odd ? new Asks(Message.of(key, args)) : ALLOWED;
    }

    static Ruling refusesIf(boolean wrong, String key, Object... args) {
        return wrong ? refuses(key, args) : ALLOWED;
    }

    static Ruling refuses(String key, Object... args) {
        return new Refused(Message.of(key, args));
    }
}
