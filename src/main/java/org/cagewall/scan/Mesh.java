package org.cagewall.scan;

/**
 * A pose that is corrected by where each alignment pattern is seen, so that large symbols are followed over paper that is
 * bent any way. Immutable; any thread.
 */
final class Mesh implements View {

    /** How far a pattern is looked for, in modules, and how like it must be; measured. */
    private static final double REACH = 2;

    private static final double LIKE = 0.6;

    private final Pose pose;
    private final int[] centres;
    private final double[][][] off;

    private Mesh(Pose pose, int[] centres, double[][][] off) {
        this.pose = pose;
        this.centres = centres;
        this.off = off;
    }

    /** @param known of a version of 7 or more: it has alignment patterns on a grid */
    static Mesh of(Luma luma, Pose pose, KnownModules known) {
        int[] centres = known.alignments();
        int count = centres.length;
        double[][][] off = new double[count][count][2];
        AlignmentSearch search = new AlignmentSearch(luma, pose);
        for (int row = 0; row < count; row++) {
            for (int column = 0; column < count; column++) {
                boolean corner = row == 0 && (column == 0 || column == count - 1) || row == count - 1 && column == 0;
                if (corner) {
                    continue;
                }
                double[] near = beside(off, row, column);
                double x = centres[column] + 0.5;
                double y = centres[row] + 0.5;
                AlignmentSearch.Found found =
                        search.around(x + near[0], y + near[1], REACH, 1).get(0);
                off[row][column] = found.likeness() > LIKE ? new double[] {found.column() - x, found.row() - y} : near;
            }
        }
        return new Mesh(pose, centres, off);
    }

    /** What is known of the neighbours above and to the left. */
    private static double[] beside(double[][][] off, int row, int column) {
        double[] above = off[Math.max(0, row - 1)][column];
        double[] left = off[row][Math.max(0, column - 1)];
        return new double[] {(above[0] + left[0]) / 2, (above[1] + left[1]) / 2};
    }

    @Override
    public void see(double column, double row, double[] spot) {
        int i = cell(column);
        int j = cell(row);
        double right = share(column, i);
        double below = share(row, j);
        double[] moved = new double[2];
        for (int part = 0; part < 2; part++) {
            double upper = off[j][i][part] * (1 - right) + off[j][i + 1][part] * right;
            double lower = off[j + 1][i][part] * (1 - right) + off[j + 1][i + 1][part] * right;
            moved[part] = upper * (1 - below) + lower * below;
        }
        pose.see(column + moved[0], row + moved[1], spot);
    }

    private int cell(double at) {
        int cell = 0;
        while (cell < centres.length - 2 && at > centres[cell + 1] + 0.5) {
            cell++;
        }
        return cell;
    }

    private double share(double at, int cell) {
        return Math.max(0, Math.min(1, (at - 0.5 - centres[cell]) / (centres[cell + 1] - centres[cell])));
    }
}
