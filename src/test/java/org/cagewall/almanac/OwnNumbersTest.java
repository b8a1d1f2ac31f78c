package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.ToldDay;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;

class OwnNumbersTest {

    private final NestSketch sketch = new NestSketch();

    @Test
    void nineHatchingsOfItsOwnMoveNoWindow() {
        hatchings(Collections.nCopies(9, 20));

        assertThat(table()).isEqualTo(Timetables.of("budgerigar").orElseThrow());
        assertThat(own().count(Timing.INCUBATION)).isEqualTo(9);
    }

    /** Ten of the book's 17 18 21 and ten of 20 20 20 are 18.5, 19 and 20.5: to the nearest day 19 19 21. */
    @Test
    void tenHatchingsCountAsMuchAsTheBook() {
        hatchings(Collections.nCopies(10, 20));

        Value value = table().value(Timing.INCUBATION).orElseThrow();

        assertThat(value.span()).isEqualTo(new Span(19, 19, 21));
        assertThat(value.origin()).isEqualTo(Origin.OWN_NUMBERS);
        assertThat(value.count()).isEqualTo(10);
        assertThat(value.book()).contains(new Span(17, 18, 21));
        assertThat(Words.english().say(value.told()))
                .startsWith("From 10 of this birdroom's own dates, together with the timetable: 18:");
    }

    @Test
    void theMoreThereAreTheMoreTheyCount() {
        hatchings(Collections.nCopies(90, 20));

        assertThat(table().span(Timing.INCUBATION)).contains(new Span(20, 20, 20));
    }

    @Test
    void itsOwnWindowIsTheShortestThatHoldsNineInTen() {
        List<Integer> days = new ArrayList<>(List.of(17, 25));
        days.addAll(Collections.nCopies(6, 18));
        days.addAll(Collections.nCopies(12, 19));
        hatchings(days);

        assertThat(own().own(Timing.INCUBATION)).contains(new Span(18, 19, 19));
    }

    @Test
    void whatTheOwnerHasSetStands() {
        hatchings(Collections.nCopies(90, 20));
        sketch.set("budgerigar", Timing.INCUBATION, "17 18 19");

        assertThat(table().span(Timing.INCUBATION)).contains(new Span(17, 18, 19));
        assertThat(own().count(Timing.INCUBATION)).isEqualTo(90);
    }

    @Test
    void guessedDaysAndMovedEggsAreLeftAside() {
        Home home = sketch.home("B3", day(-12));
        Home other = sketch.home("B4", day(-12));
        Clutch round = home.round().eggs(5, day(1), 2).sitting(day(3));
        round.egg(1).about().hatched(day(21));
        round.egg(2).hatchedAbout(day(21));
        round.egg(3).moved(other, day(9)).hatched(day(24));
        round.egg(4).hatched(day(26)).ringed(day(33)).out(day(58)).weaned(day(70));

        assertThat(own().days(Timing.INCUBATION)).containsExactly(19);
        assertThat(own().days(Timing.LAY_GAP)).containsExactly(2, 2);
        assertThat(own().days(Timing.RINGING)).containsExactly(7);
        assertThat(own().days(Timing.OUT_OF_BOX)).containsExactly(32);
        assertThat(own().days(Timing.INDEPENDENT)).containsExactly(44);
    }

    @Test
    void aHenSaidToSitAboutADayTellsNothingOfIncubation() {
        sketch.home("B3", day(-12))
                .round()
                .eggs(2, day(1), 2)
                .sittingAbout(day(3))
                .egg(2)
                .hatched(day(21));

        assertThat(own().count(Timing.INCUBATION)).isZero();
    }

    @Test
    void aChickWhoseDaysAreGuessedTellsNothingOfThem() {
        sketch.home("B3", day(-12))
                .round()
                .eggs(1, day(1), 2)
                .sitting(day(1))
                .egg(1)
                .hatched(day(19))
                .ringed(day(26))
                .out(day(51))
                .weaned(day(63))
                .rearedAbout();

        assertThat(own().days(Timing.INCUBATION)).containsExactly(18);
        assertThat(own().count(Timing.RINGING)).isZero();
        assertThat(own().count(Timing.OUT_OF_BOX)).isZero();
        assertThat(own().count(Timing.INDEPENDENT)).isZero();
    }

    @Test
    void aNestWhoseStartIsOnlyForeseenTellsNothingOfIncubation() {
        sketch.home("B3", day(-12)).round().egg(day(1)).hatched(day(21));

        assertThat(own().count(Timing.INCUBATION)).isZero();
    }

    @Test
    void anotherSpeciesTellsNothingOfThisOne() {
        sketch.past(past(Collections.nCopies(40, 13), Optional.of("Zebra finch")));

        assertThat(own().count(Timing.INCUBATION)).isZero();
        assertThat(Almanac.of(sketch.room()).ownNumbers("zebra finch").count(Timing.INCUBATION))
                .isEqualTo(40);
    }

    @Test
    void theWindowsOfANestAreDrawnToo() {
        hatchings(Collections.nCopies(90, 20));
        Home home = sketch.home("B3", day(-12));
        home.round().eggs(2, day(1), 2);

        assertThat(NestSketch.days(sketch.outlook(home).eggs().get(0).hatch())).isEqualTo("23 23 23");
    }

    @Test
    void aFirstEggIsCountedFromTheBoxOnOrFromPairingUpWhicheverIsLater() {
        sketch.home("B3", day(-12)).box(BoxStep.ON, day(-8)).round().egg(day(3));
        sketch.home("B4", day(-5)).box(BoxStep.ON, day(-20)).round().egg(day(3));

        assertThat(own().days(Timing.FIRST_EGG)).containsExactly(8, 11);
    }

    @Test
    void aFirstEggAfterAGuessedDayTellsNothing() {
        sketch.home("B3", day(-12)).boxOnAbout(day(-8)).round().egg(day(3));
        sketch.home("B4", day(-12))
                .sinceAbout()
                .box(BoxStep.ON, day(-8))
                .round()
                .egg(day(3));
        sketch.home("B5", day(-12)).box(BoxStep.ON, day(-8)).round().egg(day(3)).about();

        assertThat(own().count(Timing.FIRST_EGG)).isZero();
    }

    @Test
    void aFirstEggWithNoBoxHangingTellsNothing() {
        sketch.home("B3", day(-12)).round().egg(day(3));
        sketch.home("B4", day(-12))
                .box(BoxStep.ON, day(-8))
                .box(BoxStep.OFF, day(-2))
                .round()
                .egg(day(3));

        assertThat(own().count(Timing.FIRST_EGG)).isZero();
    }

    @Test
    void aRoundInTheSameBoxIsCountedFromTheFirstEggOfTheOneBefore() {
        Home home = sketch.home("B3", day(-12)).box(BoxStep.ON, day(-8));
        home.round().eggs(5, day(3), 2);
        home.round().egg(day(50));

        assertThat(own().days(Timing.NEXT_ROUND)).containsExactly(47);
        assertThat(own().days(Timing.FIRST_EGG)).containsExactly(11);
    }

    @Test
    void aRoundInABoxPutUpAgainIsAFirstEggAgain() {
        Home home = sketch.home("B3", day(-12)).box(BoxStep.ON, day(-8));
        home.round().eggs(5, day(3), 2);
        home.box(BoxStep.OFF, day(60)).box(BoxStep.ON, day(340)).round().egg(day(349));

        assertThat(own().days(Timing.FIRST_EGG)).containsExactly(9, 11);
        assertThat(own().count(Timing.NEXT_ROUND)).isZero();
    }

    /** Ten of the book's 7 10 21 and ten of 14 14 14: 10.5, 12 and 17.5, to the nearest day 11 12 18. */
    @Test
    void theWaitForAFirstEggIsDrawnLikeTheRest() {
        for (int i = 0; i < 10; i++) {
            sketch.home("C" + i, day(-20)).box(BoxStep.ON, day(-11)).round().egg(day(3));
        }
        Home waiting = sketch.home("B3", day(-12)).box(BoxStep.ON, day(1));

        assertThat(NestSketch.days(sketch.outlook(waiting).firstEgg())).isEqualTo("12 13 19");
        assertThat(table().value(Timing.FIRST_EGG).orElseThrow().count()).isEqualTo(10);

        sketch.set("budgerigar", Timing.FIRST_EGG, "7 10 21");

        assertThat(NestSketch.days(sketch.outlook(waiting).firstEgg())).isEqualTo("8 11 22");
    }

    /** The book's 5 8 10, 38 42 56 and 2 4 days: many chicks ringed on day 14 and weaned on day 30, eggs every second day. */
    @Test
    void noNumberOfItsOwnMovesALimitOfNature() {
        for (int i = 0; i < 30; i++) {
            Clutch round =
                    sketch.home("C" + i, day(-20)).round().eggs(3, day(1), 2).sitting(day(1));
            round.egg(1).hatched(day(19)).ringed(day(33)).weaned(day(49));
        }

        assertThat(table().span(Timing.RINGING)).contains(new Span(10, 10, 10));
        assertThat(table().span(Timing.INDEPENDENT).orElseThrow().earliest()).isEqualTo(38);
        assertThat(table().span(Timing.INDEPENDENT).orElseThrow().expected()).isEqualTo(38);
        assertThat(table().span(Timing.LAY_GAP)).contains(new Span(2, 2, 3));
    }

    @Test
    void whatIsExpectedMovesAllTheSame() {
        for (int i = 0; i < 30; i++) {
            sketch.home("C" + i, day(-20))
                    .round()
                    .sitting(day(1))
                    .eggs(1, day(1), 2)
                    .egg(1)
                    .hatched(day(19))
                    .ringed(day(25));
        }

        assertThat(table().span(Timing.RINGING)).contains(new Span(6, 7, 10));
    }

    private void hatchings(List<Integer> incubations) {
        sketch.past(past(incubations, Optional.empty()));
    }

    /** Rounds of one egg each, sat from the day it was laid. */
    static List<PastEgg> past(List<Integer> incubations, Optional<String> species) {
        LocalDate laid = LocalDate.of(2024, 3, 1);
        return IntStream.range(0, incubations.size())
                .mapToObj(i -> new PastEgg(
                        1000 + i,
                        1,
                        Optional.of(laid),
                        5000 + i,
                        "1",
                        species,
                        laid,
                        false,
                        false,
                        Optional.of(new ToldDay(laid, false)),
                        true,
                        Optional.of(laid.plusDays(incubations.get(i))),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()))
                .toList();
    }

    private Timetable table() {
        return Almanac.of(sketch.room()).timetable("budgerigar");
    }

    private OwnNumbers own() {
        return Almanac.of(sketch.room()).ownNumbers("budgerigar");
    }
}
