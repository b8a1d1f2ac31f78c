package org.cagewall.command;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.handover.Review;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogQuery;
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
        ShownReview shown = new ShownReview(review, cagewall.console().words());
        if (cagewall.wantsJson()) {
            cagewall.console().print(shown.json().line());
        } else {
            shown.lines().forEach(cagewall.console()::print);
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
}
