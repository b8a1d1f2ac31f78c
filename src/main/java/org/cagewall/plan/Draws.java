package org.cagewall.plan;

/**
 * How the uncertain is drawn.
 *
 * @param count how often, one or more
 * @param seed with the same seed the same room gives the same answer
 * @throws IllegalArgumentException for fewer draws than one
 */
public record Draws(int count, long seed) {

    /** So many that a chance is sure to about one in a hundred. */
    public static final int USUAL = 10_000;

    public Draws {
        if (count < 1) {
            throw new IllegalArgumentException("draws: " + count);
        }
    }
}
