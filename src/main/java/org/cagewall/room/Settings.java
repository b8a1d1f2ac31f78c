package org.cagewall.room;

import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Optional;

/**
 * What the owner has set for the whole birdroom. Immutable; any thread.
 *
 * @param ringsIssued the day of the year on which the new rings are issued
 * @param heatAct room temperature in C from which shade and air are given
 * @param heatPhone room temperature in C from which the sitter phones
 */
public record Settings(
        String name,
        ZoneId zone,
        String species,
        MonthDay ringsIssued,
        Optional<Quiet> quiet,
        Optional<String> rules,
        int heatAct,
        int heatPhone) {

    /** What holds until the owner says otherwise. Heat limits: common practice, no source. */
    public static Settings initial(ZoneId zone) {
        return new Settings("", zone, "budgerigar", MonthDay.of(1, 1), Optional.empty(), Optional.empty(), 30, 32);
    }
}
