package org.cagewall.scan;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.Binarizer;
import com.google.zxing.BinaryBitmap;
import com.google.zxing.DecodeHintType;
import com.google.zxing.LuminanceSource;
import com.google.zxing.PlanarYUVLuminanceSource;
import com.google.zxing.ReaderException;
import com.google.zxing.Result;
import com.google.zxing.ResultPoint;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** ZXing's own reading of a symbol of any kind that lies flat in a picture. Stateless; any thread. */
final class PlainLook {

    /** From the middles of two corner squares to the sides of the symbol: 21 modules over 14 in version 1. */
    private static final double SIDE = 1.5;

    private static final Map<DecodeHintType, Object> HINTS =
            Map.of(DecodeHintType.POSSIBLE_FORMATS, List.of(BarcodeFormat.QR_CODE));

    private PlainLook() {}

    static List<Sighting> in(Luma luma, Function<LuminanceSource, Binarizer> binarizer) {
        try {
            Result result = new QRCodeReader().decode(new BinaryBitmap(binarizer.apply(source(luma))), HINTS);
            return List.of(sighting(result.getText(), result.getResultPoints()));
        } catch (ReaderException | IndexOutOfBoundsException | IllegalArgumentException e) {
            return List.of();
        }
    }

    /** ZXing gives the corner squares from the lower left on: the first and the third lie across from each other. */
    private static Sighting sighting(String text, ResultPoint[] corners) {
        double x = (corners[0].getX() + corners[2].getX()) / 2;
        double y = (corners[0].getY() + corners[2].getY()) / 2;
        return new Sighting(text, x, y, ResultPoint.distance(corners[0], corners[1]) * SIDE);
    }

    private static LuminanceSource source(Luma luma) {
        int width = luma.width();
        int height = luma.height();
        return new PlanarYUVLuminanceSource(luma.shared(), width, height, 0, 0, width, height, false);
    }
}
