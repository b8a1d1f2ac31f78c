package org.cagewall.plan;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.cagewall.almanac.ChickOutlook;
import org.cagewall.almanac.Due;
import org.cagewall.almanac.EggOutlook;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.RoundOutlook;
import org.cagewall.almanac.Window;
import org.cagewall.room.SatFrom;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggState;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.ToldDay;

/**
 * What is yet to come of one nest, stage by stage, as a law has it. As many rounds are begun in it as are to be reared: eggs
 * of a further one are reckoned as taken away. Immutable; any thread, as long as each has a fate and a law of its own.
 *
 * @param today as counted from 1970
 * @param young what lies in the nest: chicks, then eggs
 * @param laying what may still be laid of the round under way, or of the first
 * @param further the rounds that follow it
 * @param stages how the pair is parted
 * @param longestIncubation days sat after which an egg has had its time
 */
record Course(
        Outlook nest,
        int today,
        List<Young> young,
        Optional<Laying> laying,
        Further further,
        Stages stages,
        int longestIncubation) {

    /**
     * A round whose last egg is not laid.
     *
     * @param laid the days of its eggs so far, rising
     * @param waitedFrom the day from which the first egg is waited for, while there is none
     * @param sitting the day she was seen to sit
     * @param egg each that is yet to come
     */
    record Laying(List<Integer> laid, OptionalInt waitedFrom, OptionalInt sitting, Young egg) {

        Laying {
            laid = List.copyOf(laid);
        }
    }

    /**
     * Rounds that have not begun.
     *
     * @param since the first egg of the round before them; empty where that is waited for too
     * @param egg each that is yet to come
     */
    record Further(int rounds, OptionalInt since, Young egg) {

        private Further of(int fewer) {
            return new Further(fewer, since, egg);
        }
    }

    Course {
        young = List.copyOf(young);
    }

    /**
     * Of one nest.
     *
     * @param rounds how many its pair is to rear, those that it has reared or is at included
     */
    static Course of(Outlook nest, LocalDate today, int rounds, Odds odds) {
        DayLaw incubation = new DayLaw(nest.timetable().span(Timing.INCUBATION).orElseThrow());
        Young toCome = Young.toCome(odds.full() * odds.hatchesOfFull());
        Optional<Laying> laying = laying(nest, today, toCome);
        Builder builder = new Builder(nest, day(today), odds, incubation, laying);
        List<Young> young = Stream.concat(
                        nest.chicks().stream()
                                .filter(chick ->
                                        chick.here() && chick.chick().lost().isEmpty())
                                .map(Builder::chick),
                        nest.eggsHere().stream().map(builder::egg))
                .toList();
        return new Course(
                nest,
                day(today),
                young,
                laying,
                further(nest, rounds, toCome),
                Stages.of(nest),
                nest.timetable().span(Timing.INCUBATION).orElseThrow().latest());
    }

    /** None where no round is expected to follow: nobody breeds in it, the box is off, or the pair is being parted. */
    private static Further further(Outlook nest, int rounds, Young egg) {
        long reared = nest.rounds().stream()
                .map(RoundOutlook::round)
                .filter(round -> round.isOpen()
                        || round.eggs().stream().anyMatch(laid -> laid.chick().isPresent()))
                .count();
        boolean first = nest.firstEgg().filter(Due::isOpen).isPresent();
        Optional<LocalDate> since = nest.rounds().stream()
                .filter(round -> round.nextRound().filter(Due::isOpen).isPresent())
                .flatMap(round -> round.round().eggs().stream().map(Egg::laid).min(Comparator.naturalOrder()).stream())
                .findFirst();
        long further = first ? rounds - reared - 1 : since.isPresent() ? rounds - reared : 0;
        return new Further((int) Math.max(further, 0), first ? OptionalInt.empty() : dayOf(since), egg);
    }

    private static Optional<Laying> laying(Outlook nest, LocalDate today, Young egg) {
        Optional<Window> first = nest.firstEgg().filter(Due::isOpen).map(Due::window);
        if (first.isPresent()) {
            int usual = WorkingBack.usual(nest.timetable(), Timing.FIRST_EGG);
            return Optional.of(new Laying(
                    List.of(), OptionalInt.of(day(first.get().expected()) - usual), OptionalInt.empty(), egg));
        }
        return nest.underWay()
                .filter(round -> round.nextEgg()
                        .filter(next -> !next.window().isPast(today))
                        .isPresent())
                .map(RoundOutlook::round)
                .map(round -> laying(round, egg));
    }

    private static Laying laying(Round round, Young egg) {
        return new Laying(
                round.eggs().stream().map(laid -> day(laid.laid())).sorted().toList(),
                OptionalInt.empty(),
                dayOf(round.sitting().map(ToldDay::day)),
                egg);
    }

    static int day(LocalDate date) {
        return Math.toIntExact(date.toEpochDay());
    }

    private static OptionalInt dayOf(Optional<LocalDate> date) {
        return date.map(it -> OptionalInt.of(day(it))).orElse(OptionalInt.empty());
    }

    private static OptionalInt happened(Optional<Due> due) {
        return dayOf(due.flatMap(Due::happened));
    }

    /** The same nest with other rounds to follow the one under way. */
    Course followedBy(int rounds) {
        return new Course(nest, today, young, laying, further.of(rounds), stages, longestIncubation);
    }

    /** The same nest without some of what lies in it; nothing more is laid in it then. */
    Course without(Predicate<Young> taken) {
        return new Course(
                nest,
                today,
                young.stream().filter(taken.negate()).toList(),
                Optional.empty(),
                further.of(0),
                stages,
                longestIncubation);
    }

    /** Whether an egg has pipped, or has been sat on for more than half of the usual days. */
    boolean isPastHalfOfSitting(Young egg) {
        int usual = WorkingBack.usual(nest.timetable(), Timing.INCUBATION);
        return egg.lying().flatMap(lying -> lying.egg().pipped()).isPresent()
                || egg.satFrom().isPresent() && 2 * (today - egg.satFrom().getAsInt()) > usual;
    }

    /** Whether it leans on a day that was the keeper's guess. */
    boolean isAbout() {
        return young.stream()
                .flatMap(each -> each.lying().stream())
                .anyMatch(lying -> lying.egg().about()
                        || lying.chick().filter(Chick::about).isPresent());
    }

    /** A fate large enough for this nest. */
    Fate fate() {
        int most = nest.timetable().span(Timing.CLUTCH).orElseThrow().latest();
        return new Fate(young.size() + (most + 1) * (further.rounds() + 1));
    }

    /** One go through all stages. */
    void run(Law law, Fate fate) {
        fate.sat = Integer.MIN_VALUE;
        int start = lay(law, fate);
        for (int i = 0; i < young.size(); i++) {
            Young each = young.get(i);
            if (each.isChick()) {
                grows(law, fate, i, each);
            } else {
                fate.laid[i] = each.laid().getAsInt();
                int satFrom = each.satFrom().orElse(Math.max(fate.laid[i], start));
                sits(law, fate, i, satFrom, law.hatches(each));
            }
        }
        for (int i = young.size(); i < fate.count; i++) {
            Young each = laying.orElseThrow().egg();
            sits(law, fate, i, Math.max(fate.laid[i], start), law.hatches(each));
        }
        Arrays.fill(fate.over, 0, fate.count, fate.sat);
        follow(law, fate);
        part(law, fate);
    }

    /** The rounds that have not begun, one after another. */
    private void follow(Law law, Fate fate) {
        int first = further.since().orElse(fate.count > young.size() ? fate.laid[young.size()] : today);
        for (int round = 0; round < further.rounds(); round++) {
            first += law.of(Timing.NEXT_ROUND, today - first);
            int from = fate.count;
            int laid = first;
            for (int clutch = law.of(Timing.CLUTCH, 1); fate.count < from + clutch; fate.count++) {
                fate.laid[fate.count] = laid;
                laid += law.of(Timing.LAY_GAP, today - laid);
            }
            int sitsFrom = WorkingBack.usual(nest.timetable(), Timing.SITS_FROM);
            int start = fate.laid[Math.min(from + sitsFrom, fate.count) - 1];
            fate.sat = Integer.MIN_VALUE;
            for (int i = from; i < fate.count; i++) {
                sits(law, fate, i, Math.max(fate.laid[i], start), law.hatches(further.egg()));
            }
            Arrays.fill(fate.over, from, fate.count, fate.sat);
        }
    }

    /** The eggs yet to come, and the day from which she sits. */
    private int lay(Law law, Fate fate) {
        int next = young.size();
        fate.count = next;
        if (laying.isEmpty()) {
            return today;
        }
        Laying round = laying.get();
        int eggs = round.laid().size();
        int last = eggs > 0 ? round.laid().get(eggs - 1) : today;
        if (round.waitedFrom().isPresent()) {
            int from = round.waitedFrom().getAsInt();
            last = from + law.of(Timing.FIRST_EGG, today - from);
            fate.laid[next++] = last;
            eggs++;
        }
        for (int clutch = law.of(Timing.CLUTCH, eggs); eggs < clutch; eggs++) {
            last += law.of(Timing.LAY_GAP, today - last);
            fate.laid[next++] = last;
        }
        fate.count = next;
        return round.sitting().orElseGet(() -> nth(round, fate, WorkingBack.usual(nest.timetable(), Timing.SITS_FROM)));
    }

    private int nth(Laying round, Fate fate, int egg) {
        int before = round.laid().size();
        return egg <= before
                ? round.laid().get(Math.max(egg, 1) - 1)
                : fate.laid[Math.min(young.size() + egg - before, fate.count) - 1];
    }

    private void sits(Law law, Fate fate, int i, int satFrom, boolean hatches) {
        fate.hatch[i] = hatches ? satFrom + law.of(Timing.INCUBATION, today - satFrom) : Fate.NEVER;
        int over = hatches ? fate.hatch[i] : satFrom + longestIncubation;
        fate.sat = Math.max(fate.sat, over);
        if (hatches && law.isReared()) {
            leavesAndFeeds(law, fate, i);
        } else {
            fate.out[i] = Fate.NEVER;
            fate.fed[i] = Fate.NEVER;
        }
    }

    private void leavesAndFeeds(Law law, Fate fate, int i) {
        int age = today - fate.hatch[i];
        fate.out[i] = fate.hatch[i] + law.of(Timing.OUT_OF_BOX, age);
        fate.fed[i] = fate.hatch[i] + law.of(Timing.INDEPENDENT, age);
    }

    private void grows(Law law, Fate fate, int i, Young chick) {
        fate.laid[i] = chick.laid().getAsInt();
        fate.hatch[i] = chick.hatched().getAsInt();
        leavesAndFeeds(law, fate, i);
        fate.fed[i] = chick.fed().orElse(fate.fed[i]);
        fate.out[i] = chick.out().orElse(Math.min(fate.out[i], fate.fed[i]));
    }

    private void part(Law law, Fate fate) {
        int fed = Integer.MIN_VALUE;
        int out = Integer.MIN_VALUE;
        int lastFed = Integer.MIN_VALUE;
        for (int i = 0; i < fate.count; i++) {
            if (fate.fed[i] != Fate.NEVER) {
                fed = Math.max(fed, fate.fed[i]);
                out = Math.max(out, fate.out[i]);
                if (i >= young.size() || young.get(i).fed().isEmpty()) {
                    lastFed = Math.max(lastFed, fate.fed[i]);
                }
            }
        }
        fate.lastFed = lastFed == Integer.MIN_VALUE ? today : lastFed;
        fate.apart = stages.apart(law, today, out, fed);
    }

    private record Builder(Outlook nest, int today, Odds odds, DayLaw incubation, Optional<Laying> laying) {

        static Young chick(ChickOutlook chick) {
            return new Young(
                    Optional.of(chick.lying()),
                    OptionalInt.of(day(chick.lying().egg().laid())),
                    OptionalInt.empty(),
                    true,
                    1,
                    OptionalInt.of(day(chick.chick().hatched())),
                    happened(chick.outOfBox()),
                    happened(chick.independent()),
                    chick.chick().ring().isPresent());
        }

        Young egg(EggOutlook outlook) {
            Egg egg = outlook.lying().egg();
            boolean ofRoundUnderWay = nest.underWay()
                    .filter(round ->
                            round.round().id() == outlook.lying().round().id())
                    .isPresent();
            OptionalInt satFrom = dayOf(outlook.satFrom()
                    .filter(sat -> !(sat.foreseen() && ofRoundUnderWay && laying.isPresent()))
                    .map(SatFrom::day));
            return new Young(
                    Optional.of(outlook.lying()),
                    OptionalInt.of(day(egg.laid())),
                    satFrom,
                    egg.mayHatch(),
                    egg.mayHatch() ? stillHatches(atFirst(egg), satFrom) : 0,
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    OptionalInt.empty(),
                    false);
        }

        private double atFirst(Egg egg) {
            return egg.state() == EggState.FULL || egg.state() == EggState.PIPPED
                    ? odds.hatchesOfFull()
                    : odds.full() * odds.hatchesOfFull();
        }

        /** By Bayes: an egg that has not hatched by today is the less likely to, the longer it has been due. */
        private double stillHatches(double chance, OptionalInt satFrom) {
            double yet = satFrom.isPresent() ? incubation.atLeast(today - satFrom.getAsInt()) : 1;
            return chance * yet / (chance * yet + 1 - chance);
        }
    }
}
