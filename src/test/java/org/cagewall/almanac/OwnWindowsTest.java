package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToIntFunction;
import java.util.stream.Stream;
import org.cagewall.room.Timing;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A simulated room whose eggs take their time by another law than the timetable's: what its windows, drawn from 400
 * hatchings, hold of 100,000 others. The figures stand in docs/benchmarks.md.
 */
class OwnWindowsTest {

    private static final int LEARNT = 400;
    private static final int OUTCOMES = 100_000;

    /** Each law with its own seeds: chosen once, never to please. */
    static Stream<Arguments> laws() {
        return Stream.of(1L, 2L, 3L, 4L, 5L)
                .flatMap(seed -> Stream.of(
                        law("19 to 23, the middle likeliest", seed, chance -> 19 + hits(chance, 4, 0.5)),
                        law("bell-shaped about 20.3, spread 1.4", seed, chance ->
                                (int) Math.round(20.3 + 1.4 * chance.nextGaussian())),
                        law("19 and a long tail", seed, chance -> 19 + hits(chance, 12, 0.12))));
    }

    @ParameterizedTest
    @MethodSource("laws")
    void aWindowFromTheRoomsOwnNumbersHoldsNineInTenAndNoShorterOneDoes(
            String name, long seed, ToIntFunction<Random> law) {
        Random chance = new Random(seed);
        Span window = learnt(law, chance);
        int[] counts = new int[100];
        for (int i = 0; i < OUTCOMES; i++) {
            counts[law.applyAsInt(chance)]++;
        }

        assertThat(held(counts, window.earliest(), window.latest()))
                .as("%s, seed %d: %s", name, seed, window)
                .isGreaterThanOrEqualTo(0.87);
        int shorter = window.latest() - window.earliest() - 1;
        for (int from = 0; shorter >= 0 && from + shorter < counts.length; from++) {
            assertThat(held(counts, from, from + shorter))
                    .as("%s, seed %d: %d to %d", name, seed, from, from + shorter)
                    .isLessThan(0.9);
        }
    }

    private static Span learnt(ToIntFunction<Random> law, Random chance) {
        List<Integer> hatchings = new ArrayList<>();
        for (int i = 0; i < LEARNT; i++) {
            hatchings.add(law.applyAsInt(chance));
        }
        NestSketch sketch = new NestSketch().past(OwnNumbersTest.past(hatchings, Optional.empty()));
        return Almanac.of(sketch.room())
                .timetable("budgerigar")
                .span(Timing.INCUBATION)
                .orElseThrow();
    }

    private static double held(int[] counts, int from, int to) {
        int held = 0;
        for (int day = from; day <= to; day++) {
            held += counts[day];
        }
        return (double) held / OUTCOMES;
    }

    private static int hits(Random chance, int tries, double share) {
        int hits = 0;
        for (int i = 0; i < tries; i++) {
            hits += chance.nextDouble() < share ? 1 : 0;
        }
        return hits;
    }

    private static Arguments law(String name, long seed, ToIntFunction<Random> law) {
        return Arguments.of(name, seed, law);
    }
}
