package org.cagewall.kiosk;

import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.TestFactory;

/** The screens of every day in large letters, owner's bar and sitter's bar below them: whole text, targets, no overlap. */
class LargeLettersTest extends WithDemo {

    @TestFactory
    Stream<DynamicTest> everyDaysScreensFitInTheLargest() {
        return screens(TextSize.LARGEST);
    }

    @Tag("slow")
    @TestFactory
    Stream<DynamicTest> everyDaysScreensFitInTheOthers() {
        return screens(TextSize.LARGE, TextSize.LARGER);
    }

    private Stream<DynamicTest> screens(TextSize... sizes) {
        return Stream.of(sizes)
                .flatMap(size -> Stream.of("Ines", "Tomas").flatMap(person -> places().entrySet().stream()
                        .map(place -> dynamicTest(
                                size + ", " + person + ": " + place.getKey(),
                                () -> fits(size, person, place.getKey(), place.getValue())))));
    }

    private void fits(TextSize size, String person, String name, Destination place) {
        Layers[] stage = new Layers[1];
        Kiosk[] kiosk = new Kiosk[1];
        Painted painted = Painted.of(Light.DAY, size, 1280, 800, () -> {
            stage[0] = new Layers(WORDS);
            kiosk[0] = Kiosk.on(stage[0], desk, WORDS);
            kiosk[0].pen().takenBy(person);
            kiosk[0].navigator().go(place);
            return stage[0];
        });
        painted.png("letters-" + size + "-" + person + "-" + name).assertFit();
        painted.after(kiosk[0]::end);
    }

    private static Map<String, Destination> places() {
        Map<String, Destination> places = new LinkedHashMap<>();
        places.put("wall", new Destination.Wall());
        List.of("A1", "B1", "C1").forEach(cage -> places.put("cage-" + cage, Destination.Cage.byHand(cage)));
        places.put("today", new Destination.Today());
        places.put("ahead", new Destination.Ahead());
        places.put("handover", new Destination.Handover());
        places.put("scan", new Destination.Scan());
        places.put("phone", new Destination.Phone());
        places.put("close", new Destination.CloseTheDay());
        return places;
    }
}
