package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneOffset;
import org.cagewall.room.RingBody;
import org.cagewall.room.RingIssue;
import org.cagewall.room.RingsOf;
import org.cagewall.room.Settings;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingYearsTest {

    private static final RingIssue JANUARY = new RingIssue(MonthDay.of(1, 1), RingsOf.THIS_YEAR);
    private static final RingIssue OCTOBER = new RingIssue(MonthDay.of(10, 1), RingsOf.NEXT_YEAR);

    /** World Budgerigar Organisation, ring page, to 2029; its page also has violet for 2009. */
    @ParameterizedTest
    @CsvSource({
        "2009, VIOLET", "2010, ORANGE", "2014, PASTEL_GREEN", "2016, ORANGE", "2018, RED", "2019, BLACK",
        "2020, DARK_GREEN", "2021, VIOLET", "2022, DARK_BROWN", "2023, DARK_BLUE", "2024, RED", "2025, BLACK",
        "2026, DARK_GREEN", "2027, VIOLET", "2028, DARK_BROWN", "2029, DARK_BLUE"
    })
    void aYearHasTheColourOfTheWorldBodysPage(int year, RingColour colour) {
        assertThat(RingYears.colour(RingBody.WORLD, year)).contains(colour);
    }

    /** Budgerigar Society, ring page, to 2031: pink in 2022, where the world body lists dark brown. */
    @ParameterizedTest
    @CsvSource({"2022, PINK", "2026, DARK_GREEN", "2030, RED", "2031, BLACK"})
    void aYearHasTheColourOfTheSocietysPage(int year, RingColour colour) {
        assertThat(RingYears.colour(RingBody.SOCIETY, year)).contains(colour);
    }

    @Test
    void noColourIsToldForAYearThatNoPageHasOrForAnotherBody() {
        assertThat(RingYears.colour(RingBody.WORLD, 2012)).isEmpty();
        assertThat(RingYears.colour(RingBody.WORLD, 2030)).isEmpty();
        assertThat(RingYears.colour(RingBody.SOCIETY, 2032)).isEmpty();
        assertThat(RingYears.colour(RingBody.OTHER, 2026)).isEmpty();
    }

    /** 1 October in most of Europe (budgerigarworld.com); 1 January in Australia (national council, by-law 7a). */
    @Test
    void aChickHatchedInNovemberMayWearNextYearsRing() {
        assertThat(OCTOBER.ringYear(LocalDate.of(2026, 11, 5))).isEqualTo(2027);
        assertThat(OCTOBER.ringYear(LocalDate.of(2026, 9, 30))).isEqualTo(2026);
        assertThat(JANUARY.ringYear(LocalDate.of(2026, 11, 5))).isEqualTo(2026);
        assertThat(JANUARY.ringYear(LocalDate.of(2027, 1, 1))).isEqualTo(2027);
        assertThat(OCTOBER.issued(2027)).isEqualTo(LocalDate.of(2026, 10, 1));
        assertThat(JANUARY.issued(2027)).isEqualTo(LocalDate.of(2027, 1, 1));
    }

    @Test
    void theOwnerSaysOfWhichYearTheRingsOfADayAre() {
        RingIssue lateRingsOfTheSameYear = new RingIssue(MonthDay.of(9, 1), RingsOf.THIS_YEAR);

        assertThat(lateRingsOfTheSameYear.ringYear(LocalDate.of(2026, 9, 1))).isEqualTo(2026);
        assertThat(lateRingsOfTheSameYear.ringYear(LocalDate.of(2026, 8, 31))).isEqualTo(2025);
        assertThat(lateRingsOfTheSameYear.issued(2026)).isEqualTo(LocalDate.of(2026, 9, 1));
        assertThat(Settings.initial(ZoneOffset.UTC).ringIssue()).isEqualTo(JANUARY);
    }
}
