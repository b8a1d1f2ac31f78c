package org.cagewall.plan;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.NestState;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.Timetable;
import org.cagewall.almanac.Window;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Pair;
import org.cagewall.text.Message;

/**
 * The answer to the question that rules a keeper's year: until when may they lay, which nests will not be done, and what
 * will the sitter find? Pure; immutable; any thread.
 *
 * @param back empty where too little is known of the room's species
 * @param rings of the next year; empty likewise
 * @param nests in the order of the walk
 * @param before the last weeks before the owner leaves, from today on
 * @param days of the time away that is planned, or a fortnight from the day asked about
 */
public record Ahead(
        AheadQuestion question,
        Optional<WorkingBack> back,
        Optional<NewRings> rings,
        List<NestAhead> nests,
        List<DayAhead> before,
        List<DayAhead> days,
        List<FosterMove> fosters) {

    /** As long as a holiday is where none is planned. */
    private static final int FORTNIGHT = 14;

    /** So far before the owner leaves the days are told as well: long enough to see boxes empty. */
    private static final int LEAD_DAYS = 28;

    public Ahead {
        nests = List.copyOf(nests);
        before = List.copyOf(before);
        days = List.copyOf(days);
        fosters = List.copyOf(fosters);
    }

    /**
     * For a room as it stands.
     *
     * @param today the day on which it is asked
     */
    public static Ahead of(Room room, LocalDate today, AheadQuestion question) {
        Almanac almanac = Almanac.of(room);
        Timetable timetable = almanac.timetable(room.settings().species());
        Map<Long, Odds> odds = new HashMap<>();
        List<Course> courses = room.walk()
                .map(almanac::nest)
                .filter(nest -> isToAsk(nest, today))
                .map(nest -> {
                    odds.put(nest.cage(), odds(almanac, nest, today));
                    return Course.of(nest, today, question.rounds(), odds.get(nest.cage()));
                })
                .toList();
        LocalDate leaving = away(room, question.clearBy())
                .map(away -> away.firstFrom(today))
                .orElse(question.clearBy());
        LocalDate to = away(room, question.clearBy()).map(Absence::to).orElse(leaving.plusDays(FORTNIGHT - 1L));
        LocalDate from = leaving.isAfter(today) ? Window.later(today, leaving.minusDays(LEAD_DAYS)) : leaving;
        Forecast forecast = Forecast.of(courses, odds, from, leaving, to, question.policy(), question.draws());
        List<FosterMove> fosters = Fosters.of(
                room,
                almanac,
                today,
                courses.stream()
                        .map(course -> nests(room, course, question, List.of()))
                        .toList());
        return new Ahead(
                question,
                WorkingBack.from(timetable, question.clearBy(), question.policy(), question.rounds()),
                NewRings.after(today, timetable, room.settings().ringIssue()),
                courses.stream()
                        .map(course -> nest(room, course, question, fosters, forecast))
                        .toList(),
                forecast.days().stream()
                        .filter(day -> day.date().isBefore(leaving))
                        .toList(),
                forecast.days().stream()
                        .filter(day -> !day.date().isBefore(leaving))
                        .toList(),
                fosters);
    }

    /** By whose numbers it is reckoned, or that too little is known to reckon, as a sentence. */
    public Message numbers() {
        return back.map(WorkingBack::numbers).orElse(Message.of("plan.unknown"));
    }

    private static boolean isToAsk(Outlook nest, LocalDate today) {
        return nest.state(today) != NestState.EMPTY && WorkingBack.isKnown(nest.timetable());
    }

    private static Odds odds(Almanac almanac, Outlook nest, LocalDate today) {
        return nest.pair()
                .map((Pair pair) -> Odds.of(almanac.evidence(pair, today)))
                .orElse(Odds.USUAL);
    }

    private static NestAhead nest(
            Room room, Course course, AheadQuestion question, List<FosterMove> fosters, Forecast forecast) {
        return nests(room, course, question, fosters)
                .ahead(forecast.chance(course.nest().cage(), question.clearBy()));
    }

    private static Nests nests(Room room, Course course, AheadQuestion question, List<FosterMove> fosters) {
        return new Nests(
                room.cage(course.nest().cage()).orElseThrow(),
                course,
                question,
                fosters,
                away(room, question.clearBy()));
    }

    /** The days away that the question is about: those that run on its day, or begin after it. */
    private static Optional<Absence> away(Room room, LocalDate clearBy) {
        return room.absenceOn(clearBy).or(() -> room.absenceAfter(clearBy));
    }
}
