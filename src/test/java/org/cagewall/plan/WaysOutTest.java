package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.EggSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No way out of a nest that is late harms what lives in it. 18 days of incubation, of which nine are half, and 42 to feeding
 * itself are the timetable's.
 */
class WaysOutTest {

    private static final LocalDate TODAY = day(30);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 300);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noWayOutOfAnyNestTakesTheBoxFromChicksOrGivesUpEggsHalfWayToHatching(long seed) {
        Random chance = new Random(seed);
        Room room = anyNests(chance);
        Almanac almanac = Almanac.of(room);
        LocalDate clearBy = TODAY.plusDays(chance.nextInt(70));
        for (Policy policy : Policy.values()) {
            for (NestAhead nest : ahead(room, clearBy, policy).nests()) {
                Outlook outlook = almanac.nest(nest.cage());
                for (WayOut way : nest.waysOut()) {
                    switch (way.way()) {
                        case BOX_OFF -> {
                            assertThat(outlook.chicksHere())
                                    .allMatch(chick -> chick.chick().outOfBox().isPresent());
                            assertThat(outlook.eggsHere()).noneMatch(WaysOutTest::isHalfWay);
                        }
                        case DUMMIES ->
                            assertThat(outlook.eggsHere().stream()
                                            .filter(WaysOutTest::isHalfWay)
                                            .map(egg ->
                                                    egg.lying().name(nest.cage().id())))
                                    .doesNotContainAnyElementsOf(named(way));
                        default -> {}
                    }
                }
            }
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void whoeverIsLateForYoungCanGoLaterHaveAKeeperStandInOrLeaveTheNest(long seed) {
        Random chance = new Random(seed);
        Room room = anyNests(chance);

        assertThat(ahead(room, TODAY.plusDays(chance.nextInt(70)), Policy.WEANED)
                        .nests())
                .filteredOn(nest -> !nest.waysOut().isEmpty())
                .allSatisfy(nest -> assertThat(nest.waysOut())
                        .extracting(WayOut::way)
                        .endsWith(WayOut.Way.LATER, WayOut.Way.KEEPER, WayOut.Way.SITTER));
    }

    @Test
    void whoeverHasGoneIsNotToldToGoLater() {
        NestSketch sketch = new NestSketch();
        sketch.home("A1", day(0)).box(BoxStep.ON, day(2)).round().egg(day(28));
        sketch.away(day(29), day(45));

        assertThat(ahead(sketch.room(), day(40), Policy.WEANED).nests().get(0).waysOut())
                .extracting(WayOut::way)
                .doesNotContain(WayOut.Way.LATER)
                .endsWith(WayOut.Way.KEEPER, WayOut.Way.SITTER);
    }

    private static List<String> named(WayOut way) {
        return way.words().args().size() < 2
                ? List.of()
                : ((List<?>) way.words().args().get(1))
                        .stream().map(String::valueOf).toList();
    }

    private static boolean isHalfWay(EggOutlook egg) {
        return egg.lying().egg().mayHatch()
                && egg.satFrom()
                        .filter(sat -> 2 * ChronoUnit.DAYS.between(sat.day(), TODAY) > 18)
                        .isPresent();
    }

    /** Three nests at any stage on day 30: some eggs clear, some full, some hatched, some chicks out of the box. */
    private static Room anyNests(Random chance) {
        NestSketch sketch = new NestSketch();
        for (String name : List.of("A1", "A2", "A3")) {
            Home home = sketch.home(name, day(-40)).box(BoxStep.ON, day(-38));
            Clutch round = home.round();
            LocalDate laid = day(-30 + chance.nextInt(55));
            for (int i = 1 + chance.nextInt(6); i > 0 && !laid.isAfter(TODAY); i--) {
                befall(round.egg(laid), chance);
                laid = laid.plusDays(1L + chance.nextInt(3));
            }
            if (chance.nextInt(5) == 0) {
                home.parting(TODAY.minusDays(chance.nextInt(5)));
            }
        }
        return sketch.room();
    }

    private static void befall(EggSketch egg, Random chance) {
        LocalDate looked = egg.laid().plusDays(7);
        LocalDate hatched = egg.laid().plusDays(19);
        if (!hatched.isAfter(TODAY) && chance.nextInt(4) > 0) {
            egg.hatched(hatched);
            LocalDate out = hatched.plusDays(32);
            if (!out.isAfter(TODAY) && chance.nextBoolean()) {
                egg.out(out);
            }
        } else if (!looked.isAfter(TODAY)) {
            switch (chance.nextInt(4)) {
                case 0 -> egg.candled(EggFinding.CLEAR, looked);
                case 1 -> {}
                default -> egg.candled(EggFinding.FULL, looked);
            }
        }
    }

    @Test
    void aNestWithFiveChicksIsLeftItsBox() {
        NestSketch sketch = new NestSketch();
        Clutch round =
                sketch.home("A1", day(-40)).box(BoxStep.ON, day(-38)).round().eggs(5, day(1), 2);
        for (int i = 1; i <= 5; i++) {
            round.egg(i).hatched(day(21 + i));
        }

        NestAhead nest = only(sketch.room(), day(40));

        assertThat(nest.waysOut())
                .extracting(WayOut::way)
                .containsExactly(WayOut.Way.LATER, WayOut.Way.KEEPER, WayOut.Way.SITTER);
    }

    /** Sat from day 11: on day 20 nine days, which is half of 18, and on day 21 more. */
    @Test
    void aFullEggIsGivenUpUntilHalfOfItsSittingAndNotAfter() {
        NestSketch sketch = new NestSketch();
        sketch.home("A1", day(1))
                .box(BoxStep.ON, day(1))
                .round()
                .sitting(day(11))
                .egg(day(11))
                .candled(EggFinding.FULL, day(17));

        assertThat(ways(sketch.room(), day(20))).contains(WayOut.Way.DUMMIES, WayOut.Way.BOX_OFF);
        assertThat(ways(sketch.room(), day(21))).doesNotContain(WayOut.Way.DUMMIES, WayOut.Way.BOX_OFF);
    }

    private static List<WayOut.Way> ways(Room room, LocalDate today) {
        return Ahead.of(room, today, question(day(40), Policy.WEANED)).nests().get(0).waysOut().stream()
                .map(WayOut::way)
                .toList();
    }

    /** Sat from day 11: hatching about day 29, to ring about day 37, feeding itself about day 71. */
    @Test
    void eachWayThatLeavesTheNestSaysWhatItAsks() {
        NestSketch sketch = new NestSketch();
        sketch.home("A1", day(1))
                .box(BoxStep.ON, day(1))
                .round()
                .sitting(day(11))
                .egg(day(11))
                .candled(EggFinding.FULL, day(17));
        sketch.set("budgerigar", Timing.CLUTCH, "1 1 1");

        List<WayOut> ways = Ahead.of(sketch.room(), day(25), question(day(28), Policy.WEANED))
                .nests()
                .get(0)
                .waysOut();

        assertThat(ways.stream()
                        .map(way -> Words.english().say(way.words()) + " "
                                + Words.english().say(way.cost())))
                .containsExactly(
                        "Go later: this nest is usually done on 10 May 2026. The day moves by 43 days; nothing is lost."
                                + " To be safe, wait until 27 May 2026.",
                        "Ask a keeper who knows the birds to stand in until about 10 May 2026. To do meanwhile:"
                                + " 1 chick to ring, the first about 6 April 2026,"
                                + " 1 chick to wean, the first about 10 May 2026.",
                        "Leave the nest to hatch. It asks of the sitter: 1 egg may hatch from about 29 March 2026,"
                                + " food for a feeding pair as you write it down for them, the box left shut,"
                                + " a call at once if a chick lies on the floor or the hen stays off the nest,"
                                + " nobody to ring 1 chick, due from about 6 April 2026. Part birds or take chicks away"
                                + " a neighbour cannot; the nest is not done before 10 May 2026.");
    }

    private static NestAhead only(Room room, LocalDate clearBy) {
        return ahead(room, clearBy, Policy.WEANED).nests().get(0);
    }

    private static Ahead ahead(Room room, LocalDate clearBy, Policy policy) {
        return Ahead.of(room, TODAY, question(clearBy, policy));
    }

    private static AheadQuestion question(LocalDate clearBy, Policy policy) {
        return new AheadQuestion(clearBy, policy, 1, new Draws(1, 1));
    }
}
