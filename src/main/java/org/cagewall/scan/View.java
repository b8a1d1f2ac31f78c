package org.cagewall.scan;

/** Where the spots of a symbol are seen in a picture. */
interface View {

    /**
     * Where a spot of the symbol is seen.
     *
     * @param column modules from the left edge; the middle of the first module is at 0.5
     * @param row modules from the upper edge
     * @param spot gets x and y, in pixels
     */
    void see(double column, double row, double[] spot);
}
