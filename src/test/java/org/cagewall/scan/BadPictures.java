package org.cagewall.scan;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;

/**
 * Files that are called pictures and are none, or are far too large, or hold no card. Their forms are those of W3C,
 * Portable Network Graphics; ITU-T T.81 (JPEG); Adobe, TIFF revision 6.0.
 */
public final class BadPictures {

    private static final int MANY = 256;

    private BadPictures() {}

    /**
     * One of them.
     *
     * @param name of its file
     * @param said what is said of it, at least
     */
    public record Bad(String name, byte[] bytes, String said) {

        @Override
        public String toString() {
            return name;
        }
    }

    public static List<Bad> all() {
        try {
            byte[] card = png(SymbolPictures.of("C"));
            return List.of(
                    new Bad("dot.png", png(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB)), "No card code"),
                    new Bad("hundred-megapixels.png", pngThatClaims(10_000, 10_000), "too large"),
                    new Bad("wide.png", pngThatClaims(50_000, 50_000), "too large"),
                    new Bad("wide.jpg", jpegThatClaims(50_000, 50_000), "too large"),
                    new Bad("strip.tif", tiff(100, 100, Integer.MAX_VALUE), "no picture that can be read"),
                    new Bad("wide.tif", tiff(50_000, 50_000, 1), "no picture that can be read"),
                    new Bad("palette.png", pngWithAGiantPalette(), "broken or cut short"),
                    new Bad("unfolds.png", pngThatUnfolds(), "No card code"),
                    new Bad(
                            "large.png",
                            png(new BufferedImage(10_000, 6_000, BufferedImage.TYPE_BYTE_BINARY)),
                            "No card"),
                    new Bad("half.png", Arrays.copyOf(card, card.length / 2), "broken or cut short"),
                    new Bad("start.png", Arrays.copyOf(card, 20), "broken or cut short"),
                    new Bad("notes.png", "Husks out first.".getBytes(StandardCharsets.UTF_8), "is no picture"),
                    new Bad("empty.png", new byte[0], "is empty"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static byte[] png(BufferedImage image) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(image, "png", out);
        return out.toByteArray();
    }

    /** The signature and header of a PNG file and nothing after it. */
    static byte[] pngThatClaims(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(0x89504E470D0A1A0AL);
        chunk("IHDR", header(width, height, 2), out);
        return bytes.toByteArray();
    }

    /** A hundred pixels a side are claimed, and 256 million bytes lie packed in it. */
    private static byte[] pngThatUnfolds() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.write(pngThatClaims(100, 100));
        chunk("IDAT", packed(), out);
        chunk("IEND", new byte[0], out);
        return bytes.toByteArray();
    }

    /** Says that two thousand million bytes of palette follow. */
    private static byte[] pngWithAGiantPalette() throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(0x89504E470D0A1A0AL);
        chunk("IHDR", header(100, 100, 3), out);
        out.writeInt(Integer.MAX_VALUE - 1);
        out.write("PLTE".getBytes(StandardCharsets.US_ASCII));
        return bytes.toByteArray();
    }

    private static byte[] header(int width, int height, int colour) {
        return ByteBuffer.allocate(13)
                .putInt(width)
                .putInt(height)
                .put(new byte[] {8, (byte) colour, 0, 0, 0})
                .array();
    }

    static byte[] packed() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (OutputStream packing = new DeflaterOutputStream(out)) {
            for (int i = 0; i < MANY; i++) {
                packing.write(new byte[1_000_000]);
            }
        }
        return out.toByteArray();
    }

    static void chunk(String kind, byte[] content, DataOutputStream out) throws IOException {
        byte[] named = kind.getBytes(StandardCharsets.US_ASCII);
        CRC32 check = new CRC32();
        check.update(named);
        check.update(content);
        out.writeInt(content.length);
        out.write(named);
        out.write(content);
        out.writeInt((int) check.getValue());
    }

    /** A JPEG file up to the header of its scan, and nothing after it. */
    private static byte[] jpegThatClaims(int width, int height) {
        return ByteBuffer.allocate(37)
                .putShort((short) 0xFFD8)
                .putShort((short) 0xFFC0)
                .putShort((short) 17)
                .put((byte) 8)
                .putShort((short) height)
                .putShort((short) width)
                .put(new byte[] {3, 1, 0x11, 0, 2, 0x11, 0, 3, 0x11, 0})
                .putShort((short) 0xFFDA)
                .putShort((short) 12)
                .put(new byte[] {3, 1, 0, 2, 0, 3, 0, 0, 63, 0})
                .putShort((short) 0xFFD9)
                .array();
    }

    /** A grey TIFF file of one strip that claims to be so many bytes long. */
    private static byte[] tiff(int width, int height, int strip) {
        int[][] entries = {
            {256, width}, {257, height}, {258, 8}, {259, 1}, {262, 1}, {273, 8}, {277, 1}, {278, height}, {279, strip}
        };
        ByteBuffer bytes = ByteBuffer.allocate(8 + 2 + 12 * entries.length + 4).order(ByteOrder.LITTLE_ENDIAN);
        bytes.put((byte) 'I').put((byte) 'I').putShort((short) 42).putInt(8).putShort((short) entries.length);
        for (int[] entry : entries) {
            bytes.putShort((short) entry[0]).putShort((short) 4).putInt(1).putInt(entry[1]);
        }
        return bytes.putInt(0).array();
    }
}
