package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Looks for an alignment pattern, a dark square in a light ring in a dark one (ISO/IEC 18004, 6.3.6), around where it
 * should be seen. One thread.
 */
final class AlignmentSearch {

    private static final int REACH = 2;
    private static final int WIDTH = 2 * REACH + 1;
    private static final Likeness PATTERN = new Likeness(IntStream.range(0, WIDTH * WIDTH)
            .mapToDouble(i -> Math.max(Math.abs(i % WIDTH - REACH), Math.abs(i / WIDTH - REACH)) == 1 ? 1 : 0)
            .toArray());
    private static final double STEP = 0.5;
    private static final double APART = 1.5;
    private static final double FINEST = 0.1;

    private final Luma luma;
    private final View view;
    private final double[] spot = new double[2];
    private final double[] values = new double[PATTERN.spots()];

    AlignmentSearch(Luma luma, View view) {
        this.luma = luma;
        this.view = view;
    }

    /**
     * Where it may be.
     *
     * @param column of its middle, modules
     * @param likeness to the pattern: 1 the same, 0 none
     */
    record Found(double column, double row, double likeness) {

        private boolean isApart(Found other) {
            return Math.hypot(column - other.column, row - other.row) > APART;
        }
    }

    /** The places that are most like it, within n modules of where it should be. */
    List<Found> around(double column, double row, double reach, int most) {
        int steps = (int) Math.round(reach / STEP);
        List<Found> all = new ArrayList<>();
        for (int down = -steps; down <= steps; down++) {
            for (int across = -steps; across <= steps; across++) {
                all.add(at(column + across * STEP, row + down * STEP));
            }
        }
        all.sort(Comparator.comparingDouble(Found::likeness).reversed());
        List<Found> best = new ArrayList<>();
        for (Found found : all) {
            if (best.size() == most) {
                break;
            }
            if (best.stream().allMatch(found::isApart)) {
                best.add(found);
            }
        }
        return best.stream().map(this::refined).toList();
    }

    private Found refined(Found start) {
        Found best = start;
        for (double step = STEP / 2; step > FINEST; step /= 2) {
            Found from = best;
            for (int i = 0; i < 9; i++) {
                Found next = at(from.column + (i % 3 - 1) * step, from.row + (i / 3 - 1) * step);
                best = next.likeness > best.likeness ? next : best;
            }
        }
        return best;
    }

    private Found at(double column, double row) {
        for (int i = 0; i < values.length; i++) {
            view.see(column + i % WIDTH - REACH, row + i / WIDTH - REACH, spot);
            values[i] = luma.between(spot[0], spot[1]);
        }
        return new Found(column, row, PATTERN.of(values));
    }
}
