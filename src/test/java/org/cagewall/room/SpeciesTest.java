package org.cagewall.room;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.regex.Pattern;
import org.cagewall.room.bird.Sex;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The book of species: each value says where it comes from, and what differs from the budgerigar differs. */
class SpeciesTest {

    /** A named work or page, or one of the two marks. */
    private static final Pattern SOURCE = Pattern.compile(
            "Myhrvold et al\\. 2015|AnAge|Wilson, Linden and Lightfoot|Petcare Information|Bird Scene|Budgerigar Society"
                    + "|World Budgerigar Organisation|a breeder's|breeders' pages|an avian vet's|an encyclopaedia"
                    + "|an Australian budgerigar|a finch society's|a general science page|an Indian agricultural"
                    + "|common practice, no source|budgerigar's, carried over");

    @Test
    void everyValueOfEverySpeciesHasItsSourceOrSaysThatItHasNone() {
        assertThat(Species.shipped()).hasSize(8).allSatisfy(species -> species.lines()
                .forEach((name, line) -> assertThat(line.source())
                        .as("%s, %s", species.name(), name)
                        .containsPattern(SOURCE)
                        .doesNotContain("memory")));
    }

    @Test
    void whatIsCarriedOverIsTheBudgerigarsToTheDay() {
        Species budgerigar = Species.of("budgerigar").orElseThrow();

        assertThat(Species.shipped()).allSatisfy(species -> species.lines().forEach((name, line) -> {
            if (line.source().contains("carried over")) {
                assertThat(line.value())
                        .as("%s, %s", species.name(), name)
                        .isEqualTo(budgerigar.lines().get(name).value());
            }
        }));
    }

    /**
     * Days to maturity: Myhrvold et al. 2015 (Ecology 96:3109), AnAge for the zebra finch. None is paired up at leisure
     * before it is grown; a month is 30.44 days.
     */
    @ParameterizedTest
    @CsvSource({
        "budgerigar, COCK, 180",
        "budgerigar, HEN, 180",
        "zebra finch, COCK, 60",
        "zebra finch, HEN, 60",
        "cockatiel, COCK, 395.72",
        "cockatiel, HEN, 455.694",
        "peach-faced lovebird, HEN, 363.5",
        "bourke, HEN, 363.468"
    })
    void noBirdIsBredFromBeforeItIsGrown(String species, Sex sex, double days) {
        assertThat(Species.of(species).orElseThrow().breedingAge(sex).usual() * 30.44)
                .isGreaterThanOrEqualTo(days);
    }

    @Test
    void aCanaryMayStayInTheNestFor21DaysAndALovebirdFor50() {
        assertThat(Species.of("canary").orElseThrow().span(Timing.OUT_OF_BOX)).contains(new Span(14, 16, 21));
        assertThat(Species.of("lovebird")
                        .or(() -> Species.of("peachface"))
                        .orElseThrow()
                        .span(Timing.OUT_OF_BOX))
                .contains(new Span(38, 42, 50));
    }

    @Test
    void aRingOfAnotherSpeciesDoesNotFit() {
        RingSizes budgerigars = Species.of("budgerigar").orElseThrow().rings();

        assertThat(budgerigars.fits("4.4 mm")).isTrue();
        assertThat(budgerigars.fits("4,2")).isTrue();
        assertThat(budgerigars.fits("2.9 mm")).isFalse();
        assertThat(budgerigars.fits("exhibition")).isTrue();
    }
}
