package org.cagewall.scan;

import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.card.CardCode;

/**
 * Tells a keyboard-style scanner from a person who types, on any screen and with no field chosen. It is given every
 * typed character with its time and has no clock of its own; the event thread alone.
 *
 * <p>A cage card is known by its ten characters with the right check characters before an Enter, however slowly they
 * come; so a code typed by hand counts too. Time is only a hint: it says how long a key is held back from the screen,
 * and which other text must have been a scan.
 */
public final class Keystrokes {

    /**
     * Keys closer together than this are held back until it is clear what they are. Common practice, no source:
     * scanners send a key every 1 to 40 ms, people rarely type faster than one in 80 ms.
     */
    public static final long HOLD_NANOS = 80_000_000;

    /** After such a pause, earlier characters are no part of a code. */
    private static final long FORGET_NANOS = 3_000_000_000L;

    /** Foreign text counts as scanned from this many characters, when they came this fast on average. */
    private static final int BURST_LENGTH = 6;

    private static final long BURST_NANOS_A_KEY = 40_000_000;

    /** ISO/IEC 18004: no symbol holds more characters than 7089. */
    private static final int MOST_HELD = 7089;

    private final StringBuilder since = new StringBuilder();
    private int held;
    private long firstHeld;
    private long last;

    /**
     * A key was typed.
     *
     * @param key the character, Enter as line feed or carriage return
     * @param nanos when, in nanoseconds of any clock that does not go back
     */
    public Outcome typed(char key, long nanos) {
        if (isEnd(key)) {
            return ended(key, nanos);
        }
        String released = releasedAfterPause(nanos);
        last = nanos;
        if (Character.isISOControl(key)) {
            return forgotten(released + takeHeld() + key);
        }
        if (held == 0) {
            firstHeld = nanos;
        }
        since.append(key);
        held++;
        if (held > MOST_HELD) {
            return forgotten(released + takeHeld());
        }
        return released.isEmpty() ? new Pending() : new Typing(released);
    }

    /**
     * No key came for a while: to be asked once {@link #HOLD_NANOS} after the last key, so that what a person typed does
     * not wait for the next key.
     */
    public Outcome quiet(long nanos) {
        String released = releasedAfterPause(nanos);
        return released.isEmpty() ? new Pending() : new Typing(released);
    }

    private Outcome ended(char key, long nanos) {
        Optional<CardCode.Reading> card = card(since.toString());
        boolean burst = isBurst(nanos);
        int letThrough = Math.max(0, CardCode.LENGTH - held);
        String heldBack = takeHeld();
        since.setLength(0);
        if (card.isPresent()) {
            return new Scanned(card.get(), letThrough);
        }
        return burst ? new Scanned(CardCode.read(heldBack), 0) : new Typing(heldBack + key);
    }

    /** The code at the end of the text: some scanners send a mark of their own before it. */
    private static Optional<CardCode.Reading> card(String text) {
        if (text.length() < CardCode.LENGTH) {
            return Optional.empty();
        }
        String tail = text.substring(text.length() - CardCode.LENGTH);
        return Stream.of(KeyboardLayout.values())
                .map(layout -> CardCode.read(layout.sent(tail)))
                .filter(reading -> reading.code().isPresent())
                .findFirst();
    }

    /** Long, fast, and not one key held down. */
    private boolean isBurst(long nanos) {
        String burst = since.substring(since.length() - held);
        return held >= BURST_LENGTH
                && nanos - firstHeld <= held * BURST_NANOS_A_KEY
                && burst.chars().distinct().count() > 1;
    }

    private String releasedAfterPause(long nanos) {
        long pause = nanos - last;
        String released = held > 0 && pause >= HOLD_NANOS ? takeHeld() : "";
        if (pause > FORGET_NANOS) {
            since.setLength(0);
        }
        return released;
    }

    private String takeHeld() {
        String taken = since.substring(since.length() - held);
        held = 0;
        return taken;
    }

    private Outcome forgotten(String released) {
        since.setLength(0);
        held = 0;
        return new Typing(released);
    }

    private static boolean isEnd(char key) {
        return key == '\n' || key == '\r';
    }

    /** What a key means. Immutable; any thread. */
    public sealed interface Outcome permits Typing, Pending, Scanned {}

    /**
     * A person types: let this text through. It may hold earlier keys, and need not hold the latest, which may still be
     * held back.
     */
    public record Typing(String text) implements Outcome {}

    /** Not clear yet: hold the key back. */
    public record Pending() implements Outcome {}

    /**
     * Something was scanned: nothing of it is let through, nor is the Enter.
     *
     * @param reading what it was
     * @param letThrough how many of its characters came so slowly that they were let through as typed before
     */
    public record Scanned(CardCode.Reading reading, int letThrough) implements Outcome {}
}
