package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is drawn, beside answers that can be given exactly. */
class ForecastTest {

    private static final int DRAWS = 10_000;

    /** 17, 18, 21 days: by hand, weights 1/2, 1, 3/4, 1/2, 1/4 on 17 to 21, of 3 together. */
    private static final Map<Integer, Double> INCUBATION =
            Map.of(17, 0.5 / 3, 18, 1.0 / 3, 19, 0.75 / 3, 20, 0.5 / 3, 21, 0.25 / 3);

    /**
     * One full egg, sat from day 1, of which nothing else is known. Of ten usual eggs 8 are full and 7 hatch, and this one
     * is full: (8 + 1) of 11 are full, 7 of 10 hatch, so that a full one hatches with 0.7 x 11 / 9; its chick lives with
     * 0.9. It is in time unless that chick feeds itself too late: the chance of each age, summed over each incubation.
     */
    @ParameterizedTest
    @ValueSource(ints = {56, 60, 63, 66, 70, 78})
    void oneEggIsInTimeWithTheChanceWorkedOutExactly(int by) {
        NestSketch sketch = new NestSketch();
        fullEgg(sketch);
        double chick = 0.7 * 11 / 9 * 0.9;
        double exact = 1 - chick * (1 - fedBy(by - 1));

        Ahead ahead = ahead(sketch.room(), day(10), day(by), 7);

        double spread = Math.sqrt(exact * (1 - exact) / DRAWS);
        assertThat(ahead.nests().get(0).chance()).isCloseTo(exact, within(4 * spread + 1e-12));
    }

    /** Independent after 38, 42, 56 days: weights k/5 on 38 to 42 and (15 - k)/15 on 43 to 56, of 10 together. */
    private static double fedBy(int days) {
        double sum = 0;
        for (Map.Entry<Integer, Double> hatch : INCUBATION.entrySet()) {
            for (int age = 38; age <= 56 && hatch.getKey() + age <= days; age++) {
                double weight = age <= 42 ? (age - 37) / 5.0 : (57 - age) / 15.0;
                sum += hatch.getValue() * weight / 10;
            }
        }
        return sum;
    }

    @Test
    void overManySeedsTheMeansLieWithinThreeStandardErrors() {
        NestSketch sketch = new NestSketch();
        fullEgg(sketch);
        double chick = 0.7 * 11 / 9 * 0.9;
        int seeds = 60;
        int draws = 400;
        // On day 80 the chick, if there is one, feeds itself: the owner left on day 30.
        sketch.away(day(30), day(82));
        Room room = sketch.room();

        double mean = IntStream.rangeClosed(1, seeds)
                .mapToDouble(seed -> Ahead.of(
                                room, day(10), new AheadQuestion(day(30), Policy.WEANED, 1, new Draws(draws, seed)))
                        .days()
                        .get(50)
                        .toTakeAway()
                        .mean())
                .average()
                .orElseThrow();

        assertThat(mean).isCloseTo(chick, within(3 * Math.sqrt(chick * (1 - chick) / (seeds * draws))));
    }

    @Test
    void whereEachStageTakesOneNumberOfDaysTheForecastIsTheWindows() {
        NestSketch sketch = new NestSketch();
        for (Timing timing : List.of(Timing.OUT_OF_BOX, Timing.INDEPENDENT, Timing.RINGING, Timing.INCUBATION)) {
            String days =
                    switch (timing) {
                        case OUT_OF_BOX -> "30 30 30";
                        case INDEPENDENT -> "44 44 44";
                        case RINGING -> "7 7 7";
                        default -> "18 18 18";
                    };
            sketch.set("budgerigar", timing, days);
        }
        Home home = sketch.home("A1", day(1)).box(BoxStep.ON, day(1));
        home.round().egg(day(10)).hatched(day(30));
        home.clutch(0).egg(day(12)).hatched(day(33));
        sketch.away(day(36), day(80));
        Room room = sketch.room();
        Outlook outlook = Almanac.of(room).nest(room.cage("A1").orElseThrow());

        Ahead ahead = ahead(room, day(34), day(36), 3);

        for (DayAhead each : ahead.days()) {
            LocalDate date = each.date();
            assertThat(each.chicksInBox())
                    .as(date.toString())
                    .isEqualTo(sure(outlook.chicks().stream()
                            .filter(chick -> date.isBefore(
                                    chick.outOfBox().orElseThrow().window().expected()))
                            .count()));
            assertThat(each.toRing())
                    .isEqualTo(sure(outlook.chicks().stream()
                            .filter(chick -> ringing(chick).equals(date))
                            .count()));
            assertThat(each.toTakeAway())
                    .isEqualTo(sure(outlook.chicks().stream()
                            .filter(chick -> !date.isBefore(
                                    chick.independent().orElseThrow().window().expected()))
                            .count()));
            assertThat(each.eggs()).isEqualTo(sure(0));
        }
        assertThat(ahead.nests().get(0).chance()).isZero();
        assertThat(ahead(room, day(34), day(33 + 44), 3).nests().get(0).chance())
                .isEqualTo(1);
        assertThat(ahead(room, day(34), day(33 + 43), 3).nests().get(0).chance())
                .isZero();
    }

    private static LocalDate ringing(ChickOutlook chick) {
        return chick.ringing().orElseThrow().window().expected();
    }

    private static Range sure(long count) {
        return new Range(count, (int) count, (int) count);
    }

    @Test
    void theSameSeedGivesTheSameAnswerAndAnotherAlmostTheSame() {
        NestSketch sketch = new NestSketch();
        fullEgg(sketch);
        Room room = sketch.room();

        assertThat(ahead(room, day(10), day(63), 5)).isEqualTo(ahead(room, day(10), day(63), 5));
        assertThat(chance(room, 5)).isNotEqualTo(chance(room, 6));
        assertThat(chance(room, 5)).isCloseTo(chance(room, 6), within(0.05));
    }

    private static double chance(Room room, long seed) {
        return ahead(room, day(10), day(63), seed).nests().get(0).chance();
    }

    @Test
    void oneEggFoundClearChangesTheChanceAndTheDaysAndLeavesOtherNestsAsTheyWere() {
        NestSketch before = twoNests(EggFinding.FULL);
        NestSketch after = twoNests(EggFinding.CLEAR);

        Ahead full = ahead(before.room(), day(10), day(60), 1);
        Ahead clear = ahead(after.room(), day(10), day(60), 1);

        NestAhead emptied = nest(clear, "A1");
        assertThat(emptied.chance()).isEqualTo(1);
        assertThat(nest(full, "A1").chance()).isLessThan(0.6);
        assertThat(clear.days().get(13).toTakeAway().mean())
                .isLessThan(full.days().get(13).toTakeAway().mean());
    }

    private static NestSketch twoNests(EggFinding finding) {
        NestSketch sketch = new NestSketch();
        Home one = sketch.home("A1", day(1)).box(BoxStep.ON, day(1));
        one.round().sitting(day(1)).egg(day(1)).candled(finding, day(8));
        Home other = sketch.home("A2", day(1)).box(BoxStep.ON, day(1));
        other.round().sitting(day(2)).egg(day(2)).candled(EggFinding.FULL, day(8));
        return sketch;
    }

    @Test
    void anEggThatShouldHaveHatchedLongAgoIsNotCountedOn() {
        NestSketch sketch = new NestSketch();
        fullEgg(sketch);

        // Sat from day 1: the 21st day sat is day 22.
        assertThat(ahead(sketch.room(), day(24), day(30), 1).nests().get(0).chance())
                .isEqualTo(1);
        assertThat(ahead(sketch.room(), day(22), day(30), 1).nests().get(0).chance())
                .isBetween(0.5, 0.95);
    }

    @Test
    void aNestWithNothingLeftToWeanHasNothingInTheWayButTheDay() {
        NestSketch sketch = new NestSketch();
        sketch.home("A1", day(-30)).parting(day(20));

        NestAhead nest = ahead(sketch.room(), day(34), day(30), 1).nests().get(0);

        assertThat(Words.english().say(nest.inTheWay().orElseThrow()))
                .isEqualTo("Nothing is left to wait for, 4 days after that day.");
        assertThat(nest.waysOut()).isEmpty();
    }

    @Test
    void aRoomWithoutPairsHasNoNestsAndQuietDays() {
        Ahead ahead = ahead(new NestSketch().room(), day(1), day(20), 1);

        assertThat(ahead.nests()).isEmpty();
        assertThat(ahead.back()).isPresent();
        assertThat(ahead.days()).hasSize(14).allMatch(day -> day.eggs().equals(sure(0)));
    }

    @Test
    void whatIsLateIsSaidWithItsWaysOutAndWhatTheyCost() {
        NestSketch sketch = new NestSketch();
        Home home = sketch.home("A1", day(1)).box(BoxStep.ON, day(1));
        home.round().sitting(day(12)).egg(day(10)).candled(EggFinding.FULL, day(18));
        home.clutch(0).egg(day(12)).candled(EggFinding.FULL, day(18));
        home.clutch(0).egg(day(18));

        // Sat from day 12, hatched on day 30, feeding itself on day 72; the third six days later.
        NestAhead nest = ahead(sketch.room(), day(25), day(74), 1).nests().get(0);

        assertThat(nest.isInTime()).isFalse();
        assertThat(nest.clear().expected()).isEqualTo(day(78));
        assertThat(nest.waysOut())
                .extracting(WayOut::way)
                .containsExactly(WayOut.Way.DUMMIES, WayOut.Way.LATER, WayOut.Way.KEEPER, WayOut.Way.SITTER);
        assertThat(nest.waysOut().get(0).clear().expected()).isEqualTo(day(72));
        assertThat(nest.waysOut().get(0).cost().args()).containsExactly(1, 0L);
    }

    private static void fullEgg(NestSketch sketch) {
        Home home = sketch.home("A1", day(1)).box(BoxStep.ON, day(1));
        home.round().sitting(day(1)).egg(day(1)).candled(EggFinding.FULL, day(6));
    }

    private static NestAhead nest(Ahead ahead, String cage) {
        return ahead.nests().stream()
                .filter(nest -> nest.cage().name().equals(cage))
                .findFirst()
                .orElseThrow();
    }

    private static Ahead ahead(Room room, LocalDate today, LocalDate clearBy, long seed) {
        return Ahead.of(room, today, new AheadQuestion(clearBy, Policy.WEANED, 1, new Draws(DRAWS, seed)));
    }
}
