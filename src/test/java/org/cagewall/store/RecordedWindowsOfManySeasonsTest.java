package org.cagewall.store;

import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;

/** The other seasons. */
@Tag("slow")
class RecordedWindowsOfManySeasonsTest extends RecordedWindows {

    static LongStream seeds() {
        return LongStream.rangeClosed(4, 5);
    }
}
