package org.cagewall.command;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Consumer;
import java.util.function.Function;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.Rules;
import org.cagewall.desk.Book;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Outcome;
import org.cagewall.desk.Reading;
import org.cagewall.paper.Letters;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Message;

/**
 * The desk as a command uses it: asked, it answers before it returns. What is refused or breaks ends the command. Used
 * by the thread that runs the command.
 */
final class AtDesk {

    private final Desk desk;
    private final Consumer<Message> warnings;
    private final Set<String> lettersWarnedOf = new TreeSet<>();
    private boolean hasWarned;

    /** At this desk; warnings are handed there, each once. */
    AtDesk(Desk desk, Consumer<Message> warnings) {
        this.desk = desk;
        this.warnings = warnings;
    }

    Desk desk() {
        return desk;
    }

    Room room() {
        return desk.room();
    }

    LocalDate today() {
        return desk.today();
    }

    /** The cage of that name; the sentence otherwise names the one that is spelled most like it. */
    Cage cage(String name) {
        return room().cage(name).orElseThrow(() -> new Refusal(Rules.unknownCage(room(), name)));
    }

    <T> T read(Function<Book, T> use) {
        Received<Reading<T>> received = new Received<>();
        desk.study(use, received);
        return value(received.value());
    }

    List<LogEntry> log(LogQuery query) {
        Received<Reading<List<LogEntry>>> received = new Received<>();
        desk.log(query, received);
        return value(received.value());
    }

    /** Records the deeds as one touch; what is odd is refused here, since nobody is there to be asked. */
    Outcome.Done record(List<Line> lines) {
        Received<Outcome> received = new Received<>();
        desk.record(lines, received);
        Outcome outcome = received.value();
        if (outcome instanceof Outcome.Done done) {
            warnOfLowSpace();
            lines.forEach(this::warnOfLetters);
            return done;
        }
        if (outcome instanceof Outcome.Asks asks) {
            throw new Refusal(asks.question());
        }
        if (outcome instanceof Outcome.Refused refused) {
            throw new Refusal(refused.reason());
        }
        if (outcome instanceof Outcome.Unwritten unwritten) {
            throw new Broken(unwritten.code(), unwritten.reason());
        }
        throw new Broken(((Outcome.Failed) outcome).code());
    }

    /** Records a line whose words were typed by a person, after they were seen to be fit for the record. */
    long recordTyped(Line line) {
        Lines.Read read = Lines.read(Lines.write(line), today());
        if (read instanceof Lines.NotUnderstood not) {
            throw new Refusal(not.why());
        }
        return record(List.of(((Lines.Understood) read).line())).touch();
    }

    /** What became of one line, whatever that is. */
    Outcome outcome(Line line) {
        Received<Outcome> received = new Received<>();
        desk.record(line, received);
        if (received.value() instanceof Outcome.Done) {
            warnOfLowSpace();
            warnOfLetters(line);
        }
        return received.value();
    }

    /** Each letter once a run. */
    private void warnOfLetters(Line line) {
        List<String> missing = Letters.missing(Lines.write(line)).stream()
                .filter(lettersWarnedOf::add)
                .toList();
        if (!missing.isEmpty()) {
            warnings.accept(Message.of("paper.missing", String.join(" ", missing)));
        }
    }

    /** While there still is some, so that the disk is not full before somebody knows. */
    private void warnOfLowSpace() {
        if (!hasWarned) {
            desk.space(space -> {
                if (space.isLow()) {
                    hasWarned = true;
                    warnings.accept(space.warning());
                }
            });
        }
    }

    private static <T> T value(Reading<T> answer) {
        Received<T> value = new Received<>();
        answer.then(
                value,
                reason -> {
                    throw new Refusal(reason);
                },
                code -> {
                    throw new Broken(code);
                });
        return value.value();
    }

    /** Holds the answer that comes at once, since all lanes are the caller's own. */
    private static final class Received<T> implements Consumer<T> {

        private Optional<T> value = Optional.empty();

        @Override
        public void accept(T answer) {
            value = Optional.of(answer);
        }

        T value() {
            return value.orElseThrow();
        }
    }
}
