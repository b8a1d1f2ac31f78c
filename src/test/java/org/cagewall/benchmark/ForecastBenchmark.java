package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.SplittableRandom;
import org.cagewall.almanac.NestSketch;
import org.cagewall.plan.Ahead;
import org.cagewall.plan.AheadQuestion;
import org.cagewall.plan.Draws;
import org.cagewall.plan.Policy;
import org.cagewall.room.Room;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What it costs to draw what 60 nests may come to, against the bare drawing of as many numbers. */
@Tag("benchmark")
class ForecastBenchmark {

    private static final int NESTS = 60;
    private static final int EGGS = 5;

    /** Of each egg: whether it hatches, and is reared; incubation, leaving the box, feeding itself. Of each nest: the rest. */
    private static final int NUMBERS_AN_EGG = 5;

    private static final LocalDate TODAY = NestSketch.day(20);
    private static final LocalDate LEAVING = NestSketch.day(70);

    @Test
    void sixtyNestsAgainstOnePlainLoopOfTheSameDraws() {
        Room room = room();
        AheadQuestion question = new AheadQuestion(LEAVING, Policy.WEANED, 1, new Draws(Draws.USUAL, 1));

        Race.run(
                "60 nests drawn 10,000 times",
                10,
                3,
                Race.of(1, i -> ahead(room, question)),
                Race.of(1, i -> assertThat(plain(i)).isPositive()));

        assertThat(ahead(room, question).nests()).hasSize(NESTS);
    }

    private static Ahead ahead(Room room, AheadQuestion question) {
        return Ahead.of(room, TODAY, question);
    }

    /** As many numbers drawn by as many nests, each added to a day. */
    private static long plain(int seed) {
        long sum = 0;
        for (int nest = 0; nest < NESTS; nest++) {
            SplittableRandom chance = new SplittableRandom(seed + nest);
            for (int draw = 0; draw < Draws.USUAL; draw++) {
                for (int number = 0; number < EGGS * NUMBERS_AN_EGG + 1; number++) {
                    sum += (long) (chance.nextDouble() * 19) + 38;
                }
            }
        }
        return sum;
    }

    private static Room room() {
        NestSketch sketch = new NestSketch();
        for (int nest = 0; nest < NESTS; nest++) {
            NestSketch.Home home = sketch.home("B" + nest, NestSketch.day(1)).box(BoxStep.ON, NestSketch.day(1));
            NestSketch.Clutch clutch = home.round().eggs(EGGS, NestSketch.day(5), 2);
            clutch.egg(1 + nest % EGGS).candled(EggFinding.FULL, NestSketch.day(14));
        }
        sketch.away(LEAVING, LEAVING.plusDays(13));
        return sketch.room();
    }
}
