package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.function.LongSupplier;
import javax.swing.text.JTextComponent;

/**
 * Hears every key before the part that has the keyboard: a scanner that types, Escape, a pasted picture, and Tab, which
 * brings the focus ring back. Used on the event thread.
 */
final class Keys implements KeyEventDispatcher {

    /** Common practice, no source: keys begin to repeat within less than a second. */
    private static final long HELD_NANOS = 1_000_000_000L;

    private final List<KeySink> sinks = new ArrayList<>();
    private final LongSupplier nanos;
    private final Commands commands;
    private final Written written = new Written();
    private Enter enter = Enter.FREE;
    private OptionalLong lastTaken = OptionalLong.empty();

    /** What the shell does on a key. */
    interface Commands {

        void escape();

        /** A paste; says whether a picture was there to be taken. */
        boolean paste();

        void movedByKey();
    }

    private enum Enter {
        FREE,
        TAKEN
    }

    Keys(LongSupplier nanos, Commands commands) {
        this.nanos = nanos;
        this.commands = commands;
    }

    void add(KeySink sink) {
        sinks.add(sink);
    }

    @Override
    public boolean dispatchKeyEvent(KeyEvent event) {
        return switch (event.getID()) {
            case KeyEvent.KEY_TYPED -> typed(event);
            case KeyEvent.KEY_PRESSED -> pressed(event);
            case KeyEvent.KEY_RELEASED -> released(event);
            default -> false;
        };
    }

    private boolean typed(KeyEvent event) {
        if (event.getKeyChar() == '\n' || event.getKeyChar() == '\r') {
            return enter == Enter.TAKEN;
        }
        return isPlain(event) && offer(event.getKeyChar());
    }

    private boolean pressed(KeyEvent event) {
        if (event.getKeyCode() == KeyEvent.VK_ENTER && isPlain(event)) {
            enter = offer('\n') || repeats() ? Enter.TAKEN : Enter.FREE;
            if (enter == Enter.TAKEN) {
                lastTaken = OptionalLong.of(nanos.getAsLong());
            }
            return enter == Enter.TAKEN;
        }
        if (event.getKeyCode() == KeyEvent.VK_ESCAPE || isAltLeft(event)) {
            commands.escape();
            return true;
        }
        if (event.getKeyCode() == KeyEvent.VK_V && (event.getModifiersEx() & pasteMask()) != 0) {
            return commands.paste();
        }
        if (event.getKeyCode() == KeyEvent.VK_TAB) {
            commands.movedByKey();
        }
        return false;
    }

    /** A key that is held comes again and again: what the scan has opened is not for that Enter to press. */
    private boolean repeats() {
        return lastTaken.isPresent() && nanos.getAsLong() - lastTaken.getAsLong() < HELD_NANOS;
    }

    private boolean released(KeyEvent event) {
        if (event.getKeyCode() == KeyEvent.VK_ENTER && enter == Enter.TAKEN) {
            enter = Enter.FREE;
            return true;
        }
        return false;
    }

    private boolean offer(char c) {
        long now = nanos.getAsLong();
        Component focus = focus();
        boolean taken = false;
        for (KeySink sink : sinks) {
            taken |= focus instanceof JTextComponent ? sink.keyInField(c, now, written::takeOut) : sink.key(c, now);
        }
        if (focus instanceof JTextComponent field && !taken) {
            written.goesInto(field);
        }
        return taken;
    }

    private static Component focus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private static boolean isPlain(KeyEvent event) {
        return (event.getModifiersEx() & (InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK)) == 0;
    }

    private static boolean isAltLeft(KeyEvent event) {
        return event.getKeyCode() == KeyEvent.VK_LEFT && (event.getModifiersEx() & InputEvent.ALT_DOWN_MASK) != 0;
    }

    private static int pasteMask() {
        return InputEvent.CTRL_DOWN_MASK | InputEvent.META_DOWN_MASK;
    }
}
