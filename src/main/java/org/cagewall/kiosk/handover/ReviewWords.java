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
import org.cagewall.handover.Item;
import org.cagewall.handover.Review;
import org.cagewall.handover.Undone;
import org.cagewall.handover.Unvisited;
import org.cagewall.kiosk.kit.RowFace;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.room.How;
import org.cagewall.tasks.Kind;
import org.cagewall.text.Words;

/** Puts a review into lines to read and tick. Used on the event thread, free of Swing. */
final class ReviewWords {

    private final Words words;

    ReviewWords(Words words) {
        this.words = words;
    }

    HandoverState.Happened happened(Review review) {
        List<HandoverState.Section> sections = Stream.of(
                        section("different", review.different(), RowFace.State.DIFFERENT),
                        new HandoverState.Section("not-done", title("not-done"), notDone(review.notDone())),
                        new HandoverState.Section("unvisited", title("unvisited"), unvisited(review.unvisited())),
                        section("births", review.births(), RowFace.State.OPEN),
                        section("deaths", review.deaths(), RowFace.State.OPEN),
                        section("phoned", review.phoned(), RowFace.State.OPEN),
                        new HandoverState.Section("entries", title("entries"), rest(review.entries())))
                .filter(section -> !section.rows().isEmpty())
                .toList();
        int unread = sections.stream()
                .flatMap(section -> section.rows().stream())
                .mapToInt(row -> row.entries().size())
                .sum();
        return new HandoverState.Happened(
                words.say("handover.days", words.shortDay(review.from()), words.shortDay(review.to())),
                sections,
                unread,
                HandoverState.Ticking.IDLE);
    }

    private String title(String section) {
        return words.say("handover.section." + section);
    }

    private HandoverState.Section section(String name, List<Item> items, RowFace.State open) {
        return new HandoverState.Section(
                name, title(name), items.stream().map(item -> row(item, open)).toList());
    }

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
            face = face.tagged(TagKind.PLAIN, words.say("handover.read")).in(RowFace.State.DONE);
        } else {
            face = face.in(open);
        }
        return new HandoverState.Row("entry." + item.entry(), face, item.read() ? List.of() : List.of(item.entry()));
    }

    private String struck(Item item) {
        return item.strike()
                .map(strike -> words.say("handover.struck", strike.by(), strike.why()))
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
        silent.forEach((day, all) -> rows.add(plain(
                "silent." + day,
                words.say(
                        "handover.never-answered",
                        all.stream().map(each -> task(each)).collect(Collectors.joining("; "))),
                words.longDay(day))));
        return rows;
    }

    private String task(Undone undone) {
        boolean saysWhere = undone.task().endsWith(Kind.EVENING_ROW.word());
        return saysWhere ? words.say(undone.words()) : words.say("handover.task-at", undone.words(), undone.cage());
    }

    private HandoverState.Row row(Item item, Undone undone) {
        String what = undone.why()
                .map(why -> words.say("handover.undone-why", undone.words(), why))
                .orElseGet(() -> capital(words.say(undone.words())));
        return row(item, undone.cage(), what, RowFace.State.OPEN);
    }

    private List<HandoverState.Row> unvisited(List<Unvisited> unvisited) {
        Map<LocalDate, List<String>> days = unvisited.stream()
                .collect(Collectors.groupingBy(
                        Unvisited::day, LinkedHashMap::new, Collectors.mapping(Unvisited::cage, Collectors.toList())));
        List<HandoverState.Row> rows = new ArrayList<>();
        days.forEach((day, cages) -> rows.add(plain("unvisited." + day, String.join(", ", cages), words.longDay(day))));
        return rows;
    }

    private static HandoverState.Row plain(String name, String first, String second) {
        return new HandoverState.Row(name, RowFace.of("", first, second), List.of());
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
        String when =
                times.isEmpty() ? day : words.say("handover.from-to", day, times.get(0), times.get(times.size() - 1));
        List<Long> unread =
                all.stream().filter(item -> !item.read()).map(Item::entry).toList();
        RowFace face = RowFace.of(
                "",
                words.say("handover.routine", cages),
                words.say("handover.routine-by", when, first.by(), scans, all.size() - scans));
        return new HandoverState.Row(
                "day." + key,
                unread.isEmpty()
                        ? face.tagged(TagKind.PLAIN, words.say("handover.read")).in(RowFace.State.DONE)
                        : face,
                unread);
    }
}
