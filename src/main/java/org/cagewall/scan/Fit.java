package org.cagewall.scan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/**
 * Says how well a pose shows what is known of a symbol, and moves it until that is best: so the fourth corner is found
 * without a mark of its own, curled paper is followed, and a corner square under dirt is done without. One thread.
 */
final class Fit {

    /** What a module of data is looked at for: whether two spots of it look alike; in modules from its middle. */
    private static final double ASIDE = 0.3;

    /** How much the spread of dark and light counts, and each known module by itself; measured. */
    private static final double SPREAD = 0.3;

    private static final double PLAIN = 0.5;

    /** How far the fourth corner is moved at first, in modules; measured. */
    private static final double LAST_CORNER = 2.4;

    /** Less is no symbol but the noise of a flat surface; of 255. */
    private static final double LEAST_STEP = 12;

    /** A step counts for no more than n times the mean difference of dark and light; measured. */
    private static final double SHARPEST = 1.3;

    /** How much it counts that each module of data is of one brightness; measured. */
    private enum Stress {
        FIRST(0.5),

        /** Where a pose is nearly right, this tells most about what lies far from all marks. */
        LAST(3);

        private final double alike;

        Stress(double alike) {
            this.alike = alike;
        }
    }

    private final Luma luma;
    private final KnownModules known;
    private final int[] marks;
    private final int[] data;
    private final int lights;
    private final double[] seen;
    private final double[] spot = new double[2];

    Fit(Luma luma, KnownModules known) {
        this.luma = luma;
        this.known = known;
        this.marks = known.marks();
        this.data = known.someOfData();
        this.lights = (int) Arrays.stream(marks)
                .filter(mark -> known.kind(mark) == KnownModules.LIGHT)
                .count();
        this.seen = new double[known.count()];
    }

    KnownModules known() {
        return known;
    }

    /** A pose and how well it fits: 1 is a sharp and clean symbol, 0 is chance. */
    record Fitted(Pose pose, double worth) {

        /** Measured: what is worth less is none. */
        boolean isSymbol() {
            return worth > 0.2;
        }

        /** Measured: what is worth more is one, and if of no card, then another code as large. */
        boolean isSurelySymbol() {
            return worth > 0.9;
        }
    }

    Fitted of(Pose pose) {
        return new Fitted(pose, worth(pose, Stress.FIRST));
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
        for (double step = LAST_CORNER; step > 0.5; step /= 2) {
            best = climbed(best, step * module, 4, 6, Stress.FIRST);
        }
        for (double step = 0.5; step > 0.1; step /= 2) {
            best = climbed(best, step * module, 0, Pose.PARTS, Stress.FIRST);
        }
        return best;
    }

    /** A pose that is nearly right moved a little, so that most of the symbol's modules are of one brightness each. */
    Pose fine(Pose start) {
        Fitted best = new Fitted(start, worth(start, Stress.LAST));
        double module = start.module();
        for (double step = 0.6; step > 0.1; step /= 2) {
            best = climbed(best, step * module, 4, 6, Stress.LAST);
            best = climbed(best, step * module, 0, Pose.PARTS, Stress.LAST);
        }
        return best.pose();
    }

    private Fitted climbed(Fitted start, double by, int first, int end, Stress stress) {
        Fitted best = start;
        boolean better = true;
        for (int round = 0; better && round < 4; round++) {
            better = false;
            for (int part = first; part < end; part++) {
                Fitted moved = better(best, part, by, stress);
                better |= moved != best;
                best = moved;
            }
        }
        return best;
    }

    private Fitted better(Fitted best, int part, double by, Stress stress) {
        for (double way : new double[] {by, -by}) {
            Pose moved = best.pose().moved(part, way);
            double worth = worth(moved, stress);
            if (worth > best.worth() + 1e-6) {
                return new Fitted(moved, worth);
            }
        }
        return best;
    }

    private double worth(Pose pose, Stress stress) {
        if (!pose.isConvex()) {
            return -1;
        }
        double white = 0;
        double black = 0;
        for (int i = 0; i < marks.length; i++) {
            double value = seen(pose, marks[i], 0, 0);
            seen[marks[i]] = value;
            if (known.kind(marks[i]) == KnownModules.LIGHT) {
                white += value / lights;
            } else {
                black += value / (marks.length - lights);
            }
        }
        double step = Math.max(LEAST_STEP, white - black);
        return steps(SHARPEST * step) + PLAIN * plain((white + black) / 2, step / 2) + ofData(pose, step, stress);
    }

    /** How much lighter the light one is of all known neighbours, as parts of the most that counts. */
    private double steps(double most) {
        int[] pairs = known.pairs();
        double sum = 0;
        for (int i = 0; i < pairs.length; i += 2) {
            sum += Math.max(-most, Math.min(most, seen[pairs[i]] - seen[pairs[i + 1]]));
        }
        return sum / (pairs.length / 2.0 * most);
    }

    /** How far every known module is on its side of the middle. */
    private double plain(double middle, double half) {
        double sum = 0;
        for (int mark : marks) {
            sum += Math.max(-1, Math.min(1, (middle - seen[mark]) / half * known.kind(mark)));
        }
        return sum / marks.length;
    }

    /** Whether each module of data is of one brightness, and all together are of several. */
    private double ofData(Pose pose, double step, Stress stress) {
        double sum = 0;
        double squares = 0;
        double unlike = 0;
        for (int i = 0; i < data.length; i++) {
            double aside = i % 2 == 0 ? ASIDE : -ASIDE;
            double one = seen(pose, data[i], -ASIDE, -aside);
            double other = seen(pose, data[i], ASIDE, aside);
            unlike += Math.abs(one - other);
            double value = (one + other) / 2;
            sum += value;
            squares += value * value;
        }
        double mean = sum / data.length;
        double spread = Math.sqrt(Math.max(0, squares / data.length - mean * mean));
        return SPREAD * Math.min(1, 2 * spread / step) - stress.alike * unlike / data.length / step;
    }

    private double seen(Pose pose, int module, double right, double below) {
        pose.see(known.column(module) + 0.5 + right, known.row(module) + 0.5 + below, spot);
        return luma.between(spot[0], spot[1]);
    }
}
