package org.cagewall.handover;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.room.Cage;
import org.cagewall.room.LogEntry;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.Sign;
import org.cagewall.room.Visit;
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
                        told(review.births()),
                        told(review.phoned()),
                        notDone(room, day),
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

    /** What was not done, by the reason that was given, then what nobody has answered yet. */
    private static List<Message> notDone(Room room, LocalDate day) {
        Map<Optional<Message>, List<Task>> byReason = new LinkedHashMap<>();
        List<Task> open = new ArrayList<>();
        for (Task task : DailyList.of(room, day, Audience.SITTER)) {
            if (task.state() == Task.State.NOT_DONE) {
                Optional<Message> why = task.closing().flatMap(DayNote::why);
                byReason.computeIfAbsent(why, any -> new ArrayList<>()).add(task);
            } else if (task.isOpen() && asksForSomebody(room, task)) {
                open.add(task);
            }
        }
        List<Message> notDone = new ArrayList<>();
        byReason.forEach((why, tasks) ->
                notDone.add(why.map(reason -> Message.of("daynote.not-done-why", together(room, tasks), reason))
                        .orElseGet(() -> Message.of("daynote.not-done", together(room, tasks)))));
        if (!open.isEmpty()) {
            notDone.add(Message.of("daynote.open", together(room, open)));
        }
        return notDone;
    }

    private static Optional<Message> why(Task.Closing closing) {
        return closing.why()
                .map(reason -> Reason.told(quoted(reason), closing.note().map(DayNote::quoted)));
    }

    /** What an empty cage asks for need not be phoned about. */
    private static boolean asksForSomebody(Room room, Task task) {
        return task.cage()
                .flatMap(room::cage)
                .filter(cage -> !room.isLivedIn(cage))
                .isEmpty();
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
