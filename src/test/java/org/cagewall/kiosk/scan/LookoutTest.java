package org.cagewall.kiosk.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.HandClock;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.room.CardFaces;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Looking;
import org.cagewall.scan.Luma;
import org.cagewall.scan.ScriptedDriver;
import org.cagewall.scan.SymbolPictures;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The camera's screen without a window, over a driver that does what the test says. */
class LookoutTest {

    @TempDir
    Path folder;

    private final ScriptedDriver driver = new ScriptedDriver();
    private final HandClock clock = new HandClock();
    private final List<String> opened = new ArrayList<>();
    private final List<String> spokenOf = new ArrayList<>();
    private final List<Luma> pictures = new ArrayList<>();
    private final Beating pulse = new Beating();
    private Desk desk;
    private Lookout lookout;
    private ScanPresenter presenter;
    private ScanState state;

    @BeforeEach
    void open() {
        TestDesk.furnished(folder).close();
        desk = Desk.open(DataFolder.open(folder), Lanes.inline(), new Clocks(clock, Optional.of(TestDesk.TODAY)));
        clock.to(LocalTime.of(9, 0), desk.room().settings().zone());
        lookout = new Lookout(
                desk,
                new Looking(driver.cameras(clock::nanos), clock::nanos),
                desk::time,
                () -> KioskSettings.read(desk.folder().kioskProperties())
                        .camera()
                        .camera(),
                pulse,
                (reading, besides) -> {
                    opened.add(reading.text());
                    besides.map(Words.english()::say).ifPresent(spokenOf::add);
                });
        presenter = new ScanPresenter(desk, lookout, new NoSmall(), Words.english(), it -> state = it, pictures::add);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void nothingIsAskedOfTheDriverBeforeTheScreenIsOpened() {
        driver.plugIn("Lid", wall());
        presenter.accompany();

        assertThat(driver.said()).isEmpty();
        assertThat(pulse.beats).isFalse();
    }

    @Test
    void aCardBeforeTheCameraOpensItsCageOnceForAsLongAsItIsHeldThere() {
        driver.plugIn("Lid", SymbolPictures.of(card("A2")));

        presenter.open();
        look(5);

        assertThat(opened).containsExactly(card("A2"));
        assertThat(pictures).hasSize(5);
        assertThat(state.line()).contains("in the frame");
    }

    @Test
    void anyOtherCodeIsToldWhereThePictureIsAndOpensNothing() {
        driver.plugIn("Lid", SymbolPictures.of("CTOPSEEDS1"));
        presenter.open();
        look(1);
        assertThat(state.line()).contains("does not hold together");

        driver.show("Lid", SymbolPictures.of("SEED"));
        look(1);
        assertThat(state.line()).contains("not a cage card").contains("SEED");

        CardCode here = CardCode.read(card("A2")).code().orElseThrow();
        driver.show("Lid", SymbolPictures.of(new CardCode("ZZZ", here.number(), here.digest()).text()));
        look(1);
        assertThat(state.line()).contains("another birdroom");
        assertThat(opened).isEmpty();

        driver.show("Lid", SymbolPictures.of(card("A1")));
        look(1);
        assertThat(opened).containsExactly(card("A1"));
    }

    @Test
    void whatWasSaidOfACodeIsSaidNoMoreOnceItIsOutOfView() {
        driver.plugIn("Lid", SymbolPictures.of("SEED"));
        presenter.open();
        look(30);
        assertThat(state.line()).contains("not a cage card");

        driver.show("Lid", wall());
        look(30);

        assertThat(state.line()).contains("in the frame");
    }

    @Test
    void aDriverThatLacksAPartIsToldOfAndStopsNothing() {
        Lookout broken = new Lookout(
                desk,
                new Looking(
                        () -> {
                            throw new UnsatisfiedLinkError("no such part");
                        },
                        clock::nanos),
                desk::time,
                () -> "",
                pulse,
                (reading, besides) -> {});
        ScanPresenter before =
                new ScanPresenter(desk, broken, new NoSmall(), Words.english(), it -> state = it, pictures::add);

        before.open();

        assertThat(state.line()).contains("The camera stopped");
        assertThat(state.mayLook()).isTrue();
    }

    @Test
    void ofTwoCardsInViewTheOneInTheMiddleIsHandedOnWithAWordOfTheOther() {
        driver.plugIn("Lid", SymbolPictures.of(card("A2"), card("A1")));
        presenter.open();
        look(1);

        assertThat(opened).containsExactly(card("A2"));
        assertThat(spokenOf).singleElement().asString().contains("Another code was in view");
    }

    @Test
    void aCardOfAnotherBirdroomBesideOneOfThisIsToldWithAWordOfTheOther() {
        CardCode here = CardCode.read(card("A2")).code().orElseThrow();
        driver.plugIn("Lid", SymbolPictures.of(new CardCode("ZZZ", here.number(), here.digest()).text(), card("A1")));
        presenter.open();
        look(1);

        assertThat(opened).isEmpty();
        assertThat(state.line()).contains("another birdroom").contains("The one nearest the middle was read");
    }

    @Test
    void aRoomWithoutACameraSaysWhatToDoAndATouchAfterPluggingInIsEnough() {
        presenter.open();

        assertThat(state.line()).contains("Plug one in");
        assertThat(state.mayLook()).isTrue();
        assertThat(pulse.beats).isFalse();

        driver.plugIn("Lid", SymbolPictures.of(card("A1")));
        presenter.look();
        look(1);

        assertThat(opened).containsExactly(card("A1"));
    }

    @Test
    void aCameraPulledOutInUseOrDeniedIsOneSentenceAndComesBackByTouch() {
        driver.plugIn("Lid", wall());
        presenter.open();
        look(2);
        driver.unplug("Lid");
        look(1);
        clock.pass(Duration.ofSeconds(4));
        look(1);
        assertThat(state.line()).contains("was unplugged");
        look(1);
        assertThat(pulse.beats).isFalse();

        driver.plugIn("Lid", wall());
        driver.useElsewhere();
        presenter.look();
        look(2);
        assertThat(state.line()).contains("Close any other program");

        driver.leaveElsewhere();
        driver.deny();
        driver.useElsewhere();
        presenter.look();
        look(2);
        assertThat(state.line()).contains("may not use the camera");

        driver.allow();
        driver.leaveElsewhere();
        presenter.look();
        look(1);
        assertThat(state.picture()).isTrue();
        assertThat(state.mayLook()).isFalse();
    }

    @Test
    void aCoveredCameraIsToldOfAndGoesOnByItself() {
        driver.plugIn("Lid", new BufferedImage(320, 240, BufferedImage.TYPE_3BYTE_BGR));
        presenter.open();
        look(1);
        clock.pass(Duration.ofSeconds(4));
        look(1);
        assertThat(state.line()).contains("only black");
        assertThat(state.picture()).isFalse();

        driver.show("Lid", wall());
        look(1);

        assertThat(state.picture()).isTrue();
        assertThat(state.line()).contains("in the frame");
    }

    @Test
    void ofTwoCamerasTheChosenOneIsKeptForTheNextTime() {
        driver.plugIn("Lid", wall()).plugIn("Stand", SymbolPictures.of(card("A1")));
        presenter.open();
        look(1);
        assertThat(state.cameras()).extracting(ScanState.Camera::name).containsExactly("Lid", "Stand");
        assertThat(state.chosen()).isEqualTo("id of Lid");

        presenter.choose("id of Stand");
        look(1);

        assertThat(state.chosen()).isEqualTo("id of Stand");
        assertThat(driver.isOpen("Lid")).isFalse();
        assertThat(opened).containsExactly(card("A1"));
        assertThat(KioskSettings.read(desk.folder().kioskProperties()).camera().camera())
                .isEqualTo("id of Stand");
    }

    @Test
    void afterAMinuteWithoutATouchOrACardTheCameraIsLetGo() {
        driver.plugIn("Lid", wall());
        presenter.open();
        look(1);
        clock.pass(Duration.ofSeconds(40));
        lookout.touched();
        clock.pass(Duration.ofSeconds(40));
        look(1);
        assertThat(driver.isOpen("Lid")).isTrue();

        clock.pass(Duration.ofSeconds(21));
        look(1);

        assertThat(driver.isOpen("Lid")).isFalse();
        assertThat(state.line()).contains("for a minute");
        presenter.look();
        look(1);
        assertThat(driver.isOpen("Lid")).isTrue();
    }

    /** Who is longer than a minute at a cage holds the next card before a camera that looks. */
    @Test
    void aTouchAnywhereWakesTheCameraThatRests() {
        driver.plugIn("Lid", wall());
        presenter.open();
        look(1);
        clock.pass(Duration.ofSeconds(61));
        look(1);
        lookout.turn();
        assertThat(driver.isOpen("Lid")).isFalse();

        lookout.touched();
        lookout.turn();
        look(1);

        assertThat(driver.isOpen("Lid")).isTrue();
        assertThat(state.picture()).isTrue();
    }

    /** A card that hangs in the camera's view must not lead away from the cage that is being touched. */
    @Test
    void aCardThatWasThereWhenTheCameraWokeByItselfOpensNothingAndTheNextOneDoes() {
        driver.plugIn("Lid", wall());
        presenter.open();
        look(1);
        clock.pass(Duration.ofSeconds(61));
        look(1);
        driver.show("Lid", SymbolPictures.of(card("A1")));

        lookout.touched();
        lookout.turn();
        look(30);
        assertThat(state.picture()).isTrue();
        assertThat(opened).isEmpty();

        driver.show("Lid", SymbolPictures.of(card("A2")));
        look(1);
        assertThat(opened).containsExactly(card("A2"));
    }

    @Test
    void whoOpensTheScreenWithACardAlreadyThereHasItReadAlsoWhenTheCameraWentOnByItself() {
        driver.plugIn("Lid", SymbolPictures.of(card("A1")));
        presenter.open();
        presenter.close();
        look(1);
        assertThat(opened).isEmpty();

        presenter.open();
        look(2);

        assertThat(opened).containsExactly(card("A1"));
    }

    @Test
    void inTheQuietHoursTheCameraStopsAndATouchDoesNotStartIt() {
        TestDesk.tell(desk, "{\"deed\":\"room-set\",\"quiet\":\"21:00-06:00\",\"by\":\"Ines\"}");
        driver.plugIn("Lid", wall());
        presenter.open();
        look(1);
        assertThat(driver.isOpen("Lid")).isTrue();

        clock.to(LocalTime.of(21, 0), desk.room().settings().zone());
        look(1);

        assertThat(driver.isOpen("Lid")).isFalse();
        assertThat(state.line()).contains("quiet hours");
        assertThat(state.mayLook()).isFalse();
        presenter.look();
        assertThat(driver.isOpen("Lid")).isFalse();
    }

    @Test
    void afterTheQuietHoursItSaysThatTheCameraIsOffAndATouchStartsIt() {
        TestDesk.tell(desk, "{\"deed\":\"room-set\",\"quiet\":\"21:00-06:00\",\"by\":\"Ines\"}");
        driver.plugIn("Lid", wall());
        clock.to(LocalTime.of(22, 0), desk.room().settings().zone());
        presenter.open();
        lookout.turn();
        assertThat(state.line()).contains("quiet hours");

        clock.to(LocalTime.of(6, 0), desk.room().settings().zone());
        lookout.turn();
        assertThat(state.line()).contains("The camera is off");
        assertThat(state.mayLook()).isTrue();
        assertThat(driver.isOpen("Lid")).isFalse();

        presenter.look();
        look(1);
        assertThat(driver.isOpen("Lid")).isTrue();
    }

    @Test
    void whenNobodyWatchesTheCameraIsLetGoAndTheSmallViewGoesOnWithIt() {
        driver.plugIn("Lid", wall());
        presenter.open();
        look(1);
        presenter.close();
        look(1);
        assertThat(driver.isOpen("Lid")).isFalse();
        assertThat(pulse.beats).isFalse();

        presenter.accompany();
        look(1);

        assertThat(driver.isOpen("Lid")).isTrue();
        lookout.end();
        assertThat(driver.isOpen("Lid")).isFalse();
    }

    private String card(String cage) {
        return CardFaces.code(desk.room(), desk.room().cage(cage).orElseThrow()).text();
    }

    private void look(int times) {
        for (int i = 0; i < times; i++) {
            clock.pass(Duration.ofMillis(100));
            lookout.beat();
        }
    }

    private static BufferedImage wall() {
        BufferedImage wall = new BufferedImage(320, 240, BufferedImage.TYPE_3BYTE_BGR);
        wall.getGraphics().fillRect(0, 0, 320, 240);
        return wall;
    }

    private static final class Beating implements Lookout.Pulse {

        private boolean beats;

        @Override
        public void start() {
            beats = true;
        }

        @Override
        public void stop() {
            beats = false;
        }
    }

    private static final class NoSmall implements Small {

        @Override
        public boolean isOn() {
            return false;
        }

        @Override
        public void on() {
            throw new AssertionError("nobody asked for the small view");
        }

        @Override
        public void off() {
            throw new AssertionError("there is no small view");
        }
    }
}
