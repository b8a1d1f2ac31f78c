package org.cagewall.scan;

/** How bright each module of a symbol looks, and what that makes of it. Immutable; any thread. */
final class Samples {

    /** The middle of a module and four spots around it, in modules; measured. */
    private static final double[][] SPOTS = {{0, 0}, {-0.22, -0.22}, {0.22, -0.22}, {-0.22, 0.22}, {0.22, 0.22}};

    /** The threshold is between the brightest and the darkest of n modules in every direction; measured. */
    private static final int NEIGHBOURHOOD = 3;

    /** Only those that touch it, where the edge of a shadow or a lamp's glare lies across the symbol; measured. */
    private static final int TOUCHING = 1;

    private final KnownModules known;
    private final double[] values;

    private Samples(KnownModules known, double[] values) {
        this.known = known;
        this.values = values;
    }

    static Samples of(Luma luma, View view, KnownModules known) {
        double[] values = new double[known.count()];
        double[] spot = new double[2];
        int module = 0;
        for (int row = -KnownModules.RIM; row < known.side() + KnownModules.RIM; row++) {
            for (int column = -KnownModules.RIM; column < known.side() + KnownModules.RIM; column++) {
                double sum = 0;
                for (double[] aside : SPOTS) {
                    view.see(column + 0.5 + aside[0], row + 0.5 + aside[1], spot);
                    sum += luma.between(spot[0], spot[1]);
                }
                values[module++] = sum / SPOTS.length;
            }
        }
        return new Samples(known, values);
    }

    double value(int module) {
        return values[module];
    }

    KnownModules known() {
        return known;
    }

    /** Each module held against the middle between the brightest and the darkest around it: 1 ink, -1 paper. */
    double[] darkness() {
        return darkness(NEIGHBOURHOOD);
    }

    /** The same for a symbol that is lit unevenly: each module is held against those alone that touch it. */
    double[] darknessUnevenlyLit() {
        return darkness(TOUCHING);
    }

    private double[] darkness(int reach) {
        int stride = known.stride();
        double[] darkness = new double[values.length];
        for (int row = 0; row < stride; row++) {
            for (int column = 0; column < stride; column++) {
                double least = Double.MAX_VALUE;
                double most = 0;
                for (int y = Math.max(0, row - reach); y <= Math.min(stride - 1, row + reach); y++) {
                    for (int x = Math.max(0, column - reach); x <= Math.min(stride - 1, column + reach); x++) {
                        double value = values[y * stride + x];
                        least = Math.min(least, value);
                        most = Math.max(most, value);
                    }
                }
                double half = Math.max(4, (most - least) / 2);
                darkness[row * stride + column] = ((most + least) / 2 - values[row * stride + column]) / half;
            }
        }
        return darkness;
    }
}
