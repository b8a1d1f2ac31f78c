package org.cagewall.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.cagewall.almanac.NestSketch.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.almanac.NestSketch;
import org.cagewall.almanac.NestSketch.Clutch;
import org.cagewall.almanac.NestSketch.EggSketch;
import org.cagewall.almanac.NestSketch.Home;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;
import org.cagewall.room.Use;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.EggFinding;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The eggs that find a nest, beside every way in which they could be shared out. Which eggs and nests come into question is
 * worked out here a second time, in plain numbers of days. Incubation 18 days and feeding itself at 42 are the timetable's;
 * 3 days of gap, 6 eggs and 5 chicks are common practice, no source.
 */
class FosterMatchingBruteForceTest {

    private static final int ROOMS = 1_500;
    private static final int NETS = 1_500;
    private static final int MOST_WAYS = 100_000;

    private static final int TODAY = 30;
    private static final int INCUBATION = 18;
    private static final int LATEST_INCUBATION = 21;
    private static final int FEEDS_ITSELF = 42;
    private static final int CLUTCH = 5;

    /** How good a sharing out is: more eggs, then fewer days of gap, then the lesser sum of squares. */
    private record Worth(int eggs, int gaps, int squares) {

        private static final Comparator<Worth> BETTER_LAST = Comparator.comparing(Worth::eggs)
                .thenComparing(Worth::gaps, Comparator.reverseOrder())
                .thenComparing(Worth::squares, Comparator.reverseOrder());

        static Worth of(int[][] gaps, int[] hostOf, int hosts) {
            int[] loads = new int[hosts];
            int eggs = 0;
            int sum = 0;
            for (int i = 0; i < hostOf.length; i++) {
                if (hostOf[i] >= 0) {
                    eggs++;
                    sum += gaps[i][hostOf[i]];
                    loads[hostOf[i]]++;
                }
            }
            return new Worth(
                    eggs, sum, Arrays.stream(loads).map(load -> load * load).sum());
        }
    }

    /** Every way to share out, one after another; a gap below 0 is a nest the egg cannot go to. */
    private static final class AllWays {

        private final int[][] gaps;
        private final int[] free;
        private final int[] hostOf;
        private Worth best = new Worth(0, 0, 0);

        AllWays(int[][] gaps, int[] places) {
            this.gaps = gaps;
            this.free = places.clone();
            this.hostOf = new int[gaps.length];
            from(0);
        }

        static long count(int[][] gaps) {
            return Arrays.stream(gaps)
                    .mapToLong(row ->
                            1 + Arrays.stream(row).filter(gap -> gap >= 0).count())
                    .reduce(1, (one, other) -> Math.min(Integer.MAX_VALUE, one * other));
        }

        private void from(int egg) {
            if (egg == gaps.length) {
                Worth worth = Worth.of(gaps, hostOf, free.length);
                best = Stream.of(best, worth).max(Worth.BETTER_LAST).orElseThrow();
                return;
            }
            hostOf[egg] = -1;
            from(egg + 1);
            for (int host = 0; host < free.length; host++) {
                if (gaps[egg][host] >= 0 && free[host] > 0) {
                    free[host]--;
                    hostOf[egg] = host;
                    from(egg + 1);
                    free[host]++;
                }
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void noOtherWayIsBetterForAnyNetOfEggsAndHosts(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        for (int net = 0; net < NETS; net++) {
            int eggs = 1 + chance.nextInt(7);
            int[] places = IntStream.range(0, 1 + chance.nextInt(4))
                    .map(host -> chance.nextInt(4))
                    .toArray();
            int[][] gaps = new int[eggs][places.length];
            FosterFlow flow = new FosterFlow(eggs, places);
            for (int egg = 0; egg < eggs; egg++) {
                for (int host = 0; host < places.length; host++) {
                    gaps[egg][host] = chance.nextInt(6) - 2;
                    if (gaps[egg][host] >= 0) {
                        flow.fits(egg, host, gaps[egg][host]);
                    }
                }
            }
            int[] found =
                    flow.shareOut().stream().mapToInt(host -> host.orElse(-1)).toArray();

            for (int host = 0; host < places.length; host++) {
                int wanted = host;
                assertThat(Arrays.stream(found).filter(it -> it == wanted).count())
                        .isLessThanOrEqualTo(places[host]);
            }
            assertThat(Worth.of(gaps, found, places.length))
                    .as("seed %s, net %s", seed, net)
                    .isEqualTo(new AllWays(gaps, places).best);
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {11, 12, 13, 14})
    void noOtherWayIsBetterInAnySmallRoom(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        int checked = 0;
        int withMoves = 0;
        int withEggsLeftOver = 0;
        for (int i = 0; i < ROOMS; i++) {
            Plain plain = Plain.any(chance);
            List<PlainEgg> offers = plain.offers();
            List<PlainNest> hosts = plain.hosts();
            int[][] gaps = offers.stream()
                    .map(egg -> hosts.stream().mapToInt(host -> host.gap(egg)).toArray())
                    .toArray(int[][]::new);
            if (AllWays.count(gaps) > MOST_WAYS) {
                continue;
            }
            List<FosterMove> moves = plain.ask(plain.sketch().room());
            int[] hostOf = new int[offers.size()];
            Arrays.fill(hostOf, -1);
            for (FosterMove move : moves) {
                int egg = only(offers, it -> it.nest.name.equals(move.from().name()) && it.mark.equals(move.mark()));
                hostOf[egg] = only(hosts, it -> it.name.equals(move.to().name()));
                assertThat(move.gap()).isEqualTo(gaps[egg][hostOf[egg]]);
            }
            int[] places = hosts.stream().mapToInt(PlainNest::places).toArray();
            Worth best = new AllWays(gaps, places).best;

            assertThat(moves).hasSize(best.eggs());
            assertThat(Worth.of(gaps, hostOf, hosts.size()))
                    .as("seed %s, room %s", seed, i)
                    .isEqualTo(best);
            for (int host = 0; host < places.length; host++) {
                int wanted = host;
                assertThat(Arrays.stream(hostOf).filter(it -> it == wanted).count())
                        .isLessThanOrEqualTo(places[host]);
            }
            checked++;
            withMoves += moves.isEmpty() ? 0 : 1;
            withEggsLeftOver += !moves.isEmpty() && moves.size() < offers.size() ? 1 : 0;
        }
        assertThat(checked).as("rooms small enough").isGreaterThan(ROOMS * 9 / 10);
        assertThat(withMoves).as("rooms in which an egg moves").isGreaterThan(ROOMS / 8);
        assertThat(withEggsLeftOver).as("rooms in which one stays").isGreaterThan(ROOMS / 20);
    }

    private static <T> int only(List<T> among, Predicate<T> wanted) {
        int[] found = IntStream.range(0, among.size())
                .filter(i -> wanted.test(among.get(i)))
                .toArray();
        assertThat(found).hasSize(1);
        return found[0];
    }

    @Test
    void theSameRoomGivesTheSameMovesInWhateverOrderItIsRead() {
        SplittableRandom chance = new SplittableRandom(21);
        for (int i = 0; i < 300; i++) {
            Plain plain = Plain.any(chance);
            NestSketch sketch = plain.sketch();
            List<String> first = words(plain.ask(sketch.room(new Random(1))));

            assertThat(words(plain.ask(sketch.room(new Random(i))))).isEqualTo(first);
        }
    }

    private static List<String> words(List<FosterMove> moves) {
        return moves.stream()
                .map(move -> move.mark() + " " + move.from().name() + " "
                        + move.to().name() + " " + move.gap() + " " + move.why())
                .toList();
    }

    /** A room in plain numbers: days of one spring. */
    private record Plain(List<PlainNest> nests, int clearBy, int mostEggs, int mostChicks) {

        static Plain any(SplittableRandom chance) {
            int mostEggs = 3 + chance.nextInt(5);
            int mostChicks = 3 + chance.nextInt(5);
            int clearBy = TODAY + FEEDS_ITSELF + chance.nextInt(16);
            List<PlainNest> nests = new ArrayList<>();
            int many = 2 + chance.nextInt(4);
            for (int i = 0; i < many; i++) {
                nests.add(PlainNest.any("B" + i, chance, clearBy, mostEggs, mostChicks));
            }
            return new Plain(nests, clearBy, mostEggs, mostChicks);
        }

        List<PlainEgg> offers() {
            return nests.stream().flatMap(nest -> nest.offers().stream()).toList();
        }

        List<PlainNest> hosts() {
            return nests.stream()
                    .filter(nest -> nest.offers().isEmpty() && nest.isFit() && nest.places() > 0)
                    .toList();
        }

        NestSketch sketch() {
            NestSketch sketch = new NestSketch()
                    .most(mostEggs, mostChicks)
                    .set("budgerigar", Timing.LAY_GAP, "1 2 4")
                    .set("budgerigar", Timing.INCUBATION, "17 18 21")
                    .set("budgerigar", Timing.INDEPENDENT, "38 42 56");
            nests.forEach(nest -> nest.into(sketch));
            return sketch;
        }

        List<FosterMove> ask(Room room) {
            return Ahead.of(room, day(TODAY), new AheadQuestion(day(clearBy), Policy.WEANED, 1, new Draws(1, 1)))
                    .fosters();
        }
    }

    private enum Fault {
        NONE,
        NO_BOX,
        PARTING,
        HOSPITAL,
        EGG_EATER
    }

    private static final class PlainNest {

        private final String name;
        private final int sitting;
        private final List<PlainEgg> eggs = new ArrayList<>();
        private final List<Integer> chicks = new ArrayList<>();
        private final Fault fault;
        private final int clearBy;
        private final int mostEggs;
        private final int mostChicks;

        private PlainNest(String name, int sitting, Fault fault, int clearBy, int mostEggs, int mostChicks) {
            this.name = name;
            this.sitting = sitting;
            this.fault = fault;
            this.clearBy = clearBy;
            this.mostEggs = mostEggs;
            this.mostChicks = mostChicks;
        }

        static PlainNest any(String name, SplittableRandom chance, int clearBy, int mostEggs, int mostChicks) {
            boolean faulty = chance.nextInt(8) == 0;
            Fault fault = faulty ? Fault.values()[1 + chance.nextInt(4)] : Fault.NONE;
            int first = 5 + chance.nextInt(16);
            PlainNest nest = new PlainNest(name, first + 2, fault, clearBy, mostEggs, mostChicks);
            boolean allClear = chance.nextInt(5) == 0;
            int count = 1 + chance.nextInt(7);
            int laid = first;
            for (int i = 0; i < count && laid <= TODAY; i++) {
                if (laid + INCUBATION < TODAY - 3 && chance.nextInt(2) == 0) {
                    nest.chicks.add(Math.max(laid, nest.sitting) + INCUBATION);
                } else {
                    nest.eggs.add(new PlainEgg(
                            nest,
                            Integer.toString(i + 1),
                            laid,
                            allClear || chance.nextInt(6) == 0,
                            chance.nextInt(20) == 0));
                }
                laid += 1 + chance.nextInt(3);
            }
            return nest;
        }

        void into(NestSketch sketch) {
            Home home = sketch.home(name, day(-60));
            if (fault != Fault.NO_BOX) {
                home.box(BoxStep.ON, day(-50));
            }
            if (fault == Fault.PARTING) {
                home.parting(day(TODAY - 1));
            }
            if (fault == Fault.HOSPITAL) {
                home.use(Use.HOSPITAL);
            }
            if (fault == Fault.EGG_EATER) {
                home.henIs("egg-eater");
            }
            Clutch clutch = home.round().sitting(day(sitting));
            int mark = 1;
            int chick = 0;
            while (mark <= eggs.size() + chicks.size()) {
                String wanted = Integer.toString(mark);
                eggs.stream().filter(egg -> egg.mark.equals(wanted)).findFirst().ifPresent(egg -> egg.into(clutch));
                if (eggs.stream().noneMatch(egg -> egg.mark.equals(wanted))) {
                    int hatched = chicks.get(chick++);
                    clutch.egg(day(hatched - INCUBATION)).hatched(day(hatched));
                }
                mark++;
            }
        }

        private List<PlainEgg> live() {
            return eggs.stream().filter(egg -> !egg.clear).toList();
        }

        private boolean isLaying() {
            int last = eggs.stream().mapToInt(egg -> egg.laid).max().orElse(0);
            return chicks.isEmpty() && fault != Fault.PARTING && eggs.size() < 8 && last + 4 >= TODAY;
        }

        List<PlainEgg> offers() {
            List<PlainEgg> late = live().stream().filter(PlainEgg::isLate).toList();
            boolean someInTime = late.size() < live().size() || chicks.stream().anyMatch(day -> fed(day) <= clearBy);
            boolean few = chicks.isEmpty()
                    && !isLaying()
                    && live().size() <= 2
                    && live().stream().allMatch(egg -> egg.isLate() && egg.canGo());
            List<PlainEgg> last = live().stream()
                    .sorted(Comparator.comparing(PlainEgg::hatches))
                    .skip(mostEggs)
                    .toList();
            return live().stream()
                    .filter(egg -> (someInTime || few) && late.contains(egg) || last.contains(egg))
                    .filter(PlainEgg::canGo)
                    .toList();
        }

        boolean isFit() {
            return fault == Fault.NONE;
        }

        int places() {
            int toCome = isLaying() ? Math.max(0, CLUTCH - eggs.size()) : 0;
            int eggsThen = live().size() + toCome;
            return Math.min(mostEggs - eggsThen, mostChicks - eggsThen - chicks.size());
        }

        /** -1 where it is more than 3 days, or the nest holds nothing to go by. */
        int gap(PlainEgg egg) {
            List<Integer> days = Stream.concat(live().stream().map(PlainEgg::hatches), chicks.stream())
                    .sorted()
                    .collect(Collectors.toList());
            if (days.isEmpty()) {
                days = eggs.stream().map(PlainEgg::hatches).sorted().toList();
            }
            int gap = Integer.MAX_VALUE;
            for (int i = 0; i < days.size(); i++) {
                gap = Math.min(gap, Math.abs(days.get(i) - egg.hatches()));
                boolean between = i > 0 && days.get(i - 1) <= egg.hatches() && egg.hatches() <= days.get(i);
                if (between && days.get(i) - days.get(i - 1) <= 6) {
                    gap = 0;
                }
            }
            return gap > 3 ? -1 : gap;
        }
    }

    private static int fed(int hatched) {
        return Math.max(hatched + FEEDS_ITSELF, TODAY);
    }

    private record PlainEgg(PlainNest nest, String mark, int laid, boolean clear, boolean chipped) {

        int sat() {
            return Math.max(laid, nest.sitting);
        }

        int hatches() {
            return sat() + INCUBATION;
        }

        boolean isLate() {
            return fed(Math.max(hatches(), TODAY)) > nest.clearBy;
        }

        boolean canGo() {
            return !chipped && sat() + LATEST_INCUBATION >= TODAY;
        }

        void into(Clutch clutch) {
            EggSketch egg = clutch.egg(day(laid));
            if (clear) {
                egg.candled(EggFinding.CLEAR, day(TODAY));
            } else if (chipped) {
                egg.pipped(day(TODAY));
            }
        }
    }
}
