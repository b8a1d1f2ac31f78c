package org.cagewall.tasks;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Coming;
import org.cagewall.almanac.Window;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.text.Message;

/**
 * A reminder of a nest that nobody answered and nobody can act on any more: the list asks for it no longer, and the cage's
 * past keeps it. It is worked out from what was recorded of each day until then. Immutable; any thread.
 *
 * @param since the first day on which it was asked for no more
 * @param words what was asked for
 * @param window the days on which it was in time
 */
public record Lapsed(Kind kind, LocalDate since, Message words, Window window) {

    /** So far back they are looked for, in days: a season's length. Common practice, no source. */
    private static final int DAYS = 120;

    /** Those of one cage, the newest first. */
    public static List<Lapsed> of(Room room, Cage cage, LocalDate today) {
        return today.minusDays(DAYS)
                .datesUntil(today.plusDays(1))
                .flatMap(day -> on(room, cage, day))
                .sorted(Comparator.comparing(Lapsed::since).reversed())
                .toList();
    }

    private static Stream<Lapsed> on(Room room, Cage cage, LocalDate day) {
        Room before = room.before(day);
        return before.cage(cage.name()).stream()
                .flatMap(then -> Coming.lapsing(Almanac.of(before).nest(then), day).stream())
                .map(coming -> new Lapsed(NestTasks.kind(coming.what()), day, words(cage, coming), coming.window()))
                .filter(lapsed -> room.outcomes().stream().noneMatch(outcome -> lapsed.isAnsweredBy(outcome, cage)));
    }

    private static Message words(Cage cage, Coming coming) {
        String key = "tasks.do-" + NestTasks.kind(coming.what()).word();
        List<String> names =
                coming.whom().stream().map(lying -> lying.name(cage.id())).toList();
        return names.isEmpty() ? Message.of(key) : Message.of(key, names);
    }

    /** Whether somebody said of it, before it lapsed, that it was done, or why not. */
    private boolean isAnsweredBy(TaskOutcome outcome, Cage cage) {
        return outcome.task().contains("/" + cage.name() + "/" + kind.word())
                && !outcome.day().isBefore(window.earliest())
                && !outcome.day().isAfter(since);
    }
}
