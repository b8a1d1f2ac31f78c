package org.cagewall.handover;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Visit;

/** Where and when somebody was expected, and who came. Lives for one review, on one thread. */
final class Attendance {

    private static final List<Strip.Seen> NOBODY_HAD_TO =
            List.of(Strip.Seen.LEFT_ALONE, Strip.Seen.NOT_YET, Strip.Seen.NOT_EXPECTED, Strip.Seen.EMPTY);

    private final Room room;
    private final LocalDate from;
    private final LocalDate to;
    private final List<LocalDate> daysExpected;
    private final List<LogEntry> losses;
    private final Map<At, Strip.Cell> seen = new HashMap<>();

    /** The number of the youngest check that tells of a day or of one before it. */
    private final TreeMap<LocalDate, Long> youngest = new TreeMap<>();

    private record At(long cage, LocalDate day) {}

    /**
     * For the days from the first to the last.
     *
     * @param room with the visits of those days, and no others
     * @param daysExpected the days on which somebody was expected, and which are over
     * @param losses entries of birds that were in a cage and are no more
     */
    Attendance(Room room, LocalDate from, LocalDate to, List<LocalDate> daysExpected, List<LogEntry> losses) {
        this.room = room;
        this.from = from;
        this.to = to.isAfter(room.day()) ? room.day() : to;
        this.daysExpected = daysExpected;
        this.losses = losses;
        room.visits().stream().sorted(Comparator.comparing(Visit::day)).forEach(this::keep);
    }

    private void keep(Visit visit) {
        seen.merge(
                new At(visit.cage(), visit.day()),
                new Strip.Cell(visit.day(), seen(visit), Optional.of(visit.answer())),
                Attendance::both);
        long before = Optional.ofNullable(youngest.floorEntry(visit.day()))
                .map(Map.Entry::getValue)
                .orElse(0L);
        youngest.put(visit.day(), Math.max(before, visit.entry()));
    }

    private static Strip.Seen seen(Visit visit) {
        return visit.how() == How.SCAN ? Strip.Seen.BY_SCAN : Strip.Seen.BY_HAND;
    }

    private static Strip.Cell both(Strip.Cell one, Strip.Cell other) {
        Strip.Seen seen = one.seen().compareTo(other.seen()) <= 0 ? one.seen() : other.seen();
        return new Strip.Cell(
                one.day(),
                seen,
                Optional.of(one.isDifferent() || other.isDifferent() ? Answer.DIFFERENT : Answer.WELL));
    }

    Strip strip() {
        List<LocalDate> days =
                from.isAfter(to) ? List.of() : from.datesUntil(to.plusDays(1)).toList();
        return new Strip(
                days,
                room.walk()
                        .map(cage -> new Strip.Row(
                                cage.name(),
                                days.stream().map(day -> cell(cage, day)).toList()))
                        .toList());
    }

    private Strip.Cell cell(Cage cage, LocalDate day) {
        return Optional.ofNullable(seen.get(new At(cage.id(), day)))
                .orElseGet(() -> new Strip.Cell(day, unseen(cage, day), Optional.empty()));
    }

    private Strip.Seen unseen(Cage cage, LocalDate day) {
        if (!isLivedIn(cage, day)) {
            return Strip.Seen.EMPTY;
        }
        if (isLeftAlone(cage, day)) {
            return Strip.Seen.LEFT_ALONE;
        }
        if (day.equals(room.day())) {
            return Strip.Seen.NOT_YET;
        }
        return daysExpected.contains(day) && isThere(cage, day) ? Strip.Seen.NOBODY : Strip.Seen.NOT_EXPECTED;
    }

    /** Whether somebody came. */
    boolean isSeen(String cage, LocalDate day) {
        return room.cage(cage)
                .filter(it -> seen.containsKey(new At(it.id(), day)))
                .isPresent();
    }

    /** Whether somebody came, or should have come. */
    boolean isExpected(String cage, LocalDate day) {
        return room.cage(cage)
                .map(it -> cell(it, day).seen())
                .filter(NOBODY_HAD_TO::contains)
                .isEmpty();
    }

    private boolean isLeftAlone(Cage cage, LocalDate day) {
        return room.absenceOn(day)
                .map(Absence::leaveAlone)
                .filter(alone -> alone.contains(cage.id()))
                .isPresent();
    }

    /** As far as it is known now whether anything lived there that day. */
    private boolean isLivedIn(Cage cage, LocalDate day) {
        return cage.flock() > 0
                || !room.nest(cage).chicks().isEmpty()
                || losses.stream()
                        .anyMatch(loss ->
                                loss.cages().contains(cage.id()) && !loss.day().isBefore(day))
                || room.birds().stream()
                        .anyMatch(bird ->
                                bird.cageOn(day).filter(id -> id == cage.id()).isPresent());
    }

    /** A cage has always been there, unless each check that tells of the days until then is older than the cage. */
    private boolean isThere(Cage cage, LocalDate day) {
        return Optional.ofNullable(youngest.floorEntry(day))
                .filter(check -> check.getValue() < cage.id())
                .isEmpty();
    }
}
