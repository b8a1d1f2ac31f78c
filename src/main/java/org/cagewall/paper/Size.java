package org.cagewall.paper;

/**
 * A measure across and down the paper, so that the two are never mixed up. Immutable; any thread.
 *
 * @param width across, in millimetres
 * @param height down, in millimetres
 */
public record Size(double width, double height) {

    /** ISO 216. */
    public static final Size A4 = new Size(210, 297);

    /** ANSI/ASME Y14.1, size A. */
    public static final Size LETTER = new Size(215.9, 279.4);
}
