package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.stream.Collectors;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TimetablesTest {

    /** Common practice and the sources named in the file; the arithmetic that the whole program counts by. */
    @ParameterizedTest
    @CsvSource({
        "FIRST_EGG, 7 10 21",
        "LAY_GAP, 1 2 4",
        "SITS_FROM, 1 2 3",
        "INCUBATION, 17 18 21",
        "FIRST_LOOK, 4 5 7",
        "SECOND_LOOK, 9 10 12",
        "EYES, 6 8 11",
        "RINGING, 5 8 10",
        "BACKS, 25 25 28",
        "OUT_OF_BOX, 28 32 38",
        "INDEPENDENT, 38 42 56",
        "HENS_REST, 7 14 14",
        "NEXT_ROUND, 45 50 60",
        "SETTLING, 7 7 7",
        "CLUTCH, 4 5 8"
    })
    void theBudgerigarKeepsTheseDays(Timing timing, String days) {
        assertThat(Timetables.of("budgerigar").orElseThrow().span(timing)).contains(Span.parse(days));
    }

    @Test
    void everySpeciesHasEveryValueAndSaysWhereItComesFrom() {
        assertThat(Timetables.shipped()).hasSize(8).allSatisfy(table -> {
            assertThat(table.values().keySet()).containsExactlyInAnyOrder(Timing.values());
            assertThat(table.values().values()).allSatisfy(value -> {
                assertThat(value.source())
                        .as("%s %s", table.species(), value.timing())
                        .isNotBlank();
                assertThat(value.origin()).isEqualTo(Origin.BOOK);
            });
        });
    }

    @ParameterizedTest
    @CsvSource({
        "Budgerigar, budgerigar",
        "BUDGIES, budgerigar",
        "Melopsittacus undulatus, budgerigar",
        "Canaries, canary",
        "zebra finches, zebra finch",
        "Zebrafinch, zebra finch",
        "Society Finch, bengalese",
        "Gouldian finch, gouldian",
        "cockatiels, cockatiel",
        "Peach faced lovebird, peach-faced lovebird",
        "Agapornis roseicollis, peach-faced lovebird",
        "Bourke's, bourke",
        "Bourke’s Parakeet, bourke"
    })
    void aSpeciesIsFoundByAnyOfItsNames(String name, String species) {
        assertThat(Timetables.of(name).map(Timetable::species)).contains(species);
    }

    @Test
    void ofASpeciesThatIsNotKnownNothingIsExpectedButWhatTheOwnerHasSet() {
        NestSketch sketch = new NestSketch("diamond dove");

        assertThat(Almanac.of(sketch.room()).timetable("diamond dove").isKnown())
                .isFalse();

        sketch.set("Diamond Dove", Timing.INCUBATION, "12 13 15");

        assertThat(Almanac.of(sketch.room()).timetable("diamond dove").span(Timing.INCUBATION))
                .contains(new Span(12, 13, 15));
    }

    @Test
    void whatTheOwnerSetsStandsInTheBooksPlaceWhicheverNameOfTheBirdWasUsed() {
        NestSketch sketch = new NestSketch().set("Budgies", Timing.INCUBATION, "18 19 21");

        Value value = Almanac.of(sketch.room())
                .timetable("budgerigar")
                .value(Timing.INCUBATION)
                .orElseThrow();

        assertThat(value.span()).isEqualTo(new Span(18, 19, 21));
        assertThat(value.origin()).isEqualTo(Origin.OWNER);
        assertThat(value.book()).contains(new Span(17, 18, 21));
        assertThat(Words.english().say(value.told())).isEqualTo("Set for this birdroom.");
    }

    @Test
    void aSettingThatNobodyCanReadIsLeftOut() {
        NestSketch sketch =
                new NestSketch().set("budgerigar", Timing.INCUBATION, "").set("budgerigar", Timing.RINGING, "9 8 7");

        assertThat(Almanac.of(sketch.room()).timetable("budgerigar"))
                .isEqualTo(Timetables.of("budgerigar").orElseThrow());
    }

    @Test
    void everyOriginIsTold() {
        assertThat(Arrays.stream(Origin.values()).map(Origin::name).collect(Collectors.joining(" ")))
                .isEqualTo("BOOK OWNER OWN_NUMBERS");
        Value book = Timetables.of("canary").orElseThrow().value(Timing.EYES).orElseThrow();
        assertThat(Words.english().say(book.told())).isEqualTo("From the timetable: common practice, no source.");
        assertThat(Words.english().say(book.drawnTo(new Span(5, 6, 8), 14).told()))
                .isEqualTo(
                        "From 14 of this birdroom's own dates, together with the timetable: common practice, no source.");
    }
}
