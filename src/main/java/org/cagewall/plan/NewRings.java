package org.cagewall.plan;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.almanac.Timetable;
import org.cagewall.room.RingIssue;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.text.Message;

/**
 * From when a box may be put on for the chicks to wear the new year's rings, worked out from the day the rings are issued
 * forwards. Pure; immutable; any thread.
 *
 * @param year the year on the rings
 * @param issued the day from which they may be put on
 * @param firstHatch the first chick is young enough for its ring on that day at the latest age, or comfortably
 */
public record NewRings(int year, LocalDate issued, From firstHatch, From firstEgg, From boxOn) {

    /**
     * A day before which it is too soon, and one that leaves time.
     *
     * @param earliest at the usual age of ringing on the day of issue
     * @param expected at the earliest age of ringing on the day of issue
     */
    public record From(LocalDate earliest, LocalDate expected) {

        private From minusDays(int days) {
            return new From(earliest.minusDays(days), expected.minusDays(days));
        }
    }

    /** From when a box may be put on for them, as a sentence. */
    public Message told() {
        return Message.of("plan.rings", Integer.toString(year), issued, boxOn.earliest(), boxOn.expected());
    }

    /** Of the rings that are issued next after a day; empty where too little is known of the species. */
    static Optional<NewRings> after(LocalDate today, Timetable timetable, RingIssue issue) {
        if (!WorkingBack.isKnown(timetable)) {
            return Optional.empty();
        }
        int year = issue.ringYear(today) + 1;
        LocalDate issued = issue.issued(year);
        Span ringing = timetable.span(Timing.RINGING).orElseThrow();
        From hatch = new From(issued.minusDays(ringing.expected()), issued.minusDays(ringing.earliest()));
        int unsat = (WorkingBack.usual(timetable, Timing.SITS_FROM) - 1) * WorkingBack.usual(timetable, Timing.LAY_GAP);
        From egg = hatch.minusDays(unsat + WorkingBack.usual(timetable, Timing.INCUBATION));
        return Optional.of(
                new NewRings(year, issued, hatch, egg, egg.minusDays(WorkingBack.usual(timetable, Timing.FIRST_EGG))));
    }
}
