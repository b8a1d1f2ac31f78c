package org.cagewall.kiosk.handover;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.handover.DaysAway;
import org.cagewall.handover.Item;
import org.cagewall.handover.Missed;
import org.cagewall.handover.Review;
import org.cagewall.handover.Undone;
import org.cagewall.handover.Unvisited;
import org.cagewall.handover.Waiting;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.strip.DayMark;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.tasks.Kind;
import org.cagewall.text.Words;

/** Puts a review into lines to read and tick. Used on the event thread, free of Swing. */
final class ReviewWords {

    private final Words words;
    private final Room room;
    private final LocalDate today;

    ReviewWords(Words words, Room room, LocalDate today) {
        this.words = words;
        this.room = room;
        this.today = today;
    }

    HandoverState.Happened happened(Review review, HandoverState.View view) {
        List<HandoverState.Section> sections = sections(review);
        int unread = (int) sections.stream()
                .flatMap(section -> section.rows().stream())
                .filter(HandoverState.Row::isUnread)
                .count();
        return new HandoverState.Happened(
                words.say("handover.days", words.shortDay(review.from()), words.shortDay(review.to())),
                review.away().map(this::course).orElse(""),
                new StripWords(words).strip(review.strip()),
                sections,
                unread,
                unread > 0 ? HandoverState.Reading.TO_READ : HandoverState.Reading.ALL_READ,
                view);
    }

    private List<HandoverState.Section> sections(Review review) {
        List<Item> notes = review.entries().stream().filter(ReviewWords::isNote).toList();
        List<Item> rest =
                review.entries().stream().filter(item -> !isNote(item)).toList();
        return Stream.of(
                        section("different", review.different(), RowFace.State.DIFFERENT),
                        section("deaths", review.deaths(), RowFace.State.OPEN),
                        section("not-done", review.notDone().size(), notDone(review.notDone())),
                        section("unvisited", review.unvisited().size(), unvisited(review.unvisited())),
                        section("births", review.births(), RowFace.State.OPEN),
                        section("phoned", review.phoned(), RowFace.State.OPEN),
                        section("notes", notes, RowFace.State.OPEN),
                        section("entries", rest.size(), rest(rest)),
                        section("waiting", review.waiting().size(), waiting(review.waiting())))
                .filter(section -> !section.rows().isEmpty())
                .toList();
    }

    private static boolean isNote(Item item) {
        return item.note().isPresent() && !item.isStruck();
    }

    private HandoverState.Section section(String name, List<Item> items, RowFace.State open) {
        int count = (int) items.stream().filter(item -> !item.isStruck()).count();
        return section(name, count, items.stream().map(item -> row(item, open)).toList());
    }

    private HandoverState.Section section(String name, int count, List<HandoverState.Row> rows) {
        boolean different = name.equals("different") && rows.stream().anyMatch(HandoverState.Row::isUnread);
        return new HandoverState.Section(
                name,
                words.say("handover.section." + name),
                count,
                words.say("handover.count." + name, count),
                different ? DayMark.Ground.DIFFERENT : DayMark.Ground.PLAIN,
                rows);
    }

    // ------------------------------------------------------------------ the days away as they came

    private String course(DaysAway away) {
        return words.say("handover.course", when(away), who(away));
    }

    private String when(DaysAway away) {
        String from = words.shortDay(away.from());
        String last = words.shortDay(away.last());
        String planned = words.shortDay(away.plannedTo());
        if (!away.last().isBefore(today)) {
            return away.daysLate() == 0
                    ? words.say("handover.course-runs", from, last)
                    : words.say("handover.course-runs-otherwise", from, last, planned);
        }
        if (away.daysLate() == 0) {
            return words.say("handover.course-as-planned", from, last);
        }
        return words.say(
                away.daysLate() < 0 ? "handover.course-early" : "handover.course-late",
                from,
                last,
                planned,
                Math.abs(away.daysLate()));
    }

    private String who(DaysAway away) {
        boolean runs = !away.last().isBefore(today);
        return away.sitters().size() == 1
                ? words.say(
                        runs ? "handover.course-sitter-now" : "handover.course-sitter",
                        away.sitters().get(0).sitter())
                : words.say(
                        "handover.course-sitters",
                        away.sitters().stream()
                                .map(stint -> words.say(
                                        "handover.course-stint",
                                        stint.sitter(),
                                        words.shortDay(stint.from()),
                                        words.shortDay(stint.to())))
                                .toList());
    }

    // ------------------------------------------------------------------ one cage

    /** All that happened at one cage, day by day. */
    HandoverState.OneCage cage(Review review, String cage) {
        List<HandoverState.Row> rows = new ArrayList<>();
        List<LocalDate> missed = review.unvisited().stream()
                .filter(each -> each.cage().equals(cage))
                .map(Unvisited::day)
                .toList();
        List<Item> items = review.of(cage);
        for (LocalDate day : review.strip().days()) {
            if (missed.contains(day)) {
                rows.add(new HandoverState.Row(
                        "missed." + day,
                        RowFace.of("", words.say("handover.nobody-looked"), words.longDay(day)),
                        new HandoverState.Nowhere()));
            }
            items.stream()
                    .filter(item -> item.day().equals(day))
                    .map(item -> row(
                            item,
                            item.answer().filter(it -> it == Answer.DIFFERENT).isPresent()
                                    ? RowFace.State.DIFFERENT
                                    : RowFace.State.OPEN))
                    .forEach(rows::add);
        }
        return new HandoverState.OneCage(
                cage,
                words.say(
                        rows.isEmpty() ? "handover.cage-nothing" : "handover.cage-days",
                        cage,
                        words.shortDay(review.from()),
                        words.shortDay(review.to())),
                rows);
    }

    // ------------------------------------------------------------------ lines

    private HandoverState.Row row(Item item, RowFace.State open) {
        return row(item, String.join(", ", item.cages()), capital(words.say(item.what())), open);
    }

    private static String capital(String sentence) {
        return sentence.isEmpty() ? sentence : Character.toUpperCase(sentence.charAt(0)) + sentence.substring(1);
    }

    private HandoverState.Row row(Item item, String lead, String what, RowFace.State open) {
        String text =
                item.note().map(note -> words.say("handover.noted", what, note)).orElse(what);
        RowFace face = RowFace.of(lead, text, when(item));
        if (item.isStruck()) {
            face = RowFace.of(lead, text, struck(item)).in(RowFace.State.STRUCK);
        } else if (item.read()) {
            face = asRead(face);
        } else {
            face = face.in(open);
        }
        return new HandoverState.Row(
                "entry." + item.entry(),
                face,
                item.read() ? new HandoverState.Nowhere() : new HandoverState.Tick(List.of(item.entry()), List.of()));
    }

    private String struck(Item item) {
        return item.strike()
                .map(strike -> words.say("handover.struck", strike.by(), Reason.told(strike.why())))
                .orElse("");
    }

    /** When, who, by scan or by hand. */
    private String when(Item item) {
        String day = words.shortDay(item.day());
        String at = item.at().map(time -> words.say("handover.at", day, time)).orElse(day);
        return item.how()
                .map(how -> words.say("handover.by-how", at, item.by(), how))
                .orElseGet(() -> words.say("handover.by", at, item.by()));
    }

    private List<HandoverState.Row> notDone(List<Undone> undone) {
        List<HandoverState.Row> rows = new ArrayList<>();
        undone.stream()
                .flatMap(each -> each.said().map(item -> row(item, each)).stream())
                .forEach(rows::add);
        Map<LocalDate, List<Undone>> silent = undone.stream()
                .filter(each -> each.said().isEmpty())
                .collect(Collectors.groupingBy(Undone::day, LinkedHashMap::new, Collectors.toList()));
        silent.forEach((day, all) -> rows.add(missed(
                "silent." + day,
                words.say("handover.never-answered", tasks(all)),
                day,
                all.stream().allMatch(Undone::read) ? Optional.empty() : Missed.TASKS.task(room, day))));
        return rows;
    }

    /** The same task at several cages is one line. */
    private String tasks(List<Undone> undone) {
        Map<String, List<Undone>> alike = undone.stream()
                .collect(Collectors.groupingBy(
                        each -> words.say(each.words()), LinkedHashMap::new, Collectors.toList()));
        return alike.entrySet().stream()
                .map(entry -> saysWhere(entry.getValue().get(0))
                        ? entry.getKey()
                        : words.say(
                                "handover.task-at",
                                entry.getKey(),
                                entry.getValue().stream().map(Undone::cage).toList()))
                .collect(Collectors.joining("; "));
    }

    private static boolean saysWhere(Undone undone) {
        return undone.task().endsWith(Kind.EVENING_ROW.word());
    }

    private HandoverState.Row row(Item item, Undone undone) {
        String what = undone.why()
                .map(why -> words.say("handover.undone-why", undone.words(), why))
                .orElseGet(() -> capital(words.say(undone.words())));
        return row(item, undone.cage(), what, RowFace.State.OPEN);
    }

    private List<HandoverState.Row> unvisited(List<Unvisited> unvisited) {
        Map<LocalDate, List<Unvisited>> days = unvisited.stream()
                .collect(Collectors.groupingBy(Unvisited::day, LinkedHashMap::new, Collectors.toList()));
        List<HandoverState.Row> rows = new ArrayList<>();
        days.forEach((day, cages) -> rows.add(missed(
                "unvisited." + day,
                cages.stream().map(Unvisited::cage).collect(Collectors.joining(", ")),
                day,
                cages.stream().allMatch(Unvisited::read) ? Optional.empty() : Missed.CAGES.task(room, day))));
        return rows;
    }

    /** What nobody recorded is ticked by its day, unless it has been. */
    private HandoverState.Row missed(String name, String first, LocalDate day, Optional<String> task) {
        RowFace face = RowFace.of("", first, words.longDay(day));
        return task.map(id -> new HandoverState.Row(name, face, new HandoverState.Tick(List.of(), List.of(id))))
                .orElseGet(() -> new HandoverState.Row(name, asRead(face), new HandoverState.Nowhere()));
    }

    private RowFace asRead(RowFace face) {
        return face.tagged(TagKind.PLAIN, words.say("handover.read")).in(RowFace.State.DONE);
    }

    /** What waits leads where it is seen to. */
    private List<HandoverState.Row> waiting(List<Waiting> waiting) {
        List<HandoverState.Row> rows = new ArrayList<>();
        for (Waiting each : waiting) {
            boolean cards = each.what() == Waiting.What.CARDS;
            RowFace face = RowFace.of(
                    cards ? "" : String.join(", ", each.cages()),
                    words.say(each.words()),
                    cards
                            ? words.say("handover.cards-of", each.cages(), words.say(each.why()))
                            : words.sentence(each.why()));
            rows.add(new HandoverState.Row(
                    "waits." + rows.size(),
                    switch (each.what()) {
                        case TO_RING -> face.tagged(TagKind.DUE, words.say("handover.waits-ring"));
                        case TO_TAKE_AWAY -> face.tagged(TagKind.DUE, words.say("handover.waits-take-away"));
                        case RING_TOO_LATE, LATE ->
                            face.tagged(TagKind.LATE, words.say("handover.waits-late", each.lateBy()));
                        case CARDS -> face;
                    },
                    new HandoverState.Go(
                            cards
                                    ? new Destination.Cards()
                                    : Destination.Cage.byHand(each.cages().get(0)))));
        }
        return rows;
    }

    /** All-well checks are many: those of a day by one person are one line. */
    private List<HandoverState.Row> rest(List<Item> items) {
        Map<String, List<Item>> lines = new LinkedHashMap<>();
        for (Item item : items) {
            String key = isRoutine(item) ? item.day() + "/" + item.by() : "entry/" + item.entry();
            lines.computeIfAbsent(key, any -> new ArrayList<>()).add(item);
        }
        List<HandoverState.Row> rows = new ArrayList<>();
        lines.forEach((key, all) ->
                rows.add(isRoutine(all.get(0)) ? routine(key, all) : row(all.get(0), RowFace.State.OPEN)));
        return rows;
    }

    private static boolean isRoutine(Item item) {
        return item.isCalm() || item.deed().equals("task-done") && item.note().isEmpty() && !item.isStruck();
    }

    private HandoverState.Row routine(String key, List<Item> all) {
        Item first = all.get(0);
        long cages =
                all.stream().flatMap(item -> item.cages().stream()).distinct().count();
        long scans = all.stream()
                .filter(item -> item.how().equals(Optional.of(How.SCAN)))
                .count();
        List<LocalTime> times =
                all.stream().flatMap(item -> item.at().stream()).sorted().toList();
        String day = words.longDay(first.day());
        String when = times.isEmpty() ? day : when(day, times.get(0), times.get(times.size() - 1));
        List<Long> unread =
                all.stream().filter(item -> !item.read()).map(Item::entry).toList();
        RowFace face = RowFace.of(
                "",
                words.say("handover.routine", cages),
                words.say("handover.routine-by", when, first.by(), scans, all.size() - scans));
        return unread.isEmpty()
                ? new HandoverState.Row("day." + key, asRead(face), new HandoverState.Nowhere())
                : new HandoverState.Row("day." + key, face, new HandoverState.Tick(unread, List.of()));
    }

    private String when(String day, LocalTime first, LocalTime last) {
        return first.equals(last)
                ? words.say("handover.at", day, first)
                : words.say("handover.from-to", day, first, last);
    }
}
