package org.cagewall.scan;

import java.util.Optional;

/**
 * How the modules of a symbol run near one of its corner squares, told by the square's outline alone: so two squares, or
 * one, show where the others must lie that are under dirt. Immutable; any thread.
 *
 * @param px one way in which modules run, pixels a module
 * @param qx the other way, a quarter turn on
 * @param rest how far the outline is from the four sides of a square, parts of a module
 */
record Shape(double px, double py, double qx, double qy, double rest) {

    private static final int RAYS = 24;
    private static final int ROUNDS = 6;
    private static final int STARTS = 4;

    /** The least number of directions in which the outline must be seen. */
    private static final int LEAST_RAYS = 14;

    static Optional<Shape> of(Finder finder, Dark dark) {
        double[] steep = new double[RAYS];
        int seen = 0;
        double most = 6 * Math.max(finder.across(), finder.down());
        for (int i = 0; i < RAYS; i++) {
            double reach = dark.reach(finder.x(), finder.y(), cos(i), sin(i), most);
            steep[i] = reach > 0 ? Pose.INSET / reach : 0;
            seen += reach > 0 ? 1 : 0;
        }
        if (seen < LEAST_RAYS) {
            return Optional.empty();
        }
        Shape best = null;
        for (int start = 0; start < STARTS; start++) {
            Shape shape = fitted(steep, start * Math.PI / 2 / STARTS, 1 / finder.size());
            if (shape != null && (best == null || shape.rest < best.rest)) {
                best = shape;
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * Along a ray, one over the way to the outline is the larger of two linear functions of the direction, one for each
     * pair of sides. Each ray is given to one of them, each of them is fitted to its rays, and so on.
     */
    private static Shape fitted(double[] steep, double turn, double scale) {
        double[] one = {scale * Math.cos(turn), scale * Math.sin(turn)};
        double[] other = {-scale * Math.sin(turn), scale * Math.cos(turn)};
        double rest = 0;
        for (int round = 0; round < ROUNDS; round++) {
            double[][] sums = new double[2][5];
            rest = 0;
            int count = 0;
            for (int i = 0; i < RAYS; i++) {
                if (steep[i] == 0) {
                    continue;
                }
                double first = one[0] * cos(i) + one[1] * sin(i);
                double second = other[0] * cos(i) + other[1] * sin(i);
                boolean isFirst = Math.abs(first) > Math.abs(second);
                double told = isFirst ? first : second;
                double off = Math.abs(Math.abs(told) - steep[i]) / steep[i];
                double weight = off < 0.15 ? 1 : 0.15 / off;
                add(sums[isFirst ? 0 : 1], i, Math.signum(told) * steep[i], weight / (steep[i] * steep[i]));
                rest += Math.min(off, 0.5);
                count++;
            }
            rest /= count;
            if (!solve(sums[0], one) || !solve(sums[1], other)) {
                return null;
            }
        }
        double area = one[0] * other[1] - one[1] * other[0];
        if (Math.abs(area) < 0.15 * Math.hypot(one[0], one[1]) * Math.hypot(other[0], other[1])) {
            return null;
        }
        double px = other[1] / area;
        double py = -other[0] / area;
        double qx = -one[1] / area;
        double qy = one[0] / area;
        return px * qy - py * qx > 0 ? new Shape(px, py, qx, qy, rest) : new Shape(px, py, -qx, -qy, rest);
    }

    private static void add(double[] sums, int ray, double aim, double weight) {
        double x = cos(ray);
        double y = sin(ray);
        sums[0] += weight * x * x;
        sums[1] += weight * x * y;
        sums[2] += weight * y * y;
        sums[3] += weight * x * aim;
        sums[4] += weight * y * aim;
    }

    private static boolean solve(double[] sums, double[] line) {
        double area = sums[0] * sums[2] - sums[1] * sums[1];
        if (area < 1e-9 * sums[0] * sums[2] || area == 0) {
            return false;
        }
        line[0] = (sums[3] * sums[2] - sums[4] * sums[1]) / area;
        line[1] = (sums[4] * sums[0] - sums[3] * sums[1]) / area;
        return true;
    }

    private static double cos(int ray) {
        return Math.cos(2 * Math.PI * ray / RAYS);
    }

    private static double sin(int ray) {
        return Math.sin(2 * Math.PI * ray / RAYS);
    }

    /** The same outline, a quarter turn on. */
    Shape turned() {
        return new Shape(qx, qy, -px, -py, rest);
    }

    /** Of the four ways to see the outline, the one whose first way is nearest to this. */
    Shape along(double x, double y) {
        Shape best = this;
        Shape next = this;
        for (int i = 0; i < 3; i++) {
            next = next.turned();
            if (next.cosine(x, y) > best.cosine(x, y)) {
                best = next;
            }
        }
        return best;
    }

    private double cosine(double x, double y) {
        return (px * x + py * y) / (Math.hypot(px, py) * Math.hypot(x, y));
    }
}
