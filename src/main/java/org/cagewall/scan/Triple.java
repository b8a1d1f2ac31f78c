package org.cagewall.scan;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Three corner squares that may belong to one symbol, and how it would then lie. Immutable; any thread. */
final class Triple {

    /** Between the middles of two corner squares of version 1. */
    private static final double MODULES = 14;

    /** How much it counts that a corner square is seen on few rows; measured. */
    private static final double SELDOM = 0.3;

    private final Finder corner;
    private final Finder right;
    private final Finder below;
    private final double modules;

    private Triple(Finder corner, Finder right, Finder below, double modules) {
        this.corner = corner;
        this.right = right;
        this.below = below;
        this.modules = modules;
    }

    /** Every way in which three of these could be the corners of a symbol, the likeliest first. */
    static List<Triple> of(List<Finder> finders, Dark dark) {
        List<Triple> triples = new ArrayList<>();
        for (int i = 0; i < finders.size(); i++) {
            for (int j = 0; j < finders.size(); j++) {
                for (int k = j + 1; k < finders.size(); k++) {
                    if (i != j && i != k) {
                        add(finders.get(i), finders.get(j), finders.get(k), dark, triples);
                    }
                }
            }
        }
        triples.sort(java.util.Comparator.comparingDouble(Triple::oddity));
        return triples;
    }

    private static void add(Finder corner, Finder one, Finder other, Dark dark, List<Triple> triples) {
        double turn =
                (one.x() - corner.x()) * (other.y() - corner.y()) - (one.y() - corner.y()) * (other.x() - corner.x());
        double sine = turn / (corner.distance(one) * corner.distance(other));
        double sizes = Math.max(corner.size(), Math.max(one.size(), other.size()))
                / Math.min(corner.size(), Math.min(one.size(), other.size()));
        if (Math.abs(sine) < 0.3 || sizes > 2.2) {
            return;
        }
        double first = modules(corner, one, dark);
        double second = modules(corner, other, dark);
        if (!(Math.abs(Math.log(first / second)) < 0.5) || first < 10) {
            return;
        }
        triples.add(
                turn > 0
                        ? new Triple(corner, one, other, (first + second) / 2)
                        : new Triple(corner, other, one, (first + second) / 2));
    }

    /** How many modules lie between two middles, by the size of both in that direction. */
    private static double modules(Finder from, Finder to, Dark dark) {
        double distance = from.distance(to);
        double dx = (to.x() - from.x()) / distance;
        double dy = (to.y() - from.y()) / distance;
        double sum = 0;
        int count = 0;
        for (Finder finder : new Finder[] {from, to}) {
            for (int way = -1; way <= 1; way += 2) {
                double reach = dark.reach(finder.x(), finder.y(), way * dx, way * dy, distance);
                if (reach > 0) {
                    sum += reach;
                    count++;
                }
            }
        }
        return count == 0 ? Double.NaN : distance * Pose.INSET * count / sum;
    }

    /** How far it is from what a card shows. */
    private double oddity() {
        return oddness() + Math.abs(Math.log(modules / MODULES));
    }

    /**
     * How far the sides are from being of one length with a right angle between them, the squares from being of one size,
     * and from being seen on as many rows as they have.
     */
    double oddness() {
        double one = corner.distance(right);
        double other = corner.distance(below);
        double cosine = ((right.x() - corner.x()) * (below.x() - corner.x())
                        + (right.y() - corner.y()) * (below.y() - corner.y()))
                / (one * other);
        double sizes = Math.max(corner.size(), Math.max(right.size(), below.size()))
                / Math.min(corner.size(), Math.min(right.size(), below.size()));
        return Math.abs(cosine)
                + Math.abs(Math.log(one / other))
                + Math.log(sizes)
                + SELDOM * (seldom(corner) + seldom(right) + seldom(below));
    }

    private static double seldom(Finder finder) {
        return Math.log(Math.max(1, 2 * finder.size() / finder.seen()));
    }

    /** Whether it may be version 1, as a card's, with at most as many modules wrong as was measured. */
    boolean mayBeCard() {
        return modules > 8 && modules < 22;
    }

    /** Whether its symbol is one that was seen. */
    boolean isWithin(Sighting seen) {
        return seen.covers((right.x() + below.x()) / 2, (right.y() + below.y()) / 2);
    }

    /** The versions that it may be of (ISO/IEC 18004: four modules more each); with at most as many modules wrong as was measured. */
    IntStream versions() {
        double version = (modules - 10) / 4;
        double off = 0.75 + 0.1 * version;
        return IntStream.rangeClosed(
                Math.max(1, (int) Math.ceil(version - off)), Math.min(40, (int) Math.floor(version + off)));
    }

    /**
     * The poses that it may have: seen from far away, so that the four corners are a parallelogram, and from as near as
     * the sizes of the squares tell. What is w times as far away is seen w to the power of -1.5 as large, by the root of
     * its area, when a plane is tilted.
     */
    List<Pose> poses(int side) {
        double near = depth(corner);
        return List.of(pose(side, 1, 1, 1), pose(side, near, depth(right), depth(below)));
    }

    private static double depth(Finder finder) {
        return Math.pow(finder.size(), -2.0 / 3);
    }

    private Pose pose(int side, double atCorner, double atRight, double atBelow) {
        double atLast = Math.max(0.3 * atCorner, atRight + atBelow - atCorner);
        return Pose.flat(
                corner.x(),
                corner.y(),
                right.x(),
                right.y(),
                (atRight * right.x() + atBelow * below.x() - atCorner * corner.x()) / atLast,
                (atRight * right.y() + atBelow * below.y() - atCorner * corner.y()) / atLast,
                below.x(),
                below.y(),
                side);
    }
}
