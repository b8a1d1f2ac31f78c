package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.Timetable;
import org.cagewall.almanac.Window;
import org.cagewall.room.RingIssue;
import org.cagewall.room.RingsOf;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates worked back from a day, beside tables worked out by hand from the timetables. */
class WorkingBackTest {

    private static final LocalDate LEAVING = LocalDate.of(2026, 6, 14);

    /** Box on, first egg, last egg, last hatch, box turned, box off, independent, cock out, hen out; by hand. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            budgerigar  | WEANED | PUSH  | 04-05 04-12 04-20 05-07 06-04 06-06 06-14 06-14 06-21
            budgerigar  | WEANED | USUAL | 03-28 04-07 04-15 05-03 06-04 06-06 06-14 06-14 06-28
            budgerigar  | WEANED | SAFE  | 02-28 03-21 03-29 04-19 05-27 05-29 06-14 06-14 06-28
            budgerigar  | APART  | PUSH  | 03-29 04-05 04-13 04-30 05-28 05-30 06-07 06-07 06-14
            budgerigar  | APART  | USUAL | 03-14 03-24 04-01 04-19 05-21 05-23 05-31 05-31 06-14
            budgerigar  | APART  | SAFE  | 02-14 03-07 03-15 04-05 05-13 05-15 05-31 05-31 06-14
            zebra finch | WEANED | PUSH  | 04-20 04-24 04-28 05-10 05-28 05-30 06-14 06-14 06-21
            zebra finch | WEANED | USUAL | 04-08 04-15 04-19 05-03 05-24 05-26 06-14 06-14 06-28
            zebra finch | WEANED | SAFE  | 03-16 03-30 04-03 04-19 05-13 05-15 06-14 06-14 06-28
            """)
    void eachColumnIsWhatTheTableByHandSays(String species, Policy policy, Pace pace, String days) {
        Steps steps = WorkingBack.from(timetable(species), LEAVING, policy, 1)
                .orElseThrow()
                .column(pace);

        assertThat(Stream.of(Steps.Step.values())
                        .map(step -> steps.day(step).toString().substring("2026-".length()))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(days);
        assertThat(Stream.of(Steps.Step.values()).map(step -> steps.day(step).getYear()))
                .containsOnly(2026);
    }

    /** The days between the dates of the table above, which are those of the timetable. */
    @Test
    void eachStepSaysHowManyDaysLieBeforeIt() {
        WorkingBack back = WorkingBack.from(timetable("budgerigar"), LEAVING, Policy.WEANED, 1)
                .orElseThrow();

        assertThat(back.rows().stream()
                        .map(row -> back.days(row).map(Words.english()::say).orElse("")))
                .containsExactly(
                        "",
                        "7 / 10 / 21",
                        "8",
                        "17 / 18 / 21",
                        "28 / 32 / 38",
                        "2",
                        "38 / 42 / 56",
                        "0",
                        "7 / 14 / 14");
    }

    /** The second round is that of the table above; the first comes 45, 50 or 60 days before it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            PUSH  | 02-19 02-26 03-06 03-23 04-30 04-12 04-20 05-07 06-04 06-06 06-14 06-14 06-21
            USUAL | 02-06 02-16 02-24 03-14 04-25 04-07 04-15 05-03 06-04 06-06 06-14 06-14 06-28
            """)
    void ofTwoRoundsTheDaysOfBothAreTold(Pace pace, String days) {
        WorkingBack back = WorkingBack.from(timetable("budgerigar"), LEAVING, Policy.WEANED, 2)
                .orElseThrow();

        assertThat(back.rows().stream()
                        .map(row -> back.day(pace, row).toString().substring("2026-".length()))
                        .collect(Collectors.joining(" ")))
                .isEqualTo(days);
    }

    @Test
    void eachRowOfTwoRoundsSaysOfWhichItIsAndTheSecondIsCountedFromTheFirst() {
        WorkingBack back = WorkingBack.from(timetable("budgerigar"), LEAVING, Policy.WEANED, 2)
                .orElseThrow();

        assertThat(back.rows().stream().map(row -> Words.english().sentence(back.word(row))))
                .startsWith("Box on", "Round 1: first egg", "Round 1: last egg")
                .contains("Round 1: last one feeds itself", "Round 2: first egg", "Round 2: hen out")
                .doesNotContain("Round 1: box off", "Round 1: hen out");
        assertThat(back.days(new WorkingBack.Row(2, Steps.Step.FIRST_EGG)).map(Words.english()::say))
                .contains("45 / 50 / 60");
    }

    @ParameterizedTest
    @CsvSource({"PUSH, 2026-02-19", "USUAL, 2026-02-06", "SAFE, 2025-12-30"})
    void twoRoundsBeginOneRoundEarlierAndEndAlike(Pace pace, LocalDate boxOn) {
        Steps two = WorkingBack.from(timetable("budgerigar"), LEAVING, Policy.WEANED, 2)
                .orElseThrow()
                .column(pace);
        Steps one = WorkingBack.from(timetable("budgerigar"), LEAVING, Policy.WEANED, 1)
                .orElseThrow()
                .column(pace);

        assertThat(two.boxOn()).isEqualTo(boxOn);
        assertThat(two.firstEgg()).isEqualTo(one.firstEgg());
    }

    /** 42 days before 10 March of a leap year is 28 January, of another 27 January. */
    @ParameterizedTest
    @CsvSource({"2028-03-10, 2028-01-28, 2027-12-23", "2027-03-10, 2027-01-27, 2026-12-22"})
    void leapDaysAndYearEndsAreWalkedOver(LocalDate clearBy, LocalDate lastHatch, LocalDate boxOn) {
        Steps usual = WorkingBack.from(timetable("budgerigar"), clearBy, Policy.WEANED, 1)
                .orElseThrow()
                .column(Pace.USUAL);

        assertThat(usual.lastHatch()).isEqualTo(lastHatch);
        assertThat(usual.boxOn()).isEqualTo(boxOn);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "budgerigar",
                "canary",
                "zebra finch",
                "bengalese",
                "gouldian",
                "cockatiel",
                "peach-faced lovebird",
                "bourke"
            })
    void safeIsNeverLaterThanUsualNorUsualThanAtAPush(String species) {
        for (Policy policy : Policy.values()) {
            for (int rounds = 1; rounds <= 3; rounds++) {
                for (int day = 0; day < 366; day += 5) {
                    LocalDate clearBy = LocalDate.of(2027, 12, 1).plusDays(day);
                    WorkingBack back = WorkingBack.from(timetable(species), clearBy, policy, rounds)
                            .orElseThrow();
                    for (Steps.Step step : Stream.of(
                                    Steps.Step.BOX_ON, Steps.Step.FIRST_EGG, Steps.Step.LAST_EGG, Steps.Step.LAST_HATCH)
                            .toList()) {
                        assertThat(back.column(Pace.SAFE).day(step))
                                .isBeforeOrEqualTo(back.column(Pace.USUAL).day(step));
                        assertThat(back.column(Pace.USUAL).day(step))
                                .isBeforeOrEqualTo(back.column(Pace.PUSH).day(step));
                    }
                }
            }
        }
    }

    /** A box put on at the last date finishes on the day, a day later it does not: reckoned forwards from the box. */
    @ParameterizedTest
    @EnumSource(Policy.class)
    void aBoxPutOnAtTheLastDateIsDoneOnTheDayAndADayLaterIsNot(Policy policy) {
        for (String species : new String[] {"budgerigar", "zebra finch", "cockatiel"}) {
            WorkingBack back =
                    WorkingBack.from(timetable(species), LEAVING, policy, 1).orElseThrow();
            for (Pace pace : Pace.values()) {
                LocalDate last = back.column(pace).boxOn();

                assertThat(done(species, policy, last, pace))
                        .as(species + " " + pace)
                        .isEqualTo(LEAVING);
                assertThat(done(species, policy, last.plusDays(1), pace)).isEqualTo(LEAVING.plusDays(1));
            }
        }
    }

    private static LocalDate done(String species, Policy policy, LocalDate boxOn, Pace pace) {
        NestSketch sketch = new NestSketch(species);
        sketch.home("A1", boxOn).box(BoxStep.ON, boxOn);
        Window clear = Ahead.of(sketch.room(), boxOn, new AheadQuestion(LEAVING, policy, 1, new Draws(1, 1)))
                .nests()
                .get(0)
                .clear();
        return at(pace, clear);
    }

    /** A box put on at the last date for two rounds is done on the day, a day later it is not. */
    @ParameterizedTest
    @EnumSource(Pace.class)
    void aNestThatIsToRearTwoRoundsIsDoneAfterTheSecond(Pace pace) {
        LocalDate last = WorkingBack.from(timetable("budgerigar"), LEAVING, Policy.WEANED, 2)
                .orElseThrow()
                .column(pace)
                .boxOn();

        assertThat(done(last, 2, pace)).isEqualTo(LEAVING);
        assertThat(done(last.plusDays(1), 2, pace)).isEqualTo(LEAVING.plusDays(1));
        assertThat(done(last, 1, pace)).isBefore(LEAVING.minusDays(40));
    }

    private static LocalDate done(LocalDate boxOn, int rounds, Pace pace) {
        NestSketch sketch = new NestSketch();
        sketch.home("A1", boxOn).box(BoxStep.ON, boxOn);
        return at(pace, nest(sketch, boxOn, rounds).clear());
    }

    /** The first egg is of 1 March; 50 days to the next, then 8 of laying, 18 of sitting, 42 to feeding itself. */
    @Test
    void aRoundThatWasBegunCountsAsOneOfThoseToRear() {
        NestSketch sketch = new NestSketch();
        sketch.home("A1", LocalDate.of(2026, 2, 10))
                .box(BoxStep.ON, LocalDate.of(2026, 2, 12))
                .round()
                .egg(LocalDate.of(2026, 3, 1));
        LocalDate today = LocalDate.of(2026, 3, 2);

        assertThat(nest(sketch, today, 1).clear().expected())
                .isEqualTo(LocalDate.of(2026, 3, 1).plusDays(8 + 18 + 42));
        assertThat(nest(sketch, today, 2).clear().expected())
                .isEqualTo(LocalDate.of(2026, 3, 1).plusDays(50 + 8 + 18 + 42));
        assertThat(nest(sketch, today, 2).waysOut().get(0).way()).isEqualTo(WayOut.Way.FEWER_ROUNDS);
        assertThat(nest(sketch, today, 2).waysOut().get(0).clear())
                .isEqualTo(nest(sketch, today, 1).clear());
    }

    private static NestAhead nest(NestSketch sketch, LocalDate today, int rounds) {
        return Ahead.of(sketch.room(), today, new AheadQuestion(LEAVING, Policy.WEANED, rounds, new Draws(50, 1)))
                .nests()
                .get(0);
    }

    private static LocalDate at(Pace pace, Window clear) {
        return switch (pace) {
            case PUSH -> clear.earliest();
            case USUAL -> clear.expected();
            case SAFE -> clear.latest();
        };
    }

    /** Rings of 1 January: eight and five days before for the first hatching, 20 more for the egg, 10 for the box. */
    @Test
    void theNewYearsRingsFitChicksHatchedFromEightDaysBefore() {
        NewRings rings = NewRings.after(
                        LocalDate.of(2026, 9, 20),
                        timetable("budgerigar"),
                        new RingIssue(MonthDay.of(1, 1), RingsOf.THIS_YEAR))
                .orElseThrow();

        assertThat(rings.year()).isEqualTo(2027);
        assertThat(rings.issued()).isEqualTo(LocalDate.of(2027, 1, 1));
        assertThat(rings.firstHatch())
                .isEqualTo(new NewRings.From(LocalDate.of(2026, 12, 24), LocalDate.of(2026, 12, 27)));
        assertThat(rings.firstEgg()).isEqualTo(new NewRings.From(LocalDate.of(2026, 12, 4), LocalDate.of(2026, 12, 7)));
        assertThat(rings.boxOn()).isEqualTo(new NewRings.From(LocalDate.of(2026, 11, 24), LocalDate.of(2026, 11, 27)));
    }

    @Test
    void ringsOfOctoberAreThoseOfTheYearThatFollows() {
        NewRings rings = NewRings.after(
                        LocalDate.of(2026, 9, 20),
                        timetable("budgerigar"),
                        new RingIssue(MonthDay.of(10, 1), RingsOf.NEXT_YEAR))
                .orElseThrow();

        assertThat(rings.year()).isEqualTo(2027);
        assertThat(rings.boxOn().earliest()).isEqualTo(LocalDate.of(2026, 8, 24));
    }

    @Test
    void aSpeciesOfWhichNothingIsKnownHasNoDates() {
        assertThat(WorkingBack.from(timetable("hoopoe"), LEAVING, Policy.WEANED, 1))
                .isEmpty();
    }

    private static Timetable timetable(String species) {
        return Almanac.of(new NestSketch(species).room()).timetable(species);
    }
}
