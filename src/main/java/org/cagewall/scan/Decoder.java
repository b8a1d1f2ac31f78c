package org.cagewall.scan;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.common.GlobalHistogramBinarizer;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/**
 * Finds the QR symbol in a picture and says what it says: a quick look first, then a few that take longer. Stateless;
 * the lane of frames, or any thread but the event thread.
 */
public final class Decoder {

    /** Measured: with more pixels the plain passes read less. */
    private static final int LONGEST_SIDE = 1280;

    /** ISO/IEC 18004: the smallest symbol has 21 modules on a side. */
    private static final int SMALLEST_SIDE = 21;

    private static final Map<DecodeHintType, Object> QUICK =
            Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE));
    private static final Map<DecodeHintType, Object> THOROUGH =
            Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE), DecodeHintType.TRY_HARDER, true);

    /** What the symbol in this frame says, or why there is nothing to say. */
    public Decoding decode(Frame frame) {
        return frame.decodedBy(this);
    }

    /** What the symbol in this picture says. The answer to the same picture is always the same. */
    public Decoding decode(Luma picture) {
        if (Math.min(picture.width(), picture.height()) < SMALLEST_SIDE) {
            return new Decoding.Nothing();
        }
        Luma usual = picture.atMost(LONGEST_SIDE);
        return look(usual, GlobalHistogramBinarizer::new, QUICK)
                .or(() -> look(usual.half(), HybridBinarizer::new, QUICK))
                .or(() -> look(usual, HybridBinarizer::new, QUICK))
                .or(() -> usual == picture ? Optional.empty() : look(picture, HybridBinarizer::new, QUICK))
                .or(() -> look(usual, HybridBinarizer::new, THOROUGH))
                .<Decoding>map(Decoding.Found::new)
                .orElseGet(Decoding.Nothing::new);
    }

    private static Optional<String> look(
            Luma picture, Function<LuminanceSource, Binarizer> binarizer, Map<DecodeHintType, Object> hints) {
        try {
            BinaryBitmap bits = new BinaryBitmap(binarizer.apply(source(picture)));
            return Optional.of(new QRCodeReader().decode(bits, hints).getText());
        } catch (ReaderException | IndexOutOfBoundsException | IllegalArgumentException e) {
            return Optional.empty();
        }
    }

    private static LuminanceSource source(Luma picture) {
        int width = picture.width();
        int height = picture.height();
        return new PlanarYUVLuminanceSource(picture.shared(), width, height, 0, 0, width, height, false);
    }
}
