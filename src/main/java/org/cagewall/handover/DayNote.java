package org.cagewall.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.Dishes;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.Sign;
import org.cagewall.room.care.Visit;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.cagewall.text.Message;

/**
 * One day in a short message to the owner, made of what was recorded and of nothing else. Immutable; any
 * thread.
 *
 * @param sentences the most urgent first, after how many cages were seen
 */
public record DayNote(LocalDate day, List<Message> sentences) {

    /** How much of a note somebody wrote is quoted, in characters; the rest is in the record. */
    private static final int LONGEST_QUOTE = 120;

    public DayNote {
        sentences = List.copyOf(sentences);
    }

    /**
     * The note of a day.
     *
     * @param room the room as it stands, which holds the checks and outcomes of that day
     * @param entries all entries that tell of that day, in any order
     */
    public static DayNote of(Room room, List<LogEntry> entries, LocalDate day) {
        List<Cage> cages = room.walk().filter(cage -> room.isLivedIn(cage)).toList();
        long seen = cages.stream()
                .filter(cage -> !room.visitsOf(cage, day).isEmpty())
                .count();
        Review review = Review.of(room, entries, day, day);
        List<Message> news = Stream.of(
                        different(room, day),
                        told(ofTheRoom(review.different())),
                        told(review.deaths()),
                        notDone(room, entries, day),
                        told(review.phoned()),
                        told(review.births()),
                        words(review))
                .flatMap(List::stream)
                .toList();
        List<Message> all = new ArrayList<>();
        all.add(Message.of("daynote.seen", day, seen, cages.size()));
        if (news.isEmpty() && seen == cages.size()) {
            all.add(Message.of("daynote.well"));
        }
        all.addAll(news);
        return new DayNote(day, all);
    }

    private static List<Message> different(Room room, LocalDate day) {
        return room.visits().stream()
                .filter(visit -> visit.isDifferent() && visit.day().equals(day))
                .map(visit -> different(room, visit))
                .toList();
    }

    private static Message different(Room room, Visit visit) {
        String cage = room.cageName(visit.cage());
        Optional<String> note = visit.note().map(DayNote::quoted);
        if (visit.signs().isEmpty()) {
            return note.map(said -> Message.of("daynote.different-note", cage, said))
                    .orElseGet(() -> Message.of("daynote.different", cage));
        }
        return note.map(said -> Message.of("daynote.different-both", cage, Sign.told(visit.signs()), said))
                .orElseGet(() -> Message.of("daynote.different-signs", cage, Sign.told(visit.signs())));
    }

    /** What is different in no cage. */
    private static List<Item> ofTheRoom(List<Item> different) {
        return different.stream().filter(item -> item.answer().isEmpty()).toList();
    }

    private static List<Message> told(List<Item> items) {
        return items.stream()
                .filter(item -> !item.isStruck())
                .map(item -> item.cages().isEmpty()
                        ? Message.of("daynote.item", item.what())
                        : Message.of("daynote.item-at", item.cages(), item.what()))
                .toList();
    }

    /** What was not done, all cages of one kind and one reason together, then what nobody has answered yet. */
    private static List<Message> notDone(Room room, List<LogEntry> entries, LocalDate day) {
        Map<Message, List<String>> undone = new LinkedHashMap<>();
        List<Task> open = new ArrayList<>();
        for (Task task : DailyList.of(room, day, Audience.SITTER)) {
            if (task.state() == Task.State.NOT_DONE) {
                undone.computeIfAbsent(undone(task, entries), any -> new ArrayList<>())
                        .addAll(cages(task));
            } else if (task.isOpen()) {
                open.add(task);
            }
        }
        List<Message> notDone = new ArrayList<>();
        undone.forEach((what, cages) -> notDone.add(Message.of("daynote.undone", Spans.of(room, cages), what)));
        if (!open.isEmpty()) {
            notDone.add(Message.of("daynote.open", together(room, open)));
        }
        return notDone;
    }

    private static List<String> cages(Task task) {
        return task.row().map(Task.WallRow::cages).orElse(task.cage().stream().toList());
    }

    /** What became of it, and why: the same for all that can be told in one sentence. */
    private static Message undone(Task task, List<LogEntry> entries) {
        Message what = what(task);
        return task.closing()
                .flatMap(DayNote::why)
                .map(reason -> dishes(task, entries)
                        .map(seen -> Message.of("daynote.undone-dishes", what, reason, seen))
                        .orElseGet(() -> Message.of("daynote.undone-why", what, reason)))
                .orElse(what);
    }

    private static Message what(Task task) {
        if (task.isFeeding()) {
            return Message.of("daynote.not-fed");
        }
        return switch (task.kind()) {
            case MORNING, EVENING, EVENING_ROW ->
                Message.of("daynote.not-seen", task.part().orElse(DayPart.MORNING));
            default -> Message.of("daynote.not-done", task.words());
        };
    }

    /** What was said of food and water where a feeding was not done. */
    private static Optional<Dishes> dishes(Task task, List<LogEntry> entries) {
        return task.closing().stream()
                .flatMap(closing -> entries.stream().filter(entry -> entry.number() == closing.entry()))
                .flatMap(entry -> entry.what().args().stream())
                .filter(Dishes.class::isInstance)
                .map(Dishes.class::cast)
                .findFirst();
    }

    private static Optional<Message> why(Task.Closing closing) {
        return closing.why()
                .map(reason -> Reason.told(quoted(reason), closing.note().map(DayNote::quoted)));
    }

    /** The cages of one kind of task are named once. */
    private static List<Message> together(Room room, List<Task> tasks) {
        Map<Message, List<String>> cages = new LinkedHashMap<>();
        for (Task task : tasks) {
            List<String> at = cages.computeIfAbsent(task.words(), any -> new ArrayList<>());
            task.cage().filter(cage -> task.kind() != Kind.EVENING_ROW).ifPresent(at::add);
        }
        return cages.entrySet().stream()
                .map(each -> each.getValue().isEmpty()
                        ? each.getKey()
                        : Message.of("daynote.at", each.getKey(), Spans.of(room, each.getValue())))
                .toList();
    }

    /** What somebody wrote for the owner. */
    private static List<Message> words(Review review) {
        return review.entries().stream()
                .filter(item -> item.deed().equals("noted") && !item.isStruck())
                .map(DayNote::words)
                .toList();
    }

    private static Message words(Item item) {
        Message said = item.note()
                .map(DayNote::quoted)
                .map(note -> Message.of("word.as-said", note))
                .orElse(item.what());
        return item.cages().isEmpty()
                ? Message.of("daynote.word", item.by(), said)
                : Message.of("daynote.word-at", item.by(), item.cages(), said);
    }

    private static String quoted(String note) {
        String line = note.strip().replaceAll("\\s+", " ");
        if (line.codePointCount(0, line.length()) <= LONGEST_QUOTE) {
            return line;
        }
        return line.substring(0, line.offsetByCodePoints(0, LONGEST_QUOTE)).strip() + "...";
    }
}
