package org.cagewall.store;

import java.util.stream.LongStream;

/** A few seasons, told in any order and struck out again. */
class RecordedWindowsTest extends RecordedWindows {

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 3);
    }
}
