package org.cagewall.store;

import org.cagewall.text.Message;

/** The record cannot be opened, read or written, and why, as a sentence. */
public final class StoreProblem extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final transient Message why;

    StoreProblem(Message why) {
        this(why, null);
    }

    StoreProblem(Message why, Throwable cause) {
        super(why.key(), cause);
        this.why = why;
    }

    public Message why() {
        return why;
    }
}
