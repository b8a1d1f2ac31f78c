package org.cagewall.scan;

import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.decoder.Version;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.SplittableRandom;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.MemoryCacheImageOutputStream;
import org.cagewall.cards.OtherSymbols;
import org.cagewall.cards.Symbol;

/**
 * Makes pictures of codes that hang on no cage, of any version, level and text, as they stand on bags, boxes and screens;
 * always the same for the same seed. Any thread.
 */
public final class OtherCodes {

    private static final String LETTERS = "abcdefghijklmnopqrstuvwxyz0123456789-./";
    private static final String BEGINNING = "https://";

    /** What the first letters of a symbol take for their mode and number, in words, at most. */
    private static final int HEAD = 4;

    /** Little correction is what most codes have. */
    private static final List<ErrorCorrectionLevel> LEVELS = List.of(
            ErrorCorrectionLevel.L,
            ErrorCorrectionLevel.L,
            ErrorCorrectionLevel.L,
            ErrorCorrectionLevel.M,
            ErrorCorrectionLevel.M,
            ErrorCorrectionLevel.Q,
            ErrorCorrectionLevel.H);

    private final long seed;

    private OtherCodes(long seed) {
        this.seed = seed;
    }

    public static OtherCodes of(long seed) {
        return new OtherCodes(seed);
    }

    /** The code of this number that is odd in this way. */
    public WornCards.Worn code(Oddity oddity, int number) {
        return new Made(oddity, new SplittableRandom(seed * 1_000_003 + oddity.ordinal() * 100_003L + number)).worn();
    }

    private static final class Made {

        private final Oddity oddity;
        private final SplittableRandom chance;

        Made(Oddity oddity, SplittableRandom chance) {
            this.oddity = oddity;
            this.chance = chance;
        }

        WornCards.Worn worn() {
            boolean covered = oddity == Oddity.PICTURE_WITHIN;
            ErrorCorrectionLevel level = covered ? ErrorCorrectionLevel.H : LEVELS.get(chance.nextInt(LEVELS.size()));
            int usual = 1 + (int) (9 * Math.pow(chance.nextDouble(), 1.5));
            int version =
                    switch (oddity) {
                        case DENSE -> chance.nextInt(8, 26);
                        case PICTURE_WITHIN -> Math.max(3, usual);
                        default -> usual;
                    };
            String text = text(Version.getVersionForNumber(version), level);
            Symbol symbol = OtherSymbols.of(text, level, version);
            CardPaper paper = CardPaper.label(symbol, chance);
            print(symbol, paper);
            CardPaper.Tile tile = paper.tiles().get(0);
            Luma picture = Shot.of(oddity, symbol.side(), chance)
                    .camera(tile.module())
                    .picture(paper, tile.middleX() + from(-4, 4), tile.middleY() + from(-4, 4), chance);
            return new WornCards.Worn(developed(picture), text);
        }

        private String text(Version version, ErrorCorrectionLevel level) {
            int words = version.getTotalCodewords()
                    - version.getECBlocksForLevel(level).getTotalECCodewords()
                    - HEAD;
            int length = Math.max(1, (int) (words * from(0.6, 1)));
            StringBuilder text = new StringBuilder(BEGINNING.substring(0, Math.min(BEGINNING.length(), length)));
            while (text.length() < length) {
                text.append(LETTERS.charAt(chance.nextInt(LETTERS.length())));
            }
            return text.toString();
        }

        private void print(Symbol symbol, CardPaper paper) {
            double module = paper.tiles().get(0).module();
            switch (oddity) {
                case PICTURE_WITHIN -> paper.cover(from(0.15, 0.27), 0.3f);
                case TIGHT -> paper.surround(module * from(0.8, 2.3), (float) from(0.1, 0.4));
                case DOTS -> paper.dot(symbol, from(0.7, 0.95));
                default -> {}
            }
        }

        private Luma developed(Luma picture) {
            return switch (oddity) {
                case SHADOW -> shaded(picture);
                case FAINT -> faint(picture);
                case MIRRORED -> mirrored(picture);
                case INVERTED -> picture.inverted();
                case COMPRESSED -> compressed(picture, (float) from(0.05, 0.3));
                default -> picture;
            };
        }

        /** The edge of a shadow lies somewhere through the middle. */
        private Luma shaded(Luma picture) {
            double towards = from(0, 2 * Math.PI);
            double deep = from(0.25, 0.5);
            double soft = from(0.5, 6);
            return each(picture, (x, y) -> {
                double far = (x - picture.width() / 2.0) * Math.cos(towards)
                        + (y - picture.height() / 2.0) * Math.sin(towards);
                return picture.at(x, y) * (deep + (1 - deep) / (1 + Math.exp(-far / soft)));
            });
        }

        private Luma faint(Luma picture) {
            double least = from(40, 160);
            double range = from(0.08, 0.25);
            return each(picture, (x, y) -> least + range * picture.at(x, y));
        }

        private static Luma mirrored(Luma picture) {
            return each(picture, (x, y) -> picture.at(picture.width() - 1 - x, y));
        }

        private double from(double least, double most) {
            return least + (most - least) * chance.nextDouble();
        }
    }

    /** The brightness of a pixel, 0 to 255. */
    private interface Brightness {
        double at(int x, int y);
    }

    private static Luma each(Luma like, Brightness brightness) {
        byte[] bytes = new byte[like.width() * like.height()];
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] = (byte) (int) brightness.at(i % like.width(), i / like.width());
        }
        return Luma.of(like.width(), like.height(), bytes);
    }

    private static Luma compressed(Luma picture, float quality) {
        BufferedImage image = new BufferedImage(picture.width(), picture.height(), BufferedImage.TYPE_BYTE_GRAY);
        image.getRaster().setDataElements(0, 0, picture.width(), picture.height(), picture.toBytes());
        ByteArrayOutputStream file = new ByteArrayOutputStream();
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ImageWriteParam how = writer.getDefaultWriteParam();
        how.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
        how.setCompressionQuality(quality);
        try (MemoryCacheImageOutputStream out = new MemoryCacheImageOutputStream(file)) {
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, List.of(), null), how);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } finally {
            writer.dispose();
        }
        try {
            return Luma.of(ImageIO.read(new ByteArrayInputStream(file.toByteArray())));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
