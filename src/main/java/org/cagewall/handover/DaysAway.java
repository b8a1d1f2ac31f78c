package org.cagewall.handover;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.cagewall.room.Absence;

/**
 * The owner's days away as they came, beside the plan with which the owner left. Immutable; any thread.
 *
 * @param plannedFrom the first day away of that plan
 * @param plannedTo the last day away of that plan
 * @param from the first day away
 * @param last the last day away; while they run, as it is planned now
 * @param sitters who looked after the birds, one after another
 */
public record DaysAway(
        LocalDate plannedFrom, LocalDate plannedTo, LocalDate from, LocalDate last, List<Stint> sitters) {

    /** The days on which one person looked after the birds, both counted. */
    public record Stint(String sitter, LocalDate from, LocalDate to) {}

    public DaysAway {
        sitters = List.copyOf(sitters);
    }

    static DaysAway of(Absence absence) {
        Absence.Plan left = absence.planOn(absence.from());
        return new DaysAway(left.from(), left.to(), absence.from(), absence.last(), stints(absence));
    }

    private static List<Stint> stints(Absence absence) {
        List<Stint> stints = new ArrayList<>();
        for (LocalDate day = absence.from(); !day.isAfter(absence.last()); day = day.plusDays(1)) {
            String sitter = absence.planOn(day).sitter();
            int last = stints.size() - 1;
            if (last >= 0 && stints.get(last).sitter().equals(sitter)) {
                stints.set(last, new Stint(sitter, stints.get(last).from(), day));
            } else {
                stints.add(new Stint(sitter, day, day));
            }
        }
        return stints;
    }

    /** By how many days the owner was back later than planned; fewer than none, if earlier. */
    public long daysLate() {
        return ChronoUnit.DAYS.between(plannedTo, last);
    }
}
