package org.cagewall.kiosk.scan;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Reading;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Looking;
import org.cagewall.scan.Luma;
import org.cagewall.scan.Meaning;
import org.cagewall.scan.Watch;
import org.cagewall.text.Message;

/**
 * Has the camera look for cards while somebody watches, and lets go of it in the quiet hours, after a minute without use
 * and when nobody watches any more. One for the whole kiosk. Free of Swing; used on the event thread.
 */
public final class Lookout {

    static final Duration UNUSED = Duration.ofMinutes(1);

    /** What is before a camera that begins by itself was there before: a card that hangs in its view is nobody's scan. */
    static final Duration SETTLING = Duration.ofSeconds(1);

    private static final Message OFF = Message.of("scanscreen.off");
    private static final Message HOLD = Message.of("scanscreen.seeing");

    private final Desk desk;
    private final Looking looking;
    private final Supplier<LocalTime> time;
    private final Pulse pulse;
    private final Cards cards;
    private final List<Watcher> watchers = new ArrayList<>();
    private Status now = new Status(Look.OFF, OFF, List.of(), Optional.empty());
    private Supplier<String> wanted;
    private Turn turn = Turn.IDLE;
    private Resuming resuming = Resuming.BY_TOUCH;
    private Resuming begun = Resuming.BY_TOUCH;
    private Instant settled = Instant.EPOCH;
    private Instant lastUse = Instant.EPOCH;
    private int run;

    /** Beats some ten times a second while the camera looks, so that a next picture is asked for. */
    public interface Pulse {

        void start();

        void stop();
    }

    /** What follows when a card of this birdroom comes into view. */
    public interface Cards {

        /** @param besides that others are in view too, and which one was read */
        void card(CardCode.Reading reading, Optional<Message> besides);
    }

    /** Whoever shows what the camera sees. */
    public interface Watcher {

        void status(Status status);

        void picture(Luma picture);
    }

    /** What the camera does. */
    public enum Look {
        OFF,
        STARTING,
        SEEING,
        TROUBLED,
        RESTING,
        /** Off for the quiet hours, whatever is touched. */
        QUIET
    }

    /** What the camera does, a sentence about it, and what there is to choose from. */
    public record Status(Look look, Message line, List<Looking.Choice> cameras, Optional<String> chosen) {

        public Status {
            cameras = List.copyOf(cameras);
        }

        Status with(Look other, Message sentence) {
            return new Status(other, sentence, cameras, chosen);
        }
    }

    /** Whether a picture is being looked at just now. */
    private enum Turn {
        IDLE,
        ASKED
    }

    /** How it begins, and whether it goes on by itself when somebody watches again. */
    private enum Resuming {
        BY_TOUCH,
        BY_ITSELF
    }

    /**
     * @param time the time of day in the room, for its quiet hours
     * @param wanted the camera that was chosen last; empty before any was
     * @param cards gets each card of this birdroom that comes into view
     */
    public Lookout(
            Desk desk, Looking looking, Supplier<LocalTime> time, Supplier<String> wanted, Pulse pulse, Cards cards) {
        this.desk = desk;
        this.time = time;
        this.looking = looking;
        this.wanted = wanted;
        this.pulse = pulse;
        this.cards = cards;
    }

    /** From now on it sees what the camera sees; a camera that was let go for want of a watcher looks again. */
    public void watch(Watcher watcher) {
        watchers.add(watcher);
        watcher.status(now);
        if (resuming == Resuming.BY_ITSELF && isOff()) {
            begin(Resuming.BY_ITSELF);
        }
    }

    public void leave(Watcher watcher) {
        watchers.remove(watcher);
    }

    /** Looks through this camera from now on. */
    void choose(String camera) {
        wanted = () -> camera;
        begin(Resuming.BY_TOUCH);
    }

    /** Looks, if it does not already; finds the cameras anew. */
    void look() {
        begun = Resuming.BY_TOUCH;
        settled = Instant.EPOCH;
        if (isOff()) {
            begin(Resuming.BY_TOUCH);
        }
    }

    private boolean isOff() {
        return now.look() != Look.SEEING && now.look() != Look.STARTING;
    }

    /** Time has passed: after the quiet hours a touch may start the camera again; a touch since it rests has done so. */
    public void turn() {
        if (now.look() == Look.QUIET && !isQuiet()) {
            become(now.with(Look.OFF, OFF));
        } else if (now.look() == Look.RESTING && isUsed() && !watchers.isEmpty()) {
            begin(Resuming.BY_ITSELF);
        }
    }

    /** Somebody touched the screen: the camera is in use. */
    public void touched() {
        lastUse = desk.instant();
    }

    private void begin(Resuming how) {
        resuming = Resuming.BY_TOUCH;
        begun = how;
        settled = Instant.EPOCH;
        if (isQuiet()) {
            stop(Look.QUIET, Message.of("scanscreen.quiet"));
            return;
        }
        touched();
        int mine = ++run;
        turn = Turn.IDLE;
        become(now.with(Look.STARTING, Message.of("scanscreen.starting")));
        String camera = wanted.get();
        desk.decode(() -> looking.begin(camera), answer -> ifStill(mine, () -> begun(answer)));
    }

    private void begun(Reading<Looking.Begun> answer) {
        answer.then(
                begun -> {
                    now = new Status(now.look(), now.line(), begun.all(), begun.chosen());
                    if (begun.chosen().isPresent()) {
                        become(now.with(Look.STARTING, now.line()));
                        pulse.start();
                    } else {
                        stop(Look.TROUBLED, begun.trouble().orElseGet(() -> Message.of("scan.camera.none")));
                    }
                },
                why -> stop(Look.TROUBLED, why),
                this::broke);
    }

    /** The next beat. */
    public void beat() {
        if (watchers.isEmpty()) {
            stop(Look.OFF, OFF);
            resuming = Resuming.BY_ITSELF;
        } else if (isQuiet()) {
            stop(Look.QUIET, Message.of("scanscreen.quiet"));
        } else if (!isUsed()) {
            stop(Look.RESTING, Message.of("scanscreen.unused"));
        } else if (turn == Turn.IDLE) {
            turn = Turn.ASKED;
            int mine = run;
            desk.decode(looking::look, answer -> ifStill(mine, () -> looked(answer)));
        }
    }

    /** Lets go of the camera for good. */
    public void end() {
        watchers.clear();
        stop(Look.OFF, OFF);
    }

    private void looked(Reading<Looking.Glance> answer) {
        turn = Turn.IDLE;
        answer.then(
                glance -> {
                    if (glance instanceof Looking.Glance.Saw saw) {
                        saw(saw);
                    } else if (glance instanceof Looking.Glance.Blind blind) {
                        become(now.with(Look.TROUBLED, blind.why()));
                    } else {
                        stop(now.look(), now.line());
                    }
                },
                why -> stop(Look.TROUBLED, why),
                this::broke);
    }

    /** What was said of a code is said for as long as that is in view, so that it is not taken for the next one. */
    private void saw(Looking.Glance.Saw saw) {
        if (now.look() == Look.STARTING && begun == Resuming.BY_ITSELF) {
            settled = desk.instant().plus(SETTLING);
        }
        if (now.look() != Look.SEEING
                || saw.sight() == Watch.Sight.NOTHING && !now.line().equals(HOLD)) {
            become(now.with(Look.SEEING, HOLD));
        }
        List.copyOf(watchers).forEach(watcher -> watcher.picture(saw.picture()));
        saw.read()
                .filter(read -> !watchers.isEmpty() && !desk.instant().isBefore(settled))
                .ifPresent(this::read);
    }

    /** A card of this birdroom opens its cage; what any other code says is told where the picture is, and not followed. */
    private void read(Looking.Read read) {
        touched();
        CardCode.Reading reading = CardCode.read(read.text());
        Meaning meaning = Meaning.of(reading, desk.room());
        if (meaning instanceof Meaning.Says says) {
            become(now.with(
                    Look.SEEING,
                    read.besides()
                            .map(others -> Message.of("scan.besides", says.sentence(), others))
                            .orElse(says.sentence())));
        } else {
            become(now.with(Look.SEEING, HOLD));
            cards.card(reading, read.besides());
        }
    }

    private void broke(String code) {
        stop(Look.TROUBLED, Message.of("scanscreen.broke", code));
    }

    private void stop(Look look, Message line) {
        run++;
        turn = Turn.IDLE;
        pulse.stop();
        become(now.with(look, line));
        desk.decode(
                () -> {
                    looking.close();
                    return true;
                },
                closed -> {});
    }

    private void ifStill(int mine, Runnable then) {
        if (mine == run) {
            then.run();
        }
    }

    private void become(Status next) {
        now = next;
        List.copyOf(watchers).forEach(watcher -> watcher.status(next));
    }

    private boolean isUsed() {
        return desk.instant().isBefore(lastUse.plus(UNUSED));
    }

    private boolean isQuiet() {
        return desk.room()
                .settings()
                .quiet()
                .filter(hours -> hours.holds(time.get()))
                .isPresent();
    }
}
