package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The format information as the code BCH(15,5) of ISO/IEC 18004, annex C. */
class FormatTest {

    private static final int GENERATOR = 0b101_0011_0111;
    private static final int PRIMITIVE = 0b1_0011;

    /** The example of ISO/IEC 18004, annex C (level M, mask 5), and others from the list of the annex; from memory. */
    @ParameterizedTest
    @CsvSource({"0, 5, 100000011001110", "1, 0, 111011111000100", "0, 0, 101010000010010", "2, 7, 000100000111011"})
    void theBitsAreThoseOfTheStandard(int level, int mask, String bits) {
        StringBuilder told = new StringBuilder();
        boolean[] dark = new Format(level, mask).dark();
        IntStream.range(0, 15).forEach(i -> told.append(dark[i] ? '1' : '0'));

        assertThat(told).hasToString(bits);
    }

    /**
     * Of a binary BCH code of length 15 that mends three errors the zeros are the odd powers one, three and five of a
     * primitive element of GF(16) (Bose and Ray-Chaudhuri 1960): every word of the code is nought there.
     */
    @Test
    void everyWordIsNoughtWhereTheCodeHasItsZeros() {
        assertThat(IntStream.of(words())).hasSize(32).allSatisfy(word -> assertThat(IntStream.of(1, 3, 5))
                .allSatisfy(power ->
                        assertThat(valueAt(word, power)).as("power %d", power).isZero()));
    }

    /** Seven bits at least between any two: three wrong ones are mended. */
    @Test
    void anyTwoWordsDifferInSevenBits() {
        int[] words = words();
        assertThat(IntStream.of(words)).allSatisfy(one -> assertThat(
                        IntStream.of(words).filter(other -> other != one))
                .allSatisfy(other -> assertThat(Integer.bitCount(one ^ other)).isGreaterThanOrEqualTo(7)));
    }

    private static int[] words() {
        return IntStream.range(0, 32)
                .map(number -> CheckedWord.of(number, GENERATOR))
                .toArray();
    }

    /** The word as a polynomial, at that power of the primitive element. */
    private static int valueAt(int word, int power) {
        int sum = 0;
        for (int bit = 0; bit < 15; bit++) {
            if ((word >> bit & 1) == 1) {
                sum ^= element(bit * power % 15);
            }
        }
        return sum;
    }

    private static int element(int power) {
        int element = 1;
        for (int i = 0; i < power; i++) {
            element <<= 1;
            element ^= (element >> 4 & 1) * PRIMITIVE;
        }
        return element;
    }
}
