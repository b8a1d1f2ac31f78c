package org.cagewall.kiosk.shell;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.CardDeed;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Outcome;
import org.cagewall.paper.Letters;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Person;
import org.cagewall.room.Reason;
import org.cagewall.room.Room;
import org.cagewall.room.Wall;
import org.cagewall.room.bird.Bird;
import org.cagewall.text.Message;

/**
 * Records what screens ask for in the name of whoever holds it, and follows up each answer of the desk the same way:
 * what was done is said with a button that takes it back unless it was itself a strike, what is odd is asked, what
 * cannot be is told. What is being recorded just now is not recorded a second time. Free of Swing; used on the event
 * thread.
 */
public final class Pen {

    private final Desk desk;
    private final Asking asking;
    private final Notices notices;
    private final List<Runnable> listeners = new CopyOnWriteArrayList<>();
    private final Set<List<Deed>> underWay = new HashSet<>();
    private Optional<String> holder = Optional.empty();

    public Pen(Desk desk, Asking asking, Notices notices) {
        this.desk = desk;
        this.asking = asking;
        this.notices = notices;
    }

    /** Who records: the one who took the pen, else the sitter while the owner is away, else the owner. */
    public Optional<Person> holder() {
        Room room = desk.room();
        return holder.flatMap(room::person)
                .or(() -> room.absenceOn(desk.today()).map(Absence::sitter).flatMap(room::person))
                .or(room::owner);
    }

    /** Hands the pen to this person. */
    public void takenBy(String person) {
        holder = Optional.of(person);
        listeners.forEach(Runnable::run);
    }

    /** Called whenever the pen has changed hands. */
    public void listen(Runnable listener) {
        listeners.add(listener);
    }

    public void ignore(Runnable listener) {
        listeners.remove(listener);
    }

    /** Follows up an answer of the record: what was read is handed on, what was refused or broke is said. */
    public <T> Consumer<org.cagewall.desk.Reading<T>> reading(Consumer<? super T> then) {
        return answer -> answer.then(then, why -> asking.tell(Message.of("shell.not-read"), why), notices::failed);
    }

    /** Records a deed of today. */
    public void record(Deed deed, Message done) {
        record(List.of(deed), desk.today(), Optional.empty(), done, room -> {});
    }

    /**
     * Records the deeds of one touch.
     *
     * @param day when it happened; a deed of today carries the time as well
     * @param done what is said once it is recorded
     * @param then what follows once it is recorded
     */
    public void record(
            List<? extends Deed> deeds, LocalDate day, Optional<String> note, Message done, Consumer<Room> then) {
        List<Line> lines =
                deeds.stream().map(deed -> line(Dated.on(deed, day), note)).toList();
        record(lines, done, then);
    }

    /**
     * A deed and its day.
     *
     * @param about whether that day is a guess
     */
    public record Dated(Deed deed, LocalDate day, boolean about) {

        public static Dated on(Deed deed, LocalDate day) {
            return new Dated(deed, day, false);
        }
    }

    /** Records the deeds of one touch, each on its own day. */
    public void record(List<Dated> deeds, Message done) {
        record(deeds.stream().map(dated -> line(dated, Optional.empty())).toList(), done, room -> {});
    }

    private void record(List<Line> lines, Message done, Consumer<Room> then) {
        Optional<Message> unfit =
                lines.stream().flatMap(line -> unfit(line).stream()).findFirst();
        if (unfit.isPresent()) {
            asking.tell(Message.of("shell.not-recorded"), unfit.get());
            return;
        }
        List<String> missing = notOnPaper(lines);
        if (missing.isEmpty()) {
            send(lines, done, then);
        } else {
            asking.ask(Question.of(
                    Message.of("shell.not-on-paper"),
                    Message.of("paper.missing", String.join(" ", missing)),
                    AnswerButton.main("sure", Message.of("shell.record-it"), () -> send(lines, done, then)),
                    AnswerButton.leave("no", Message.of("shell.leave-it"))));
        }
    }

    /** Letters that printed pages cannot show, but for those of names that are recorded: of them it was said before. */
    private List<String> notOnPaper(List<Line> lines) {
        List<String> missing =
                new ArrayList<>(Letters.missing(lines.stream().map(Lines::write).collect(Collectors.joining())));
        if (!missing.isEmpty()) {
            Room room = desk.room();
            missing.removeAll(Letters.missing(Stream.of(
                            room.people().stream().map(Person::name),
                            room.walls().stream().map(Wall::name),
                            room.cages().stream().map(Cage::name),
                            room.birds().stream().map(Bird::ring))
                    .flatMap(names -> names)
                    .collect(Collectors.joining())));
        }
        return missing;
    }

    private void send(List<Line> lines, Message done, Consumer<Room> then) {
        List<Deed> deeds = lines.stream().map(Line::deed).toList();
        if (underWay.add(deeds)) {
            desk.record(lines, outcome -> {
                underWay.remove(deeds);
                follow(outcome, lines, done, then);
            });
        }
    }

    /**
     * Strikes out one entry. A strike cannot be struck itself: what takes it back tells the same once more.
     *
     * @param line what the entry tells, where that is known
     */
    public void strikeOut(long entry, Optional<String> line, Reason why, Message done) {
        Optional<Line> again = line.map(text -> Lines.read(text, desk.today()))
                .filter(Lines.Understood.class::isInstance)
                .map(Lines.Understood.class::cast)
                .map(Lines.Understood::line);
        record(
                List.of(new CardDeed.StruckOut(Math.toIntExact(entry), why.id())),
                desk.today(),
                Optional.empty(),
                done,
                room -> again.ifPresent(told -> notices.done(
                        done, () -> record(List.of(told.beingSure()), Message.of("shell.put-back"), anew -> {}))));
    }

    /** Why the record could not read the line again: an empty name, one that is too long, a number out of bounds. */
    private static Optional<Message> unfit(Line line) {
        return Lines.read(Lines.write(line), line.told().on()) instanceof Lines.NotUnderstood read
                ? Optional.of(read.why())
                : Optional.empty();
    }

    private Line line(Dated dated, Optional<String> note) {
        Circumstances told = new Circumstances(
                dated.day(),
                dated.day().equals(desk.today()) ? Optional.of(desk.time()) : Optional.empty(),
                dated.about(),
                holder().map(Person::name),
                Optional.empty(),
                note,
                false);
        return new Line(dated.deed(), told);
    }

    private void follow(Outcome outcome, List<Line> lines, Message done, Consumer<Room> then) {
        if (outcome instanceof Outcome.Done recorded) {
            if (lines.stream().anyMatch(line -> line.deed() instanceof CardDeed.StruckOut)) {
                notices.done(done);
            } else {
                notices.done(done, () -> undo(recorded.touch()));
            }
            then.accept(recorded.room());
        } else if (outcome instanceof Outcome.Asks asks) {
            List<Line> sure = lines.stream().map(Line::beingSure).toList();
            asking.ask(Question.of(
                    Message.of("shell.sure"),
                    asks.question(),
                    AnswerButton.main("sure", Message.of("shell.record-it"), () -> send(sure, done, then)),
                    AnswerButton.leave("no", Message.of("shell.leave-it"))));
        } else if (outcome instanceof Outcome.Refused refused) {
            asking.tell(Message.of("shell.not-recorded"), refused.reason());
        } else if (outcome instanceof Outcome.Unwritten unwritten) {
            askToTryAgain(unwritten, () -> send(lines, done, then));
        } else if (outcome instanceof Outcome.Failed failed) {
            notices.failed(failed.code());
        }
    }

    /** What was touched is kept until it is recorded or given up by a touch. */
    private void askToTryAgain(Outcome.Unwritten unwritten, Runnable again) {
        asking.ask(Question.of(
                Message.of("shell.unwritten"),
                Message.of("shell.unwritten-text", unwritten.reason(), unwritten.code()),
                AnswerButton.main("again", Message.of("shell.try-again"), again),
                AnswerButton.leave("give-up", Message.of("shell.give-up"))));
    }

    /** Strikes out a touch of the person who holds the pen. */
    public void undo(long touch) {
        strike(touch, Reason.TAKEN_BACK);
    }

    /** Strikes out everything recorded by one touch. */
    public void strike(long touch, Reason why) {
        String by = holder().map(Person::name).orElse("-");
        desk.undo(touch, by, why.id(), outcome -> {
            if (outcome instanceof Outcome.Done) {
                notices.done(Message.of("shell.taken-back"));
            } else if (outcome instanceof Outcome.Refused refused) {
                asking.tell(Message.of("shell.not-recorded"), refused.reason());
            } else if (outcome instanceof Outcome.Unwritten unwritten) {
                askToTryAgain(unwritten, () -> strike(touch, why));
            } else if (outcome instanceof Outcome.Failed failed) {
                notices.failed(failed.code());
            }
        });
    }
}
