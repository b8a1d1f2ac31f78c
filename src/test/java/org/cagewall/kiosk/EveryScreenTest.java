package org.cagewall.kiosk;

import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Layers;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Every screen of the demo birdroom, for the owner and for the sitter: whole text, targets, names, no overlap. */
class EveryScreenTest extends WithDemo {

    @TestFactory
    Stream<DynamicTest> everyScreenFits() {
        return Stream.of("Ines", "Tomas").flatMap(person -> places(desk).entrySet().stream()
                .map(place -> dynamicTest(person + ": " + place.getKey(), () -> {
                    Layers[] stage = new Layers[1];
                    Kiosk[] kiosk = new Kiosk[1];
                    Painted painted = Painted.of(1280, 800, () -> {
                        stage[0] = new Layers(WORDS);
                        kiosk[0] = Kiosk.on(stage[0], desk, WORDS);
                        kiosk[0].pen().takenBy(person);
                        kiosk[0].navigator().go(place.getValue());
                        return stage[0];
                    });
                    painted.png("every-" + person + "-" + place.getKey()).assertFit();
                    painted.after(kiosk[0]::end);
                })));
    }

    /** Every screen of this birdroom: the page of each cage, and the others. */
    static Map<String, Destination> places(Desk desk) {
        Map<String, Destination> places = new LinkedHashMap<>();
        places.put("wall", new Destination.Wall());
        desk.room().cages().stream()
                .filter(cage -> cage.inUse())
                .forEach(cage -> places.put("cage-" + cage.name(), Destination.Cage.byHand(cage.name())));
        places.put("today", new Destination.Today());
        places.put("ahead", new Destination.Ahead());
        places.put("handover", new Destination.Handover());
        places.put("cards", new Destination.Cards());
        places.put("birds", new Destination.Birds());
        places.put("setup", new Destination.Setup());
        places.put("scan", new Destination.Scan());
        places.put("phone", new Destination.Phone());
        places.put("close", new Destination.CloseTheDay());
        return places;
    }
}
