package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;
import static org.cagewall.almanac.NestSketch.days;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Stage;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

/** The stages of parting, as in common practice: box turned, box off, cock out, hen out. Two chicks of days 20 and 22. */
class PartingTest {

    private final NestSketch sketch = new NestSketch();
    private final Home home = sketch.home("B3", day(-12)).box(BoxStep.ON, day(-9));
    private final Clutch round = home.round().eggs(2, day(1), 2);

    PartingTest() {
        round.egg(1).hatched(day(20));
        round.egg(2).hatched(day(22));
    }

    @Test
    void theStagesFollowTheYoungestOutOfTheBoxAndTheLastToFeedItself() {
        assertThat(stages()).containsExactly("50 54 60", "52 56 62", "60 64 78", "67 78 92");
    }

    @Test
    void aStageThatIsDoneMovesThoseBehindIt() {
        home.parting(day(50)).box(BoxStep.TURNED, day(57));

        assertThat(stages()).containsExactly("57 57 57", "59 59 59", "61 64 78", "68 78 92");
        assertThat(parting().next()).contains(Stage.BOX_OFF);
    }

    @Test
    void whenAllAreWeanedTheCockGoesTwoDaysAfterTheBox() {
        home.parting(day(50)).box(BoxStep.TURNED, day(64)).box(BoxStep.OFF, day(66));
        round.egg(1).out(day(52)).weaned(day(60));
        round.egg(2).out(day(54)).weaned(day(62));

        assertThat(stages()).containsExactly("64 64 64", "66 66 66", "68 68 68", "75 82 82");
    }

    @Test
    void aStageLeftOutHoldsNobodyUp() {
        home.parting(day(50)).skip(Stage.BOX_TURNED);
        round.egg(1).out(day(52)).weaned(day(53));
        round.egg(2).out(day(54)).weaned(day(54));

        assertThat(stages()).containsExactly("none", "54 54 54", "56 56 56", "63 70 70");
        assertThat(parting().stage(Stage.BOX_TURNED).skipped()).isTrue();
        assertThat(parting().next()).contains(Stage.BOX_OFF);
    }

    @Test
    void theCockMayGoFirstAndThenSheRearsAloneUntilTheLastFeedsItself() {
        home.parting(day(30)).cockOut(day(30));

        assertThat(stages()).containsExactly("50 54 60", "52 56 62", "30 30 30", "60 64 78");
        assertThat(parting().next()).contains(Stage.BOX_TURNED);
    }

    @Test
    void sheMayGoEarlyWhenTheYoungestIsThreeWeeks() {
        assertThat(parting().henOutEarly()).contains(day(43));

        round.egg(day(5));
        assertThat(parting().henOutEarly())
                .as("an egg lies there that may hatch")
                .isEmpty();

        round.egg(3).candled(EggFinding.CLEAR, day(12));
        assertThat(parting().henOutEarly()).contains(day(43));

        home.henOut(day(44));
        assertThat(parting().henOutEarly()).isEmpty();
        assertThat(days(parting().stage(Stage.HEN_OUT).due())).isEqualTo("44 44 44");
        assertThat(days(parting().stage(Stage.COCK_OUT).due()))
                .as("he rears on")
                .isEqualTo("60 64 78");
    }

    @Test
    void anEggThatMayHatchHoldsTheBoxOn() {
        round.egg(day(5));

        assertThat(stages().get(0)).isEqualTo("50 55 64");
    }

    @Test
    void aPairWithNothingInTheNestIsPartedFromTheDayItWasBegun() {
        NestSketch other = new NestSketch();
        Home cage = other.home("B4", day(-12)).box(BoxStep.ON, day(-9));
        assertThat(other.outlook(cage)
                        .parting()
                        .orElseThrow()
                        .stage(Stage.BOX_TURNED)
                        .due())
                .isEmpty();

        cage.parting(day(10));
        PartingOutlook parting = other.outlook(cage).parting().orElseThrow();
        assertThat(days(parting.stage(Stage.BOX_TURNED).due())).isEqualTo("10 10 10");
        assertThat(days(parting.stage(Stage.HEN_OUT).due())).isEqualTo("21 28 28");
    }

    @Test
    void noStageBeginsBeforeTheOneBeforeItHasEnded() {
        assertThat(stagesOn(40)).containsExactly("50 54 60", "60 60 62", "62 64 78", "78 78 92");
    }

    @Test
    void aStageThatIsOpenCountsForThoseBehindItFromTodayOn() {
        home.parting(day(50)).box(BoxStep.TURNED, day(57)).box(BoxStep.OFF, day(59));

        assertThat(stagesOn(64)).containsExactly("57 57 57", "59 59 59", "61 64 78", "78 78 92");
        assertThat(stagesOn(100)).containsExactly("57 57 57", "59 59 59", "61 64 78", "107 114 114");
    }

    @Test
    void theHenIsNeverDueBeforeTheCockIsOutOrStays() {
        home.parting(day(50)).box(BoxStep.TURNED, day(57)).box(BoxStep.OFF, day(59));
        for (int today = 50; today < 200; today++) {
            int now = today;
            assertThat(Coming.each(sketch.outlook(home), day(today)))
                    .filteredOn(coming -> coming.what() == Coming.What.HEN_OUT)
                    .noneMatch(coming -> coming.isDue(day(now)));
        }

        home.skip(Stage.COCK_OUT);
        assertThat(stagesOn(100).get(3)).as("he stays").isEqualTo("61 64 78");
    }

    @Test
    void aBoxThatIsOffIsNotTurnedAnyMore() {
        home.parting(day(50)).box(BoxStep.OFF, day(57));

        assertThat(parting().next()).contains(Stage.COCK_OUT);
    }

    @Test
    void theHenMayGoFirstAndTheCockFollowsWhenTheLastFeedsItself() {
        home.parting(day(43)).henOut(day(43));

        assertThat(stagesOn(44)).containsExactly("50 54 60", "60 60 62", "62 64 78", "43 43 43");
    }

    private List<String> stagesOn(int today) {
        PartingOutlook parting = parting().on(day(today));
        return Stream.of(Stage.values())
                .map(stage -> days(parting.stage(stage).due()))
                .toList();
    }

    @Test
    void sheGoesToTheFlightOnTheMorningHerRestIsOver() {
        assertThat(parting().toFlight()).contains(new FlightMove(day(78), Optional.empty()));
    }

    @Test
    void sheWaitsOutTwoAbsencesThatFollowEachOtherClosely() {
        sketch.away(day(60), day(80)).away(day(83), day(90));

        assertThat(parting().toFlight().orElseThrow().morning()).isEqualTo(day(91));
    }

    @Test
    void sheDoesNotGoToTheFlightInTheLastThreeDaysBeforeAnAbsence() {
        sketch.away(day(80), day(90));
        FlightMove move = parting().toFlight().orElseThrow();

        assertThat(move.morning()).isEqualTo(day(76));
        assertThat(Words.english().say(move.moved().orElseThrow()))
                .isEqualTo(
                        "Sooner than 17 May 2026, so that she has settled before the days away from 19 May 2026 on.");
    }

    @Test
    void whereHerRestWouldBeTooShortSheGoesWhenTheOwnerIsBack() {
        sketch.away(day(70), day(90));
        FlightMove move = parting().toFlight().orElseThrow();

        assertThat(move.morning()).isEqualTo(day(91));
        assertThat(Words.english().say(move.moved().orElseThrow()))
                .isEqualTo("Later than 17 May 2026, since you are away from 9 May 2026: she goes when you are back.");
    }

    private PartingOutlook parting() {
        return sketch.outlook(home).parting().orElseThrow();
    }

    private List<String> stages() {
        PartingOutlook parting = parting();
        return Stream.of(Stage.values())
                .map(stage -> days(parting.stage(stage).due()))
                .toList();
    }
}
