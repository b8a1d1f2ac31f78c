package org.cagewall.command;

import java.util.Optional;
import java.util.concurrent.Callable;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Line;
import org.cagewall.deed.VisitDeed;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.ParentCommand;

/** Records that a cage was looked at. */
@Command(name = "check", header = "Records that a cage was looked at.")
final class CheckCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Parameters(paramLabel = "CAGE", description = "The cage's name.")
    private String cage;

    @Option(names = "--by", required = true, paramLabel = "PERSON", description = "Who looked.")
    private String by;

    @Option(
            names = "--answer",
            required = true,
            paramLabel = "ANSWER",
            converter = AnswerWord.class,
            description = "well or different.")
    private Answer answer;

    @Option(names = "--note", paramLabel = "TEXT", description = "What was seen, in your own words.")
    private Optional<String> note;

    @Override
    public Integer call() {
        return cagewall.inTheRoom(this::check);
    }

    private int check(AtDesk desk) {
        Circumstances told = Circumstances.on(desk.today(), by);
        Circumstances timed = cagewall.todayIsSet() ? told : told.at(desk.desk().time());
        VisitDeed.Check check = new VisitDeed.Check(cage, answer, How.HAND, Optional.empty(), Optional.empty());
        long entry = desk.recordTyped(new Line(check, note.map(timed::noting).orElse(timed)));
        cagewall.answer(Json.object().with("entry", entry), "command.ok", entry);
        return Main.DONE;
    }
}
