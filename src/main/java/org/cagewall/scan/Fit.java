package org.cagewall.scan;

import java.util.Comparator;
import java.util.List;

/**
 * Says how well a pose shows what is known of a symbol, and moves it until that is best: so the fourth corner is found
 * without a mark of its own, curled paper is followed, and a corner square under dirt is done without. One thread.
 */
final class Fit {

    /** What a module of data is looked at for: whether two spots of it look alike; in modules from its middle. */
    private static final double ASIDE = 0.3;

    /** How much that counts, and the spread of dark and light, and each known module by itself; measured. */
    private static final double ALIKE = 0.5;

    private static final double SPREAD = 0.3;
    private static final double PLAIN = 0.5;

    /** How far the fourth corner is moved at first, of the way between two corners; measured. */
    private static final double LAST_CORNER = 0.17;

    private final Luma luma;
    private final KnownModules known;
    private final double[] seen;
    private final double[] spot = new double[2];

    Fit(Luma luma, KnownModules known) {
        this.luma = luma;
        this.known = known;
        this.seen = new double[known.count()];
    }

    /** A pose and how well it fits: 1 is a sharp and clean symbol, 0 is chance. */
    record Fitted(Pose pose, double worth) {}

    Fitted of(Pose pose) {
        return new Fitted(pose, worth(pose));
    }

    /** The best of these poses, of which there is at least one. */
    Fitted best(List<Pose> poses) {
        return poses.stream()
                .map(this::of)
                .max(Comparator.comparingDouble(Fitted::worth))
                .orElseThrow();
    }

    /** The best pose near this one: its fourth corner first, which is seen least, then all of it. */
    Fitted near(Pose start) {
        Fitted best = of(start);
        double module = start.module();
        double farthest = LAST_CORNER * (known.side() - 2 * Pose.INSET);
        for (double step = farthest; step > 0.5; step /= 2) {
            best = climbed(best, step * module, 4, 6);
        }
        for (double step = 0.5; step > 0.1; step /= 2) {
            best = climbed(best, step * module, 0, Pose.PARTS);
        }
        return best;
    }

    private Fitted climbed(Fitted start, double by, int first, int end) {
        Fitted best = start;
        boolean better = true;
        for (int round = 0; better && round < 4; round++) {
            better = false;
            for (int part = first; part < end; part++) {
                Fitted moved = better(best, part, by);
                better |= moved != best;
                best = moved;
            }
        }
        return best;
    }

    private Fitted better(Fitted best, int part, double by) {
        for (double way : new double[] {by, -by}) {
            Pose moved = best.pose().moved(part, way);
            double worth = worth(moved);
            if (worth > best.worth() + 1e-6) {
                return new Fitted(moved, worth);
            }
        }
        return best;
    }

    private double worth(Pose pose) {
        if (!pose.isConvex()) {
            return -1;
        }
        double[] sums = new double[3];
        int[] counts = new int[3];
        double squares = 0;
        double unlike = 0;
        int module = 0;
        int rim = KnownModules.RIM;
        int end = known.side() + 1;
        for (int row = -1; row < end; row++) {
            module = known.number(-1, row);
            for (int column = -1; column < end; column++, module++) {
                int kind = known.kind(module);
                double value;
                if (kind == KnownModules.DATA) {
                    if (((row + column) & 1) == 0) {
                        continue;
                    }
                    double way = ((row ^ column) & 2) == 0 ? ASIDE : -ASIDE;
                    pose.see(column + 0.5 - ASIDE, row + 0.5 - way, spot);
                    double one = luma.between(spot[0], spot[1]);
                    pose.see(column + 0.5 + ASIDE, row + 0.5 + way, spot);
                    double other = luma.between(spot[0], spot[1]);
                    unlike += Math.abs(one - other);
                    value = (one + other) / 2;
                    squares += value * value;
                } else {
                    pose.see(column + 0.5, row + 0.5, spot);
                    value = luma.between(spot[0], spot[1]);
                    seen[module] = value;
                }
                sums[kind + 1] += value;
                counts[kind + 1]++;
            }
        }
        double white = sums[0] / counts[0];
        double black = sums[2] / counts[2];
        double data = sums[1] / counts[1];
        double step = Math.max(12, white - black);
        double spread = Math.sqrt(Math.max(0, squares / counts[1] - data * data));
        double middle = (white + black) / 2;
        double plain = 0;
        for (int row = -1; row < end; row++) {
            module = known.number(-1, row);
            for (int column = -1; column < end; column++, module++) {
                int kind = known.kind(module);
                if (kind != KnownModules.DATA) {
                    plain += Math.max(-1, Math.min(1, 2 * (middle - seen[module]) / step * kind));
                }
            }
        }
        double most = 1.3 * step;
        double steps = 0;
        int[] pairs = known.pairs();
        for (int i = 0; i < pairs.length; i += 2) {
            steps += Math.max(-most, Math.min(most, seen[pairs[i]] - seen[pairs[i + 1]]));
        }
        return steps / (pairs.length / 2.0 * most)
                + PLAIN * plain / (counts[0] + counts[2])
                + SPREAD * Math.min(1, 2 * spread / step)
                - ALIKE * unlike / counts[1] / step;
    }
}
