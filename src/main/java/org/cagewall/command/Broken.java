package org.cagewall.command;

/** Ends a command in which something broke that the log already knows by this code. */
final class Broken extends RuntimeException {

    private static final long serialVersionUID = 1;

    private final String code;

    Broken(String code) {
        super(code, null, false, false);
        this.code = code;
    }

    String code() {
        return code;
    }
}
