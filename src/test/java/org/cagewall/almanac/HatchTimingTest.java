package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;
import static org.cagewall.almanac.NestSketch.days;
import static org.cagewall.almanac.NestSketch.number;

import java.util.List;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.WhyRemoved;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** From laying to hatching, in one nest and in two. Days are counted from the day before the first egg, so egg 1 is day 0. */
class HatchTimingTest {

    private final NestSketch sketch = new NestSketch();

    /**
     * The row from egg 2 with 17 days is published: Petcare Information and Advisory Service Australia, budgerigar sheet
     * (sitting begins with egg 2; the first egg hatches after 19 days, the others after 17). The rows with 18 days are the
     * same reckoning; a general science page's "18 to 23 days to the first hatch" is theirs.
     */
    @ParameterizedTest
    @CsvSource({
        "1, 18, 18 20 22 24 26 28",
        "2, 18, 20 20 22 24 26 28",
        "3, 18, 22 22 22 24 26 28",
        "2, 17, 19 19 21 23 25 27"
    })
    void sixAlternateDayEggsHatchFromTheDayTheyAreSat(String from, String incubation, String hatching) {
        sketch.set("budgerigar", Timing.SITS_FROM, from + " " + from + " " + from)
                .set("budgerigar", Timing.INCUBATION, incubation + " " + incubation + " " + incubation);
        Home home = sketch.home("B3", day(-12));
        home.round().eggs(6, day(0), 2);

        List<EggOutlook> eggs = sketch.outlook(home).eggs();

        assertThat(eggs.stream()
                        .map(egg -> String.valueOf(
                                number(egg.hatch().orElseThrow().window().expected()))))
                .containsExactly(hatching.split(" "));
    }

    /** Bird Scene counts ten days for five alternate-day eggs; from the first to the fifth are four gaps of two days. */
    @Test
    void fiveEggsSpanEightDaysAndSixSpanTen() {
        Home home = sketch.home("B3", day(-12));
        home.round().eggs(1, day(0), 2);
        sketch.set("budgerigar", Timing.SITS_FROM, "5 5 6");

        assertThat(number(sketch.outlook(home).sittingFrom().orElseThrow().day()))
                .isEqualTo(8);

        sketch.set("budgerigar", Timing.SITS_FROM, "6 6 6");

        assertThat(number(sketch.outlook(home).sittingFrom().orElseThrow().day()))
                .isEqualTo(10);
    }

    @Test
    void aHenThatSitsFromTheSecondEggHatchesTheFirstTwoTogether() {
        Home home = sketch.home("B3", day(-12));
        home.round().eggs(5, day(1), 2);

        List<EggOutlook> eggs = sketch.outlook(home).eggs();

        assertThat(eggs.stream().map(egg -> days(egg.hatch())))
                .containsExactly("20 21 24", "20 21 24", "22 23 26", "24 25 28", "26 27 30");
        assertThat(eggs.stream().map(egg -> number(egg.overdueFrom().orElseThrow())))
                .as("after the latest day, and laying and 23 days")
                .containsExactly(25, 26, 28, 30, 32);
        assertThat(days(eggs.get(0).pip())).isEqualTo("19 20 23");
    }

    @Test
    void aHenThatWasSeenToSitLateHatchesTheEarlyEggsTogether() {
        Home home = sketch.home("B3", day(-12));
        home.round().eggs(4, day(1), 2).sitting(day(6));

        assertThat(sketch.outlook(home).eggs().stream()
                        .map(egg -> number(egg.satFrom().orElseThrow().day())))
                .containsExactly(6, 6, 6, 7);
    }

    @Test
    void anEggThatWasTakenOutOrMovedAwayStillCountsAsLaid() {
        Home home = sketch.home("B3", day(-12));
        Home other = sketch.home("B4", day(-12));
        Clutch round = home.round().eggs(3, day(1), 2);
        round.egg(1).removed(WhyRemoved.BROKEN, day(1));
        round.egg(2).moved(other, day(4));

        assertThat(number(sketch.outlook(home).sittingFrom().orElseThrow().day()))
                .isEqualTo(3);
    }

    @Test
    void asLongAsTheSecondEggIsToComeTheFirstIsSatFromTheDayItIsExpected() {
        Home home = sketch.home("B3", day(-12));
        home.round().egg(day(1));

        EggOutlook egg = sketch.outlook(home).eggs().get(0);

        assertThat(egg.satFrom()).contains(new SatFrom(day(3), false, true));
        assertThat(days(egg.hatch())).isEqualTo("20 21 24");
        assertThat(egg.unsat()).contains(new Unsat(day(6), day(8)));
    }

    @Test
    void aGuessedLayingDayMakesTheHatchingAbout() {
        Home home = sketch.home("B3", day(-12));
        Clutch round = home.round();
        round.egg(day(1)).about();
        round.egg(day(3)).about();
        round.egg(day(5));

        List<EggOutlook> eggs = sketch.outlook(home).eggs();

        assertThat(eggs.get(0).hatch().orElseThrow().window().about()).isTrue();
        assertThat(eggs.get(2).hatch().orElseThrow().window().about()).isFalse();
    }

    @Test
    void anEggThatWasSatKeepsItsDayInAnotherNest() {
        Home home = sketch.home("B3", day(-12));
        Home foster = sketch.home("B4", day(-12));
        Clutch round = home.round().eggs(3, day(1), 2);
        foster.round().eggs(3, day(8), 2);
        round.egg(1).moved(foster, day(9));

        assertThat(satFrom(home, 1)).isEqualTo(3);
        assertThat(sketch.outlook(foster).eggs().stream()
                        .filter(egg -> egg.lying().egg().isMovedIn())
                        .map(egg -> days(egg.hatch())))
                .containsExactly("20 21 24");
    }

    @Test
    void anUnsatEggCountsFromTheDayItCameToASittingHen() {
        Home home = sketch.home("B3", day(-12));
        Home foster = sketch.home("B4", day(-12));
        foster.round().eggs(4, day(-9), 2);
        home.round().egg(day(1)).moved(foster, day(2));

        assertThat(satFrom(home, 1)).isEqualTo(2);
    }

    @Test
    void anUnsatEggWaitsForAFosterHenWhoHasNotBegun() {
        Home home = sketch.home("B3", day(-12));
        Home foster = sketch.home("B4", day(-12));
        foster.round().egg(day(2));
        home.round().egg(day(1)).moved(foster, day(2));

        assertThat(satFrom(home, 1)).as("her second egg is expected then").isEqualTo(4);
    }

    @Test
    void aNestWithNoEggsOfItsOwnCountsFromTheMove() {
        Home home = sketch.home("B3", day(-12));
        Home foster = sketch.home("B4", day(-12));
        home.round().egg(day(1)).moved(foster, day(2));
        foster.round().egg(day(6));

        assertThat(satFrom(home, 1)).isEqualTo(2);
    }

    @Test
    void thereAndBackOnOneDayIsNoMove() {
        Home home = sketch.home("B3", day(-12));
        Home foster = sketch.home("B4", day(-12));
        foster.round().eggs(4, day(-9), 2);
        home.round().egg(day(1)).moved(foster, day(2)).moved(home, day(2));

        assertThat(satFrom(home, 1)).isEqualTo(3);
    }

    @Test
    void aSatEggThatIsAwayForDaysHatchesAsIfItHadStayed() {
        Home home = sketch.home("B3", day(-12));
        Home foster = sketch.home("B4", day(-12));
        foster.round().eggs(2, day(8), 2);
        Clutch round = home.round().eggs(4, day(1), 2);
        round.egg(2).moved(foster, day(5)).moved(home, day(11));

        assertThat(satFrom(home, 2)).isEqualTo(3);
    }

    private int satFrom(Home home, int mark) {
        return number(sketch.outlook(home).eggs().stream()
                .filter(egg -> egg.lying().pair().cage() == sketch.outlook(home).cage())
                .filter(egg -> egg.lying().egg().mark().equals(Integer.toString(mark)))
                .findFirst()
                .flatMap(EggOutlook::satFrom)
                .orElseThrow()
                .day());
    }
}
