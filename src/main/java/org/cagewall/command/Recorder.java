package org.cagewall.command;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.NamesEntry;
import org.cagewall.desk.Outcome;
import org.cagewall.text.Message;

/**
 * Records one line after the other. Lines of an export get new numbers, so it remembers which old one became which. Used by the thread that runs the command.
 */
final class Recorder {

    private final AtDesk desk;
    private final Map<Long, Long> newNumbers = new HashMap<>();

    Recorder(AtDesk desk) {
        this.desk = desk;
    }

    /** What became of a line. */
    sealed interface Result {

        record Recorded(long entry) implements Result {}

        record NotRecorded(Message why) implements Result {}

        /** Not for what it says: the record could not be written to. */
        record Unwritten(Message why, String code) implements Result {}

        /** Something broke; the log knows it by the code. */
        record Broke(String code) implements Result {}
    }

    /** Whatever breaks in a line is that line's alone. */
    Result record(String text) {
        try {
            return recordUnguarded(text);
        } catch (RuntimeException e) {
            return new Result.Broke(desk.desk().failures().keep("line", e));
        }
    }

    private Result recordUnguarded(String text) {
        Lines.Read read = Lines.read(text, desk.today());
        if (read instanceof Lines.NotUnderstood not) {
            return new Result.NotRecorded(not.why());
        }
        Lines.Understood understood = (Lines.Understood) read;
        return understood
                .seal()
                .map(seal -> recordAgain(understood.line(), seal))
                .orElseGet(() -> result(desk.outcome(understood.line())));
    }

    private Result recordAgain(Line line, Lines.Seal seal) {
        Optional<Deed> deed = renumbered(line.deed());
        if (deed.isEmpty()) {
            return new Result.NotRecorded(Message.of("command.entry-not-here", ((NamesEntry) line.deed()).entry()));
        }
        Result result = result(desk.outcome(new Line(deed.get(), line.told())));
        if (result instanceof Result.Recorded recorded) {
            newNumbers.put(seal.entry(), recorded.entry());
        }
        return result;
    }

    private Optional<Deed> renumbered(Deed deed) {
        if (!(deed instanceof NamesEntry naming)) {
            return Optional.of(deed);
        }
        return Optional.ofNullable(newNumbers.get((long) naming.entry()))
                .map(entry -> naming.naming(Math.toIntExact(entry)));
    }

    private static Result result(Outcome outcome) {
        if (outcome instanceof Outcome.Done done) {
            return new Result.Recorded(done.touch());
        }
        if (outcome instanceof Outcome.Asks asks) {
            return new Result.NotRecorded(Message.of("command.asks", asks.question()));
        }
        if (outcome instanceof Outcome.Refused refused) {
            return new Result.NotRecorded(refused.reason());
        }
        if (outcome instanceof Outcome.Unwritten unwritten) {
            return new Result.Unwritten(unwritten.reason(), unwritten.code());
        }
        return new Result.Broke(((Outcome.Failed) outcome).code());
    }
}
