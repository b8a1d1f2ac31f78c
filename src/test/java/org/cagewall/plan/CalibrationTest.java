package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.cagewall.almanac.NestSketch.day;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.cagewall.almanac.NestSketch;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/**
 * Whether what is called 30 of 100 happens 30 times of 100: nests of simulated seasons are run to their end, each held
 * against the chance it was given on some day of its sitting. Once their days follow the law that is assumed, drawn here by
 * code of its own; once a narrower one about the same middle.
 */
@Tag("slow")
class CalibrationTest {

    private static final int NESTS = 3_000;
    private static final int DRAWS = 400;
    private static final int BINS = 5;

    /** How the days of the simulated birds spread. */
    private enum Spread {
        AS_ASSUMED,
        NARROWER
    }

    @Test
    void whatIsCalledSoLikelyHappensSoOftenWhereTheBirdsKeepToTheAssumedLaw() {
        for (Bin bin : bins(Spread.AS_ASSUMED)) {
            assertThat(bin.came())
                    .as(bin.toString())
                    .isCloseTo(bin.said(), within(4 * Math.sqrt(bin.said() * (1 - bin.said()) / bin.of()) + 0.01));
        }
    }

    @Test
    void whereTheBirdsSpreadLessTheLikelierIsStillTheMoreFrequent() {
        assertThat(bins(Spread.NARROWER)).extracting(Bin::came).isSorted();
    }

    /** Nests that were given about the same chance. */
    private record Bin(double said, double came, int of) {}

    private static List<Bin> bins(Spread spread) {
        SplittableRandom chance = new SplittableRandom(26);
        double[] said = new double[BINS];
        int[] came = new int[BINS];
        int[] of = new int[BINS];
        for (int nest = 0; nest < NESTS; nest++) {
            int today = 12 + chance.nextInt(6);
            int by = 55 + chance.nextInt(30);
            int eggs = 1 + chance.nextInt(3);
            double told = told(eggs, today, by, nest);
            int bin = Math.min(BINS - 1, (int) (told * BINS));
            said[bin] += told;
            of[bin]++;
            if (isDone(eggs, by, spread, chance)) {
                came[bin]++;
            }
        }
        List<Bin> bins = new ArrayList<>();
        for (int bin = 0; bin < BINS; bin++) {
            assertThat(of[bin]).isGreaterThan(100);
            bins.add(new Bin(said[bin] / of[bin], (double) came[bin] / of[bin], of[bin]));
        }
        return bins;
    }

    /** Full eggs sat from day 1, looked at on day 8. */
    private static double told(int eggs, int today, int by, int seed) {
        NestSketch sketch = new NestSketch();
        NestSketch.Clutch clutch =
                sketch.home("A1", day(1)).box(BoxStep.ON, day(1)).round();
        clutch.sitting(day(1));
        for (int egg = 0; egg < eggs; egg++) {
            clutch.egg(day(1)).candled(EggFinding.FULL, day(8));
        }
        return Ahead.of(sketch.room(), day(today), new AheadQuestion(day(by), Policy.WEANED, 1, new Draws(DRAWS, seed)))
                .nests()
                .get(0)
                .chance();
    }

    /** What becomes of it, by the chances that hold for a room whose own eggs are these: all full, none hatched yet. */
    private static boolean isDone(int eggs, int by, Spread spread, SplittableRandom chance) {
        for (int egg = 0; egg < eggs; egg++) {
            boolean reared = chance.nextDouble() < 0.7 * (10 + eggs) / (8 + eggs) && chance.nextDouble() < 0.9;
            int hatched = 1 + days(17, 18, 21, spread, chance);
            int fed = hatched + days(38, 42, 56, spread, chance);
            if (reared && fed > by) {
                return false;
            }
        }
        return true;
    }

    /** Taken or thrown away by the height of a triangle over the day; or the successes of many tries. */
    private static int days(int earliest, int usual, int latest, Spread spread, SplittableRandom chance) {
        if (spread == Spread.NARROWER) {
            return earliest + successes(latest - earliest, 0.4, chance);
        }
        while (true) {
            int day = earliest + chance.nextInt(latest - earliest + 1);
            double height = day <= usual
                    ? (day - earliest + 1.0) / (usual - earliest + 1.0)
                    : (latest - day + 1.0) / (latest - usual + 1.0);
            if (chance.nextDouble() < height) {
                return day;
            }
        }
    }

    private static int successes(int of, double share, SplittableRandom chance) {
        int count = 0;
        for (int i = 0; i < of; i++) {
            if (chance.nextDouble() < share) {
                count++;
            }
        }
        return count;
    }
}
