package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.List;
import java.util.function.LongSupplier;
import javax.swing.text.JTextComponent;

/**
 * Hears every key before the part that has the keyboard: a scanner that types, Escape, a pasted picture, and Tab, which
 * brings the focus ring back. Used on the event thread.
 */
final class Keys implements KeyEventDispatcher {

    private final List<KeySink> sinks = new ArrayList<>();
    private final LongSupplier nanos;
    private final Commands commands;
    private Enter enter = Enter.FREE;

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
            enter = offer('\n') ? Enter.TAKEN : Enter.FREE;
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

    private boolean released(KeyEvent event) {
        if (event.getKeyCode() == KeyEvent.VK_ENTER && enter == Enter.TAKEN) {
            enter = Enter.FREE;
            return true;
        }
        return false;
    }

    private boolean offer(char c) {
        long now = nanos.getAsLong();
        boolean field = focus() instanceof JTextComponent;
        boolean taken = false;
        for (KeySink sink : sinks) {
            taken |= field ? sink.keyInField(c, now) : sink.key(c, now);
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
