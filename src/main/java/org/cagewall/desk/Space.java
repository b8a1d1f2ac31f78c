package org.cagewall.desk;

import org.cagewall.text.Message;

/**
 * What is left on the disk that holds the record, against what the owner wants to be left. Immutable; any thread.
 *
 * @param free bytes that may still be written
 * @param least bytes below which that is little; at 0 it never is
 */
public record Space(long free, long least) {

    /** As disks are sold and as systems tell of them. */
    private static final long MEGABYTE = 1_000_000;

    static Space of(long free, int leastMegabytes) {
        return new Space(free, leastMegabytes * MEGABYTE);
    }

    public boolean isLow() {
        return free < least;
    }

    /** Whole megabytes that are left. */
    public long megabytes() {
        return free / MEGABYTE;
    }

    /** What whoever keeps the machine is to know and to do. */
    public Message warning() {
        return Message.of("store.space-low", megabytes());
    }
}
