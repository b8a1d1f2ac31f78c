package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.EggSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.Stage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A round of each species, day by day: whatever is expected on a day happens on it and is recorded. The days beside each
 * were worked out by hand from its timetable; the first egg is laid on day 1.
 */
class SpeciesRoundTest {

    private static final int LAST_DAY = 130;

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            budgerigar           | 1 3 5 7 9   | 21 21 23 25 27    | 29 29 31 33 35    | 53 53 55 57 59    | 63 63 65 67 69    | 59 61 69 83
            canary               | 1 2 3 4     | 16 16 16 17       | 22 22 22 23       | 32 32 32 33       | 46 46 46 47       | 33 35 47 61
            zebra finch          | 1 2 3 4 5   | 17 17 17 18 19    | 25 25 25 26 27    | 38 38 38 39 40    | 59 59 59 60 61    | 40 42 61 75
            bengalese            | 1 2 3 4 5   | 19 19 19 19 20    | 28 28 28 28 29    | 40 40 40 40 41    | 57 57 57 57 58    | 41 43 58 72
            gouldian             | 1 2 3 4 5 6 | 20 20 20 20 20 21 | 29 29 29 29 29 30 | 42 42 42 42 42 43 | 60 60 60 60 60 61 | 43 45 61 75
            cockatiel            | 1 3 5 7 9   | 23 23 25 27 29    | 33 33 35 37 39    | 56 56 58 60 62    | 83 83 85 87 89    | 62 64 89 103
            peach-faced lovebird | 1 3 5 7 9   | 26 26 28 30 32    | 36 36 38 40 42    | 68 68 70 72 74    | 83 83 85 87 89    | 74 76 89 103
            bourke               | 1 3 5 7 9   | 21 21 23 25 27    | 28 28 30 32 34    | 49 49 51 53 55    | 66 66 68 70 72    | 55 57 72 86
            """)
    void aRoundRunsFromTheFirstEggToThePairApart(
            String species, String laid, String hatched, String ringed, String out, String weaned, String parted) {
        Replay replay = new Replay(species);

        replay.run();

        assertThat(replay.days("laid")).isEqualTo(laid);
        assertThat(replay.days("hatched")).isEqualTo(hatched);
        assertThat(replay.days("ringed")).isEqualTo(ringed);
        assertThat(replay.days("out")).isEqualTo(out);
        assertThat(replay.days("weaned")).isEqualTo(weaned);
        assertThat(replay.days("parted")).isEqualTo(parted);
        assertThat(replay.state(LAST_DAY)).isEqualTo(NestState.EMPTY);
    }

    /** One cage, to which happens what is expected of it. */
    private static final class Replay {

        private final NestSketch sketch;
        private final Home home;
        private final int clutch;
        private final Map<String, List<Integer>> happened = new TreeMap<>();
        private Optional<Clutch> round = Optional.empty();

        Replay(String species) {
            Timetable table = Timetables.of(species).orElseThrow();
            LocalDate box = day(1 - table.expected(Timing.FIRST_EGG).orElseThrow());
            sketch = new NestSketch(species);
            home = sketch.home("B3", box).box(BoxStep.ON, box);
            clutch = table.expected(Timing.CLUTCH).orElseThrow();
        }

        void run() {
            for (int today = 1; today <= LAST_DAY; today++) {
                lay(today);
                hatch(today);
                ofChicks(today);
                part(today);
            }
        }

        private void lay(int today) {
            Optional<LocalDate> expected = round.isEmpty()
                    ? outlook().firstEgg().map(due -> due.window().expected())
                    : outlook().nextEgg().map(next -> next.window().expected());
            if (laid() < clutch && expected.filter(day(today)::equals).isPresent()) {
                round = round.or(() -> Optional.of(home.round()));
                round.orElseThrow().egg(day(today));
                note("laid", today);
            }
        }

        private int laid() {
            return happened.getOrDefault("laid", List.of()).size();
        }

        private void hatch(int today) {
            for (EggOutlook egg : outlook().eggs()) {
                if (isNow(egg.hatch(), today)) {
                    sketched(egg.lying().egg().mark()).hatched(day(today));
                    note("hatched", today);
                }
            }
        }

        private void ofChicks(int today) {
            for (ChickOutlook chick : outlook().chicks()) {
                EggSketch egg = sketched(chick.lying().egg().mark());
                if (isNow(chick.ringing(), today)) {
                    egg.ringed(day(today));
                    note("ringed", today);
                }
                if (isNow(chick.outOfBox(), today)) {
                    egg.out(day(today));
                    note("out", today);
                }
                if (isNow(chick.independent(), today)) {
                    egg.weaned(day(today));
                    note("weaned", today);
                }
            }
        }

        private void part(int today) {
            for (Stage stage : Stage.values()) {
                if (outlook()
                        .parting()
                        .filter(parting -> isNow(parting.stage(stage).due(), today))
                        .isPresent()) {
                    switch (stage) {
                        case BOX_TURNED -> home.box(BoxStep.TURNED, day(today));
                        case BOX_OFF -> home.box(BoxStep.OFF, day(today));
                        case COCK_OUT -> home.cockOut(day(today));
                        case HEN_OUT -> home.henOut(day(today));
                    }
                    note("parted", today);
                }
            }
        }

        private static boolean isNow(Optional<Due> due, int today) {
            return due.filter(it -> it.isOpen() && it.window().expected().equals(day(today)))
                    .isPresent();
        }

        private EggSketch sketched(String mark) {
            return round.orElseThrow().egg(Integer.parseInt(mark));
        }

        private Outlook outlook() {
            return sketch.outlook(home);
        }

        NestState state(int today) {
            return outlook().state(day(today));
        }

        private void note(String what, int today) {
            happened.computeIfAbsent(what, none -> new ArrayList<>()).add(today);
        }

        String days(String what) {
            return happened.getOrDefault(what, List.of()).stream()
                    .map(String::valueOf)
                    .collect(Collectors.joining(" "));
        }
    }
}
