package org.cagewall.kiosk.cage;

import org.cagewall.deed.ChickDeed;
import org.cagewall.deed.EggDeed;
import org.cagewall.deed.Lines;
import org.cagewall.deed.NestDeed;
import org.cagewall.deed.PartingDeed;
import org.cagewall.room.care.LogEntry;

/** Which entries tell of a nest: a sitter who leaves it alone does not read them. Pure; any thread. */
final class NestEntries {

    private NestEntries() {}

    static boolean holds(LogEntry entry) {
        return Lines.read(entry.line(), entry.day()) instanceof Lines.Understood read
                && (read.line().deed() instanceof NestDeed
                        || read.line().deed() instanceof EggDeed
                        || read.line().deed() instanceof ChickDeed
                        || read.line().deed() instanceof PartingDeed);
    }
}
