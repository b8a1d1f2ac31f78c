package org.cagewall.plan;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;

/**
 * What chance leaves open, drawn many times over: whether each egg hatches, and how long each stage takes. Every nest draws
 * by a chance of its own, so that what is recorded of one leaves the others as they were. Pure: the same seed and room
 * give the same answer; immutable; any thread.
 *
 * @param days of the time asked about, one after the other
 */
record Forecast(List<DayAhead> days, Map<Long, int[]> clear) {

    /** Spreads the seeds of nests apart; any odd number would do. */
    private static final long APART = 0x9E3779B97F4A7C15L;

    /** The share of draws in which a nest is done by that day, from 0 to 1. */
    double chance(long cage, LocalDate by) {
        int day = Course.day(by);
        int[] draws = clear.get(cage);
        int done = 0;
        for (int each : draws) {
            if (each <= day) {
                done++;
            }
        }
        return (double) done / draws.length;
    }

    /**
     * Of those nests together.
     *
     * @param from the first day of the time asked about
     * @param leaving the day of it from which the owner is away
     * @param to its last day
     */
    static Forecast of(
            List<Course> nests,
            Map<Long, Odds> odds,
            LocalDate from,
            LocalDate leaving,
            LocalDate to,
            Policy policy,
            Draws draws) {
        int days = (int) ChronoUnit.DAYS.between(from, to) + 1;
        Tally tally = new Tally(Course.day(from), Course.day(leaving), days, draws.count());
        Map<Long, int[]> clear = new HashMap<>();
        for (Course nest : nests) {
            clear.put(nest.nest().cage(), draw(nest, odds.get(nest.nest().cage()), tally, policy, draws));
        }
        return new Forecast(tally.days(from), Map.copyOf(clear));
    }

    private static int[] draw(Course nest, Odds odds, Tally tally, Policy policy, Draws draws) {
        long seed = draws.seed() + APART * nest.nest().cage();
        Law law = Law.drawn(Law.laws(nest.nest().timetable()), odds, new SplittableRandom(seed));
        Span ringing = nest.nest().timetable().span(Timing.RINGING).orElseThrow();
        Fate fate = nest.fate();
        int[] clear = new int[draws.count()];
        for (int draw = 0; draw < clear.length; draw++) {
            nest.run(law, fate);
            clear[draw] = fate.clear(policy);
            tally.add(draw, nest, fate, ringing);
        }
        return clear;
    }

    /**
     * How many there are of everything on each day in each draw. What falls due before the owner leaves is done by then:
     * eggs whose time is over are taken out, chicks ringed and taken away; after that none of it is done.
     */
    private static final class Tally {

        private final int from;
        private final int leaving;
        private final Count eggs;
        private final Count chicks;
        private final Count toRing;
        private final Count toTakeAway;

        private Tally(int from, int leaving, int days, int draws) {
            this.from = from;
            this.leaving = leaving;
            this.eggs = new Count(days, draws);
            this.chicks = new Count(days, draws);
            this.toRing = new Count(days, draws);
            this.toTakeAway = new Count(days, draws);
        }

        private void add(int draw, Course nest, Fate fate, Span ringing) {
            for (int i = 0; i < fate.count; i++) {
                boolean here =
                        i >= nest.young().size() || nest.young().get(i).fed().isEmpty();
                if (here) {
                    add(draw, eggs, fate.laid[i], fate.hatch[i] == Fate.NEVER ? takenOut(fate.over[i]) : fate.hatch[i]);
                    addChick(draw, nest, fate, i, ringing);
                }
            }
        }

        private int takenOut(int over) {
            return over < leaving ? over + 1 : Fate.NEVER;
        }

        private void addChick(int draw, Course nest, Fate fate, int i, Span ringing) {
            if (fate.out[i] == Fate.NEVER) {
                return;
            }
            int hatch = fate.hatch[i];
            add(draw, chicks, hatch, fate.out[i]);
            if (fate.fed[i] >= leaving) {
                add(draw, toTakeAway, fate.fed[i], Fate.NEVER);
            }
            boolean ringed = i < nest.young().size() && nest.young().get(i).ringed();
            if (!ringed && hatch + ringing.earliest() >= leaving) {
                add(draw, toRing, hatch + ringing.earliest(), hatch + ringing.latest() + 1);
            }
        }

        /** One more from one day until another. */
        private void add(int draw, Count count, int since, int until) {
            count.add(draw, since - from, until == Fate.NEVER ? Fate.NEVER : until - from);
        }

        private List<DayAhead> days(LocalDate first) {
            List<Range> lying = eggs.ranges();
            List<Range> inBox = chicks.ranges();
            List<Range> ringing = toRing.ranges();
            List<Range> fedThemselves = toTakeAway.ranges();
            return IntStream.range(0, lying.size())
                    .mapToObj(day -> new DayAhead(
                            first.plusDays(day),
                            lying.get(day),
                            inBox.get(day),
                            ringing.get(day),
                            fedThemselves.get(day)))
                    .toList();
        }
    }

    /** How many there are of one thing, kept as what is more or fewer than on the day before, the days of a draw together. */
    private static final class Count {

        private final int days;
        private final int draws;
        private final int[] changes;

        private Count(int days, int draws) {
            this.days = days;
            this.draws = draws;
            this.changes = new int[days * draws];
        }

        private void add(int draw, int since, int until) {
            int first = Math.max(since, 0);
            if (first < days && until > first) {
                changes[draw * days + first]++;
                if (until < days) {
                    changes[draw * days + until]--;
                }
            }
        }

        private List<Range> ranges() {
            int[] now = new int[draws];
            List<Range> ranges = new ArrayList<>();
            for (int day = 0; day < days; day++) {
                for (int draw = 0; draw < draws; draw++) {
                    now[draw] += changes[draw * days + day];
                }
                ranges.add(Range.of(now));
            }
            return ranges;
        }
    }
}
