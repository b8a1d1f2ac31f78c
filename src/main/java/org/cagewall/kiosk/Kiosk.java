package org.cagewall.kiosk;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.function.Consumer;
import java.util.function.Supplier;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.ahead.AheadScreen;
import org.cagewall.kiosk.alarm.AlarmHalf;
import org.cagewall.kiosk.alarm.AlarmScreen;
import org.cagewall.kiosk.birds.BirdsScreen;
import org.cagewall.kiosk.cage.CageScreen;
import org.cagewall.kiosk.cards.CardsScreen;
import org.cagewall.kiosk.closing.ClosingScreen;
import org.cagewall.kiosk.handover.HandoverPresenter;
import org.cagewall.kiosk.handover.HandoverScreen;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.phone.PhoneScreen;
import org.cagewall.kiosk.scan.Lookout;
import org.cagewall.kiosk.scan.ScanScreen;
import org.cagewall.kiosk.scan.Small;
import org.cagewall.kiosk.scan.SmallView;
import org.cagewall.kiosk.setup.SetupScreen;
import org.cagewall.kiosk.shell.AnswerButton;
import org.cagewall.kiosk.shell.Beat;
import org.cagewall.kiosk.shell.Breadth;
import org.cagewall.kiosk.shell.CameraSettings;
import org.cagewall.kiosk.shell.ChoiceSheets;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.shell.KeySink;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Option;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.PictureSink;
import org.cagewall.kiosk.shell.Question;
import org.cagewall.kiosk.shell.Screens;
import org.cagewall.kiosk.shell.Shell;
import org.cagewall.kiosk.shell.WindowMode;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.today.TodayDraft;
import org.cagewall.kiosk.today.TodayScreen;
import org.cagewall.kiosk.wall.WallScreen;
import org.cagewall.room.Absence;
import org.cagewall.room.Person;
import org.cagewall.room.Quiet;
import org.cagewall.room.Role;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Cameras;
import org.cagewall.scan.Looking;
import org.cagewall.scan.Replay;
import org.cagewall.tasks.Audience;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * The kiosk: puts the screens on the one stage, shows who records, hears scanners, turns the day and dims in the quiet
 * hours. Used on the event thread.
 */
public final class Kiosk {

    private static final int PULSE_MILLIS = 1_000;

    /** Every n pulses it is asked how much may still be written. */
    private static final int PULSES_A_LOOK_AT_SPACE = 60;

    /** So often a next picture of the camera is asked for, if the one before has been looked at. */
    private static final int FRAME_MILLIS = 80;

    private final Desk desk;
    private final Words words;
    private final Layers stage;
    private final Pen pen;
    private final ChoiceSheets sheets;
    private final CardReader reader;
    private final Lookout lookout;
    private final Halfway<TodayDraft> halfReport = new Halfway<>();
    private final Halfway<AlarmHalf> halfAlarm = new Halfway<>();
    private final Small small = new SmallSwitch();
    private final Consumer<Room> recorded = room -> changed();
    private Optional<Shell> shell = Optional.empty();
    private Light light = Light.DAY;
    private long beats;
    private List<NavBar.Entry<Destination>> shownPlaces = List.of();
    private Optional<String> holderBefore = Optional.empty();
    private Optional<LocalDate> reviewOpened = Optional.empty();
    private Optional<Warned> warned = Optional.empty();

    private Kiosk(Desk desk, Layers stage, Words words, Cameras cameras, Supplier<LocalTime> time) {
        this.desk = desk;
        this.stage = stage;
        this.words = words;
        this.pen = new Pen(desk, stage, stage);
        this.sheets = new ChoiceSheets(stage, words);
        this.reader = new CardReader(desk, pen, stage, stage, stage, sheets);
        this.lookout = new Lookout(
                desk,
                new Looking(cameras, System::nanoTime),
                time,
                () -> settings().camera(),
                new Frames(),
                this::seen);
    }

    /** Begins to have the window ready, while the record is still being opened. Returns at once; any thread. */
    public static WindowAhead prepare(DataFolder folder, WindowMode mode, Words words) {
        WindowAhead ahead = new WindowAhead(KioskSettings.read(folder.kioskProperties()), mode, words);
        new EventThread().execute(ahead::prepare);
        return ahead;
    }

    /** Opens the kiosk in a window and returns when it has been left. Not for the event thread. */
    public static void run(Desk desk, WindowAhead ahead, Words words) {
        CountDownLatch left = new CountDownLatch(1);
        new EventThread().finish(() -> open(desk, ahead, words, left::countDown));
        try {
            left.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Opens the kiosk in a window. On the event thread. */
    public static Kiosk open(Desk desk, WindowMode mode, Words words, Runnable onLeft) {
        return open(
                desk, new WindowAhead(KioskSettings.read(desk.folder().kioskProperties()), mode, words), words, onLeft);
    }

    private static Kiosk open(Desk desk, WindowAhead ahead, Words words, Runnable onLeft) {
        Light light = lightOf(desk);
        Shell shell = ahead.shellIn(light);
        Kiosk kiosk = new Kiosk(desk, shell.stage(), words, cameras(desk), desk::time);
        kiosk.shell = Optional.of(shell);
        kiosk.light = light;
        kiosk.begin();
        shell.listen((KeySink) kiosk.reader);
        shell.listen((PictureSink) kiosk.reader);
        Thread.setDefaultUncaughtExceptionHandler((thread, failure) -> kiosk.failed(failure));
        Beat pulse = new Beat(PULSE_MILLIS, () -> kiosk.pulse(shell));
        pulse.start();
        shell.onLeave(() -> {
            pulse.stop();
            shell.close();
            kiosk.end();
            onLeft.run();
        });
        shell.open(kiosk.screens(), kiosk.first());
        return kiosk;
    }

    /** The kiosk on a stage without a window, as pictures and tests have it. On the event thread, the look put on. */
    public static Kiosk on(Layers stage, Desk desk, Words words) {
        return on(stage, desk, words, Cameras.none());
    }

    /** The same, with these cameras. */
    public static Kiosk on(Layers stage, Desk desk, Words words, Cameras cameras) {
        return on(stage, desk, words, cameras, desk::time);
    }

    /** The same, at this time of the room's day as far as its camera is concerned. */
    public static Kiosk on(Layers stage, Desk desk, Words words, Cameras cameras, Supplier<LocalTime> time) {
        Kiosk kiosk = new Kiosk(desk, stage, words, cameras, time);
        kiosk.begin();
        stage.open(kiosk.screens(), kiosk.first());
        return kiosk;
    }

    /** What is plugged in, and the folder that stands in for a camera where there is one. */
    private static Cameras cameras(Desk desk) {
        CameraSettings settings =
                KioskSettings.read(desk.folder().kioskProperties()).camera();
        Cameras plugged = Cameras.ofThisMachine();
        return settings.folder()
                .map(folder -> plugged.and(new Replay(folder, settings.rate(), System::nanoTime)))
                .orElse(plugged);
    }

    /** Its window, when it has one. */
    Optional<Shell> shell() {
        return shell;
    }

    public Pen pen() {
        return pen;
    }

    public Navigator navigator() {
        return stage;
    }

    /** Asks for the next picture of the camera, as the pulse of a window does. */
    public void look() {
        lookout.beat();
    }

    private void begin() {
        desk.listen(recorded);
        pen.listen(this::changed);
        showWho();
        holderBefore = pen.holder().map(Person::name);
        stage.onTouch(lookout::touched);
        if (settings().small() == CameraSettings.SmallView.ON) {
            keepSmallView();
        }
    }

    private CameraSettings settings() {
        return KioskSettings.read(desk.folder().kioskProperties()).camera();
    }

    private void keepSmallView() {
        stage.aside(Optional.of(new SmallView(desk, lookout, small, words)));
    }

    /** A card came into the camera's view: it opens its cage, but not while something else is being answered. */
    private void seen(CardCode.Reading reading, Optional<Message> besides) {
        if (stage.isClear() || sheets.awaitsCard()) {
            reader.seen(reading, besides);
        }
    }

    private void paste() {
        if (shell.filter(Shell::paste).isEmpty()) {
            stage.tell(Message.of("scanscreen.paste"), Message.of("scanscreen.nothing-pasted"));
        }
    }

    private void changed() {
        showWho();
        Optional<String> holder = pen.holder().map(Person::name);
        if (!holder.equals(holderBefore)) {
            holderBefore = holder;
            reviewFirst().ifPresent(stage::go);
        } else if (stage.here() instanceof Destination.Handover) {
            reviewFirst();
        }
    }

    /** What happened on days away opens by itself for the owner who takes over after them: once, then it was seen. */
    private Optional<Destination> reviewFirst() {
        Optional<LocalDate> over = pen.holder()
                .filter(person -> person.role() == Role.OWNER)
                .filter(owner -> HandoverPresenter.waits(desk.room(), desk.today()))
                .flatMap(owner -> desk.room().absenceBefore(desk.today()))
                .map(Absence::from)
                .filter(from -> !reviewOpened.equals(Optional.of(from)));
        if (over.isPresent()) {
            reviewOpened = over;
        }
        return over.map(from -> new Destination.Handover());
    }

    /** Lets go of the desk. */
    public void end() {
        desk.ignore(recorded);
        lookout.end();
        stage.open(Screens.none(), new Destination.Wall());
    }

    /** Something broke that nobody expected: the kiosk says so calmly and goes on. */
    private void failed(Throwable failure) {
        String code = desk.failures().keep("kiosk", failure);
        new EventThread().execute(() -> stage.failed(code));
    }

    private Screens screens() {
        Navigator navigator = stage;
        Notices notices = stage;
        return Screens.none()
                .with(Destination.Wall.class, wall -> new WallScreen(desk, navigator, words, stage.breadth()))
                .with(
                        Destination.Cage.class,
                        cage -> new CageScreen(desk, pen, navigator, sheets, stage, words, stage.breadth(), cage))
                .with(Destination.Scan.class, scan -> new ScanScreen(desk, lookout, small, words, this::paste))
                .with(
                        Destination.Today.class,
                        today -> new TodayScreen(
                                desk, pen, navigator, sheets, words, stage.breadth(), halfReport, today))
                .with(
                        Destination.Different.class,
                        different -> new TodayScreen(
                                desk, pen, navigator, sheets, words, stage.breadth(), halfReport, different))
                .with(Destination.Birds.class, birds -> new BirdsScreen(desk, pen, navigator, sheets, words))
                .with(
                        Destination.Setup.class,
                        setup -> new SetupScreen(desk, pen, navigator, sheets, stage, notices, words))
                .with(Destination.Ahead.class, days -> new AheadScreen(desk, pen, navigator, sheets, words))
                .with(
                        Destination.Handover.class,
                        handover -> new HandoverScreen(desk, pen, navigator, sheets, notices, words))
                .with(Destination.Phone.class, phone -> new PhoneScreen(desk, pen, navigator, sheets, words, phone))
                .with(
                        Destination.Alarm.class,
                        alarm -> new AlarmScreen(desk, pen, navigator, sheets, words, halfAlarm, alarm.danger()))
                .with(Destination.CloseTheDay.class, close -> new ClosingScreen(desk, pen, navigator, sheets, words))
                .with(Destination.Cards.class, cards -> new CardsScreen(desk, pen, navigator, notices, words, cards));
    }

    /**
     * While the owner is away the kiosk opens on the sitter's list, for the owner who is back on what happened; a room
     * without anybody in it on the set-up.
     */
    private Destination first() {
        if (desk.room().people().isEmpty()) {
            return new Destination.Setup();
        }
        return isSitter() ? new Destination.Today() : reviewFirst().orElseGet(Destination.Wall::new);
    }

    private boolean isSitter() {
        return pen.holder()
                .filter(person -> Audience.of(desk.room(), desk.today(), person) == Audience.SITTER)
                .isPresent();
    }

    private void showWho() {
        Optional<Person> holder = pen.holder();
        stage.person(
                holder.map(person -> words.say("kiosk.person", person.name(), person.role()))
                        .orElse(words.say("kiosk.nobody")),
                this::chooseWho);
        List<NavBar.Entry<Destination>> wanted = places();
        if (!wanted.equals(shownPlaces)) {
            boolean isLeft = leadsTo(shownPlaces, stage.here()) && !leadsTo(wanted, stage.here());
            shownPlaces = wanted;
            stage.places(wanted);
            if (isLeft) {
                stage.go(new Destination.Today());
            }
        }
    }

    private void chooseWho() {
        sheets.pick(
                Message.of("kiosk.who"),
                desk.room().people().stream()
                        .map(person -> new Option<>(
                                person.name(),
                                RowFace.of("", words.say("kiosk.person", person.name(), person.role()), ""),
                                person))
                        .toList(),
                this::handTo);
    }

    /** What belongs to the owner is not had by a slip of the finger. */
    private void handTo(Person person) {
        boolean becomesOwner = person.role() == Role.OWNER
                && pen.holder().filter(person::equals).isEmpty();
        if (becomesOwner) {
            stage.ask(Question.of(
                    Message.of("kiosk.owner", person.name()),
                    Message.of("kiosk.owner-text", person.name()),
                    AnswerButton.main(
                            "owner", Message.of("kiosk.owner-yes", person.name()), () -> pen.takenBy(person.name())),
                    AnswerButton.leave("no", Message.of("shell.leave-it-so"))));
        } else {
            pen.takenBy(person.name());
        }
    }

    /** What stands in one's bar is not for everybody whose bar has it not. */
    private static boolean leadsTo(List<NavBar.Entry<Destination>> places, Destination here) {
        return places.stream().map(NavBar.Entry::target).anyMatch(here.section()::equals);
    }

    private List<NavBar.Entry<Destination>> places() {
        List<NavBar.Entry<Destination>> places = new ArrayList<>();
        places.add(place("wall", new Destination.Wall()));
        places.add(place("today", new Destination.Today()));
        if (isSitter()) {
            places.add(place("alarm", new Destination.Alarm()));
            places.add(place("phone", new Destination.Phone()));
            places.add(place("close", new Destination.CloseTheDay()));
        } else {
            places.add(place("ahead", new Destination.Ahead()));
            places.add(place("handover", new Destination.Handover()));
            places.add(place("cards", new Destination.Cards()));
            places.add(place("birds", new Destination.Birds()));
            places.add(place("setup", new Destination.Setup()));
        }
        return places;
    }

    private NavBar.Entry<Destination> place(String name, Destination destination) {
        return new NavBar.Entry<>(name, words.say("kiosk.place." + name), destination);
    }

    private void pulse(Shell shell) {
        if (!shell.isOpen()) {
            return;
        }
        if (beats == 0) {
            desk.readAnew();
        }
        if (beats++ % PULSES_A_LOOK_AT_SPACE == 0) {
            lookAtSpace();
        }
        desk.turnTheDay();
        lookout.turn();
        shell.refit();
        if (desk.folder().isCalledForward()) {
            shell.forward();
        }
        Light wanted = lightOf(desk);
        if (wanted != light) {
            light = wanted;
            light.shine();
        }
    }

    /** Asks for picture after picture. */
    private final class Frames implements Lookout.Pulse {

        private final Beat beat = new Beat(FRAME_MILLIS, () -> lookout.beat());

        @Override
        public void start() {
            beat.start();
        }

        @Override
        public void stop() {
            beat.stop();
        }
    }

    /** The small view stays on until it is put away, over the end of the kiosk too. */
    private final class SmallSwitch implements Small {

        @Override
        public boolean isOn() {
            return stage.breadth() == Breadth.BESIDE;
        }

        @Override
        public void on() {
            keepSmallView();
            keep(CameraSettings.SmallView.ON);
        }

        @Override
        public void off() {
            stage.aside(Optional.empty());
            keep(CameraSettings.SmallView.OFF);
        }

        private void keep(CameraSettings.SmallView view) {
            desk.work(
                    book -> {
                        KioskSettings.keepSmallView(desk.folder().kioskProperties(), view);
                        return view;
                    },
                    kept -> {});
        }
    }

    /** Whoever records is told once a day that space runs low, when nothing else is being answered or filled in. */
    void lookAtSpace() {
        desk.space(space -> {
            Optional<Warned> now = Optional.of(new Warned(desk.today(), pen.holder()));
            if (space.isLow() && stage.isAtRest() && !warned.equals(now)) {
                warned = now;
                stage.tell(
                        Message.of("kiosk.space-low"),
                        isSitter() ? Message.of("kiosk.space-low-sitter", space.megabytes()) : space.warning());
            }
        });
    }

    /** Who was told that space runs low, and on what day. */
    private record Warned(LocalDate day, Optional<Person> who) {}

    private static Light lightOf(Desk desk) {
        Optional<Quiet> quiet = desk.room().settings().quiet();
        return quiet.filter(hours -> hours.holds(desk.time())).isPresent() ? Light.QUIET : Light.DAY;
    }
}
