package org.cagewall.files;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Coming;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Pair;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.tasks.WindowWords;
import org.cagewall.text.Message;

/** What a calendar shows of a room: days away, what is expected of the nests, the owner's open tasks. Pure; any thread. */
final class CalendarEntries {

    /** Every cage is looked at every day, and days away stand in the calendar themselves. */
    private static final Set<Kind> NOT_SHOWN = Set.of(Kind.CHECK, Kind.AWAY);

    private final Room room;
    private final LocalDate today;

    CalendarEntries(Room room, LocalDate today) {
        this.room = room;
        this.today = today;
    }

    /** With which the names of all its entries end, and no other room's. */
    static String ending(Room room) {
        return "@" + room.code() + ".cagewall";
    }

    List<CalendarEntry> all() {
        return distinct(Stream.of(absences(), nests(), tasks()).flatMap(each -> each));
    }

    /** Where two would be called the same, the second and later ones are counted. */
    private List<CalendarEntry> distinct(Stream<CalendarEntry> entries) {
        Map<String, Integer> counts = new HashMap<>();
        List<CalendarEntry> distinct = new ArrayList<>();
        entries.forEach(entry -> {
            int n = counts.merge(entry.uid(), 1, Integer::sum);
            String uid = n == 1 ? entry.uid() : entry.uid() + "-" + n;
            distinct.add(entry.called(uid + ending(room)));
        });
        return List.copyOf(distinct);
    }

    private Stream<CalendarEntry> absences() {
        return room.absences().stream()
                .filter(absence -> !absence.last().isBefore(absence.from()))
                .map(CalendarEntries::away);
    }

    private static CalendarEntry away(Absence absence) {
        return new CalendarEntry(
                "away-" + absence.id(),
                Message.of("calendar.away", absence.sitter()),
                Optional.empty(),
                absence.from(),
                absence.last());
    }

    private Stream<CalendarEntry> nests() {
        Almanac almanac = Almanac.of(room);
        return room.walk().flatMap(cage -> {
            Outlook nest = almanac.nest(cage);
            return Coming.each(nest, today).stream().map(coming -> expected(cage, nest, coming));
        });
    }

    private static CalendarEntry expected(Cage cage, Outlook nest, Coming coming) {
        String what = Message.word(coming.what());
        List<String> whom =
                coming.whom().stream().map(lying -> lying.name(cage.id())).toList();
        LocalDate day = coming.window().expected();
        return new CalendarEntry(
                subject(cage, nest, coming) + "-" + what + whichLook(nest, coming),
                Message.of("calendar." + what, cage.name(), whom),
                Optional.of(Message.of("calendar.expected", WindowWords.of(coming.window()))),
                day,
                day);
    }

    /** Of two looks against the light the first and the second are told apart. */
    private static String whichLook(Outlook nest, Coming coming) {
        return coming.what() != Coming.What.CANDLE ? "" : nest.firstLook().isPresent() ? "-1" : "-2";
    }

    /** An egg and its chick are the same wherever they lie; what concerns a nest is told by its cage and pair. */
    private static String subject(Cage cage, Outlook nest, Coming coming) {
        boolean ofOne = coming.whom().size() == 1 && coming.what() != Coming.What.CANDLE;
        return ofOne
                ? subject(coming.whom().get(0))
                : "cage-" + cage.number()
                        + nest.pair().map(Pair::id).map(id -> "-pair-" + id).orElse("");
    }

    private static String subject(Lying lying) {
        return "pair-" + lying.pair().id() + "-round-" + lying.round().number() + "-egg-"
                + plain(lying.egg().mark());
    }

    private Stream<CalendarEntry> tasks() {
        return DailyList.of(room, today, Audience.OWNER).stream()
                .filter(task -> task.isOpen() && !NOT_SHOWN.contains(task.kind()))
                .filter(task -> !task.kind().isOfANest() || task.kind() == Kind.UNSAT)
                .map(this::task);
    }

    private CalendarEntry task(Task task) {
        String at = task.cage()
                .flatMap(room::cage)
                .map(cage -> "cage-" + cage.number() + "-")
                .orElse("");
        return new CalendarEntry(
                at + task.kind().word(), summary(task), Optional.of(task.why()), task.due(), task.due());
    }

    /** A line of today's list says how many days of quarantine are over; a calendar says when the last one is. */
    private static Message summary(Task task) {
        if (task.kind() == Kind.QUARANTINE) {
            return Message.of("calendar.quarantine", task.cage().orElse(""));
        }
        return task.cage()
                .map(cage -> Message.of("calendar.task", cage, task.words()))
                .orElse(task.words());
    }

    /** A mark may hold any letter; in a name for programs it is plain. */
    private static String plain(String mark) {
        return mark.codePoints()
                .mapToObj(c ->
                        c < 128 && Character.isLetterOrDigit(c) ? Character.toString(c) : "u" + Integer.toHexString(c))
                .collect(Collectors.joining());
    }
}
