package org.cagewall.scan;

import java.util.stream.IntStream;

/**
 * Tells by the two timing patterns, dark and light in turn between the corner squares (ISO/IEC 18004, 6.3.5), how far the
 * paper between them is bent. One thread.
 */
final class TimingPattern {

    /** Where the patterns run: in the seventh row and column, between two corner squares. */
    private static final double LINE = 6.5;

    private static final int FIRST = 7;

    /** How far from there a pattern is looked for, of the symbol's side; measured. */
    private static final double FAR = 0.12;

    private static final double STEP = 0.5;

    /** A bend must show the pattern so much better than none; measured. */
    private static final double GAIN = 0.15;

    private final Luma luma;
    private final int side;
    private final Likeness pattern;
    private final double[] values;
    private final double[] spot = new double[2];

    TimingPattern(Luma luma, KnownModules known) {
        this.luma = luma;
        this.side = known.side();
        this.pattern = new Likeness(IntStream.range(FIRST, side - FIRST)
                .mapToDouble(module -> module % 2)
                .toArray());
        this.values = new double[pattern.spots()];
    }

    /** The pose with the bend with which both patterns are seen best. */
    Pose bent(Pose pose) {
        return bent(bent(pose, Way.ROW), Way.COLUMN);
    }

    private enum Way {
        ROW,
        COLUMN
    }

    private Pose bent(Pose pose, Way way) {
        double module = pose.module();
        int steps = (int) Math.round(FAR * side / STEP);
        int part = Pose.CORNER_PARTS + (way == Way.ROW ? 0 : 2);
        Pose best = pose;
        double most = likeness(pose, way) + GAIN;
        for (int down = -steps; down <= steps; down++) {
            for (int across = -steps; across <= steps; across++) {
                Pose moved = pose.moved(part, across * STEP * module).moved(part + 1, down * STEP * module);
                double likeness = likeness(moved, way);
                if (likeness > most) {
                    best = moved;
                    most = likeness;
                }
            }
        }
        return best;
    }

    private double likeness(Pose pose, Way way) {
        for (int i = 0; i < values.length; i++) {
            double along = FIRST + i + 0.5;
            pose.see(way == Way.ROW ? along : LINE, way == Way.ROW ? LINE : along, spot);
            values[i] = luma.between(spot[0], spot[1]);
        }
        return pattern.of(values);
    }
}
