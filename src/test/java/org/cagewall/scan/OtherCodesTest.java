package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class OtherCodesTest {

    private final Decoder decoder = new Decoder();

    @Test
    void theSameSeedMakesTheSamePicture() {
        assertThat(OtherCodes.of(5).code(Oddity.HARD, 3))
                .isEqualTo(OtherCodes.of(5).code(Oddity.HARD, 3));
        assertThat(OtherCodes.of(6).code(Oddity.HARD, 3).picture())
                .isNotEqualTo(OtherCodes.of(5).code(Oddity.HARD, 3).picture());
    }

    /** Fewer than are read today would be a step back; the rates of many are in the benchmark. */
    @Tag("slow")
    @ParameterizedTest
    @CsvSource({
        "NONE, 6",
        "TILT, 6",
        "BLUR, 3",
        "SMALL, 6",
        "BENT, 5",
        "DENSE, 5",
        "INVERTED, 6",
        "PICTURE_WITHIN, 6",
        "TIGHT, 6",
        "DOTS, 6",
        "CLOSE, 5",
        "SHADOW, 4",
        "FAINT, 6",
        "COMPRESSED, 5",
        "MIRRORED, 6",
        "HARD, 4"
    })
    void ofSixCodesThatAreNoCardsAtLeastSoManyAreReadAndNoneWrongly(Oddity oddity, int least) {
        int read = 0;
        for (int number = 0; number < 6; number++) {
            WornCards.Worn code = OtherCodes.of(3).code(oddity, number);
            Decoding decoding = decoder.decode(code.picture());
            if (decoding.text().isPresent()) {
                assertThat(decoding.text()).contains(code.text());
                read++;
            }
        }
        assertThat(read).isGreaterThanOrEqualTo(least);
    }
}
