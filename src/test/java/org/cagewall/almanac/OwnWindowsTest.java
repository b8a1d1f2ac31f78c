package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntUnaryOperator;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.ToldDay;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A simulated room whose birds take their time by another law than the timetable's: what its windows, drawn from 1,000 of
 * its own dates, hold of 100,000 others. The figures stand in docs/benchmarks.md.
 */
class OwnWindowsTest {

    private static final int LEARNT = 1_000;
    private static final int OUTCOMES = 100_000;

    /** The timetable of the budgerigar; common practice, no source. */
    private static final int EARLIEST_INDEPENDENCE = 38;

    /** How long birds take, in days, and the seed that the dates are drawn with. */
    private record Case(Timing timing, String law, long seed, ToIntFunction<Random> days) {

        @Override
        public String toString() {
            return timing + ", " + law + ", seed " + seed;
        }
    }

    /** Each law with its own seeds: chosen once, never to please. */
    static Stream<Case> cases() {
        return LongStream.rangeClosed(1, 5)
                .boxed()
                .flatMap(seed -> Stream.of(
                        middle(Timing.INCUBATION, 19, 23, seed),
                        bell(Timing.INCUBATION, 20.3, 1.4, seed),
                        tail(Timing.INCUBATION, 19, 12, 0.12, seed),
                        middle(Timing.FIRST_EGG, 8, 14, seed),
                        tail(Timing.FIRST_EGG, 9, 20, 0.2, seed),
                        middle(Timing.LAY_GAP, 1, 4, seed),
                        tail(Timing.LAY_GAP, 2, 5, 0.2, seed),
                        middle(Timing.RINGING, 6, 12, seed),
                        tail(Timing.RINGING, 6, 10, 0.2, seed),
                        bell(Timing.OUT_OF_BOX, 34.5, 2.2, seed),
                        tail(Timing.OUT_OF_BOX, 30, 20, 0.15, seed),
                        bell(Timing.INDEPENDENT, 46, 3.2, seed),
                        tail(Timing.INDEPENDENT, 40, 30, 0.15, seed)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("cases")
    void aWindowHoldsNineInTenAndNoShorterOneDoes(Case each) {
        Random chance = new Random(each.seed());
        Span window = Almanac.of(
                        learnt(each.timing(), LEARNT, any -> each.days().applyAsInt(chance))
                                .room())
                .timetable("budgerigar")
                .span(each.timing())
                .orElseThrow();
        int[] counts = new int[100];
        for (int i = 0; i < OUTCOMES; i++) {
            counts[each.days().applyAsInt(chance)]++;
        }

        assertThat(held(counts, window.earliest(), window.latest()))
                .as("%s: %s holds %.3f", each, window, held(counts, window.earliest(), window.latest()))
                .isGreaterThanOrEqualTo(0.87);
        if (each.timing() == Timing.INDEPENDENT) {
            // No chick is taken away sooner because others managed, so this window begins where the timetable's does.
            assertThat(window.earliest()).isEqualTo(EARLIEST_INDEPENDENCE);
            return;
        }
        int shorter = window.latest() - window.earliest() - 1;
        for (int from = 0; shorter >= 0 && from + shorter < counts.length; from++) {
            assertThat(held(counts, from, from + shorter))
                    .as("%s: %d to %d", each, from, from + shorter)
                    .isLessThan(0.9);
        }
    }

    /** A room in which this has so often taken so many days. */
    private static NestSketch learnt(Timing timing, int times, IntUnaryOperator days) {
        NestSketch sketch = new NestSketch();
        if (timing == Timing.FIRST_EGG) {
            for (int i = 0; i < times; i++) {
                sketch.home("B" + i, NestSketch.day(-30))
                        .box(BoxStep.ON, NestSketch.day(1))
                        .round()
                        .egg(NestSketch.day(1 + days.applyAsInt(i)));
            }
            return sketch;
        }
        return sketch.past(IntStream.range(0, times)
                .boxed()
                .flatMap(i -> round(timing, i, days.applyAsInt(i)))
                .toList());
    }

    /** A round long gone in which this took so many days, and nothing else is known. */
    private static Stream<PastEgg> round(Timing timing, int round, int days) {
        LocalDate laid = LocalDate.of(2024, 3, 1);
        if (timing == Timing.LAY_GAP) {
            return Stream.of(
                    egg(round, "1", laid, timing, Optional.empty(), Optional.empty()),
                    egg(round, "2", laid.plusDays(days), timing, Optional.empty(), Optional.empty()));
        }
        boolean hatches = timing == Timing.INCUBATION;
        LocalDate hatched = laid.plusDays(hatches ? days : 18);
        return Stream.of(
                egg(round, "1", laid, timing, Optional.of(hatched), Optional.of(hatched.plusDays(hatches ? 0 : days))));
    }

    private static PastEgg egg(
            int round,
            String mark,
            LocalDate laid,
            Timing timing,
            Optional<LocalDate> hatched,
            Optional<LocalDate> later) {
        Optional<ToldDay> told = later.map(day -> new ToldDay(day, false));
        return new PastEgg(
                1_000_000L + round,
                1,
                Optional.of(laid),
                2_000_000L + round,
                mark,
                Optional.empty(),
                laid,
                false,
                false,
                Optional.of(new ToldDay(laid, false)),
                true,
                hatched,
                told.filter(day -> timing == Timing.RINGING),
                told.filter(day -> timing == Timing.OUT_OF_BOX),
                told.filter(day -> timing == Timing.INDEPENDENT));
    }

    private static double held(int[] counts, int from, int to) {
        int held = 0;
        for (int day = from; day <= to; day++) {
            held += counts[day];
        }
        return (double) held / OUTCOMES;
    }

    private static Case middle(Timing timing, int from, int to, long seed) {
        return new Case(
                timing,
                from + " to " + to + ", the middle likeliest",
                seed,
                chance -> from + hits(chance, to - from, 0.5));
    }

    private static Case bell(Timing timing, double about, double spread, long seed) {
        return new Case(timing, "bell-shaped about " + about + ", spread " + spread, seed, chance ->
                (int) Math.round(about + spread * chance.nextGaussian()));
    }

    private static Case tail(Timing timing, int from, int tries, double share, long seed) {
        return new Case(timing, from + " and a long tail", seed, chance -> from + hits(chance, tries, share));
    }

    private static int hits(Random chance, int tries, double share) {
        int hits = 0;
        for (int i = 0; i < tries; i++) {
            hits += chance.nextDouble() < share ? 1 : 0;
        }
        return hits;
    }
}
