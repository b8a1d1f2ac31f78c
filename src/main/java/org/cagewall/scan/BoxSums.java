package org.cagewall.scan;

/** Gives the mean of any rectangle of a picture in one step, from sums made once. Immutable; any thread. */
final class BoxSums {

    private final int width;
    private final int height;
    private final int[] sums;

    /** Sums over at most 2^31 / 255 pixels, 8.4 million, are exact; a decoder looks at far fewer. */
    BoxSums(Luma luma) {
        width = luma.width();
        height = luma.height();
        sums = new int[(width + 1) * (height + 1)];
        byte[] brightness = luma.shared();
        for (int y = 0; y < height; y++) {
            int row = 0;
            int above = y * (width + 1) + 1;
            for (int x = 0; x < width; x++) {
                row += brightness[y * width + x] & 0xFF;
                sums[above + width + 1 + x] = sums[above + x] + row;
            }
        }
    }

    /** The mean brightness of the square around a pixel, as far as it lies within the picture. */
    double mean(int x, int y, int radius) {
        int left = Math.max(0, x - radius);
        int top = Math.max(0, y - radius);
        int right = Math.min(width, x + radius + 1);
        int bottom = Math.min(height, y + radius + 1);
        int sum = sums[bottom * (width + 1) + right]
                - sums[bottom * (width + 1) + left]
                - sums[top * (width + 1) + right]
                + sums[top * (width + 1) + left];
        return (double) sum / ((right - left) * (bottom - top));
    }
}
