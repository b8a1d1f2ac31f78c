package org.cagewall.scan;

/**
 * One of a symbol's three corner squares, as it was found in a picture.
 *
 * @param x its middle
 * @param across pixels a module along a row of the picture
 * @param down pixels a module along a column
 * @param seen on how many rows
 */
record Finder(double x, double y, double across, double down, int seen) {

    double size() {
        return Math.sqrt(across * down);
    }

    double distance(Finder other) {
        return Math.hypot(x - other.x, y - other.y);
    }

    boolean isNear(double otherX, double otherY, double otherAcross) {
        double reach = 1.5 * Math.max(across, 1);
        return Math.abs(x - otherX) < reach
                && Math.abs(y - otherY) < reach * Math.max(1, down / across)
                && Math.abs(across - otherAcross) < 0.5 * across + 0.5;
    }

    Finder joined(double otherX, double otherY, double otherAcross, double otherDown) {
        double share = 1.0 / (seen + 1);
        return new Finder(
                x + (otherX - x) * share,
                y + (otherY - y) * share,
                across + (otherAcross - across) * share,
                down + (otherDown - down) * share,
                seen + 1);
    }
}
