package org.cagewall.plan;

import java.util.SplittableRandom;
import org.cagewall.room.Span;

/**
 * How likely each number of days is between the earliest and the latest: most likely the expected, and evenly less so to
 * either side, to nothing one day beyond each end. The shape is an assumption, no source; the benchmarks tell how its
 * chances turn out. Immutable; any thread.
 */
final class DayLaw {

    private final int earliest;

    private static final int PARTS = 128;

    /** Days beyond the earliest, and how likely each is. */
    private final double[] within;

    /** The place from which to look for a point between 0 and 1. */
    private final int[] places = new int[PARTS];

    DayLaw(Span span) {
        this.earliest = span.earliest();
        this.within = new double[span.latest() - span.earliest() + 1];
        double sum = 0;
        for (int i = 0; i < within.length; i++) {
            sum += weight(span, earliest + i);
            within[i] = sum;
        }
        for (int i = 0; i < within.length; i++) {
            within[i] /= sum;
        }
        for (int part = 0; part < PARTS; part++) {
            places[part] = place(0, (double) part / PARTS);
        }
    }

    private static double weight(Span span, int days) {
        return days <= span.expected()
                ? (days - span.earliest() + 1.0) / (span.expected() - span.earliest() + 1.0)
                : (span.latest() - days + 1.0) / (span.latest() - span.expected() + 1.0);
    }

    /** The chance that it takes n days or fewer, from 0 to 1. */
    double within(int days) {
        int place = days - earliest;
        return place < 0 ? 0 : place >= within.length ? 1 : within[place];
    }

    /** The chance that it takes n days or more, from 0 to 1. */
    double atLeast(int days) {
        return 1 - within(days - 1);
    }

    /** Days by this law, given that they are no fewer than the least; the least itself where the law knows of none. */
    int draw(int least, SplittableRandom chance) {
        double gone = least <= earliest ? 0 : within(least - 1);
        if (gone >= 1) {
            return least;
        }
        double point = gone + chance.nextDouble() * (1 - gone);
        return earliest + place(places[Math.min((int) (point * PARTS), PARTS - 1)], point);
    }

    private int place(int from, double point) {
        int place = from;
        while (place < within.length - 1 && within[place] <= point) {
            place++;
        }
        return place;
    }
}
