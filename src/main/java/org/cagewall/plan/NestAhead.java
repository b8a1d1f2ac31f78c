package org.cagewall.plan;

import java.util.List;
import java.util.Optional;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.text.Message;

/**
 * One nest against the day asked about. Immutable; any thread.
 *
 * @param clear when it is done, if every egg that may hatch does
 * @param chance that it is done by the day, from 0 to 1
 * @param inTheWay what of it comes too late at the usual pace; empty where nothing does
 * @param waysOut what can be done about it; none where it is done in time
 */
public record NestAhead(Cage cage, Window clear, double chance, Optional<Message> inTheWay, List<WayOut> waysOut) {

    public NestAhead {
        waysOut = List.copyOf(waysOut);
    }

    /** Whether it is done by the day at the usual pace. */
    public boolean isInTime() {
        return inTheWay.isEmpty();
    }
}
