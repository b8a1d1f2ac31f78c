package org.cagewall.command;

import java.time.LocalDate;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.AheadQuestion;
import org.cagewall.plan.Draws;
import org.cagewall.plan.Policy;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParentCommand;

/** Works back from a day. */
@Command(
        name = "ahead",
        header = "Tells until when a box may be put on, and which nests will not be done.",
        description = "Without a day: by the day on which the next days away begin.")
final class AheadCommand implements Callable<Integer> {

    /** Further ahead nobody plans, and a year typed wrongly stands out. */
    private static final int MOST_YEARS = 20;

    @ParentCommand
    private Cagewall cagewall;

    @Option(names = "--clear-by", paramLabel = "DATE", description = "The day by which all is to be done.")
    private Optional<LocalDate> clearBy;

    @Option(
            names = "--policy",
            paramLabel = "WHEN",
            converter = PolicyWord.class,
            description = "weaned: the last chick feeds itself; apart: the pair is parted as well. Weaned if left out.")
    private Policy policy = Policy.WEANED;

    @Option(names = "--rounds", paramLabel = "N", description = "How many rounds are to be reared; 1 if left out.")
    private int rounds = 1;

    @Option(names = "--seed", paramLabel = "N", description = "By what chance is drawn; 1 if left out.")
    private long seed = 1;

    @Override
    public Integer call() {
        if (rounds < 1 || rounds > AheadQuestion.MOST_ROUNDS) {
            throw Refusal.of("command.ahead-rounds", rounds, AheadQuestion.MOST_ROUNDS);
        }
        return cagewall.inTheRoom(this::ahead);
    }

    private int ahead(AtDesk desk) {
        LocalDate day = clearBy.or(() -> nextAway(desk.room(), desk.today()))
                .orElseThrow(() -> Refusal.of("command.ahead-no-day"));
        if (day.isBefore(desk.today())) {
            throw Refusal.of("command.ahead-past", day);
        }
        if (day.isAfter(desk.today().plusYears(MOST_YEARS))) {
            throw Refusal.of("command.ahead-too-far", day, MOST_YEARS);
        }
        Ahead ahead = Ahead.of(
                desk.room(), desk.today(), new AheadQuestion(day, policy, rounds, new Draws(Draws.USUAL, seed)));
        ShownAhead shown = new ShownAhead(ahead, cagewall.console().words());
        if (cagewall.wantsJson()) {
            cagewall.console().print(shown.json().line());
        } else {
            shown.lines().forEach(cagewall.console()::print);
        }
        return Main.DONE;
    }

    private static Optional<LocalDate> nextAway(Room room, LocalDate today) {
        return room.absenceAfter(today).map(Absence::from);
    }
}
