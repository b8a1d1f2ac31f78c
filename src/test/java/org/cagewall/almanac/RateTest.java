package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class RateTest {

    /** 57 chicks of 64 eggs and 69 of 74: Banaszewska et al. 2014, Acta Sci. Pol. Zootechnica 13(3):29-36. */
    @ParameterizedTest
    @CsvSource({"57, 64, 0.891", "69, 74, 0.932"})
    void twoPublishedPairsHatchedNineInTen(int chicks, int eggs, double share) {
        assertThat(new Rate(chicks, eggs).share().orElseThrow()).isCloseTo(share, within(0.0005));
    }

    /** Against the Wilson score interval of Apache Commons Math 3.6.1. */
    @ParameterizedTest
    @CsvSource({"57, 64", "69, 74", "0, 5", "5, 5", "1, 1", "3, 20", "500, 1000"})
    void itsIntervalIsWilsons(int hits, int of) {
        ConfidenceInterval library = new WilsonScoreInterval().createInterval(of, hits, 0.95);

        assertThat(new Rate(hits, of).low()).isCloseTo(Math.max(0, library.getLowerBound()), within(1e-9));
        assertThat(new Rate(hits, of).high()).isCloseTo(Math.min(1, library.getUpperBound()), within(1e-9));
    }

    @Test
    void ofNoneNothingIsKnown() {
        assertThat(new Rate(0, 0).share()).isEmpty();
        assertThat(new Rate(0, 0).low()).isZero();
        assertThat(new Rate(0, 0).high()).isEqualTo(1);
    }
}
