package org.cagewall.scan;

import java.util.ArrayList;
import java.util.List;

/**
 * A corner square with its outline, which tells how a version 1 symbol may lie of which not all three squares were found.
 * Immutable; any thread.
 */
record Outlined(Finder finder, Shape shape) {

    private static final int SIDE = 21;
    private static final double APART = 14;

    /** The poses by which two of these are corner squares of one symbol. */
    static List<Pose> pairs(List<Outlined> all) {
        List<Pose> poses = new ArrayList<>();
        for (Outlined one : all) {
            for (Outlined other : all) {
                if (one != other) {
                    one.addPair(other, poses);
                }
            }
        }
        return poses;
    }

    /** The poses by which one of these is a corner square of a symbol. */
    static List<Pose> alone(List<Outlined> all) {
        List<Pose> poses = new ArrayList<>();
        for (Outlined one : all) {
            Shape turned = one.shape;
            for (int i = 0; i < 4; i++) {
                double nextX = one.finder.x() + APART * turned.px();
                double nextY = one.finder.y() + APART * turned.py();
                double[] corners = one.corners(turned, nextX, nextY, turned);
                poses.add(pose(corners, 0));
                poses.add(pose(corners, 1));
                poses.add(pose(corners, 3));
                turned = turned.turned();
            }
        }
        return poses;
    }

    private void addPair(Outlined other, List<Pose> poses) {
        double x = other.finder.x() - finder.x();
        double y = other.finder.y() - finder.y();
        Shape along = shape.along(x, y);
        double area = along.px() * along.qy() - along.py() * along.qx();
        double across = (x * along.qy() - y * along.qx()) / area / APART;
        double down = (along.px() * y - along.py() * x) / area / APART;
        if (!isAbout1(across)) {
            return;
        }
        if (Math.abs(down) < 0.3) {
            double[] corners = corners(along, other.finder.x(), other.finder.y(), other.shape.along(x, y));
            poses.add(pose(corners, 0));
            poses.add(pose(corners, 1));
        } else if (isAbout1(down)) {
            double[] corners = {
                finder.x(),
                finder.y(),
                finder.x() + APART * along.px() * across,
                finder.y() + APART * along.py() * across,
                other.finder.x(),
                other.finder.y(),
                finder.x() + APART * along.qx() * down,
                finder.y() + APART * along.qy() * down
            };
            poses.add(pose(corners, 1));
            poses.add(pose(corners, 3));
        }
    }

    /** Measured: so far off may two squares be by their outlines. */
    private static boolean isAbout1(double share) {
        return share > 0.7 && share < 1.4;
    }

    /** The four corners, from this one, the next and what runs a quarter turn on from both. */
    private double[] corners(Shape here, double nextX, double nextY, Shape there) {
        return new double[] {
            finder.x(),
            finder.y(),
            nextX,
            nextY,
            nextX + APART * there.qx(),
            nextY + APART * there.qy(),
            finder.x() + APART * here.qx(),
            finder.y() + APART * here.qy()
        };
    }

    /** The pose whose upper left corner is the one of this number; the one two further on has no square. */
    private static Pose pose(double[] corners, int upperLeft) {
        double[] parts = new double[Pose.PARTS];
        for (int i = 0; i < Pose.CORNER_PARTS; i++) {
            parts[i] = corners[(i + 2 * upperLeft) % Pose.CORNER_PARTS];
        }
        return new Pose(parts, SIDE);
    }
}
