package org.cagewall.cards;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.BitSet;
import java.util.Map;

/**
 * Makes symbols: that of a card, QR of version 1 at level H, the form that was read most often from a worn card at arm's
 * length, and those of links that a phone reads from the screen. Stateless; any thread.
 */
public final class Symbols {

    /** ISO/IEC 18004: the modules on a side of version 1. */
    public static final int SIDE = 21;

    /** ISO/IEC 18004: the light modules that must lie around a symbol. */
    public static final int QUIET_ZONE = 4;

    /** ISO/IEC 18004: what version 1 holds at level H in alphanumeric mode. */
    public static final int MOST_CHARACTERS = 10;

    private static final int VERSION = 1;

    /**
     * ISO/IEC 18004: what version 12 holds at level M in byte mode. A text message of 160 characters fits with its
     * number, and a symbol of 65 modules is large enough on the screen for an ordinary phone.
     */
    public static final int MOST_LINK_BYTES = 287;

    private Symbols() {}

    /**
     * The symbol of version 1, level H; alphanumeric mode, but for digits alone numeric mode.
     *
     * @param text 1 to 10 characters of 0-9 and A-Z
     * @throws IllegalArgumentException when the text is no such text
     */
    public static Symbol matrix(String text) {
        if (!text.matches("[0-9A-Z]{1," + MOST_CHARACTERS + "}")) {
            throw new IllegalArgumentException("a card's symbol holds 1 to 10 characters of 0-9 and A-Z, not " + text);
        }
        try {
            return symbol(Encoder.encode(text, ErrorCorrectionLevel.H, Map.of(EncodeHintType.QR_VERSION, VERSION))
                    .getMatrix());
        } catch (WriterException e) {
            throw new IllegalStateException("ten characters fit into version 1 at level H", e);
        }
    }

    /** Whether a link makes a symbol of at most version 12. */
    public static boolean holds(String link) {
        return !link.isEmpty()
                && link.length() <= MOST_LINK_BYTES
                && link.chars().allMatch(c -> c > ' ' && c < 127);
    }

    /**
     * The symbol of a link, at level M, in the least version that holds it.
     *
     * @param link 1 to 287 characters of ASCII without spaces
     * @throws IllegalArgumentException when the link is no such text
     */
    public static Symbol link(String link) {
        if (!holds(link)) {
            throw new IllegalArgumentException("a symbol holds links of 1 to 287 characters of ASCII, not " + link);
        }
        try {
            return symbol(Encoder.encode(link, ErrorCorrectionLevel.M, Map.of()).getMatrix());
        } catch (WriterException e) {
            throw new IllegalStateException("287 bytes fit into version 12 at level M", e);
        }
    }

    private static Symbol symbol(ByteMatrix modules) {
        int side = modules.getWidth();
        BitSet dark = new BitSet(side * side);
        for (int row = 0; row < side; row++) {
            for (int column = 0; column < side; column++) {
                dark.set(row * side + column, modules.get(column, row) == 1);
            }
        }
        return new Symbol(side, dark);
    }
}
