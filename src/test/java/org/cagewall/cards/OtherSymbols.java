package org.cagewall.cards;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.BitSet;
import java.util.Map;

/** Symbols of any version and level, as they stand on bags and boxes. Stateless; any thread. */
public final class OtherSymbols {

    private OtherSymbols() {}

    /** The symbol of a text that its version holds at this level. */
    public static Symbol of(String text, ErrorCorrectionLevel level, int version) {
        ByteMatrix modules = modules(text, level, version);
        int side = modules.getWidth();
        BitSet dark = new BitSet(side * side);
        for (int module = 0; module < side * side; module++) {
            dark.set(module, modules.get(module % side, module / side) == 1);
        }
        return new Symbol(side, dark);
    }

    private static ByteMatrix modules(String text, ErrorCorrectionLevel level, int version) {
        try {
            return Encoder.encode(text, level, Map.of(EncodeHintType.QR_VERSION, version))
                    .getMatrix();
        } catch (WriterException e) {
            throw new IllegalArgumentException("too long for version " + version + ": " + text, e);
        }
    }
}
