package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.EggSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.Room;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Lying;
import org.cagewall.room.nest.Stage;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every nest: two cages with rounds, fosters and chicks by chance, each from a seed of its own. */
class AnyNestTest {

    private static final List<String> SPECIES =
            Timetables.shipped().stream().map(Timetable::species).toList();

    static Stream<Long> seeds() {
        return Stream.iterate(1L, seed -> seed <= 200, seed -> seed + 1);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void everyWindowsDaysRise(long seed) {
        assertThat(new Nests(seed).windows(new Random(1)).values()).isNotEmpty().allSatisfy(window -> assertThat(
                        List.of(window.earliest(), window.expected(), window.latest()))
                .isSorted());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theSameFactsInAnyOrderGiveTheSameWindows(long seed) {
        Nests nests = new Nests(seed);

        assertThat(nests.windows(new Random(seed))).isEqualTo(nests.windows(new Random(seed + 1000)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aRingReplacesOnlyTheWindowOfRinging(long seed) {
        Nests nests = new Nests(seed);
        nests.inCare().ifPresent(egg -> {
            Map<String, Window> before = nests.windows(new Random(1));
            egg.ringed(egg.hatched().plusDays(7));

            String chick = nests.name(egg);
            assertThat(changed(before, nests.windows(new Random(1))))
                    .isSubsetOf(List.of(chick + " ringing", chick + " ring check"));
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aPippedEggKeepsItsHatching(long seed) {
        Nests nests = new Nests(seed);
        nests.full().ifPresent(egg -> {
            Map<String, Window> before = nests.windows(new Random(1));
            egg.pipped(day(19));

            String name = nests.name(egg);
            assertThat(changed(before, nests.windows(new Random(1))))
                    .as("it is not looked at against the light any more")
                    .contains(name + " pip")
                    .isSubsetOf(List.of(name + " pip", name + " first look", name + " second look"));
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void aChickOutOfTheBoxChangesNothingOfTheOthers(long seed) {
        Nests nests = new Nests(seed);
        nests.inCare().ifPresent(egg -> {
            Map<String, Window> before = nests.windows(new Random(1));
            egg.out(egg.hatched().plusDays(30));

            String chick = nests.name(egg);
            assertThat(changed(before, nests.windows(new Random(1)))).allSatisfy(name -> assertThat(name)
                    .satisfiesAnyOf(
                            it -> assertThat(it).isEqualTo(chick + " out of box"),
                            it -> assertThat(it).contains("nest"),
                            it -> assertThat(it).contains("stage")));
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void thereAndBackOnOneDayChangesNoHatching(long seed) {
        Nests nests = new Nests(seed);
        nests.atHome().ifPresent(egg -> {
            Map<String, Window> before = nests.hatchings();
            egg.moved(nests.other(egg), egg.laid().plusDays(seed % 5));
            egg.moved(nests.home(egg), egg.laid().plusDays(seed % 5));

            assertThat(nests.hatchings()).isEqualTo(before);
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anEggThatWasSatHatchesAsIfItHadStayedHoweverLongItIsAway(long seed) {
        Nests nests = new Nests(seed);
        nests.atHome().ifPresent(egg -> {
            Map<String, Window> before = nests.hatchings();
            LocalDate sat = nests.satFrom(egg);
            egg.moved(nests.other(egg), sat.plusDays(1));
            assertThat(nests.hatchings()).isEqualTo(before);

            egg.moved(nests.home(egg), sat.plusDays(1 + seed % 9));
            assertThat(nests.hatchings()).isEqualTo(before);
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void onAnyDayNoOpenStageOfPartingBeginsBeforeAnOpenOneBeforeItHasEndedNorBeforeToday(long seed) {
        LocalDate today = day(30 + (int) (seed % 90));
        for (PartingOutlook parting : new Nests(seed).partings()) {
            List<Window> open = Stream.of(Stage.values())
                    .map(parting.on(today)::stage)
                    .filter(StageOutlook::isOpen)
                    .flatMap(stage -> stage.due().stream())
                    .map(Due::window)
                    .toList();
            for (int i = 1; i < open.size(); i++) {
                assertThat(open.get(i).earliest())
                        .isAfterOrEqualTo(open.get(i - 1).latest())
                        .isAfter(today);
            }
        }
    }

    private static Set<String> changed(Map<String, Window> before, Map<String, Window> after) {
        Set<String> names = new TreeSet<>(before.keySet());
        names.addAll(after.keySet());
        names.removeIf(name -> Optional.ofNullable(before.get(name)).equals(Optional.ofNullable(after.get(name))));
        return names;
    }

    /** Two cages, furnished by chance. */
    private static final class Nests {

        private final Random chance;
        private final NestSketch sketch;
        private final Home first;
        private final Home second;
        private final List<EggSketch> eggs = new ArrayList<>();

        Nests(long seed) {
            chance = new Random(seed);
            sketch = new NestSketch(SPECIES.get(chance.nextInt(SPECIES.size())));
            first = furnish("B3");
            second = furnish("B4");
        }

        private Home furnish(String name) {
            Home home = sketch.home(name, day(-20)).box(BoxStep.ON, day(-18));
            Clutch clutch = home.round();
            LocalDate laid = day(1 + chance.nextInt(4));
            for (int i = 1 + chance.nextInt(6); i > 0; i--) {
                EggSketch egg = clutch.egg(laid);
                eggs.add(egg);
                befall(egg);
                laid = laid.plusDays(1L + chance.nextInt(3));
            }
            if (chance.nextInt(3) == 0) {
                clutch.sitting(day(3 + chance.nextInt(4)));
            }
            if (chance.nextInt(4) == 0) {
                home.parting(day(60));
            }
            if (chance.nextInt(3) == 0) {
                clutch.ended(day(55));
                eggs.add(home.round().egg(day(57)));
            }
            return home;
        }

        private void befall(EggSketch egg) {
            if (chance.nextInt(6) == 0) {
                egg.about();
            }
            switch (chance.nextInt(5)) {
                case 0 -> egg.candled(EggFinding.CLEAR, egg.laid().plusDays(9));
                case 1 -> egg.candled(EggFinding.FULL, egg.laid().plusDays(9));
                case 2 -> egg.hatched(egg.laid().plusDays(18));
                default -> {}
            }
        }

        List<PartingOutlook> partings() {
            return Stream.of(first, second)
                    .flatMap(home -> sketch.outlook(home).parting().stream())
                    .toList();
        }

        Map<String, Window> windows(Random order) {
            Room room = sketch.room(order);
            Almanac almanac = Almanac.of(room);
            Map<String, Window> windows = new TreeMap<>();
            room.cages().forEach(cage -> tell(windows, cage.name(), almanac.nest(cage)));
            return windows;
        }

        private static void tell(Map<String, Window> windows, String cage, Outlook outlook) {
            outlook.eggs().forEach(egg -> {
                String name = name(egg.lying());
                put(windows, name + " first look", egg.firstLook());
                put(windows, name + " second look", egg.secondLook());
                put(windows, name + " pip", egg.pip());
                put(windows, name + " hatch", egg.hatch());
            });
            outlook.chicks().forEach(chick -> {
                String name = name(chick.lying());
                put(windows, name + " eyes", chick.eyes().map(Due::expected));
                put(windows, name + " ringing", chick.ringing());
                put(windows, name + " ring check", chick.ringCheck());
                put(windows, name + " out of box", chick.outOfBox());
                put(windows, name + " independent", chick.independent());
            });
            outlook.rounds().forEach(round -> {
                String name = cage + " round " + round.round().number();
                put(windows, name + " sitting", round.sitting());
                put(windows, name + " next round", round.nextRound());
                put(windows, name + " next egg", round.nextEgg().map(next -> Due.expected(next.window())));
            });
            put(windows, cage + " first egg", outlook.firstEgg());
            put(windows, cage + " nest backs", outlook.backs());
            put(windows, cage + " nest look", outlook.nestLook().map(Window::on).map(Due::expected));
            outlook.parting().ifPresent(parting -> Stream.of(Stage.values())
                    .forEach(stage -> put(
                            windows,
                            cage + " stage " + stage,
                            parting.stage(stage).due())));
        }

        private static void put(Map<String, Window> windows, String name, Optional<Due> due) {
            due.ifPresent(it -> windows.put(name, it.window()));
        }

        private static String name(Lying lying) {
            return "egg " + lying.egg().entry();
        }

        String name(EggSketch egg) {
            return "egg " + egg.entry();
        }

        Map<String, Window> hatchings() {
            Map<String, Window> hatchings = windows(new Random(1));
            hatchings.keySet().removeIf(name -> !name.endsWith(" hatch"));
            return hatchings;
        }

        LocalDate satFrom(EggSketch egg) {
            Room room = sketch.room();
            Almanac almanac = Almanac.of(room);
            return room.pairs().stream()
                    .flatMap(pair -> room.nest(room.cage(pair.cage()).orElseThrow()).all().stream())
                    .filter(lying -> lying.egg().entry() == egg.entry())
                    .findFirst()
                    .flatMap(almanac::satFrom)
                    .orElseThrow()
                    .day();
        }

        Home home(EggSketch egg) {
            return egg.home();
        }

        Home other(EggSketch egg) {
            return egg.home() == first ? second : first;
        }

        Optional<EggSketch> inCare() {
            return eggs.stream().filter(EggSketch::isHatched).findFirst();
        }

        Optional<EggSketch> full() {
            return eggs.stream()
                    .filter(egg -> !egg.isHatched() && egg.isCandled(EggFinding.FULL))
                    .findFirst();
        }

        Optional<EggSketch> atHome() {
            return eggs.stream().filter(egg -> !egg.isHatched()).findFirst();
        }
    }
}
