package org.cagewall.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import org.cagewall.handover.Item;
import org.cagewall.handover.Review;
import org.cagewall.handover.Undone;
import org.cagewall.handover.Unvisited;
import org.cagewall.room.Absence;
import org.cagewall.room.LogEntry;
import org.cagewall.room.LogQuery;
import org.cagewall.room.Room;
import org.cagewall.text.Words;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Tells what happened on some days, the most urgent first. */
@Command(
        name = "review",
        header = "Tells what happened on some days, the most urgent first.",
        description = "Without days: the days away that run or ran last, or else the last week.")
final class ReviewCommand implements Callable<Integer> {

    private static final int WEEK = 7;

    @ParentCommand
    private Cagewall cagewall;

    @Option(names = "--from", paramLabel = "DATE", description = "The first day.")
    private Optional<LocalDate> from;

    @Option(names = "--to", paramLabel = "DATE", description = "The last day.")
    private Optional<LocalDate> to;

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::review);
    }

    private int review(AtDesk desk) {
        LocalDate last = to.orElseGet(() -> usualLast(desk));
        LocalDate first = from.orElseGet(() -> usualFirst(desk, last));
        if (last.isBefore(first)) {
            throw Refusal.of("command.review-days", first, last);
        }
        Review review = Review.of(desk.room(), desk.log(LogQuery.between(first, last)), first, last);
        if (cagewall.wantsJson()) {
            cagewall.console().print(json(review).line());
        } else {
            tell(review);
        }
        return Main.DONE;
    }

    private static LocalDate usualLast(AtDesk desk) {
        return absence(desk)
                .map(Absence::last)
                .filter(day -> day.isBefore(desk.today()))
                .orElse(desk.today());
    }

    private static LocalDate usualFirst(AtDesk desk, LocalDate last) {
        return absence(desk)
                .map(Absence::from)
                .filter(day -> !day.isAfter(last))
                .orElse(last.minusDays(WEEK - 1));
    }

    /** The days away that run today, or those that ran last. */
    private static Optional<Absence> absence(AtDesk desk) {
        Room room = desk.room();
        return room.absenceOn(desk.today()).or(() -> room.absenceBefore(desk.today()));
    }

    private void tell(Review review) {
        cagewall.console().say("command.review.heading", review.from(), review.to());
        section("different", review.different(), this::line);
        section("not-done", review.notDone(), this::line);
        section("unvisited", review.unvisited(), this::line);
        section("births", review.births(), this::line);
        section("deaths", review.deaths(), this::line);
        section("phoned", review.phoned(), this::line);
        section("entries", review.entries(), this::line);
    }

    private <T> void section(String name, List<T> all, Function<T, String> line) {
        if (!all.isEmpty()) {
            cagewall.console().say("command.review." + name, all.size());
            all.forEach(each -> cagewall.console().say("command.review.line", line.apply(each)));
        }
    }

    private String line(Item item) {
        Words words = words();
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
                .map(strike -> words.say("command.show.struck", noted, strike.by(), strike.why()))
                .orElse(noted);
    }

    private String line(Undone undone) {
        return undone.said().map(this::line).orElseGet(() -> words().say(
                        "command.review.undone", undone.day(), undone.cage(), undone.words()));
    }

    private String line(Unvisited unvisited) {
        return words().say("command.review.not-seen", unvisited.day(), unvisited.cage());
    }

    private Json json(Review review) {
        return Json.object()
                .with("from", review.from())
                .with("to", review.to())
                .with("different", items(review.different()))
                .with("notDone", review.notDone().stream().map(this::json).toList())
                .with(
                        "unvisited",
                        review.unvisited().stream().map(ReviewCommand::json).toList())
                .with("births", items(review.births()))
                .with("deaths", items(review.deaths()))
                .with("phoned", items(review.phoned()))
                .with("entries", items(review.entries()));
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
                .with("words", words().say(item.what()))
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
                .with("words", words().say(undone.words()))
                .with("said", undone.said().map(this::json));
    }

    private static Json json(Unvisited unvisited) {
        return Json.object().with("cage", unvisited.cage()).with("on", unvisited.day());
    }

    private Words words() {
        return cagewall.console().words();
    }
}
