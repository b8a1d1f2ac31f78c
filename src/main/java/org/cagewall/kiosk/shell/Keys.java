package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.KeyEventDispatcher;
import java.awt.KeyboardFocusManager;
import java.awt.event.InputEvent;
import java.awt.event.KeyEvent;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.LongSupplier;
import javax.swing.text.JTextComponent;

/**
 * Hears every key before the part that has the keyboard, and tells a hand from a scanner that types: what may belong to
 * a code is heard by the sinks and reaches nothing else, pressed, typed or released. A key that does something (Space,
 * Enter, Tab, Escape, a paste) is held back until it has stood alone for a moment. Used on the event thread.
 */
final class Keys implements KeyEventDispatcher {

    private final List<KeySink> sinks = new ArrayList<>();
    private final LongSupplier nanos;
    private final Commands commands;
    private final Written written = new Written();
    private final Set<Integer> passedOver = new HashSet<>();
    private Optional<HeldKey> held = Optional.empty();
    private Optional<Long> lastOfText = Optional.empty();

    /** What the shell does on a key. */
    interface Commands {

        void escape();

        /** A paste; says whether a picture was there to be taken. */
        boolean paste();

        /** A key is to move the focus; says whether it has been put on a first part instead. */
        boolean movesByKey();

        /** The part that has the keys, or is about to have them: one Tab may follow before the focus has moved by the other. */
        Component focusToBe();

        /** Whether the room is worked by keys just now: else Space and Enter press nothing. */
        boolean isByKeys();

        /** Has {@link Keys#quiet} called after this while, and no sooner. */
        void wake(long nanos);
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

    private boolean pressed(KeyEvent event) {
        if (isModifier(event)) {
            return false;
        }
        held.filter(key -> key.stoodAloneBefore(event)).ifPresent(this::act);
        if (isEnter(event) && isPlain(event) && offer('\n')) {
            return passOver(event);
        }
        Optional<Doing> doing = doing(event);
        if (doing.isPresent() && held.filter(key -> key.isRepeatedBy(event)).isPresent()) {
            return true;
        }
        if (doing.isPresent()) {
            return isAmidText() || held.isPresent() ? passOver(event) : hold(event, doing.get());
        }
        dropHeld();
        boolean writes = isPlain(event) && event.getKeyChar() != KeyEvent.CHAR_UNDEFINED;
        return !isField() && (writes || isAmidText()) && passOver(event);
    }

    private boolean typed(KeyEvent event) {
        char c = event.getKeyChar();
        boolean taken = c != '\n' && c != '\r' && isPlain(event) && offer(c);
        if (!Character.isISOControl(c) && (c != ' ' || isField())) {
            dropHeld();
            lastOfText = Optional.of(nanos.getAsLong());
        }
        if (held.filter(key -> key.isTypedBy(event)).isPresent()) {
            held.get().add(event);
            return true;
        }
        return taken || (isField() ? isLost(c) : isPlain(event));
    }

    /** Of a key that does something in a field the character is no text. */
    private boolean isLost(char c) {
        return c == '\t' && passedOver.contains(KeyEvent.VK_TAB)
                || (c == '\n' || c == '\r') && passedOver.contains(KeyEvent.VK_ENTER);
    }

    private boolean released(KeyEvent event) {
        if (held.filter(key -> key.code() == event.getKeyCode()).isPresent()) {
            held.get().add(event);
            return true;
        }
        return passedOver.remove(event.getKeyCode());
    }

    /** No key has come for a while: a key that was held back has stood alone, and does what it does. */
    void quiet() {
        if (held.isEmpty()) {
            return;
        }
        long left = held.get().until() - nanos.getAsLong();
        if (left > 0) {
            commands.wake(left);
            return;
        }
        act(held.get());
    }

    private void act(HeldKey key) {
        held = Optional.empty();
        boolean done =
                switch (key.doing()) {
                    case PRESS -> !isField() && !commands.isByKeys();
                    case MOVE -> commands.movesByKey();
                    case PASTE -> commands.paste();
                    case ESCAPE -> {
                        commands.escape();
                        yield true;
                    }
                };
        Component focus = key.doing() == Doing.MOVE ? commands.focusToBe() : focus();
        if (!done && focus != null) {
            key.sendTo(focus);
        } else if (!key.isReleased()) {
            passedOver.add(key.code());
        }
    }

    private boolean hold(KeyEvent event, Doing doing) {
        long wait = isField() ? Doing.IN_FIELD_NANOS : doing.nanos();
        held = Optional.of(new HeldKey(event, doing, wait, nanos.getAsLong() + wait));
        passedOver.remove(event.getKeyCode());
        commands.wake(wait);
        return true;
    }

    private boolean passOver(KeyEvent event) {
        dropHeld();
        passedOver.add(event.getKeyCode());
        lastOfText = Optional.of(nanos.getAsLong());
        return true;
    }

    /** It did not stand alone: it was part of a code. */
    private void dropHeld() {
        held.filter(key -> !key.isReleased()).ifPresent(key -> passedOver.add(key.code()));
        if (held.isPresent()) {
            lastOfText = Optional.of(nanos.getAsLong());
        }
        held = Optional.empty();
    }

    private boolean isAmidText() {
        long still = isField() ? Doing.IN_FIELD_NANOS : Doing.AMID_TEXT_NANOS;
        return lastOfText.filter(last -> nanos.getAsLong() - last < still).isPresent();
    }

    private static Optional<Doing> doing(KeyEvent event) {
        int code = event.getKeyCode();
        if (code == KeyEvent.VK_ESCAPE || isAltLeft(event)) {
            return Optional.of(Doing.ESCAPE);
        }
        if (code == KeyEvent.VK_V && (event.getModifiersEx() & pasteMask()) != 0) {
            return Optional.of(Doing.PASTE);
        }
        if (code == KeyEvent.VK_TAB) {
            return Optional.of(Doing.MOVE);
        }
        boolean presses = isEnter(event) || code == KeyEvent.VK_SPACE && !isField();
        return presses ? Optional.of(Doing.PRESS) : Optional.empty();
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

    private static boolean isField() {
        return focus() instanceof JTextComponent;
    }

    private static Component focus() {
        return KeyboardFocusManager.getCurrentKeyboardFocusManager().getFocusOwner();
    }

    private static boolean isEnter(KeyEvent event) {
        return event.getKeyCode() == KeyEvent.VK_ENTER;
    }

    private static boolean isModifier(KeyEvent event) {
        return switch (event.getKeyCode()) {
            case KeyEvent.VK_SHIFT,
                    KeyEvent.VK_CONTROL,
                    KeyEvent.VK_ALT,
                    KeyEvent.VK_ALT_GRAPH,
                    KeyEvent.VK_META,
                    KeyEvent.VK_CAPS_LOCK,
                    KeyEvent.VK_NUM_LOCK -> true;
            default -> false;
        };
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
