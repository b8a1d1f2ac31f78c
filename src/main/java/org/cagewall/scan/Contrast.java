package org.cagewall.scan;

import java.util.function.UnaryOperator;

/** One way of telling dark from light in a picture, good at what the others are not. Stateless; any thread. */
enum Contrast {
    /** Clear pictures, also of small symbols. */
    NEAR(UnaryOperator.identity(), UnaryOperator.identity(), 32, 0.05),

    /** Noise is averaged away. */
    HALF(Luma::half, UnaryOperator.identity(), 16, 0.05),

    /** Symbols that fill the picture. */
    COARSE(luma -> luma.atMost(320), UnaryOperator.identity(), 8, 0.05),

    /** Blur and movement: edges are made steep. */
    SHARP(UnaryOperator.identity(), luma -> luma.sharpened(8, 5), 8, 0.1),

    HALF_SHARP(Luma::half, luma -> luma.sharpened(4, 3), 16, 0.05),

    /** Light codes on dark, as on a screen; no card is. */
    INVERTED(Luma::inverted, UnaryOperator.identity(), 16, 0.05);

    private final UnaryOperator<Luma> looked;
    private final UnaryOperator<Luma> steeper;
    private final int share;
    private final double offset;

    /**
     * @param looked the picture that is looked at
     * @param steeper what its dark and light are told by
     * @param share the neighbourhood of a pixel, one such part of the shorter side
     * @param offset how much darker ink is than its neighbourhood, parts of the neighbourhood's mean
     */
    Contrast(UnaryOperator<Luma> looked, UnaryOperator<Luma> steeper, int share, double offset) {
        this.looked = looked;
        this.steeper = steeper;
        this.share = share;
        this.offset = offset;
    }

    Look look(Luma picture) {
        Luma smaller = looked.apply(picture);
        int radius = Math.min(smaller.width(), smaller.height()) / share;
        return new Look(smaller, Dark.belowMean(steeper.apply(smaller), radius, offset));
    }
}
