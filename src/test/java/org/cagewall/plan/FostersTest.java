package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.Use;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Which eggs could go where. Six eggs, five chicks and three days are common practice, no source; 18 days of incubation
 * and 42 to feeding itself are the timetable's. The giver's five eggs hatch on days 21, 21, 23, 25 and 27, and the last
 * chick feeds itself on day 69.
 */
class FostersTest {

    private static final LocalDate TODAY = day(18);
    private static final LocalDate BUT_FOR_THE_LAST = day(68);
    private static final LocalDate BUT_FOR_THE_EGG = day(58);

    private final NestSketch sketch = new NestSketch();

    @Test
    void theLateEggGoesToAHenAtTheSameStageWhoseNestIsLateAnyway() {
        giver("B1");
        host("B2", 9);

        FosterMove move = only(BUT_FOR_THE_LAST);

        assertThat(move.mark()).isEqualTo("5");
        assertThat(move.from().name()).isEqualTo("B1");
        assertThat(move.to().name()).isEqualTo("B2");
        assertThat(move.gap()).isZero();
        assertThat(said(move)).isEqualTo("Its chick would come too late. B2 is at the same stage to the day.");
    }

    @Test
    void theNestThatGivesHasAWayOutByWhichItIsDoneInTime() {
        giver("B1");
        host("B2", 9);

        WayOut foster = ahead(BUT_FOR_THE_LAST).nests().get(0).waysOut().stream()
                .filter(way -> way.way() == WayOut.Way.FOSTER)
                .findFirst()
                .orElseThrow();

        assertThat(foster.clear().expected()).isEqualTo(day(67));
        assertThat(Words.english().say(foster.words())).isEqualTo("Move egg 5 to B2.");
    }

    /** Three eggs two days apart, sat from the first day, hatch 18 days later: the egg is to hatch on day 27. */
    @ParameterizedTest
    @CsvSource(nullValues = "none", textBlock = """
            13, none
            12, 3
            11, 2
            10, 1
            9,  0
            5,  0
            4,  1
            2,  3
            1,  none
            """)
    void aHostIsAtTheSameStageWithinThreeDaysOfItsOwnEggs(int firstLaid, Integer gap) {
        sketch.most(6, 12);
        straggler("B1");
        home("B2").round().sitting(day(firstLaid)).eggs(3, day(firstLaid), 2);

        assertThat(moves(BUT_FOR_THE_EGG).stream().map(FosterMove::gap))
                .isEqualTo(gap == null ? List.of() : List.of(gap));
    }

    @Test
    void chicksCountByTheDayTheyHatchedAsLongAsTheyAreInTheBox() {
        Home giver = home("B1");
        giver.round().sitting(day(-8)).egg(day(-8)).hatched(day(10));
        giver.clutch(0).egg(day(2));
        Home host = home("B2");
        host.round().sitting(day(-1)).egg(day(-1)).hatched(day(17));
        host.clutch(0).egg(day(0)).hatched(day(18));

        FosterMove move = only(day(55));

        assertThat(move.gap()).isEqualTo(2);
        assertThat(said(move)).endsWith("B2 is at nearly the same stage: its last hatches 2 days sooner.");

        host.clutch(0).egg(1).out(day(18));
        host.clutch(0).egg(2).out(day(18));
        assertThat(moves(day(55))).isEmpty();
    }

    @Test
    void anEggHalfWayBetweenTwoClutchesOfAHenIsAtTheStageOfNeither() {
        straggler("B1");
        Home host = home("B2");
        host.round().sitting(day(5)).egg(day(5));
        host.clutch(0).egg(day(13));
        assertThat(moves(BUT_FOR_THE_EGG)).isEmpty();

        host.clutch(0).egg(day(10));
        assertThat(only(BUT_FOR_THE_EGG).gap()).isZero();
    }

    @Test
    void aHenOnClearEggsCountsFromTheDayOnWhichSheBeganToSit() {
        giver("B1");
        Home host = home("B2");
        host.round().sitting(day(8)).eggs(4, day(2), 2);
        Stream.of(1, 2, 3, 4).forEach(mark -> host.clutch(0).egg(mark).candled(EggFinding.CLEAR, TODAY));

        FosterMove move = only(BUT_FOR_THE_LAST);

        assertThat(move.gap()).isEqualTo(1);
        assertThat(said(move))
                .isEqualTo("Its chick would come too late."
                        + " The hen in B2 sits on clear eggs, 1 day from the same stage."
                        + " Cage B2 is then not done by 7 May 2026 either.");
    }

    @Test
    void clearEggsTakeUpNoRoomSinceTheyComeOut() {
        giver("B1");
        Home host = host("B2", 9);
        host.clutch(0).egg(day(11));
        host.clutch(0).egg(day(12));
        assertThat(moves(BUT_FOR_THE_LAST)).isEmpty();

        host.clutch(0).egg(2).candled(EggFinding.CLEAR, TODAY);
        assertThat(moves(BUT_FOR_THE_LAST)).hasSize(1);
    }

    @Test
    void everyEggThatMayHatchCountsAsAChickToBeFed() {
        sketch.most(6, 4);
        giver("B1");
        Home host = host("B2", 9);
        assertThat(moves(BUT_FOR_THE_LAST)).hasSize(1);

        host.clutch(0).egg(day(13)).candled(EggFinding.FULL, TODAY);
        assertThat(moves(BUT_FOR_THE_LAST)).isEmpty();

        sketch.most(6, 6);
        assertThat(moves(BUT_FOR_THE_LAST)).hasSize(1);
    }

    @Test
    void aHenWhoIsStillLayingKeepsRoomForTheRestOfHerClutch() {
        giver("B1");
        Home host = home("B2");
        host.round().sitting(day(10)).eggs(3, day(10), 2);

        assertThat(moves(BUT_FOR_THE_LAST)).isEmpty();

        sketch.most(6, 6);
        assertThat(moves(BUT_FOR_THE_LAST)).hasSize(1);
    }

    @Test
    void noEggGoesToAHostThatTheRulesForFosterNestsSpeakAgainst() {
        giver("B1");
        host("B2", 9).henIs("egg-eater");
        host("B3", 9).henIs("plucker");
        host("B4", 9).use(Use.HOSPITAL);
        host("B5", 9).use(Use.QUARANTINE);
        host("B6", 9).parting(day(14));
        host("B7", 9).box(BoxStep.OFF, day(14));
        host("B8", 9).cockOut(day(14));
        host("B9", 9).henOut(day(14));

        assertThat(moves(BUT_FOR_THE_LAST)).isEmpty();

        host("C1", 9).henIs("good mother");
        assertThat(only(BUT_FOR_THE_LAST).to().name()).isEqualTo("C1");
    }

    @Test
    void aNestThatGivesDoesNotTake() {
        giver("B1");
        giver("B2");

        assertThat(moves(BUT_FOR_THE_LAST)).isEmpty();
    }

    @Test
    void oneOrTwoLateEggsThatAreAllANestHoldsMayGo() {
        Home few = home("B1");
        few.round().sitting(day(9)).eggs(2, day(7), 2);
        host("B2", 9);

        List<FosterMove> moves = moves(day(60));

        assertThat(moves.stream().map(FosterMove::mark)).containsExactly("1", "2");
        assertThat(said(moves.get(0)))
                .isEqualTo("Nothing else would be left to wait for in B1. B2 is at the same stage to the day.");

        few.clutch(0).egg(day(8));
        assertThat(moves(day(60))).isEmpty();
    }

    @Test
    void aHenWhoHasOnlyBegunToLayIsNoNestOfTwoEggs() {
        home("B1").round().sitting(day(12)).eggs(2, day(12), 2);
        host("B2", 9);

        assertThat(moves(day(60))).isEmpty();
    }

    @Test
    void theLastEggsOfANestThatHoldsTooManyMayGo() {
        home("B1").round().sitting(day(1)).eggs(8, day(-5), 2);
        host("B2", 7);

        List<FosterMove> moves = moves(day(120));

        assertThat(moves.stream().map(FosterMove::mark)).containsExactly("7", "8");
        assertThat(said(moves.get(0))).isEqualTo("More than 6 eggs lie in B1. B2 is at the same stage to the day.");
    }

    @Test
    void aChippedEggAndOneThatIsOverdueStayWhereTheyAre() {
        Home few = home("B1");
        few.round().sitting(day(9)).egg(day(7)).pipped(TODAY);
        host("B2", 9);

        assertThat(moves(day(60))).isEmpty();

        Home overdue = home("B3");
        overdue.round().sitting(day(-10)).egg(day(-10));
        home("B4").round().sitting(day(-10)).eggs(3, day(-12), 2);
        assertThat(moves(day(20))).isEmpty();
    }

    @Test
    void eggsOverWhichNestsAreEquallyGoodAreSpreadOverThem() {
        home("B1").round().sitting(day(9)).eggs(2, day(7), 2);
        host("B2", 9);
        host("B3", 9);

        assertThat(moves(day(60)).stream().map(move -> move.to().name())).containsExactlyInAnyOrder("B2", "B3");
    }

    @Test
    void anEggThatNobodySitsOnYetCountsFromTheDayItIsMoved() {
        sketch.most(6, 12);
        home("B1").round().sitting(day(20)).egg(day(9));
        host("B2", 17);

        assertThat(only(day(60)).gap()).isZero();
    }

    @ParameterizedTest
    @CsvSource({"budgie, 9, 1", "zebra finch, 13, 0"})
    void anEggGoesToAHenOfItsKind(String kind, int sitting, int moved) {
        sketch.most(6, 12);
        giver("B1");
        host("B2", sitting).kind(kind);

        assertThat(moves(BUT_FOR_THE_LAST)).hasSize(moved);
    }

    private void giver(String name) {
        home(name).round().sitting(day(3)).eggs(5, day(1), 2);
    }

    /** A chick that feeds itself on day 54, and an egg that hatches on day 27. */
    private void straggler(String name) {
        Home home = home(name);
        home.round().sitting(day(-6)).egg(day(-6)).hatched(day(12));
        home.clutch(0).egg(day(9));
    }

    /** Three eggs: the first two hatch 18 days after she began to sit, the third a day later. */
    private Home host(String name, int sitting) {
        Home host = home(name);
        host.round().sitting(day(sitting)).eggs(2, day(sitting - 2), 2);
        host.clutch(0).egg(day(sitting + 1));
        return host;
    }

    private Home home(String name) {
        return sketch.home(name, day(-60)).box(BoxStep.ON, day(-40));
    }

    private FosterMove only(LocalDate clearBy) {
        List<FosterMove> moves = moves(clearBy);
        assertThat(moves).hasSize(1);
        return moves.get(0);
    }

    private List<FosterMove> moves(LocalDate clearBy) {
        return ahead(clearBy).fosters();
    }

    private Ahead ahead(LocalDate clearBy) {
        return Ahead.of(sketch.room(), TODAY, new AheadQuestion(clearBy, Policy.WEANED, 1, new Draws(1, 1)));
    }

    private static String said(FosterMove move) {
        return Words.english().say(move.why());
    }
}
