package org.cagewall.kiosk.setup;

import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.room.FirstCall;

/**
 * What the part of the room shows. Immutable; any thread, and free of Swing.
 *
 * @param illFirst who is phoned first for an ill bird
 * @param mostEggs what one hen covers
 * @param mostChicks what one pair feeds
 * @param mostRounds after which a pair is parted
 * @param restMonths of a hen before she is paired again
 * @param leastSpace megabytes on the disk below which the kiosk warns
 * @param quietFrom the hour from which the screen is dim, as it would be set
 * @param quietTo the hour until which it is dim
 */
record RoomState(
        String name,
        String rules,
        int heatAct,
        int heatPhone,
        int coldPhone,
        FirstCall illFirst,
        int mostEggs,
        int mostChicks,
        int mostRounds,
        int restMonths,
        int leastSpace,
        Night night,
        int quietFrom,
        int quietTo,
        int ringsDay,
        int ringsMonth,
        Optional<Problem> problem) {

    /** Whether quiet hours are kept. */
    enum Night {
        BRIGHT,
        DIM
    }

    RoomState wrong(String part, String words) {
        return new RoomState(
                name,
                rules,
                heatAct,
                heatPhone,
                coldPhone,
                illFirst,
                mostEggs,
                mostChicks,
                mostRounds,
                restMonths,
                leastSpace,
                night,
                quietFrom,
                quietTo,
                ringsDay,
                ringsMonth,
                Optional.of(new Problem(part, words)));
    }
}
