package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.Outlook;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Room;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.ToldDay;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What it costs to know what comes next in every cage, in a birdroom with many years of eggs behind it. */
@Tag("benchmark")
class AlmanacBenchmark {

    private static final int CAGES = 24;
    private static final int EGGS = 5_000;
    private static final int CLUTCH = 5;

    @Test
    void manyYearsOfEggsAgainstNone() {
        Room young = furnished().room();
        Room old = furnished().past(eggs()).room();

        Race.run(
                "what comes next in every cage",
                2,
                20,
                Race.of(20, i -> outlooks(old)),
                Race.of(20, i -> outlooks(young)));

        assertThat(outlooks(old)).hasSize(CAGES);
    }

    private static List<Outlook> outlooks(Room room) {
        Almanac almanac = Almanac.of(room);
        return room.cages().stream().map(almanac::nest).toList();
    }

    private static NestSketch furnished() {
        NestSketch sketch = new NestSketch();
        for (int i = 0; i < CAGES; i++) {
            sketch.home("B" + i, NestSketch.day(-12))
                    .box(BoxStep.ON, NestSketch.day(-10))
                    .round()
                    .eggs(CLUTCH, NestSketch.day(1), 2);
        }
        return sketch;
    }

    /** Clutches of years gone by, with all that a chick lives through. */
    private static List<PastEgg> eggs() {
        Random chance = new Random(1);
        List<PastEgg> eggs = new ArrayList<>();
        for (int i = 0; i < EGGS; i++) {
            int round = i / CLUTCH;
            LocalDate laid = LocalDate.of(2016, 3, 1).plusDays(round * 2L + i % CLUTCH * 2L);
            LocalDate hatched = laid.plusDays(18L + chance.nextInt(4));
            eggs.add(new PastEgg(
                    1_000_000L + round,
                    1L,
                    Optional.of(laid.minusDays(12)),
                    2_000_000L + round,
                    String.valueOf(1 + i % CLUTCH),
                    Optional.empty(),
                    laid,
                    false,
                    false,
                    Optional.empty(),
                    true,
                    Optional.of(hatched),
                    Optional.of(new ToldDay(hatched.plusDays(7L + chance.nextInt(3)), false)),
                    Optional.of(new ToldDay(hatched.plusDays(30L + chance.nextInt(6)), false)),
                    Optional.of(new ToldDay(hatched.plusDays(40L + chance.nextInt(8)), false))));
        }
        return eggs;
    }
}
