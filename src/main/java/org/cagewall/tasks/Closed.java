package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.cagewall.room.Cage;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Task.Closing;

/** Finds what closed the tasks of a day: the newest entry that answers one. Pure; any thread. */
record Closed(Room room, LocalDate date) {

    /** What became of a task, with what it is closed by. */
    record Verdict(Task.State state, Optional<Closing> closing) {}

    Verdict byOutcome(String id) {
        return verdict(id, Optional.empty());
    }

    Verdict byOutcomeOr(String id, Optional<Visit> visit) {
        return verdict(id, visit);
    }

    /**
     * Closed by its own answer, or by an all well of whoever feeds that day, said of this cage on that round: whoever else
     * looked in, or walked past a row, has not fed. What the one who answered saw there stands beside it.
     */
    Verdict ofFeeding(String id, Cage cage, DayPart part) {
        Optional<Visit> fed = room.visitsOf(cage, date).stream()
                .filter(visit -> visit.part().filter(part::equals).isPresent() && isFeeding(visit))
                .max(Comparator.comparing(Visit::entry));
        Verdict verdict = verdict(id, fed);
        return new Verdict(verdict.state(), verdict.closing().map(closing -> visit(cage, part)
                .filter(seen -> verdict.state() == Task.State.DONE)
                .filter(seen -> seen.person().equals(closing.person()))
                .map(closing::seeing)
                .orElse(closing)));
    }

    private boolean isFeeding(Visit visit) {
        boolean ofARow = room.visits().stream()
                .anyMatch(other -> other.entry() == visit.entry() && other.cage() != visit.cage());
        return !visit.isDifferent() && !ofARow && feeds(visit.person());
    }

    private boolean feeds(String person) {
        return room.absenceOn(date)
                .map(absence -> absence.planOn(date).sitter().equalsIgnoreCase(person))
                .orElseGet(() -> room.person(person)
                        .filter(known -> known.role() == Role.SITTER)
                        .isPresent());
    }

    /** The last look at a cage on that round. A check that does not say which round counts for the morning. */
    Optional<Visit> visit(Cage cage, DayPart part) {
        return room.visitsOf(cage, date).stream()
                .filter(visit -> visit.part().orElse(DayPart.MORNING) == part)
                .max(Comparator.comparing(Visit::entry));
    }

    /** The last look at a cage that day, whichever the round. */
    Optional<Visit> visit(Cage cage) {
        return room.visitsOf(cage, date).stream().max(Comparator.comparing(Visit::entry));
    }

    /** The look that completed the row, where each of its cages was looked at on that round. */
    Optional<Visit> everyVisit(List<Cage> cages, DayPart part) {
        List<Visit> visits = new ArrayList<>();
        for (Cage cage : cages) {
            Optional<Visit> visit = visit(cage, part);
            if (visit.isEmpty()) {
                return Optional.empty();
            }
            visits.add(visit.get());
        }
        return visits.stream().max(Comparator.comparing(Visit::entry));
    }

    private Verdict verdict(String id, Optional<Visit> visit) {
        Optional<TaskOutcome> outcome = room.outcome(id);
        boolean outcomeIsNewer = outcome.filter(
                        it -> visit.filter(seen -> seen.entry() > it.entry()).isEmpty())
                .isPresent();
        if (outcomeIsNewer) {
            return outcome.map(Closed::told).orElseThrow();
        }
        return visit.map(Closed::seen).orElse(new Verdict(Task.State.OPEN, Optional.empty()));
    }

    private static Verdict told(TaskOutcome outcome) {
        return new Verdict(
                outcome.done() ? Task.State.DONE : Task.State.NOT_DONE,
                Optional.of(new Closing(
                        outcome.entry(),
                        outcome.person(),
                        outcome.time(),
                        Optional.empty(),
                        Optional.empty(),
                        outcome.why(),
                        outcome.note(),
                        List.of())));
    }

    private static Verdict seen(Visit visit) {
        return new Verdict(
                Task.State.DONE,
                Optional.of(new Closing(
                        visit.entry(),
                        visit.person(),
                        visit.time(),
                        Optional.of(visit.answer()),
                        Optional.of(visit.how()),
                        Optional.empty(),
                        Optional.empty(),
                        visit.signs())));
    }
}
