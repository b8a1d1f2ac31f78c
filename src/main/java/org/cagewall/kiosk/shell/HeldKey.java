package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.KeyboardFocusManager;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/** A key that waits until it is clear whether a hand pressed it: all that came of it, in order. Used on the event thread. */
final class HeldKey {

    private final List<KeyEvent> events = new ArrayList<>();
    private final Doing doing;
    private final long wait;
    private final long until;

    HeldKey(KeyEvent pressed, Doing doing, long wait, long until) {
        events.add(pressed);
        this.doing = doing;
        this.wait = wait;
        this.until = until;
    }

    Doing doing() {
        return doing;
    }

    /** When it has stood alone, by the machine's running time. */
    long until() {
        return until;
    }

    /** Whether the wait was over when the next key was pressed, however late both come to be heard. */
    boolean stoodAloneBefore(KeyEvent next) {
        return TimeUnit.MILLISECONDS.toNanos(next.getWhen() - events.get(0).getWhen()) >= wait;
    }

    /** Whether this is the same Tab that is still held down; the display repeats a key that a hand is slow to let go. */
    boolean isRepeatedBy(KeyEvent next) {
        return doing == Doing.MOVE && code() == next.getKeyCode();
    }

    int code() {
        return events.get(0).getKeyCode();
    }

    void add(KeyEvent event) {
        events.add(event);
    }

    boolean isReleased() {
        return events.get(events.size() - 1).getID() == KeyEvent.KEY_RELEASED;
    }

    /** Whether this is the character of the key. */
    boolean isTypedBy(KeyEvent event) {
        char c = event.getKeyChar();
        return c == events.get(0).getKeyChar() || code() == KeyEvent.VK_ENTER && c == '\r';
    }

    /** Gives it to the part that has the keyboard, as if it had just come. */
    void sendTo(Component focus) {
        for (KeyEvent event : events) {
            KeyboardFocusManager.getCurrentKeyboardFocusManager()
                    .redispatchEvent(
                            focus,
                            new KeyEvent(
                                    focus,
                                    event.getID(),
                                    event.getWhen(),
                                    event.getModifiersEx(),
                                    event.getKeyCode(),
                                    event.getKeyChar(),
                                    event.getKeyLocation()));
        }
    }
}
