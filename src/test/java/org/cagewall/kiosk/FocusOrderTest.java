package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.WindowMode;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/**
 * A real Tab key goes once round every screen of the demo birdroom: through every touchable part, none twice, in the
 * order of reading, and the part that has the keyboard shows it (WCAG 2.2: 2.1.2, 2.4.3, 2.4.7).
 */
@RequiresDisplay
@Tag("slow")
class FocusOrderTest {

    /** Screens that look otherwise for a sitter; the rest is walked through as a keeper alone. */
    private static final Set<String> SITTERS = Set.of("wall", "cage-A1", "today", "phone", "close");

    @TempDir
    Path folder;

    private Desk desk;
    private Kiosk kiosk;
    private Live live;

    @BeforeEach
    void open() {
        TestDesk.demo(folder.resolve("room")).close();
        desk = Desk.open(
                DataFolder.open(folder.resolve("room")), Lanes.answeringOn(new EventThread()), TestDesk.clocks());
        live = Live.open(() -> {
            kiosk = Kiosk.open(desk, new WindowMode.FullScreen(Optional.empty()), Words.english(), () -> {});
            return kiosk.shell().orElseThrow();
        });
    }

    @AfterEach
    void close() {
        live.close();
        desk.close();
    }

    @TestFactory
    Stream<DynamicTest> tabGoesOnceRoundEveryScreenInTheOrderOfReading() {
        return Stream.of("Ines", "Tomas").flatMap(person -> screens()
                .filter(place -> person.equals("Ines") || SITTERS.contains(place.getKey()))
                .map(place -> dynamicTest(person + ": " + place.getKey(), () -> {
                    goTo(person, place.getValue());
                    assertRoundIsWhole(FocusRound.of(live));
                })));
    }

    @TestFactory
    Stream<DynamicTest> tabGoesOnceRoundEveryPartOfTheSetUpAndEveryForm() {
        List<List<String>> ways = List.of(
                List.of("nav.setup", "tab.people"),
                List.of("nav.setup", "tab.food", "cage.A1"),
                List.of("nav.setup", "place.B2"),
                List.of("nav.setup", "new-wall"),
                List.of("nav.setup", "tab.people", "person.Tomas"),
                List.of("nav.setup", "tab.room"),
                List.of("nav.setup", "tab.rings"),
                List.of("nav.setup", "tab.days"),
                List.of("nav.setup", "tab.days", "days.incubation"),
                List.of("nav.setup", "tab.backup"),
                List.of("nav.cards", "choose.all", "lay-out"),
                List.of("nav.birds", "new-bird"),
                List.of("nav.handover", "change"));
        return ways.stream()
                .map(way -> dynamicTest(String.join(", ", way), () -> {
                    goTo("Ines", new Destination.Wall());
                    way.forEach(live::press);
                    assertRoundIsWhole(FocusRound.of(live));
                }));
    }

    @TestFactory
    Stream<DynamicTest> tabGoesOnceRoundEveryPageOfTheSittersList() {
        List<List<String>> ways = List.of(
                List.of("nav.close", "say-why"),
                List.of("nav.close", "send"),
                List.of("nav.today", "part.morning", "act.different", "signs.puffed-up", "to-questions"));
        return ways.stream()
                .map(way -> dynamicTest(String.join(", ", way), () -> {
                    goTo("Tomas", new Destination.Wall());
                    way.forEach(live::press);
                    assertRoundIsWhole(FocusRound.of(live));
                }));
    }

    /** Every screen, and of the pages of cages one for each use, with a pair and without. */
    private Stream<Map.Entry<String, Destination>> screens() {
        Set<String> kinds = new HashSet<>();
        return EveryScreenTest.places(desk).entrySet().stream()
                .filter(place -> kinds.add(desk.room()
                        .cage(place.getKey().replace("cage-", ""))
                        .map(cage -> cage.use() + " " + desk.room().pairIn(cage).isPresent())
                        .orElse(place.getKey())));
    }

    private void goTo(String person, Destination place) {
        new EventThread().finish(() -> {
            kiosk.pen().takenBy(person);
            kiosk.navigator().go(place);
        });
    }

    private static void assertRoundIsWhole(FocusRound round) {
        assertThat(round.names()).as("parts that Tab reaches").doesNotHaveDuplicates();
        assertThat(round.skipped()).as("touchable parts that Tab skips").isEmpty();
        assertThat(round.outOfOrder())
                .as("parts reached before what is read first")
                .isEmpty();
        assertThat(round.unseen())
                .as("parts that do not show that they have the keyboard")
                .isEmpty();
    }
}
