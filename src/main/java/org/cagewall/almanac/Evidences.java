package org.cagewall.almanac;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Room;
import org.cagewall.room.Sittings;
import org.cagewall.room.Species;
import org.cagewall.room.Timing;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.ToldDay;
import org.cagewall.room.nest.WhyRemoved;
import org.cagewall.text.Message;

/** Gathers what speaks for parting a pair or letting it go on. Pure; any thread. */
record Evidences(Room room, Function<Pair, Timetable> timetables) {

    /** So many rounds without one full egg speak for themselves; common practice, no source. */
    private static final int CLEAR_ROUNDS = 2;

    Evidence of(Pair pair, LocalDate today) {
        return new Evidence(
                (int) laidIn(pair).count(),
                (int) pair.allEggs().count(),
                measure(pair, Evidences::showed, Egg::wasFull, PastEgg::full),
                measure(pair, Evidences::isOver, egg -> egg.chick().isPresent(), egg -> egg.hatched()
                        .isPresent()),
                ofChicks(
                        pair,
                        chick -> chick.ring().isPresent() || !chick.isInCare(),
                        PastEgg::ringed,
                        chick -> chick.ring().isPresent()),
                ofChicks(pair, chick -> !chick.isInCare(), PastEgg::weaned, chick -> chick.weaned()
                        .isPresent()),
                speaking(pair, today));
    }

    private static Stream<Round> laidIn(Pair pair) {
        return pair.rounds().stream().filter(round -> !round.eggs().isEmpty());
    }

    private Measure measure(Pair pair, Predicate<Egg> counts, Predicate<Egg> hit, Predicate<PastEgg> pastHit) {
        Rate held = kin(pair)
                .map(each -> rate(each.allEggs().filter(counts).toList(), hit))
                .reduce(new Rate(0, 0), Rate::plus);
        return new Measure(
                rate(pair.allEggs().filter(counts).toList(), hit),
                held.plus(rate(past(pair).toList(), pastHit)));
    }

    private Measure ofChicks(
            Pair pair, Predicate<Chick> counts, Function<PastEgg, Optional<ToldDay>> past, Predicate<Chick> hit) {
        Rate held = kin(pair)
                .map(each -> rate(chicks(each).filter(counts).toList(), hit))
                .reduce(new Rate(0, 0), Rate::plus);
        List<PastEgg> hatched =
                past(pair).filter(egg -> egg.hatched().isPresent()).toList();
        return new Measure(
                rate(chicks(pair).filter(counts).toList(), hit),
                held.plus(rate(hatched, egg -> past.apply(egg).isPresent())));
    }

    private static <T> Rate rate(Collection<T> all, Predicate<T> hit) {
        return new Rate((int) all.stream().filter(hit).count(), all.size());
    }

    private static Stream<Chick> chicks(Pair pair) {
        return pair.allEggs().flatMap(egg -> egg.chick().stream());
    }

    private Stream<Pair> kin(Pair pair) {
        return room.pairs().stream().filter(each -> isSpeciesOf(pair, room.speciesOf(each)));
    }

    private Stream<PastEgg> past(Pair pair) {
        return room.past().stream()
                .filter(egg ->
                        isSpeciesOf(pair, egg.species().orElse(room.settings().species())));
    }

    private boolean isSpeciesOf(Pair pair, String species) {
        return Species.areSame(room.speciesOf(pair), species);
    }

    private static boolean showed(Egg egg) {
        return egg.wasFull()
                || egg.finding().filter(found -> found != EggFinding.UNSURE).isPresent()
                || egg.removed()
                        .map(Removal::why)
                        .filter(why -> why == WhyRemoved.CLEAR || why == WhyRemoved.ADDLED)
                        .isPresent();
    }

    private static boolean isOver(Egg egg) {
        return !egg.mayHatch();
    }

    private List<Message> speaking(Pair pair, LocalDate today) {
        return Stream.of(noEggs(pair, today), rounds(pair), clearRounds(pair), rest(pair), season(pair, today))
                .flatMap(Optional::stream)
                .toList();
    }

    /** A box that hangs for longer than the species' first egg usually takes. */
    private Optional<Message> noEggs(Pair pair, LocalDate today) {
        return room.cage(pair.cage())
                .map(Cage::box)
                .filter(box -> box.isOn() && pair.allEggs().findAny().isEmpty())
                .flatMap(Box::on)
                .map(on -> ChronoUnit.DAYS.between(Window.later(on, pair.since()), today))
                .flatMap(days -> timetables
                        .apply(pair)
                        .span(Timing.FIRST_EGG)
                        .filter(usual -> days > usual.latest())
                        .map(usual -> Message.of("almanac.rule-no-eggs", days, usual.latest())));
    }

    private Optional<Message> rounds(Pair pair) {
        long done = laidIn(pair)
                .filter(round -> !round.isOpen() || round.eggs().stream().noneMatch(Egg::isYoung))
                .count();
        int most = room.settings().mostRounds();
        return done >= most ? Optional.of(Message.of("almanac.rule-rounds", done, most)) : Optional.empty();
    }

    private static Optional<Message> clearRounds(Pair pair) {
        List<Round> laid = new ArrayList<>(laidIn(pair).toList());
        List<Round> last = laid.subList(Math.max(0, laid.size() - CLEAR_ROUNDS), laid.size());
        boolean allClear = last.size() == CLEAR_ROUNDS
                && last.stream().flatMap(round -> round.eggs().stream()).allMatch(egg -> showed(egg) && !egg.wasFull());
        return allClear ? Optional.of(Message.of("almanac.rule-clear-rounds")) : Optional.empty();
    }

    private Optional<Message> rest(Pair pair) {
        return room.pairs().stream()
                .filter(other -> other.id() != pair.id() && other.hen() == pair.hen())
                .flatMap(other -> room.henOut(other).stream())
                .filter(out -> !out.isAfter(pair.since()))
                .max(Comparator.naturalOrder())
                .filter(out -> out.plusMonths(room.settings().restMonths()).isAfter(pair.since()))
                .map(out -> Message.of(
                        "almanac.rule-rest",
                        ChronoUnit.DAYS.between(out, pair.since()),
                        room.settings().restMonths()));
    }

    /** Whether the young of another round, begun when the next one usually begins, would not be weaned before an absence. */
    private Optional<Message> season(Pair pair, LocalDate today) {
        Optional<LocalDate> weaned = weanedOfAnother(pair, today);
        return weaned.flatMap(day -> room.absenceAfter(today)
                .map(Absence::from)
                .filter(away -> !day.isBefore(away))
                .map(away -> Message.of("almanac.rule-season", day, away)));
    }

    private Optional<LocalDate> weanedOfAnother(Pair pair, LocalDate today) {
        Timetable table = timetables.apply(pair);
        Optional<Integer> round = table.expected(Timing.NEXT_ROUND);
        Optional<Integer> clutch = table.expected(Timing.CLUTCH);
        Optional<Integer> gap = table.expected(Timing.LAY_GAP);
        Optional<Integer> incubation = table.expected(Timing.INCUBATION);
        Optional<Integer> independent = table.expected(Timing.INDEPENDENT);
        Optional<LocalDate> firstEgg = laidIn(pair)
                .reduce((earlier, later) -> later)
                .flatMap(last -> Sittings.asLaid(last).stream().findFirst())
                .map(Egg::laid)
                .flatMap(day -> round.map(days -> Window.later(day.plusDays(days), today)));
        if (Stream.of(clutch, gap, incubation, independent).anyMatch(Optional::isEmpty)) {
            return Optional.empty();
        }
        long days = (long) (clutch.get() - 1) * gap.get() + incubation.get() + independent.get();
        return firstEgg.map(day -> day.plusDays(days));
    }
}
