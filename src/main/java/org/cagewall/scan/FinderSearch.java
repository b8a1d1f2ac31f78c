package org.cagewall.scan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Looks for corner squares: dark, light, dark, light, dark in the widths 1, 1, 3, 1, 1 along a row and along the column
 * through its middle (ISO/IEC 18004, 12). Row and column may differ in scale, so that a tilted card is found. One thread.
 */
final class FinderSearch {

    /** Measured: more are clutter. */
    private static final int MOST = 12;

    /** How far a width may be off, in modules; measured. */
    private static final double SLACK = 0.65;

    private final Dark dark;
    private final List<Finder> found = new ArrayList<>();

    private FinderSearch(Dark dark) {
        this.dark = dark;
    }

    /** The corner squares of a picture, those seen on most rows first. */
    static List<Finder> in(Dark dark) {
        FinderSearch search = new FinderSearch(dark);
        for (int y = 0; y < dark.height(); y++) {
            search.row(y);
        }
        search.found.sort(Comparator.comparingInt(Finder::seen).reversed());
        return List.copyOf(search.found.subList(0, Math.min(MOST, search.found.size())));
    }

    private void row(int y) {
        int[] runs = new int[5];
        int length = 0;
        boolean was = false;
        int known = 0;
        for (int x = 0; x <= dark.width(); x++) {
            boolean is = x < dark.width() && dark.at(x, y);
            if (is == was && x < dark.width()) {
                length++;
                continue;
            }
            System.arraycopy(runs, 1, runs, 0, 4);
            runs[4] = length;
            known++;
            if (was && known >= 5 && fits(runs)) {
                candidate(x - runs[4] - runs[3] - runs[2] / 2.0, y);
            }
            was = is;
            length = 1;
        }
    }

    private void candidate(double x, int y) {
        double[] column = through((int) x, y, 0, 1);
        if (column.length == 0) {
            return;
        }
        double middleY = column[0];
        double[] row = through((int) x, (int) middleY, 1, 0);
        if (row.length == 0 || column[1] > 5 * row[1] || row[1] > 5 * column[1]) {
            return;
        }
        double middleX = row[0];
        for (int i = 0; i < found.size(); i++) {
            if (found.get(i).isNear(middleX, middleY, row[1])) {
                found.set(i, found.get(i).joined(middleX, middleY, row[1], column[1]));
                return;
            }
        }
        found.add(new Finder(middleX, middleY, row[1], column[1], 1));
    }

    /** The middle of the pattern on the line through a pixel, and its pixels a module; nothing where there is none. */
    private double[] through(int x, int y, int dx, int dy) {
        if (!dark.at(x, y)) {
            return new double[0];
        }
        int[] runs = new int[5];
        int before = half(x, y, -dx, -dy, runs, -1);
        int after = half(x, y, dx, dy, runs, 1);
        runs[2]--;
        if (before < 0 || after < 0 || !fits(runs)) {
            return new double[0];
        }
        double start = (dx == 1 ? x : y) - before + 1 + runs[0] + runs[1];
        double total = runs[0] + runs[1] + runs[2] + runs[3] + runs[4];
        return new double[] {start + (runs[2] - 1) / 2.0, total / 7};
    }

    private int half(int fromX, int fromY, int dx, int dy, int[] runs, int side) {
        int x = fromX;
        int y = fromY;
        int steps = 0;
        for (int part = 0; part < 3; part++) {
            boolean ink = part != 1;
            while (x >= 0 && y >= 0 && x < dark.width() && y < dark.height() && dark.at(x, y) == ink) {
                runs[2 + side * part]++;
                steps++;
                x += dx;
                y += dy;
            }
            if (part < 2 && (x < 0 || y < 0 || x >= dark.width() || y >= dark.height())) {
                return -1;
            }
        }
        return steps;
    }

    private static boolean fits(int[] runs) {
        int total = 0;
        for (int run : runs) {
            if (run == 0) {
                return false;
            }
            total += run;
        }
        double module = total / 7.0;
        double slack = module * SLACK;
        return total >= 7
                && Math.abs(runs[0] - module) < slack
                && Math.abs(runs[1] - module) < slack
                && Math.abs(runs[2] - 3 * module) < 2 * slack
                && Math.abs(runs[3] - module) < slack
                && Math.abs(runs[4] - module) < slack;
    }
}
