package org.cagewall.kiosk.shell;

import org.cagewall.scan.Keystrokes;

/** What a key does that is more than a character, and how long it has to stand alone before it does so. Any thread. */
enum Doing {
    PRESS(150_000_000),
    ESCAPE(150_000_000),
    PASTE(150_000_000),
    MOVE(Keystrokes.HOLD_NANOS);

    /**
     * So long after a character a key belongs to the same text, where no field is written in. Common practice, no
     * source: the longest pause between two keys that scanners can be set to is just below a second.
     */
    static final long AMID_TEXT_NANOS = 1_000_000_000;

    /** The same while a field is written in, where a person goes on with Tab or Enter soon after a letter. */
    static final long IN_FIELD_NANOS = Keystrokes.HOLD_NANOS;

    private final long nanos;

    Doing(long nanos) {
        this.nanos = nanos;
    }

    /** Longer than a hand needs between two Tabs, or than a slow scanner waits. Common practice, no source. */
    long nanos() {
        return nanos;
    }
}
