package org.cagewall.paper;

/** Where a text stands to the point that is given for it. Immutable; any thread. */
public enum Align {
    LEFT(0),
    CENTRE(0.5),
    RIGHT(1);

    private final double share;

    Align(double share) {
        this.share = share;
    }

    double start(double x, double width) {
        return x - share * width;
    }
}
