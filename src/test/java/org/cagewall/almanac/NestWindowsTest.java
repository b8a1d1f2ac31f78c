package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;
import static org.cagewall.almanac.NestSketch.days;
import static org.cagewall.almanac.NestSketch.number;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.SatFrom;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.WhyRemoved;
import org.junit.jupiter.api.Test;

/** What is expected of a budgerigars' nest; egg 1 of a round is laid on day 1 unless it says otherwise. */
class NestWindowsTest {

    private final NestSketch sketch = new NestSketch();
    private final Home home = sketch.home("B3", day(-12));

    @Test
    void theFirstEggIsExpectedFromTheBoxOrFromPairingUpWhicheverIsLater() {
        assertThat(outlook().firstEgg()).as("no box").isEmpty();

        home.box(BoxStep.ON, day(-10));
        assertThat(days(outlook().firstEgg())).isEqualTo("-3 0 11");

        Home later = sketch.home("B4", day(4)).box(BoxStep.ON, day(-10));
        assertThat(days(sketch.outlook(later).firstEgg())).isEqualTo("11 14 25");
    }

    @Test
    void theFirstEggReplacesItsWindow() {
        home.box(BoxStep.ON, day(-10)).round().egg(day(2));

        assertThat(outlook().firstEgg()).contains(Due.happened(day(2)));
    }

    @Test
    void theNextEggIsAskedAboutAfterFiveDaysUntilTheUsualClutchIsThere() {
        Clutch round = home.round().eggs(3, day(1), 2);
        NextEgg next = outlook().nextEgg().orElseThrow();

        assertThat(days(next.window())).isEqualTo("6 7 9");
        assertThat(next.tooLongFrom()).contains(day(10));
        assertThat(next.givenUp()).isEqualTo(day(15));

        round.eggs(2, day(7), 2);
        assertThat(outlook().nextEgg().orElseThrow().tooLongFrom()).isEmpty();

        round.eggs(3, day(11), 2);
        assertThat(outlook().nextEgg()).as("eight eggs are enough").isEmpty();
    }

    @Test
    void aHenThatSitsOnFullEggsIsNotAskedForAnother() {
        Clutch round = home.round().eggs(3, day(1), 2).sitting(day(3));
        assertThat(outlook().nextEgg().orElseThrow().tooLongFrom()).contains(day(10));

        round.egg(1).candled(EggFinding.FULL, day(9));

        assertThat(outlook().nextEgg().orElseThrow().tooLongFrom()).isEmpty();
        assertThat(Overdue.at(outlook(), day(12))).isEmpty();
    }

    @Test
    void fullEggsAreNotCandledAgainAsLate() {
        Clutch round = home.round().eggs(3, day(1), 2).sitting(day(3));
        for (int mark = 1; mark <= 3; mark++) {
            round.egg(mark).candled(EggFinding.FULL, day(9));
        }

        assertThat(Coming.at(outlook(), day(16)))
                .noneMatch(coming -> coming.what() == Coming.What.CANDLE && coming.isLate(day(16)));
    }

    @Test
    void sheIsLookedForOnTheEggsFromTheFirstToTheThird() {
        Clutch round = home.round().eggs(2, day(1), 2);
        assertThat(days(outlook().rounds().get(0).sitting())).isEqualTo("1 3 5");

        round.sitting(day(2));
        assertThat(days(outlook().rounds().get(0).sitting())).isEqualTo("2 2 2");
        assertThat(outlook().sittingFrom()).contains(new SatFrom(day(2), false, false));
    }

    @Test
    void aNestIsLookedAtOnceForTheFirstTwoEggsAndAgainForTheLast() {
        Clutch round = home.round().eggs(5, day(1), 2);

        NestCandling first = outlook().firstLook().orElseThrow();
        NestCandling second = outlook().secondLook().orElseThrow();

        assertThat(days(first.window())).isEqualTo("7 8 10");
        assertThat(marks(first)).containsExactly("1", "2");
        assertThat(days(second.window())).isEqualTo("13 14 16");
        assertThat(marks(second)).containsExactly("1", "2", "3", "4", "5");

        round.egg(1).candled(EggFinding.FULL, day(8));
        assertThat(marks(outlook().firstLook().orElseThrow())).containsExactly("2");

        round.egg(2).candled(EggFinding.CLEAR, day(8));
        assertThat(outlook().firstLook()).isEmpty();
        assertThat(marks(outlook().secondLook().orElseThrow()))
                .as("a clear egg is left in peace")
                .containsExactly("1", "3", "4", "5");

        for (int mark : List.of(1, 3, 4, 5)) {
            round.egg(mark).candled(EggFinding.FULL, day(14));
        }
        assertThat(outlook().secondLook()).isEmpty();
    }

    @Test
    void anEggThatShowedNothingTooEarlyIsLookedAtAgain() {
        Clutch round = home.round().eggs(2, day(1), 2);
        round.egg(1).candled(EggFinding.UNSURE, day(5));
        round.egg(2).candled(EggFinding.UNSURE, day(8));

        assertThat(marks(outlook().firstLook().orElseThrow())).containsExactly("1");
        assertThat(days(egg(1).nextLook())).isEqualTo("7 8 10");
        assertThat(days(egg(2).firstLook())).isEqualTo("8 8 8");
        assertThat(days(egg(2).nextLook())).isEqualTo("12 13 15");
    }

    @Test
    void whenOneHasHatchedTheOthersAreNotCandledAnyMore() {
        Clutch round = home.round().eggs(3, day(1), 2);
        round.egg(1).hatched(day(21));

        assertThat(outlook().firstLook()).isEmpty();
        assertThat(outlook().secondLook()).isEmpty();
    }

    @Test
    void pippingAndHatchingReplaceOnlyTheirOwnWindows() {
        Clutch round = home.round().eggs(2, day(1), 2);
        round.egg(1).pipped(day(19));

        assertThat(days(egg(1).pip())).isEqualTo("19 19 19");
        assertThat(days(egg(1).hatch())).isEqualTo("20 21 24");

        round.egg(1).hatched(day(20));
        assertThat(days(egg(1).hatch())).isEqualTo("20 20 20");
        assertThat(egg(1).overdueFrom()).isEmpty();
        assertThat(days(egg(2).hatch())).isEqualTo("20 21 24");
    }

    @Test
    void aClearEggIsNotExpectedToHatchUntilItWasFullAfterAll() {
        Clutch round = home.round().eggs(2, day(1), 2);
        round.egg(1).candled(EggFinding.CLEAR, day(8));
        assertThat(egg(1).hatch()).isEmpty();
        assertThat(days(egg(1).wouldHatch().orElseThrow())).isEqualTo("20 21 24");

        round.egg(1).candled(EggFinding.FULL, day(12));
        assertThat(days(egg(1).hatch())).isEqualTo("20 21 24");
    }

    @Test
    void clearEggsAreOfferedAfterTheLastHatch() {
        Clutch round = home.round().eggs(3, day(1), 2);
        round.egg(1).candled(EggFinding.CLEAR, day(8));
        ClearEggs eggs = outlook().clearEggs().get(0);
        assertThat(eggs.from()).as("the third is overdue then").isEqualTo(day(28));

        round.egg(2).hatched(day(21));
        round.egg(3).hatched(day(23));
        eggs = outlook().clearEggs().get(0);
        assertThat(eggs.from()).isEqualTo(day(23));
        assertThat(eggs.eggs()).hasSize(1);
    }

    @Test
    void aNestOfClearEggsIsOfferedThreeDaysAfterItsTime() {
        Clutch round = home.round().eggs(3, day(1), 2);
        for (int mark = 1; mark <= 3; mark++) {
            round.egg(mark).candled(EggFinding.CLEAR, day(12));
        }

        assertThat(outlook().clearEggs().get(0).from())
                .as("the last would hatch on day 23")
                .isEqualTo(day(26));
    }

    @Test
    void anEggThatNobodySitsOnGrowsOld() {
        Clutch round = home.round();
        round.egg(day(1));
        assertThat(egg(1).unsat()).contains(new Unsat(day(6), day(8)));

        round.egg(day(3));
        assertThat(egg(1).unsat()).as("two eggs, she sits").isEmpty();

        round.sitting(day(7));
        assertThat(egg(1).unsat()).as("but she was seen to begin late").isPresent();
        assertThat(egg(2).unsat()).isEmpty();
    }

    @Test
    void aChicksLifeIsCountedFromTheDayItHatched() {
        home.round().egg(day(1)).hatched(day(20));
        ChickOutlook chick = chick();

        assertThat(days(chick.eyes().orElseThrow())).isEqualTo("26 28 31");
        assertThat(days(chick.ringing())).isEqualTo("25 28 30");
        assertThat(chick.ringCheck()).isEmpty();
        assertThat(days(chick.outOfBox())).isEqualTo("48 52 58");
        assertThat(days(chick.independent())).isEqualTo("58 62 76");
        assertThat(chick.age(day(20))).isZero();
        assertThat(chick.age(day(28))).isEqualTo(8);
    }

    @Test
    void theDayAfterRingingTheRingIsLookedFor() {
        NestSketch.EggSketch egg = home.round().egg(day(1)).hatched(day(20)).ringed(day(27));
        assertThat(days(chick().ringing())).isEqualTo("27 27 27");
        assertThat(days(chick().ringCheck())).isEqualTo("28 28 28");
        assertThat(chick().ringCheck().orElseThrow().isOpen()).isTrue();

        egg.ringSeen(day(29));
        assertThat(days(chick().ringCheck())).isEqualTo("29 29 29");
    }

    @Test
    void aChickPutBackIntoTheBoxIsExpectedToLeaveItAgain() {
        NestSketch.EggSketch egg = home.round().egg(day(1)).hatched(day(20)).out(day(47));
        assertThat(days(chick().outOfBox())).isEqualTo("47 47 47");

        egg.putBack(day(47));
        assertThat(days(chick().outOfBox())).isEqualTo("48 52 58");
    }

    @Test
    void ofADeadChickNothingIsExpected() {
        home.round().egg(day(1)).hatched(day(20)).died(day(24));

        assertThat(chick().ringing()).isEmpty();
        assertThat(chick().independent()).isEmpty();
        assertThat(outlook().nestLook()).isEmpty();
        assertThat(outlook().backs()).isEmpty();
    }

    @Test
    void theBoxIsLookedIntoEverySecondDayAndBacksFromDay25OfTheEldest() {
        Clutch round = home.round();
        round.egg(day(1)).hatched(day(20));
        round.egg(day(3)).hatched(day(22));

        assertThat(outlook().nestLook()).contains(day(22));
        assertThat(days(outlook().backs())).isEqualTo("45 45 48");

        home.nestLook(day(23));
        assertThat(outlook().nestLook()).contains(day(25));
        assertThat(outlook().backs().orElseThrow().isOpen()).isTrue();

        home.nestLook(day(46));
        assertThat(days(outlook().backs())).isEqualTo("46 46 46");
    }

    @Test
    void theNextRoundIsCountedFromTheFirstEggOfTheLast() {
        Clutch round = home.box(BoxStep.ON, day(-9)).round().eggs(2, day(1), 2);
        assertThat(days(outlook().rounds().get(0).nextRound())).isEqualTo("46 51 61");

        round.ended(day(44));
        home.round().egg(day(48));
        assertThat(days(outlook().rounds().get(0).nextRound())).isEqualTo("48 48 48");
        assertThat(days(outlook().rounds().get(1).nextRound())).isEqualTo("93 98 108");
    }

    @Test
    void eggsOfTheSecondRoundLieBesideChicksOfTheFirst() {
        Clutch first = home.box(BoxStep.ON, day(-9)).round();
        first.egg(day(1)).hatched(day(20));
        home.round().eggs(3, day(44), 2);

        Outlook outlook = outlook();

        assertThat(outlook.state(day(50))).isEqualTo(NestState.CHICKS_IN_BOX);
        assertThat(outlook.eggsHere().stream().map(egg -> days(egg.hatch())))
                .containsExactly("63 64 67", "63 64 67", "65 66 69");
        assertThat(days(outlook.firstLook().orElseThrow().window())).isEqualTo("50 51 53");
        assertThat(days(outlook.chicks().get(0).outOfBox())).isEqualTo("48 52 58");
    }

    @Test
    void aFosterEggIsLookedAtWithTheNestItLiesIn() {
        Home other = sketch.home("B4", day(-12));
        Clutch round = other.round().eggs(2, day(2), 2);
        home.round().eggs(3, day(1), 2);
        round.egg(2).moved(home, day(5));

        assertThat(outlook().secondLook().orElseThrow().eggs()).hasSize(4);
        assertThat(sketch.outlook(other).secondLook().orElseThrow().eggs()).hasSize(1);
        assertThat(sketch.outlook(other).eggsHere()).hasSize(1);
        assertThat(sketch.outlook(other).eggs()).hasSize(2);
    }

    @Test
    void aCageGoesFromEmptyToParted() {
        assertThat(outlook().state(day(0))).isEqualTo(NestState.PAIRED);
        home.box(BoxStep.ON, day(-9));
        assertThat(outlook().state(day(0))).isEqualTo(NestState.BOX_ON);
        Clutch round = home.round().eggs(3, day(1), 2);
        assertThat(outlook().state(day(6))).isEqualTo(NestState.LAYING);
        assertThat(outlook().state(day(10))).as("no egg for five days").isEqualTo(NestState.SITTING);
        round.sitting(day(3));
        assertThat(outlook().state(day(6))).isEqualTo(NestState.SITTING);
        round.egg(1).hatched(day(21));
        assertThat(outlook().state(day(22))).isEqualTo(NestState.CHICKS_IN_BOX);
        round.egg(2).removed(WhyRemoved.CLEAR, day(24));
        round.egg(3).removed(WhyRemoved.CLEAR, day(24));
        round.egg(1).out(day(53));
        assertThat(outlook().state(day(53))).isEqualTo(NestState.CHICKS_OUT);
        home.parting(day(54));
        assertThat(outlook().state(day(54))).isEqualTo(NestState.PARTING);
        home.cockOut(day(70)).henOut(day(80));
        round.egg(1).weaned(day(65));
        assertThat(outlook().state(day(80))).isEqualTo(NestState.EMPTY);
    }

    @Test
    void ofASpeciesThatIsNotKnownWindowsAreEmptyRatherThanWrong() {
        NestSketch doves = new NestSketch("diamond dove");
        Home cage = doves.home("D1", day(-12)).box(BoxStep.ON, day(-9));
        cage.round().eggs(2, day(1), 1).egg(1).hatched(day(15));

        Outlook outlook = doves.outlook(cage);

        assertThat(outlook.eggs().get(1).hatch()).isEmpty();
        assertThat(outlook.eggs().get(0).hatch()).contains(Due.happened(day(15)));
        assertThat(outlook.chicks().get(0).ringing()).isEmpty();
        assertThat(outlook.firstLook()).isEmpty();
        assertThat(outlook.state(day(16))).isEqualTo(NestState.CHICKS_IN_BOX);
    }

    private Outlook outlook() {
        return sketch.outlook(home);
    }

    private EggOutlook egg(int mark) {
        return outlook().eggs().get(mark - 1);
    }

    private ChickOutlook chick() {
        return outlook().chicks().get(0);
    }

    private static List<String> marks(NestCandling look) {
        return look.eggs().stream().map(lying -> lying.egg().mark()).toList();
    }

    @Test
    void aDayOfTheSpringIsADay() {
        assertThat(number(LocalDate.of(2026, 3, 1))).isEqualTo(1);
        assertThat(days(Optional.empty())).isEqualTo("none");
    }
}
