package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.cagewall.kiosk.shell.CameraSettings;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.scan.ScriptedDriver;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The small view of the camera beside the screens of the demo birdroom: it covers nothing and cuts nothing short. */
class SmallViewTest extends WithDemo {

    private final ScriptedDriver driver = new ScriptedDriver();

    @TestFactory
    Stream<DynamicTest> theScreensBesideItFitInTheLargestLettersThatItIsShownWith() {
        return screens(TextSize.LARGER);
    }

    @Tag("slow")
    @TestFactory
    Stream<DynamicTest> theScreensBesideItFitInSmallerLetters() {
        return screens(TextSize.NORMAL, TextSize.LARGE);
    }

    private Stream<DynamicTest> screens(TextSize... sizes) {
        return Stream.of(sizes).flatMap(size -> places().entrySet().stream()
                .map(place -> dynamicTest(size + ": " + place.getKey(), () -> {
                    Painted painted = beside(size, "Ines", place.getValue());
                    painted.png("small-view-" + size + "-" + place.getKey()).assertFit();
                    assertThat(painted.names()).contains("live-small", "look-small", "small-away");
                })));
    }

    @ParameterizedTest
    @EnumSource(names = {"NORMAL", "LARGE", "LARGER"})
    void theSittersListBesideItHasTheWayToThePhoneAboveIt(TextSize size) {
        Painted painted = beside(size, "Tomas", new Destination.Today());

        painted.png("small-view-" + size + "-today-sitter").assertFit();
        assertThat(painted.names()).contains("live-small", "stop", "safety", "list");
    }

    @Test
    void itStaysOnOverANewStartWithoutAskingTheDriverForAnything() {
        beside(TextSize.NORMAL, "Ines", new Destination.Wall());

        assertThat(driver.said()).isEmpty();
    }

    @Test
    void whatNeedsTheWholeWidthHasIt() {
        assertThat(beside(TextSize.NORMAL, "Ines", new Destination.Ahead()).names())
                .doesNotContain("live-small");
        assertThat(beside(TextSize.LARGEST, "Ines", new Destination.Wall()).names())
                .doesNotContain("live-small");
    }

    @Test
    void putAwayItIsGoneAndStaysAway() {
        Painted painted =
                beside(TextSize.NORMAL, "Ines", new Destination.Wall()).press("small-away");

        assertThat(painted.names()).doesNotContain("live-small").contains("tile.A1");
        assertThat(KioskSettings.read(desk.folder().kioskProperties()).camera().small())
                .isEqualTo(CameraSettings.SmallView.OFF);
    }

    private Painted beside(TextSize size, String person, Destination place) {
        KioskSettings.keepSmallView(desk.folder().kioskProperties(), CameraSettings.SmallView.ON);
        return Painted.of(Light.DAY, size, 1280, 800, () -> {
            Layers stage = new Layers(WORDS);
            Kiosk kiosk = Kiosk.on(stage, desk, WORDS, driver.cameras(System::nanoTime));
            kiosk.pen().takenBy(person);
            kiosk.navigator().go(place);
            return stage;
        });
    }

    private Map<String, Destination> places() {
        Map<String, Destination> places = new LinkedHashMap<>();
        places.put("wall", new Destination.Wall());
        places.put("today", new Destination.Today());
        desk.room().cages().stream()
                .filter(cage -> cage.inUse())
                .forEach(cage -> places.put("cage-" + cage.name(), Destination.Cage.byHand(cage.name())));
        return places;
    }
}
