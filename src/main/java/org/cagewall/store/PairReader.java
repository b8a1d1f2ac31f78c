package org.cagewall.store;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cagewall.deed.Fact;
import org.cagewall.room.nest.BoxTrip;
import org.cagewall.room.nest.Candling;
import org.cagewall.room.nest.Chick;
import org.cagewall.room.nest.ChickLoss;
import org.cagewall.room.nest.ChickRing;
import org.cagewall.room.nest.Egg;
import org.cagewall.room.nest.NestMove;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PartingBegun;
import org.cagewall.room.nest.Removal;
import org.cagewall.room.nest.Round;
import org.cagewall.room.nest.SkippedStage;
import org.cagewall.room.nest.ToldDay;
import org.cagewall.room.nest.Weaning;

/** Makes one pair of the live facts, with its rounds, their eggs and what became of them. Bound to the thread of the facts. */
final class PairReader {

    private static final Comparator<Egg> BY_MARK =
            Comparator.comparing((Egg egg) -> egg.mark().length()).thenComparing(Egg::mark);

    private final KeptPairs.Facts facts;
    private final Row<Fact.Pairing> pairing;
    private final Map<Class<?>, Map<Key, List<Row<? extends Fact>>>> read = new HashMap<>();

    private PairReader(KeptPairs.Facts facts, Row<Fact.Pairing> pairing) {
        this.facts = facts;
        this.pairing = pairing;
    }

    /** The pair that these facts are about; empty where the record has none of that number. */
    static Optional<Pair> pair(KeptPairs.Facts facts) {
        return facts.pairing().map(row -> new PairReader(facts, row).pair());
    }

    /** What an egg is known by. */
    private record Key(long round, String mark) {}

    private Pair pair() {
        Fact.Pairing fact = pairing.fact();
        return new Pair(
                pairing.entry(),
                fact.label(),
                fact.cage(),
                fact.cock(),
                fact.hen(),
                pairing.day(),
                fact.about(),
                rounds(),
                ofPair(Fact.Parting.class).stream()
                        .map(row -> new PartingBegun(row.fact().reason(), row.day()))
                        .findFirst(),
                ofPair(Fact.StageSkip.class).stream()
                        .map(row ->
                                new SkippedStage(row.fact().stage(), row.fact().why(), row.day()))
                        .toList());
    }

    private List<Round> rounds() {
        List<Row<Fact.Round>> begun = ofPair(Fact.Round.class);
        if (begun.isEmpty()) {
            return List.of();
        }
        Map<Long, LocalDate> ended = last(Fact.RoundEnd.class, Fact.RoundEnd::round, Row::day);
        Map<Long, ToldDay> sitting = last(
                Fact.Sitting.class,
                Fact.Sitting::round,
                row -> new ToldDay(row.day(), row.fact().about()));
        Map<Long, List<Row<Fact.Egg>>> eggs = ofPair(Fact.Egg.class).stream()
                .collect(Collectors.groupingBy(row -> row.fact().round()));
        return begun.stream()
                .sorted(Comparator.comparing(row -> row.fact().number()))
                .map(row -> new Round(
                        row.entry(),
                        row.fact().number(),
                        row.day(),
                        Optional.ofNullable(ended.get(row.entry())),
                        Optional.ofNullable(sitting.get(row.entry())),
                        eggs.getOrDefault(row.entry(), List.of()).stream()
                                .map(this::egg)
                                .sorted(BY_MARK)
                                .toList()))
                .toList();
    }

    private Egg egg(Row<Fact.Egg> row) {
        Fact.Egg egg = row.fact();
        Key key = new Key(egg.round(), egg.mark());
        return new Egg(
                egg.mark(),
                egg.laid().orElse(row.day()),
                egg.about(),
                egg.place(),
                egg.cage(),
                row.entry(),
                all(Fact.Candling.class, key, it -> new Candling(it.fact().finding(), it.day())),
                last(Fact.Pip.class, key, Row::day),
                all(
                        Fact.NestMove.class,
                        key,
                        it -> new NestMove(it.fact().cage(), it.fact().letter(), it.day())),
                last(Fact.Removal.class, key, it -> new Removal(it.fact().why(), it.day())),
                last(Fact.Hatching.class, key, it -> chick(key, it)));
    }

    private Chick chick(Key key, Row<Fact.Hatching> hatching) {
        return new Chick(
                hatching.fact().hatched().orElse(hatching.day()),
                hatching.fact().about(),
                last(
                        Fact.Ringing.class,
                        key,
                        it -> new ChickRing(
                                it.fact().ring(),
                                it.day(),
                                it.fact().about(),
                                last(Fact.RingCheck.class, key, Row::day))),
                all(
                        Fact.BoxTrip.class,
                        key,
                        it -> new BoxTrip(
                                it.fact().outside(), it.day(), it.fact().about())),
                all(Fact.ChickMark.class, key, it -> it.fact().trait()).stream()
                        .distinct()
                        .toList(),
                last(
                        Fact.ChickLoss.class,
                        key,
                        it -> new ChickLoss(
                                it.fact().dead(), it.day(), it.fact().likely())),
                last(
                        Fact.Weaning.class,
                        key,
                        it -> new Weaning(it.entry(), it.day(), it.fact().about())));
    }

    private <F extends Fact.OfPair> List<Row<F>> ofPair(Class<F> kind) {
        return facts.of(kind);
    }

    private <F extends Fact.OfPair, T> Map<Long, T> last(
            Class<F> kind, Function<F, Long> round, Function<Row<F>, T> made) {
        return ofPair(kind).stream()
                .collect(Collectors.toMap(row -> round.apply(row.fact()), made, (earlier, later) -> later));
    }

    private <F extends Fact.OfEgg, T> List<T> all(Class<F> kind, Key egg, Function<Row<F>, T> made) {
        return read.computeIfAbsent(kind, missing -> grouped(kind)).getOrDefault(egg, List.of()).stream()
                .map(row -> made.apply(new Row<>(row.entry(), row.day(), kind.cast(row.fact()))))
                .toList();
    }

    private <F extends Fact.OfEgg, T> Optional<T> last(Class<F> kind, Key egg, Function<Row<F>, T> made) {
        return all(kind, egg, made).stream().reduce((earlier, later) -> later);
    }

    private <F extends Fact.OfEgg> Map<Key, List<Row<? extends Fact>>> grouped(Class<F> kind) {
        return ofPair(kind).stream()
                .collect(Collectors.groupingBy(
                        row -> new Key(row.fact().round(), row.fact().mark()), Collectors.toList()));
    }
}
