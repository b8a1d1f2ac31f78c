package org.cagewall.store;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cagewall.deed.Fact;
import org.cagewall.room.nest.Pair;

/**
 * Keeps the pairs that were read, of years gone by as well, and of those read last their facts: a rule that asks for a pair
 * again costs nothing, and after a deed only the kinds of fact that it touched are read. Bound to the thread that records.
 */
final class KeptPairs {

    /** More pairs than a birdroom has in twenty years. */
    private static final int MOST_PAIRS = 4_000;

    /** More nests than are touched in one evening. */
    private static final int MOST_WITH_FACTS = 60;

    private final Map<Long, Pair> pairs = new HashMap<>();
    private final Map<Long, Facts> facts = new HashMap<>();

    /** A pair by the number of the entry that put it together. */
    Optional<Pair> pair(Session session, long id) {
        Optional<Pair> known = Optional.ofNullable(pairs.get(id));
        return known.isPresent() ? known : read(session, id);
    }

    private Optional<Pair> read(Session session, long id) {
        makeRoom(pairs, MOST_PAIRS);
        makeRoom(facts, MOST_WITH_FACTS);
        Optional<Pair> read = PairReader.pair(facts.computeIfAbsent(id, it -> new Facts(session, it)));
        read.ifPresent(pair -> pairs.put(id, pair));
        return read;
    }

    private static void makeRoom(Map<?, ?> full, int most) {
        if (full.size() >= most) {
            full.clear();
        }
    }

    /** Facts of these kinds have come or gone, by pair. */
    void touched(Map<Long, Set<Class<? extends Fact>>> touched) {
        touched.forEach((id, kinds) -> {
            pairs.remove(id);
            Optional.ofNullable(facts.get(id)).ifPresent(read -> read.forget(kinds));
        });
    }

    /** What was read may not stand: a touch was rolled back, or somebody else has recorded. */
    void clear() {
        pairs.clear();
        facts.clear();
    }

    /** The facts about one pair, each kind read when it is first asked for. */
    static final class Facts {

        private final Session session;
        private final long pair;
        private final Map<Class<? extends Fact>, List<? extends Row<? extends Fact>>> read = new HashMap<>();

        private Facts(Session session, long pair) {
            this.session = session;
            this.pair = pair;
        }

        /** The entry that put it together. */
        Optional<Row<Fact.Pairing>> pairing() {
            return rows(Fact.Pairing.class, "entry = ?").stream().findFirst();
        }

        <F extends Fact.OfPair> List<Row<F>> of(Class<F> kind) {
            return rows(kind, "pair = ?");
        }

        @SuppressWarnings("unchecked") // under each kind stand the rows of that kind
        private <F extends Fact> List<Row<F>> rows(Class<F> kind, String which) {
            return (List<Row<F>>) read.computeIfAbsent(kind, missing -> FactTables.select(session, kind, which, pair));
        }

        private void forget(Set<Class<? extends Fact>> kinds) {
            kinds.forEach(read::remove);
        }
    }
}
