package org.cagewall.scan;

import com.google.zxing.ChecksumException;
import com.google.zxing.FormatException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import java.util.Optional;

/**
 * Reads symbols of any version, level and content from how dark each module looks, also in a mirror, by ZXing. What is
 * known of the symbol is not asked of the picture. Stateless; any thread.
 */
final class AnySymbol {

    /** So many of the likeliest levels and masks are tried; measured. */
    private static final int LIKELY = 2;

    /** A text is believed when chance would make it, or another, less often than this: e to this power. */
    private static final double CHANCE = Math.log(1e-9);

    private static final double WORDS = 256;

    private AnySymbol() {}

    /** What it says, when it holds together better than chance can. */
    static Optional<String> read(double[] darkness, KnownModules known) {
        return readable(darkness, known).or(() -> readable(mirrored(darkness, known), known));
    }

    private static double[] mirrored(double[] darkness, KnownModules known) {
        double[] mirrored = new double[darkness.length];
        int stride = known.stride();
        for (int i = 0; i < darkness.length; i++) {
            mirrored[i] = darkness[i % stride * stride + i / stride];
        }
        return mirrored;
    }

    private static Optional<String> readable(double[] darkness, KnownModules known) {
        return Format.likeliest(darkness, known).stream()
                .limit(LIKELY)
                .map(format -> read(darkness, known, format))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<String> read(double[] darkness, KnownModules known, Format format) {
        BitMatrix bits = new BitMatrix(known.side());
        for (int row = 0; row < known.side(); row++) {
            for (int column = 0; column < known.side(); column++) {
                int module = known.number(column, row);
                int kind = known.kind(module);
                if (kind == KnownModules.DARK || kind == KnownModules.DATA && darkness[module] > 0) {
                    bits.set(column, row);
                }
            }
        }
        print(format, known, bits);
        try {
            DecoderResult result = new Decoder().decode(bits);
            return chance(known.version(), result) < CHANCE ? Optional.of(result.getText()) : Optional.empty();
        } catch (ChecksumException | FormatException e) {
            return Optional.empty();
        }
    }

    private static void print(Format format, KnownModules known, BitMatrix bits) {
        int[] modules = Format.modules(known);
        boolean[] dark = format.dark();
        for (int i = 0; i < modules.length; i++) {
            int column = known.column(modules[i]);
            int row = known.row(modules[i]);
            if (dark[i] != bits.get(column, row)) {
                bits.flip(column, row);
            }
        }
    }

    /**
     * How often words of chance lie so near to words that hold together: of all ways to have n wrong ones, one in 256
     * to the number of checks. The logarithm, too high where there are several blocks.
     */
    private static double chance(Version version, DecoderResult result) {
        ErrorCorrectionLevel level = ErrorCorrectionLevel.valueOf(result.getECLevel());
        int words = version.getTotalCodewords();
        int checks = version.getECBlocksForLevel(level).getTotalECCodewords();
        double chance = -checks * Math.log(WORDS);
        for (int i = 0; i < result.getErrorsCorrected(); i++) {
            chance += Math.log((double) (words - i) / (i + 1) * (WORDS - 1));
        }
        return chance;
    }
}
