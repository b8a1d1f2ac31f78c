package org.cagewall.store;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.cagewall.deed.Fact;
import org.cagewall.deed.Register;
import org.cagewall.room.Room;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.nest.Pair;

/** Answers what rules ask about the past. Bound to the session's thread. */
final class PastRegister implements Register {

    private final Session session;
    private final RoomReader reader;
    private final Supplier<Optional<Room>> room;

    PastRegister(Session session) {
        this(session, new RoomReader(session), Optional::empty);
    }

    /**
     * Reads only what the room does not hold.
     *
     * @param room the room as it stands whenever it is asked
     */
    PastRegister(Session session, RoomReader reader, Supplier<Optional<Room>> room) {
        this.session = session;
        this.reader = reader;
        this.room = room;
    }

    @Override
    public List<Bird> birds(String name) {
        String folded = name.toUpperCase(Locale.ROOT);
        Set<Long> candidates = new LinkedHashSet<>(session.numbers(
                "SELECT entry FROM bird WHERE UPPER(ring) = ?"
                        + " UNION SELECT bird FROM ring WHERE UPPER(ring) = ?"
                        + " UNION SELECT bird FROM naming WHERE UPPER(name) = ?",
                folded,
                folded,
                folded));
        return candidates.stream()
                .flatMap(id -> bird(id).stream())
                .filter(bird -> bird.answersTo(name))
                .sorted(Comparator.comparing(bird -> !bird.isPresent()))
                .toList();
    }

    @Override
    public Optional<Bird> bird(long id) {
        return room.get().flatMap(held -> held.bird(id)).or(() -> reader.bird(id));
    }

    @Override
    public Optional<Pair> pairAt(long cage, LocalDate day) {
        return session
                .numbers(
                        "SELECT entry FROM pairing WHERE cage = ? AND day <= ? ORDER BY day DESC, entry DESC",
                        cage,
                        day)
                .stream()
                .flatMap(id -> reader.pair(id).stream())
                .filter(pair -> isThere(pair.cock(), pair, day) || isThere(pair.hen(), pair, day))
                .findFirst();
    }

    private boolean isThere(long bird, Pair pair, LocalDate day) {
        return bird(bird)
                .flatMap(it -> it.outOf(pair))
                .filter(out -> out.isBefore(day))
                .isEmpty();
    }

    @Override
    public List<Long> pairsWithEggsIn(long cage) {
        return session.numbers(
                "SELECT pair FROM egg WHERE cage = ? UNION SELECT pair FROM nest_move WHERE cage = ? ORDER BY 1",
                cage,
                cage);
    }

    @Override
    public Optional<Pair> pair(long id) {
        return reader.pair(id);
    }

    @Override
    public Optional<Recorded> entry(long number) {
        return session
                .select(
                        "SELECT e.person, e.deed, s.entry FROM entry e LEFT JOIN strike s ON s.struck = e.number"
                                + " WHERE e.number = ?",
                        rows -> new Recorded(
                                number,
                                rows.getString(1),
                                rows.getString(2),
                                Optional.ofNullable(rows.getObject(3)).map(Long.class::cast),
                                leaning(number)),
                        number)
                .stream()
                .findFirst();
    }

    @Override
    public int highestCageNumber() {
        return highest("SELECT MAX(number) FROM cage");
    }

    @Override
    public int highestPairLabel() {
        return session.texts("SELECT label FROM pairing").stream()
                .filter(label -> label.matches("\\d{1,6}"))
                .mapToInt(Integer::parseInt)
                .max()
                .orElse(0);
    }

    @Override
    public int highestRevision(long cage) {
        return highest("SELECT MAX(revision) FROM card WHERE cage = ?", cage);
    }

    private int highest(String query, Object... args) {
        return session.numbers(query, args).get(0).intValue();
    }

    /** The first entry after this one whose facts lean on what this one added. */
    private Optional<Long> leaning(long number) {
        return Stream.concat(leaningOnIt(number), leaningOnItsEggs(number)).min(Long::compare);
    }

    private Stream<Long> leaningOnIt(long number) {
        return FactTables.KINDS.stream()
                .flatMap(kind -> FactTables.leaningColumns(kind)
                        .map(column -> "SELECT MIN(entry) FROM " + FactTables.tableName(kind) + " WHERE " + column
                                + " = ? AND entry > ?"))
                .map(query -> session.numbers(query, number, number).get(0))
                .filter(entry -> entry > 0);
    }

    /** What was recorded of an egg, or of a chick, leans on the entry by which it was there. */
    private Stream<Long> leaningOnItsEggs(long number) {
        return Stream.of(Fact.Egg.class, Fact.Hatching.class, Fact.Ringing.class)
                .flatMap(ground -> FactTables.KINDS.stream()
                        .filter(Fact.OfEgg.class::isAssignableFrom)
                        .filter(kind -> FactTables.leansOn(kind, ground))
                        .map(kind -> "SELECT MIN(f.entry) FROM " + FactTables.tableName(kind) + " f JOIN "
                                + FactTables.tableName(ground)
                                + " g ON g.round = f.round AND g.mark = f.mark WHERE g.entry = ? AND f.entry <> ?"))
                .map(query -> session.numbers(query, number, number).get(0))
                .filter(entry -> entry > 0);
    }
}
