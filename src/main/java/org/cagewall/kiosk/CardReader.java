package org.cagewall.kiosk;

import java.awt.Image;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntConsumer;
import org.cagewall.deed.CardDeed;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.CardTaker;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.KeySink;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.PictureSink;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.cagewall.room.Role;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Decoding;
import org.cagewall.scan.Frame;
import org.cagewall.scan.FrameSource;
import org.cagewall.scan.Keystrokes;
import org.cagewall.scan.Meaning;
import org.cagewall.text.Message;

/**
 * Hears a scanner that types, and reads pictures that are pasted or dropped: a card of this birdroom opens its cage, or
 * answers where a cage is being chosen; any other code gets its sentence and changes nothing. Used on the event thread.
 */
final class CardReader implements KeySink, PictureSink {

    private final Desk desk;
    private final Pen pen;
    private final Navigator navigator;
    private final Asking asking;
    private final Notices notices;
    private final CardTaker taker;
    private final Keystrokes keystrokes = new Keystrokes();
    private final Keystrokes inField = new Keystrokes();

    CardReader(Desk desk, Pen pen, Navigator navigator, Asking asking, Notices notices, CardTaker taker) {
        this.notices = notices;
        this.desk = desk;
        this.pen = pen;
        this.taker = taker;
        this.navigator = navigator;
        this.asking = asking;
    }

    @Override
    public boolean key(char c, long nanos) {
        Keystrokes.Outcome outcome = keystrokes.typed(c, nanos);
        if (outcome instanceof Keystrokes.Scanned scanned) {
            scanned(scanned.reading());
            return true;
        }
        return outcome instanceof Keystrokes.Pending;
    }

    /** A card's code does not stay in the field; of another code only the Enter is kept from it. */
    @Override
    public boolean keyInField(char c, long nanos, IntConsumer takeOut) {
        if (!(inField.typed(c, nanos) instanceof Keystrokes.Scanned scanned)) {
            return false;
        }
        if (scanned.reading().code().isPresent()) {
            takeOut.accept(CardCode.LENGTH);
            scanned(scanned.reading());
        }
        return true;
    }

    /** The card is before a scanner at this moment. */
    private void scanned(CardCode.Reading reading) {
        seen(reading, Optional.empty());
    }

    /**
     * The card is before a scanner or a camera at this moment.
     *
     * @param besides that others are in view too, and which one was read
     */
    void seen(CardCode.Reading reading, Optional<Message> besides) {
        opened(reading, besides, Destination.Cage::byScan);
    }

    @Override
    public void picture(Image picture) {
        decode(FrameSource.of(picture));
    }

    @Override
    public void files(List<Path> files) {
        if (!files.isEmpty()) {
            decode(FrameSource.of(files));
        }
    }

    /** A large picture takes a second or two: until then it is said that something is done. */
    private void decode(FrameSource source) {
        notices.done(Message.of("kiosk.reading-picture"));
        desk.decode(() -> firstRead(source), this::answered);
    }

    /** What the first picture with a code says; without any, what is wrong with the last one. */
    private static Decoding firstRead(FrameSource source) {
        Decoder decoder = new Decoder();
        Decoding last = new Decoding.Nothing();
        for (Optional<Frame> next = source.next(); next.isPresent(); next = source.next()) {
            last = decoder.decode(next.get());
            if (last.text().isPresent()) {
                return last;
            }
        }
        return last;
    }

    private void answered(org.cagewall.desk.Reading<Decoding> answer) {
        answer.then(this::decoded, this::say, notices::failed);
    }

    /** A picture may be of any day: a check on the page that it opens is not told as a scan. */
    private void decoded(Decoding decoding) {
        decoding.text()
                .ifPresentOrElse(
                        text -> opened(CardCode.read(text), decoding.besides(), Destination.Cage::byHand),
                        () -> say(decoding.reason().orElse(Message.of("scan.nothing"))));
    }

    private void opened(CardCode.Reading reading, Optional<Message> besides, Function<String, Destination> way) {
        Meaning meaning = Meaning.of(reading, desk.room());
        if (meaning instanceof Meaning.Says says) {
            say(said(says.sentence(), besides));
        } else {
            Meaning.Opens opens = (Meaning.Opens) meaning;
            taker.awaited()
                    .ifPresentOrElse(then -> chosen(opens.cage(), besides, then), () -> open(opens, besides, way));
        }
    }

    /** A cage that is chosen is recorded at once: where another card was in view too, it may be the wrong one. */
    private void chosen(Cage cage, Optional<Message> besides, Consumer<Cage> then) {
        besides.ifPresentOrElse(
                others -> asking.ask(Question.of(
                        Message.of("kiosk.is-it", cage.name()),
                        others,
                        AnswerButton.main("it-is", Message.of("kiosk.it-is", cage.name()), () -> then.accept(cage)),
                        AnswerButton.leave("leave", Message.of("shell.leave-it-so")))),
                () -> then.accept(cage));
    }

    private void open(Meaning.Opens opens, Optional<Message> besides, Function<String, Destination> way) {
        String cage = opens.cage().name();
        navigator.goByCard(way.apply(cage), () -> {
            if (opens.isOutOfDate()) {
                offerNew(opens, besides);
            } else {
                besides.ifPresent(others -> notices.done(Message.of("kiosk.opened-besides", cage, others)));
            }
        });
    }

    /** An old card is settled where it is found: printed anew, or its change pencilled on the very card that hangs there. */
    private void offerNew(Meaning.Opens opens, Optional<Message> besides) {
        String cage = opens.cage().name();
        List<AnswerButton> answers = new ArrayList<>();
        if (pen.holder().filter(person -> person.role() != Role.SITTER).isPresent()) {
            answers.add(AnswerButton.main(
                    "print-anew", Message.of("kiosk.print-anew"), () -> navigator.go(Destination.Cards.of(cage))));
        }
        if (opens.age() == CardFaces.Age.CHANGED) {
            answers.add(AnswerButton.plain(
                    "pencilled",
                    Message.of("kiosk.pencilled"),
                    () -> pen.record(new CardDeed.CardPencilled(cage), Message.of("cage.done.pencilled", cage))));
        }
        answers.add(AnswerButton.leave("later", Message.of("kiosk.later")));
        List<Message> changes = opens.changes();
        Message old = changes.isEmpty() ? opens.old() : Message.of("kiosk.old-card-changes", changes);
        asking.ask(new Question(Message.of("kiosk.old-card", cage), said(old, besides), answers));
    }

    /** A line below a sheet would not be read: what else was in view stands in the same breath. */
    private static Message said(Message sentence, Optional<Message> besides) {
        return besides.map(others -> Message.of("scan.besides", sentence, others))
                .orElse(sentence);
    }

    private void say(Message sentence) {
        asking.tell(Message.of("kiosk.scanned"), sentence);
    }
}
