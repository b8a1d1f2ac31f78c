package org.cagewall.command;

import org.cagewall.text.Message;

/** Ends a command that cannot be carried out; the sentence is all that the person gets to see of it. */
final class Refusal extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Message why;

    Refusal(Message why) {
        super(why.key(), null, false, false);
        this.why = why;
    }

    static Refusal of(String key, Object... args) {
        return new Refusal(Message.of(key, args));
    }

    Message why() {
        return why;
    }
}
