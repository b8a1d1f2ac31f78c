package org.cagewall.almanac;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Absence;
import org.cagewall.text.Message;

/** On which morning a hen goes to the flight, beside the owner's days away. Pure; any thread. */
record Flights(List<Absence> absences) {

    /** A hen is not put to the flight in the last days before an absence; common practice, no source. */
    private static final int SETTLED_BEFORE_ABSENCE_DAYS = 3;

    Flights {
        absences = List.copyOf(absences);
    }

    /** The expected day; where that falls into an absence or shortly before, sooner if her rest allows it, else after. */
    FlightMove toFlight(Window henOut) {
        LocalDate morning = henOut.expected();
        return inTheWay(morning)
                .map(away -> movedFor(away, henOut))
                .orElseGet(() -> new FlightMove(morning, Optional.empty()));
    }

    /** The absence that a hen put to the flight that morning would not have settled before. */
    private Optional<Absence> inTheWay(LocalDate morning) {
        return absences.stream()
                .filter(away -> away.ended().isEmpty())
                .filter(away -> !morning.isBefore(away.from().minusDays(SETTLED_BEFORE_ABSENCE_DAYS))
                        && !morning.isAfter(away.to()))
                .min(Comparator.comparing(Absence::from));
    }

    private FlightMove movedFor(Absence away, Window henOut) {
        LocalDate sooner = away.from().minusDays(SETTLED_BEFORE_ABSENCE_DAYS + 1L);
        return sooner.isBefore(henOut.earliest()) || inTheWay(sooner).isPresent()
                ? new FlightMove(
                        firstMorningAfter(away),
                        Optional.of(Message.of("almanac.flight-after", henOut.expected(), away.from())))
                : new FlightMove(
                        sooner, Optional.of(Message.of("almanac.flight-sooner", henOut.expected(), away.from())));
    }

    private LocalDate firstMorningAfter(Absence away) {
        LocalDate morning = away.to().plusDays(1);
        return inTheWay(morning).map(this::firstMorningAfter).orElse(morning);
    }
}
