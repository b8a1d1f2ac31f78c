package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.MonthDay;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RingYearsTest {

    private static final MonthDay JANUARY = MonthDay.of(1, 1);
    private static final MonthDay OCTOBER = MonthDay.of(10, 1);

    /** World Budgerigar Organisation, ring page (to 2029); Budgerigar Society, ring page (to 2031); then the cycle goes on. */
    @ParameterizedTest
    @CsvSource({
        "2018, RED", "2019, BLACK", "2020, DARK_GREEN", "2021, VIOLET", "2022, DARK_BROWN", "2023, DARK_BLUE",
        "2024, RED", "2025, BLACK", "2026, DARK_GREEN", "2027, VIOLET", "2028, DARK_BROWN", "2029, DARK_BLUE",
        "2030, RED", "2031, BLACK", "2032, DARK_GREEN", "2033, VIOLET", "2034, DARK_BROWN", "2035, DARK_BLUE",
        "2010, ORANGE", "2014, PASTEL_GREEN", "2016, ORANGE"
    })
    void aYearHasItsColour(int year, RingColour colour) {
        assertThat(RingYears.colour(year)).contains(colour);
    }

    /** Budgerigar Society, ring page: pink, where the world body lists dark brown. */
    @Test
    void inOneCountryTheRingsOf2022WerePink() {
        assertThat(RingYears.elsewhere(2022)).containsExactly(RingColour.PINK);
        assertThat(RingYears.elsewhere(2026)).isEmpty();
    }

    @Test
    void aYearThatIsNotToldHasNoColour() {
        assertThat(RingYears.colour(2012)).isEmpty();
        assertThat(RingYears.colour(2040)).isEmpty();
    }

    /** 1 October in most of Europe (budgerigarworld.com); 1 January in Australia (national council, by-law 7a). */
    @Test
    void aChickHatchedInNovemberMayWearNextYearsRing() {
        assertThat(RingYears.ringYear(LocalDate.of(2026, 11, 5), OCTOBER)).isEqualTo(2027);
        assertThat(RingYears.ringYear(LocalDate.of(2026, 9, 30), OCTOBER)).isEqualTo(2026);
        assertThat(RingYears.ringYear(LocalDate.of(2026, 11, 5), JANUARY)).isEqualTo(2026);
        assertThat(RingYears.ringYear(LocalDate.of(2027, 1, 1), JANUARY)).isEqualTo(2027);
        assertThat(RingYears.issued(2027, OCTOBER)).isEqualTo(LocalDate.of(2026, 10, 1));
        assertThat(RingYears.issued(2027, JANUARY)).isEqualTo(LocalDate.of(2027, 1, 1));
    }
}
