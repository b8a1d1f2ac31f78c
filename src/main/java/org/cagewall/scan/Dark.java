package org.cagewall.scan;

/** Which pixels of a picture are ink, as some threshold has it. Immutable; any thread. */
final class Dark {

    private final int width;
    private final int height;
    private final boolean[] dark;

    private Dark(int width, int height, boolean[] dark) {
        this.width = width;
        this.height = height;
        this.dark = dark;
    }

    /**
     * What is darker than its neighbourhood.
     *
     * @param radius of the neighbourhood, pixels
     * @param offset by how much, parts of the neighbourhood's mean
     */
    static Dark belowMean(Luma luma, int radius, double offset) {
        BoxSums sums = new BoxSums(luma);
        int width = luma.width();
        int height = luma.height();
        byte[] brightness = luma.shared();
        boolean[] dark = new boolean[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                dark[y * width + x] = (brightness[y * width + x] & 0xFF) < sums.mean(x, y, radius) * (1 - offset);
            }
        }
        return new Dark(width, height, dark);
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    boolean at(int x, int y) {
        return dark[y * width + x];
    }

    /**
     * How far the outer edge of a finder pattern lies from its middle: past the dark core, the light ring, the dark ring.
     *
     * @param dx the direction, with dy of length 1
     * @return pixels; not a number where the way leaves the picture or the pattern is broken
     */
    double reach(double x, double y, double dx, double dy, double most) {
        int changes = 0;
        boolean was = true;
        for (double far = 0; far < most; far += 0.5) {
            int column = (int) Math.round(x + far * dx);
            int row = (int) Math.round(y + far * dy);
            if (column < 0 || row < 0 || column >= width || row >= height) {
                return Double.NaN;
            }
            if (dark[row * width + column] != was) {
                was = !was;
                if (++changes == 3) {
                    return far;
                }
            }
        }
        return Double.NaN;
    }
}
