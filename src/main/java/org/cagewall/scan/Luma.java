package org.cagewall.scan;

import java.awt.Transparency;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferByte;
import java.util.Arrays;

/**
 * A picture as brightness alone, which is all that a decoder looks at; made by one loop over the raster, several times
 * faster than asking for each pixel's colour. Immutable; any thread.
 */
public final class Luma {

    /** ITU-R BT.601: the shares of red, green and blue in brightness, in parts of 1000. */
    private static final int RED = 299;

    private static final int GREEN = 587;
    private static final int BLUE = 114;

    private static final int WHITE = 255;

    private final int width;
    private final int height;
    private final byte[] brightness;

    private Luma(int width, int height, byte[] brightness) {
        this.width = width;
        this.height = height;
        this.brightness = brightness;
    }

    /**
     * The picture of these brightnesses.
     *
     * @param brightness row by row, 0 black to 255 white, as unsigned bytes; copied
     */
    public static Luma of(int width, int height, byte[] brightness) {
        if (width < 1 || height < 1 || brightness.length != width * height) {
            throw new IllegalArgumentException(
                    "a picture of " + width + " x " + height + " has not " + brightness.length + " pixels");
        }
        return new Luma(width, height, brightness.clone());
    }

    /** The picture's brightness; what is see-through lies on white paper. */
    public static Luma of(BufferedImage image) {
        return switch (image.getType()) {
            case BufferedImage.TYPE_BYTE_GRAY -> ofGrey(image);
            case BufferedImage.TYPE_3BYTE_BGR -> ofBytes(image);
            default -> ofPixels(image);
        };
    }

    public int width() {
        return width;
    }

    public int height() {
        return height;
    }

    /** The brightness at a pixel, 0 black to 255 white. */
    public int at(int x, int y) {
        return brightness[y * width + x] & 0xFF;
    }

    /** A copy of all brightnesses, row by row, as unsigned bytes. */
    public byte[] toBytes() {
        return brightness.clone();
    }

    /** The picture made smaller, so that its longest side has at most this many pixels; each new one is an average. */
    Luma atMost(int longestSide) {
        double scale = (double) longestSide / Math.max(width, height);
        return scale >= 1 ? this : averaged(Math.max(1, (int) (width * scale)), Math.max(1, (int) (height * scale)));
    }

    /** A part of the picture, which lies within it. */
    Luma part(int left, int top, int partWidth, int partHeight) {
        byte[] part = new byte[partWidth * partHeight];
        for (int y = 0; y < partHeight; y++) {
            System.arraycopy(brightness, (top + y) * width + left, part, y * partWidth, partWidth);
        }
        return new Luma(partWidth, partHeight, part);
    }

    /** The picture with light for dark. */
    Luma inverted() {
        byte[] inverted = new byte[brightness.length];
        for (int i = 0; i < inverted.length; i++) {
            inverted[i] = (byte) ~brightness[i];
        }
        return new Luma(width, height, inverted);
    }

    /** The picture at half its size. */
    Luma half() {
        return averaged(Math.max(1, width / 2), Math.max(1, height / 2));
    }

    /** The brightness between pixels, by how near each of four is; what lies outside is as its edge. */
    double between(double x, double y) {
        double column = Math.max(0, Math.min(width - 1.001, x));
        double row = Math.max(0, Math.min(height - 1.001, y));
        int i = (int) row * width + (int) column;
        int below = height > 1 ? width : 0;
        int beside = width > 1 ? 1 : 0;
        double right = column - (int) column;
        double upper = (brightness[i] & 0xFF) * (1 - right) + (brightness[i + beside] & 0xFF) * right;
        double lower = (brightness[i + below] & 0xFF) * (1 - right) + (brightness[i + below + beside] & 0xFF) * right;
        return upper + (lower - upper) * (row - (int) row);
    }

    /** The picture with each difference from its neighbourhood made larger. */
    Luma sharpened(int radius, double amount) {
        BoxSums sums = new BoxSums(this);
        byte[] sharper = new byte[brightness.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * width + x;
                double here = brightness[i] & 0xFF;
                double sharp = here + amount * (here - sums.mean(x, y, radius));
                sharper[i] = (byte) Math.max(0, Math.min(WHITE, (int) (sharp + 0.5)));
            }
        }
        return new Luma(width, height, sharper);
    }

    byte[] shared() {
        return brightness;
    }

    private Luma averaged(int newWidth, int newHeight) {
        byte[] smaller = new byte[newWidth * newHeight];
        for (int y = 0; y < newHeight; y++) {
            int top = (int) ((long) y * height / newHeight);
            int bottom = (int) ((long) (y + 1) * height / newHeight);
            for (int x = 0; x < newWidth; x++) {
                int left = (int) ((long) x * width / newWidth);
                int right = (int) ((long) (x + 1) * width / newWidth);
                smaller[y * newWidth + x] = (byte) average(left, top, right, bottom);
            }
        }
        return new Luma(newWidth, newHeight, smaller);
    }

    private int average(int left, int top, int right, int bottom) {
        long sum = 0;
        for (int y = top; y < bottom; y++) {
            for (int x = left; x < right; x++) {
                sum += brightness[y * width + x] & 0xFF;
            }
        }
        return (int) (sum / ((long) (right - left) * (bottom - top)));
    }

    private static Luma ofGrey(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        int[] row = new int[width];
        byte[] brightness = new byte[width * height];
        for (int y = 0; y < height; y++) {
            image.getRaster().getSamples(0, y, width, 1, 0, row);
            for (int x = 0; x < width; x++) {
                brightness[y * width + x] = (byte) row[x];
            }
        }
        return new Luma(width, height, brightness);
    }

    private static Luma ofBytes(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        byte[] brightness = new byte[width * height];
        if (!(image.getRaster().getDataBuffer() instanceof DataBufferByte buffer)
                || buffer.getSize() != 3 * brightness.length) {
            return ofPixels(image);
        }
        byte[] bgr = buffer.getData();
        for (int i = 0, from = 0; i < brightness.length; i++, from += 3) {
            brightness[i] = (byte) weighed(bgr[from + 2] & 0xFF, bgr[from + 1] & 0xFF, bgr[from] & 0xFF);
        }
        return new Luma(width, height, brightness);
    }

    private static Luma ofPixels(BufferedImage image) {
        int width = image.getWidth();
        int height = image.getHeight();
        boolean seeThrough = image.getTransparency() != Transparency.OPAQUE;
        int[] row = new int[width];
        byte[] brightness = new byte[width * height];
        for (int y = 0; y < height; y++) {
            image.getRGB(0, y, width, 1, row, 0, width);
            for (int x = 0; x < width; x++) {
                int pixel = row[x];
                int seen = weighed(pixel >> 16 & 0xFF, pixel >> 8 & 0xFF, pixel & 0xFF);
                brightness[y * width + x] = (byte) (seeThrough ? onWhite(seen, pixel >>> 24) : seen);
            }
        }
        return new Luma(width, height, brightness);
    }

    private static int weighed(int red, int green, int blue) {
        return (RED * red + GREEN * green + BLUE * blue) / 1000;
    }

    private static int onWhite(int seen, int opacity) {
        return (seen * opacity + WHITE * (255 - opacity)) / 255;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Luma luma && luma.width == width && Arrays.equals(luma.brightness, brightness);
    }

    @Override
    public int hashCode() {
        return 31 * width + Arrays.hashCode(brightness);
    }

    @Override
    public String toString() {
        return "a picture of " + width + " x " + height;
    }
}
