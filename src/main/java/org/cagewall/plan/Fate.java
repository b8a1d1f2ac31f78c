package org.cagewall.plan;

/**
 * What becomes of one nest in one go: of each egg and chick, in the order of the course, and of the pair. Days as counted
 * from 1970. Written anew by each go; for one thread.
 */
final class Fate {

    /** A day that never comes. */
    static final int NEVER = Integer.MAX_VALUE;

    final int[] laid;

    /** Never, where no chick hatches. */
    final int[] hatch;

    /** Never, where the chick does not live. */
    final int[] out;

    /** The day it feeds itself; never, where the chick does not live. */
    final int[] fed;

    /** The last egg of the same round has hatched, or has had its time. */
    final int[] over;

    int count;

    /** The last egg of the round that is gone through has hatched, or has had its time. */
    int sat;

    int lastFed;
    int apart;

    Fate(int most) {
        laid = new int[most];
        hatch = new int[most];
        out = new int[most];
        fed = new int[most];
        over = new int[most];
    }

    int clear(Policy policy) {
        return policy == Policy.WEANED ? lastFed : apart;
    }
}
