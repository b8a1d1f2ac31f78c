package org.cagewall.command;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.cagewall.handover.DaysAway;
import org.cagewall.handover.Item;
import org.cagewall.handover.Review;
import org.cagewall.handover.Strip;
import org.cagewall.handover.Undone;
import org.cagewall.handover.Unvisited;
import org.cagewall.handover.Waiting;
import org.cagewall.room.Reason;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Words;

/** What happened on some days, as lines or as an object. Immutable; any thread. */
record ShownReview(Review review, Words words) {

    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(words.say("command.review.heading", review.from(), review.to()));
        section(lines, "different", review.different(), this::line);
        section(lines, "not-done", review.notDone(), this::line);
        section(lines, "unvisited", review.unvisited(), this::line);
        section(lines, "births", review.births(), this::line);
        section(lines, "deaths", review.deaths(), this::line);
        section(lines, "phoned", review.phoned(), this::line);
        section(lines, "entries", review.entries(), this::line);
        section(lines, "waiting", review.waiting(), this::line);
        review.away().ifPresent(away -> lines.add(line(away)));
        lines.add(words.say(
                "command.review.visits",
                review.strip().count(Strip.Seen.BY_SCAN),
                review.strip().count(Strip.Seen.BY_HAND),
                review.strip().count(Strip.Seen.NOBODY)));
        return lines;
    }

    private <T> void section(List<String> lines, String name, List<T> all, Function<T, String> line) {
        if (!all.isEmpty()) {
            lines.add(words.say("command.review." + name, all.size()));
            all.forEach(each -> lines.add(words.say("command.review.line", line.apply(each))));
        }
    }

    private String line(DaysAway away) {
        return words.say(
                away.daysLate() == 0 ? "command.review.away" : "command.review.away-otherwise",
                away.from(),
                away.last(),
                away.sitters().stream()
                        .map(stint -> words.say("command.review.sitter", stint.sitter(), stint.from(), stint.to()))
                        .toList(),
                away.plannedTo());
    }

    private String line(Waiting waiting) {
        return words.say(
                "command.review.waits", waiting.cages(), words.say(waiting.words()), words.sentence(waiting.why()));
    }

    private String line(Item item) {
        String when = item.at()
                .map(at -> words.say("command.show.day-at", item.day(), at))
                .orElse(words.date(item.day()));
        String who = item.how()
                .map(how -> words.say("command.review.by-how", item.by(), how))
                .orElse(item.by());
        String what = item.cages().isEmpty()
                ? words.say(item.what())
                : words.say("command.task.at", item.cages(), item.what());
        String said = words.say("command.review.item", Long.toString(item.entry()), when, who, what);
        String noted = item.note()
                .map(note -> words.say("command.show.note", said, note))
                .orElse(said);
        return item.strike()
                .map(strike -> words.say("command.show.struck", noted, strike.by(), Reason.told(strike.why())))
                .orElse(noted);
    }

    private String line(Undone undone) {
        return undone.said()
                .map(this::line)
                .orElseGet(() -> words.say("command.review.undone", undone.day(), undone.cage(), undone.words()));
    }

    private String line(Unvisited unvisited) {
        return words.say("command.review.not-seen", unvisited.day(), unvisited.cage());
    }

    Json json() {
        return Json.object()
                .with("from", review.from())
                .with("to", review.to())
                .with("different", items(review.different()))
                .with("notDone", review.notDone().stream().map(this::json).toList())
                .with(
                        "unvisited",
                        review.unvisited().stream().map(ShownReview::json).toList())
                .with("births", items(review.births()))
                .with("deaths", items(review.deaths()))
                .with("phoned", items(review.phoned()))
                .with("entries", items(review.entries()))
                .with("away", review.away().map(ShownReview::json))
                .with(
                        "visits",
                        review.strip().rows().stream()
                                .flatMap(row -> row.cells().stream().map(cell -> json(row.cage(), cell)))
                                .toList())
                .with("waiting", review.waiting().stream().map(this::json).toList());
    }

    private static Json json(DaysAway away) {
        return Json.object()
                .with("from", away.from())
                .with("to", away.last())
                .with("plannedFrom", away.plannedFrom())
                .with("plannedTo", away.plannedTo())
                .with(
                        "sitters",
                        away.sitters().stream()
                                .map(stint -> Json.object()
                                        .with("sitter", stint.sitter())
                                        .with("from", stint.from())
                                        .with("to", stint.to()))
                                .toList());
    }

    private static Json json(String cage, Strip.Cell cell) {
        return Json.object()
                .with("cage", cage)
                .with("on", cell.day())
                .with(
                        "how",
                        switch (cell.seen()) {
                            case BY_SCAN -> "scan";
                            case BY_HAND -> "hand";
                            case NOBODY, LEFT_ALONE, NOT_YET, NOT_EXPECTED, EMPTY -> "none";
                        })
                .with("answer", cell.answer())
                .with("missed", cell.seen() == Strip.Seen.NOBODY);
    }

    private Json json(Waiting waiting) {
        return Json.object()
                .with("what", waiting.what())
                .with("cages", waiting.cages())
                .with("words", words.say(waiting.words()))
                .with("why", words.say(waiting.why()))
                .with("due", waiting.due())
                .with("late", waiting.lateBy() > 0);
    }

    private List<Json> items(List<Item> items) {
        return items.stream().map(this::json).toList();
    }

    private Json json(Item item) {
        return Json.object()
                .with("entry", item.entry())
                .with("on", item.day())
                .with("at", item.at())
                .with("by", item.by())
                .with("answer", item.answer())
                .with("how", item.how())
                .with("cages", item.cages())
                .with("deed", item.deed())
                .with("words", words.say(item.what()))
                .with("note", item.note())
                .with("read", item.read())
                .with("struck", item.isStruck())
                .with("why", item.strike().map(LogEntry.Strike::why));
    }

    private Json json(Undone undone) {
        return Json.object()
                .with("task", undone.task())
                .with("cage", undone.cage())
                .with("on", undone.day())
                .with("words", words.say(undone.words()))
                .with("said", undone.said().map(this::json))
                .with("read", undone.read());
    }

    private static Json json(Unvisited unvisited) {
        return Json.object()
                .with("cage", unvisited.cage())
                .with("on", unvisited.day())
                .with("read", unvisited.read());
    }
}
