package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WornCardsTest {

    private final Decoder decoder = new Decoder();

    @Test
    void theSameSeedMakesTheSamePicture() {
        assertThat(WornCards.of(5).card(Wear.MIXED, 3))
                .isEqualTo(WornCards.of(5).card(Wear.MIXED, 3));
        assertThat(WornCards.of(6).card(Wear.MIXED, 3).picture())
                .isNotEqualTo(WornCards.of(5).card(Wear.MIXED, 3).picture());
    }

    /** Fewer than are read today would be a step back; the rates of many are in the benchmark. */
    @Tag("slow")
    @ParameterizedTest
    @CsvSource({
        "BLUR, 3",
        "TILT, 6",
        "ROLL, 6",
        "DIRT, 6",
        "DIRT_OFF_FINDERS, 5",
        "LOW_LIGHT, 6",
        "GLARE, 5",
        "CURL, 6",
        "DISTANCE, 6",
        "MOTION, 3",
        "MIXED, 6",
        "HARD, 5"
    })
    void ofSixWornCardsAtLeastSoManyAreReadAndNoneWrongly(Wear wear, int least) {
        int read = 0;
        for (int number = 0; number < 6; number++) {
            WornCards.Worn worn = WornCards.of(3).card(wear, number);
            Decoding decoding = decoder.decode(worn.picture());
            if (decoding.text().isPresent()) {
                assertThat(decoding.text()).contains(worn.text());
                read++;
            }
        }
        assertThat(read).isGreaterThanOrEqualTo(least);
    }
}
