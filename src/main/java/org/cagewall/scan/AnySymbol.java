package org.cagewall.scan;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.Optional;

/** Reads symbols of any version, level and content from how dark each module looks, by ZXing. Stateless; any thread. */
final class AnySymbol {

    private AnySymbol() {}

    /** What it says, when it holds together. */
    static Optional<String> read(double[] darkness, KnownModules known) {
        BitMatrix bits = new BitMatrix(known.side());
        for (int row = 0; row < known.side(); row++) {
            for (int column = 0; column < known.side(); column++) {
                if (darkness[known.number(column, row)] > 0) {
                    bits.set(column, row);
                }
            }
        }
        try {
            DecoderResult result = new Decoder().decode(bits);
            return Optional.of(result.getText());
        } catch (ChecksumException | FormatException e) {
            return Optional.empty();
        }
    }
}
