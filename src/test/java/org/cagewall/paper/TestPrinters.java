package org.cagewall.paper;

import java.util.stream.Stream;

/** Machines as tests want them, whatever this one has. */
public final class TestPrinters {

    private TestPrinters() {}

    /** A machine without a printer. */
    public static Printers none() {
        return new Printers(Stream::empty);
    }
}
