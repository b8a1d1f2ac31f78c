package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.common.reedsolomon.GenericGF;
import com.google.zxing.common.reedsolomon.ReedSolomonEncoder;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Words are made by ZXing's encoder, mended by ours. */
class ReedSolomonTest {

    private static final int TRIES = 300;

    private final SplittableRandom chance = new SplittableRandom(1);

    @Test
    void wrongAndUnsureWordsAreMendedAsFarAsTheChecksReach() {
        for (int unsure = 0; unsure <= ReedSolomon.CHECKS; unsure++) {
            int wrong = (ReedSolomon.CHECKS - unsure) / 2;
            for (int i = 0; i < TRIES; i++) {
                int[] sent = word();
                int[] places = places();
                int[] received = spoilt(sent, places, unsure + wrong);
                assertThat(new ReedSolomon(received).mended(places, unsure)).hasValue(sent);
            }
        }
    }

    @Test
    void aWholeWordStaysAsItIs() {
        int[] sent = word();
        assertThat(new ReedSolomon(sent).mended(places(), 9)).hasValue(sent);
    }

    /** One chance word in some thousands of millions is near enough to a true one. */
    @Test
    void chanceWordsAreNotMended() {
        for (int i = 0; i < TRIES; i++) {
            int[] received = chance.ints(ReedSolomon.WORDS, 0, 256).toArray();
            assertThat(new ReedSolomon(received).mended(places(), 0)).isEmpty();
            assertThat(new ReedSolomon(received).mended(places(), 6)).isEmpty();
        }
    }

    private int[] word() {
        int[] word = new int[ReedSolomon.WORDS];
        for (int i = 0; i < ReedSolomon.WORDS - ReedSolomon.CHECKS; i++) {
            word[i] = chance.nextInt(256);
        }
        new ReedSolomonEncoder(GenericGF.QR_CODE_FIELD_256).encode(word, ReedSolomon.CHECKS);
        return word;
    }

    private int[] places() {
        return chance.ints(0, ReedSolomon.WORDS)
                .distinct()
                .limit(ReedSolomon.WORDS)
                .toArray();
    }

    private int[] spoilt(int[] sent, int[] places, int count) {
        int[] received = sent.clone();
        IntStream.range(0, count).forEach(i -> received[places[i]] ^= 1 + chance.nextInt(255));
        return received;
    }
}
