package org.cagewall.command;

import java.util.Optional;
import org.cagewall.text.Message;

/** Ends a command in which something broke that the log already knows by this code. */
final class Broken extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String code;
    private final transient Optional<Message> why;

    Broken(String code) {
        this(code, Optional.empty());
    }

    Broken(String code, Message why) {
        this(code, Optional.of(why));
    }

    private Broken(String code, Optional<Message> why) {
        super(code, null, false, false);
        this.code = code;
        this.why = why;
    }

    /** What the person is told. */
    Message said(String log) {
        return why.map(reason -> Message.of("command.unwritten", reason, code, log))
                .orElse(Message.of("command.failed", code, log));
    }
}
