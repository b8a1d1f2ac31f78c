package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.Room;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

class EvidenceTest {

    private final NestSketch sketch = new NestSketch();
    private final Home home = sketch.home("B3", day(-12));

    @Test
    void whatIsStillOpenCountsOnNeitherSide() {
        Clutch round = home.round().eggs(6, day(1), 2);
        round.egg(1).hatched(day(21)).ringed(day(28)).out(day(53)).weaned(day(63));
        round.egg(2).hatched(day(21)).ringed(day(28)).died(day(30));
        round.egg(3).hatched(day(23));
        round.egg(4).candled(EggFinding.CLEAR, day(14));
        round.egg(5).candled(EggFinding.FULL, day(14)).removed(WhyRemoved.DEAD_IN_SHELL, day(32));

        Evidence evidence = evidence();

        assertThat(evidence.rounds()).isEqualTo(1);
        assertThat(evidence.eggs()).isEqualTo(6);
        assertThat(evidence.full().pair()).as("the sixth was not looked at").isEqualTo(new Rate(4, 5));
        assertThat(evidence.hatched().pair()).isEqualTo(new Rate(3, 5));
        assertThat(evidence.ringed().pair()).as("the third may still be ringed").isEqualTo(new Rate(2, 2));
        assertThat(evidence.weaned().pair()).isEqualTo(new Rate(1, 2));
    }

    @Test
    void theRoomsAverageIsOfAllPairsOfTheSpeciesThoseLongGoneToo() {
        home.round().egg(day(1)).candled(EggFinding.CLEAR, day(8));
        sketch.home("B4", day(-12)).round().egg(day(1)).hatched(day(20));
        sketch.past(OwnNumbersTest.past(Collections.nCopies(8, 18), Optional.empty()));
        sketch.past(OwnNumbersTest.past(Collections.nCopies(5, 13), Optional.of("canary")));

        assertThat(evidence().full()).isEqualTo(new Measure(new Rate(0, 1), new Rate(9, 10)));
        assertThat(evidence().hatched().room()).isEqualTo(new Rate(9, 10));
    }

    @Test
    void afterTwoRoundsThatIsSaid() {
        home.round().eggs(1, day(1), 2).ended(day(30)).egg(1).removed(WhyRemoved.BROKEN, day(2));
        home.round().eggs(1, day(40), 2).egg(1).hatched(day(60)).died(day(61));

        assertThat(spoken()).containsExactly("2 rounds are done. After 2 you part a pair.");
    }

    @Test
    void anOwnerWhoLetsAPairRearThreeRoundsIsToldAfterThree() {
        sketch.mostRounds(3);
        home.round().eggs(1, day(1), 2).ended(day(30)).egg(1).removed(WhyRemoved.BROKEN, day(2));
        home.round().eggs(1, day(40), 2).ended(day(70)).egg(1).removed(WhyRemoved.BROKEN, day(41));

        assertThat(spoken()).isEmpty();

        home.round().eggs(1, day(80), 2).egg(1).removed(WhyRemoved.BROKEN, day(81));

        assertThat(spoken()).containsExactly("3 rounds are done. After 3 you part a pair.");
    }

    @Test
    void aRoundWithYoungInTheNestIsNotDone() {
        home.round().eggs(1, day(1), 2).ended(day(30)).egg(1).removed(WhyRemoved.BROKEN, day(2));
        home.round().eggs(1, day(40), 2).egg(1).hatched(day(60));

        assertThat(spoken()).isEmpty();
    }

    @Test
    void twoRoundsWithoutAFullEggSpeakForThemselves() {
        home.round().eggs(2, day(1), 2).ended(day(30));
        home.round().eggs(2, day(40), 2);
        for (int mark = 1; mark <= 2; mark++) {
            clutch(0).egg(mark).removed(WhyRemoved.CLEAR, day(29));
            clutch(1).egg(mark).candled(EggFinding.CLEAR, day(55));
        }

        assertThat(spoken())
                .containsExactly("2 rounds are done. After 2 you part a pair.", "Two rounds without one full egg.");
    }

    @Test
    void aBoxThatHangsForAMonthWithNoEggSpeaksForParting() {
        sketch.home("B9", day(-40)).box(BoxStep.ON, day(-30));

        assertThat(evidence("B9").speaksForParting().stream().map(Words.english()::say))
                .containsExactly(
                        "No egg 31 days after box and pair were put together; 21 days are the most that is usual.");
    }

    @Test
    void youngOfAnotherRoundThatWouldNotBeWeanedBeforeTheHolidaySpeakForParting() {
        home.round().egg(day(1));
        sketch.away(day(110), day(120));

        assertThat(spoken())
                .as("first egg on day 51, the last four gaps later, 18 days to hatch and 42 to feed itself")
                .containsExactly(
                        "The young of another round would be weaned about 27 June 2026, and you go away on 18 June 2026.");
    }

    private Clutch clutch(int index) {
        return home.clutch(index);
    }

    private List<String> spoken() {
        return evidence().speaksForParting().stream().map(Words.english()::say).toList();
    }

    private Evidence evidence() {
        return evidence("B3");
    }

    private Evidence evidence(String cage) {
        Room room = sketch.room();
        return Almanac.of(room)
                .evidence(
                        room.pairs().stream()
                                .filter(pair -> pair.cage()
                                        == room.cage(cage).orElseThrow().id())
                                .findFirst()
                                .orElseThrow(),
                        LocalDate.of(2026, 3, 1));
    }
}
