package org.cagewall.tasks;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Room;
import org.cagewall.room.Use;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.text.Message;

/**
 * The owner's day: what was reported first, then what days away ask for, new birds, cards, and each cage's check. Pure;
 * any thread.
 */
final class OwnersList {

    /** From how many days before an absence it is in the list: common practice, no source. */
    private static final int AWAY_AHEAD_DAYS = 14;

    /** How long after an absence its review is in the list: common practice, no source. */
    private static final int BACK_DAYS = 14;

    /** How long new birds are kept apart, in days: common practice, and an import rule of the same length. */
    private static final int QUARANTINE_DAYS = 30;

    private final Room room;
    private final LocalDate date;
    private final Closed closed;

    OwnersList(Room room, LocalDate date) {
        this.room = room;
        this.date = date;
        this.closed = new Closed(room, date);
    }

    List<Task> tasks() {
        List<Task> tasks = new ArrayList<>();
        tasks.addAll(reports());
        back().ifPresent(tasks::add);
        away().ifPresent(tasks::add);
        List<Task> nests = NestTasks.of(room, date);
        nests.stream().filter(Task::presses).forEach(tasks::add);
        List<Task> quarantine =
                room.walk().flatMap(cage -> quarantine(cage).stream()).toList();
        quarantine.stream().filter(Task::late).forEach(tasks::add);
        room.walk().flatMap(cage -> card(cage).stream()).forEach(tasks::add);
        room.walk().filter(cage -> room.isLivedIn(cage)).map(this::check).forEach(tasks::add);
        tasks.addAll(Treatments.of(room, date));
        quarantine.stream().filter(task -> !task.late()).forEach(tasks::add);
        nests.stream().filter(task -> !task.presses()).forEach(tasks::add);
        return tasks;
    }

    private List<Task> reports() {
        Map<String, Integer> counts = new HashMap<>();
        List<Task> reports = new ArrayList<>();
        for (Visit visit : room.unread()) {
            room.cage(visit.cage()).filter(cage -> !visit.day().isAfter(date)).ifPresent(cage -> {
                int n = counts.merge(visit.day() + "/" + cage.name(), 1, Integer::sum);
                reports.add(report(cage, visit, n));
            });
        }
        return reports;
    }

    private Task report(Cage cage, Visit visit, int n) {
        List<Message> how = new ArrayList<>();
        how.add(Message.of("tasks.how-report-by", visit.person(), visit.day(), visit.how()));
        if (!visit.signs().isEmpty()) {
            how.add(Message.of("tasks.how-report-signs", Sign.told(visit.signs())));
        }
        visit.note().map(note -> Message.of("tasks.how-report-note", note)).ifPresent(how::add);
        return task(
                Task.id(visit.day(), cage.name(), Kind.REPORT, n),
                Optional.of(cage),
                Kind.REPORT,
                visit.day(),
                Message.of("tasks.do-report"),
                Message.of("tasks.why-report"),
                how,
                Optional.empty());
    }

    private Optional<Task> back() {
        return room.absenceBefore(date)
                .filter(absence -> !absence.last().plusDays(BACK_DAYS).isBefore(date))
                .filter(absence -> room.absenceOn(date).isEmpty() && absence.cameAbout())
                .flatMap(absence -> firstCage()
                        .map(cage -> task(
                                Task.id(absence.last().plusDays(1), cage.name(), Kind.BACK),
                                Optional.empty(),
                                Kind.BACK,
                                absence.last().plusDays(1),
                                Message.of("tasks.do-back"),
                                Message.of("tasks.why-back", absence.from(), absence.last(), absence.sitters()),
                                List.of(Message.of("tasks.how-back")),
                                Optional.empty())));
    }

    private Optional<Task> away() {
        return room.absenceAfter(date)
                .filter(absence -> room.absenceOn(date).isEmpty())
                .filter(absence -> ChronoUnit.DAYS.between(date, absence.from()) <= AWAY_AHEAD_DAYS)
                .flatMap(absence -> firstCage().map(cage -> away(absence, cage)));
    }

    private Task away(Absence absence, Cage cage) {
        return task(
                Task.id(absence.from(), cage.name(), Kind.AWAY),
                Optional.empty(),
                Kind.AWAY,
                absence.from(),
                Message.of("tasks.do-away", absence.from(), ChronoUnit.DAYS.between(date, absence.from())),
                Message.of("tasks.why-away", absence.sitter()),
                List.of(
                        Message.of("tasks.how-away-list"),
                        Message.of("tasks.how-away-phones"),
                        Message.of("tasks.how-away-walk", absence.sitter())),
                Optional.empty());
    }

    /** Tasks of the whole room borrow the first cage of the walk for their id. */
    private Optional<Cage> firstCage() {
        return room.walk().findFirst();
    }

    private Optional<Task> quarantine(Cage cage) {
        if (cage.use() != Use.QUARANTINE || room.headsIn(cage) == 0) {
            return Optional.empty();
        }
        Optional<LocalDate> since = room.birdsIn(cage).stream()
                .flatMap(bird -> since(bird).stream())
                .max(LocalDate::compareTo)
                .filter(day -> !day.isAfter(date));
        LocalDate due = since.map(day -> day.plusDays(QUARANTINE_DAYS)).orElse(date);
        return Optional.of(task(
                Task.id(since.orElse(date), cage.name(), Kind.QUARANTINE),
                Optional.of(cage),
                Kind.QUARANTINE,
                due,
                since.map(day -> Message.of(
                                "tasks.do-quarantine",
                                room.headsIn(cage),
                                ChronoUnit.DAYS.between(day, date) + 1,
                                QUARANTINE_DAYS))
                        .orElse(Message.of("tasks.do-quarantine-since-ever", room.headsIn(cage))),
                since.isPresent()
                        ? Message.of("tasks.why-quarantine", due)
                        : Message.of("tasks.why-quarantine-days", QUARANTINE_DAYS),
                List.of(Message.of("tasks.how-quarantine-last"), Message.of("tasks.how-quarantine-watch")),
                Optional.empty()));
    }

    /** The day a bird came to where it stands; nothing is known of the day of its first stay. */
    private static Optional<LocalDate> since(Bird bird) {
        return bird.stays().stream()
                .reduce((earlier, later) -> later)
                .map(Stay::since)
                .filter(day -> day.isAfter(LocalDate.MIN));
    }

    private Optional<Task> card(Cage cage) {
        if (!CardFaces.isOutOfDate(room, cage)) {
            return Optional.empty();
        }
        return Optional.of(task(
                Task.id(date, cage.name(), Kind.CARD),
                Optional.of(cage),
                Kind.CARD,
                date,
                Message.of("tasks.do-card"),
                Message.of("tasks.why-card"),
                List.of(Message.of("tasks.how-card")),
                Optional.empty()));
    }

    private Task check(Cage cage) {
        Optional<LocalDate> last = room.lookedInto(cage, date.minusDays(1));
        LocalDate due = last.map(day -> day.plusDays(1)).orElse(date);
        Message why = last.map(day -> Message.of("tasks.why-check-last", day)).orElse(Message.of("tasks.why-check"));
        return task(
                Task.id(date, cage.name(), Kind.CHECK),
                Optional.of(cage),
                Kind.CHECK,
                due,
                Message.of("tasks.do-check"),
                why,
                List.of(Message.of("tasks.how-check")),
                closed.visit(cage));
    }

    private Task task(
            String id,
            Optional<Cage> cage,
            Kind kind,
            LocalDate due,
            Message words,
            Message why,
            List<Message> how,
            Optional<Visit> visit) {
        Closed.Verdict verdict = closed.byOutcomeOr(id, visit);
        return new Task(
                id,
                cage.map(Cage::name),
                kind,
                due,
                verdict.state() == Task.State.OPEN ? Task.lateBy(due, date) : 0,
                words,
                cage.map(it -> Sight.of(room, it, date)),
                why,
                how,
                kind == Kind.CHECK ? List.of(why) : how,
                Optional.empty(),
                Optional.empty(),
                verdict.state(),
                verdict.closing());
    }
}
