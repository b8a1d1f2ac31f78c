package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.awt.Component;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.HandClock;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.CardFaces;
import org.cagewall.scan.Cameras;
import org.cagewall.scan.ScriptedDriver;
import org.cagewall.scan.SymbolPictures;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The camera's screen as it looks with every trouble, and what comes of an old card before it, in all letters. */
class ScanScreenTest {

    @TempDir
    Path folder;

    private HandClock clock;
    private ScriptedDriver driver;
    private Desk desk;
    private final List<Kiosk> kiosks = new ArrayList<>();
    private int rooms;

    @BeforeEach
    void open() {
        clock = new HandClock();
        driver = new ScriptedDriver();
        Path room = folder.resolve("room-" + rooms++);
        TestDesk.furnished(room).close();
        desk = Desk.open(DataFolder.open(room), Lanes.inline(), new Clocks(clock, Optional.of(TestDesk.TODAY)));
        clock.to(LocalTime.of(9, 0), desk.room().settings().zone());
    }

    /** A kiosk that is not ended would look through its camera for as long as other tests run. */
    @AfterEach
    void close() {
        new EventThread().finish(() -> kiosks.forEach(Kiosk::end));
        kiosks.clear();
        desk.close();
    }

    /** What happens before the camera, and what the screen then says. */
    private record Case(Consumer<Kiosk> happens, String said) {}

    @TestFactory
    Stream<DynamicTest> everyTroubleIsAWholeSentenceInTheSmallestAndTheLargestLetters() {
        return troubles(TextSize.NORMAL, TextSize.LARGEST);
    }

    @Tag("slow")
    @TestFactory
    Stream<DynamicTest> everyTroubleIsAWholeSentenceInTheLettersBetween() {
        return troubles(TextSize.LARGE, TextSize.LARGER);
    }

    private Stream<DynamicTest> troubles(TextSize... sizes) {
        return Stream.of(sizes).flatMap(size -> cases().entrySet().stream()
                .map(each -> dynamicTest(size + ": " + each.getKey(), () -> {
                    close();
                    open();
                    Painted painted = scan(size, each.getValue().happens());
                    painted.png("scan-" + size + "-" + each.getKey()).assertFit();
                    assertThat(painted.texts())
                            .anyMatch(text -> text.contains(each.getValue().said()));
                    painted.maybe("look").ifPresent(button -> assertIsInSight(painted, button));
                })));
    }

    /** What mends it needs no scrolling. */
    private static void assertIsInSight(Painted painted, Component button) {
        JComponent side = painted.find("side", JComponent.class);
        assertThat(SwingUtilities.convertPoint(button, 0, button.getHeight(), side).y)
                .isLessThanOrEqualTo(side.getHeight());
    }

    private Map<String, Case> cases() {
        Map<String, Case> cases = new LinkedHashMap<>();
        cases.put("none", new Case(kiosk -> {}, "Plug one in"));
        cases.put(
                "busy",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", wall());
                            driver.useElsewhere();
                            lookAnew(kiosk);
                            driver.leaveElsewhere();
                            driver.unplug("Lid");
                        },
                        "Close any other program"));
        cases.put(
                "denied",
                new Case(
                        kiosk -> {
                            driver.deny();
                            lookAnew(kiosk);
                            driver.allow();
                        },
                        "may not use the camera"));
        cases.put(
                "unplugged",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", wall());
                            lookAnew(kiosk);
                            driver.unplug("Lid");
                            look(kiosk, Duration.ofSeconds(1));
                            look(kiosk, Duration.ofSeconds(4));
                        },
                        "was unplugged"));
        cases.put(
                "covered",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", new BufferedImage(320, 240, BufferedImage.TYPE_3BYTE_BGR));
                            lookAnew(kiosk);
                            look(kiosk, Duration.ofSeconds(4));
                            driver.unplug("Lid");
                        },
                        "only black"));
        cases.put(
                "unused",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", wall());
                            lookAnew(kiosk);
                            look(kiosk, Duration.ofSeconds(61));
                            driver.unplug("Lid");
                        },
                        "for a minute"));
        cases.put(
                "quiet-hours",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", wall());
                            lookAnew(kiosk);
                            TestDesk.tell(desk, "{\"deed\":\"room-set\",\"quiet\":\"08:00-10:00\",\"by\":\"Ines\"}");
                            look(kiosk, Duration.ofSeconds(1));
                            driver.unplug("Lid");
                        },
                        "quiet hours"));
        cases.put(
                "foreign",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", SymbolPictures.of("SEED"));
                            lookAnew(kiosk);
                            driver.unplug("Lid");
                        },
                        "It says: SEED"));
        cases.put(
                "two-cameras",
                new Case(
                        kiosk -> {
                            driver.plugIn("Lid", wall()).plugIn("On the long arm over the bench", wall());
                            lookAnew(kiosk);
                            driver.unplug("Lid").unplug("On the long arm over the bench");
                        },
                        "in the frame"));
        return cases;
    }

    @TestFactory
    Stream<DynamicTest> aComputerThatCannotHaveACameraSaysSoInAllLetters() {
        return Stream.of(TextSize.values())
                .map(size -> dynamicTest(size.toString(), () -> {
                    Cameras none = () -> new Cameras.Found(List.of(), Optional.of(Message.of("scan.camera.no-driver")));
                    Painted painted = painted(size, none, kiosk -> {});
                    painted.png("scan-" + size + "-no-driver").assertFit();
                    assertThat(painted.texts()).anyMatch(text -> text.contains("cannot be used on this computer"));
                }));
    }

    @ParameterizedTest
    @EnumSource
    void anOldCardBesideAnotherOneIsAskedAboutInWholeSentences(TextSize size) {
        String other = code("A1");
        String old = code("A2");
        TestDesk.tell(desk, """
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                {"deed":"ring-corrected","bird":"HB 24-120","ring":"HB 24-121","by":"Ines"}
                """);

        Painted painted = scan(size, kiosk -> {
            driver.plugIn("Lid", SymbolPictures.of(old, other));
            lookAnew(kiosk);
        });

        painted.png("old-card-" + size).assertFit();
        assertThat(painted.texts())
                .contains("The card of A2 is out of date")
                .anyMatch(text -> text.contains("HB 24-121") && text.contains("Another code was in view"));
        assertThat(painted.names()).contains("answer.print-anew", "answer.pencilled", "answer.later");
    }

    private String code(String cage) {
        return CardFaces.code(desk.room(), desk.room().cage(cage).orElseThrow()).text();
    }

    private Painted scan(TextSize size, Consumer<Kiosk> happens) {
        return painted(size, driver.cameras(clock::nanos), happens);
    }

    private Painted painted(TextSize size, Cameras cameras, Consumer<Kiosk> happens) {
        return Painted.of(Light.DAY, size, 1280, 800, () -> {
                    Layers stage = new Layers(Words.english());
                    Kiosk kiosk = Kiosk.on(stage, desk, Words.english(), cameras);
                    kiosks.add(kiosk);
                    kiosk.pen().takenBy("Ines");
                    kiosk.navigator().go(new Destination.Scan());
                    return stage;
                })
                .after(() -> happens.accept(kiosks.get(0)));
    }

    /** The screen is opened again, so that the cameras are found anew, and the first picture comes. */
    private void lookAnew(Kiosk kiosk) {
        kiosk.navigator().go(new Destination.Scan());
        look(kiosk, Duration.ofMillis(100));
    }

    private void look(Kiosk kiosk, Duration later) {
        clock.pass(later);
        kiosk.look();
    }

    private static BufferedImage wall() {
        BufferedImage wall = new BufferedImage(640, 480, BufferedImage.TYPE_3BYTE_BGR);
        wall.getGraphics().fillRect(0, 0, 640, 480);
        return wall;
    }
}
