package org.cagewall.scan;

/**
 * How a symbol lies in a picture: where four of its points are seen, the middles of its three corner squares and the like
 * point of the fourth corner, and how far the paper between them is bent. Immutable; any thread.
 */
final class Pose implements View {

    /** The points' distance from the symbol's edge, in modules: the middle of a corner square. */
    static final double INSET = 3.5;

    /** Two coordinates for each of four corners, in the order upper left, upper right, lower right, lower left. */
    static final int CORNER_PARTS = 8;

    /** After the corners: how far the middle of a row is pushed aside, then the middle of a column. */
    static final int PARTS = 12;

    private static final int ROUNDS = 3;

    private final double[] parts;
    private final int side;

    private final double a;
    private final double b;
    private final double d;
    private final double e;
    private final double g;
    private final double h;

    /** @param side the symbol's modules on a side */
    Pose(double[] parts, int side) {
        this.parts = parts;
        this.side = side;
        double dx1 = parts[2] - parts[4];
        double dx2 = parts[6] - parts[4];
        double dx3 = parts[0] - parts[2] + parts[4] - parts[6];
        double dy1 = parts[3] - parts[5];
        double dy2 = parts[7] - parts[5];
        double dy3 = parts[1] - parts[3] + parts[5] - parts[7];
        double area = dx1 * dy2 - dx2 * dy1;
        g = (dx3 * dy2 - dx2 * dy3) / area;
        h = (dx1 * dy3 - dx3 * dy1) / area;
        a = parts[2] - parts[0] + g * parts[2];
        b = parts[6] - parts[0] + h * parts[6];
        d = parts[3] - parts[1] + g * parts[3];
        e = parts[7] - parts[1] + h * parts[7];
    }

    static Pose flat(double x0, double y0, double x1, double y1, double x2, double y2, double x3, double y3, int side) {
        return new Pose(new double[] {x0, y0, x1, y1, x2, y2, x3, y3, 0, 0, 0, 0}, side);
    }

    int side() {
        return side;
    }

    /** The pose with one of its parts moved, in pixels. */
    Pose moved(int which, double by) {
        double[] others = parts.clone();
        others[which] += by;
        return new Pose(others, side);
    }

    /** The pose with its fourth corner moved so that a spot of the symbol is seen there. */
    Pose lastCornerBy(double column, double row, double x, double y) {
        Pose pose = this;
        double[] here = new double[2];
        double[] across = new double[2];
        double[] down = new double[2];
        for (int round = 0; round < ROUNDS; round++) {
            pose.see(column, row, here);
            pose.moved(4, 1).see(column, row, across);
            pose.moved(5, 1).see(column, row, down);
            double a = across[0] - here[0];
            double b = down[0] - here[0];
            double c = across[1] - here[1];
            double d = down[1] - here[1];
            double area = a * d - b * c;
            double offX = x - here[0];
            double offY = y - here[1];
            pose = pose.moved(4, (offX * d - offY * b) / area).moved(5, (offY * a - offX * c) / area);
        }
        return pose;
    }

    /** The mean length of a module, in pixels, by the area. */
    double module() {
        double across = (parts[4] - parts[0]) * (parts[7] - parts[3]);
        double down = (parts[6] - parts[2]) * (parts[5] - parts[1]);
        return Math.sqrt(Math.abs(across - down) / 2) / (side - 2 * INSET);
    }

    /** Whether the four points go round as on paper that is seen from its front. */
    boolean isConvex() {
        for (int i = 0; i < 4; i++) {
            int j = (i + 1) % 4;
            int k = (i + 2) % 4;
            double turn = (parts[2 * j] - parts[2 * i]) * (parts[2 * k + 1] - parts[2 * j + 1])
                    - (parts[2 * j + 1] - parts[2 * i + 1]) * (parts[2 * k] - parts[2 * j]);
            if (turn <= 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public void see(double column, double row, double[] spot) {
        double u = (column - INSET) / (side - 2 * INSET);
        double v = (row - INSET) / (side - 2 * INSET);
        double depth = g * u + h * v + 1;
        double bowU = 4 * u * (1 - u);
        double bowV = 4 * v * (1 - v);
        spot[0] = (a * u + b * v + parts[0]) / depth + bowU * parts[8] + bowV * parts[10];
        spot[1] = (d * u + e * v + parts[1]) / depth + bowU * parts[9] + bowV * parts[11];
    }
}
