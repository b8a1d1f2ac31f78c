package org.cagewall.store;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.Fact;
import org.cagewall.room.Cage;
import org.cagewall.room.Place;
import org.cagewall.room.card.CardFace;
import org.cagewall.room.card.PrintedCard;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Headcount;
import org.cagewall.room.care.Permission;
import org.cagewall.room.care.Routine;
import org.cagewall.room.nest.Box;
import org.cagewall.room.nest.BoxStep;
import org.cagewall.room.nest.Hung;
import org.cagewall.room.nest.NestLook;

/**
 * Reads cages from the live facts, all of them or one; of one that is known only what the touched kinds of fact tell is
 * read again. Bound to the session's thread.
 */
final class CageReader {

    private static final Comparator<Row<Fact.NestLook>> IN_ORDER =
            Comparator.<Row<Fact.NestLook>, LocalDate>comparing(Row::day).thenComparing(Row::entry);

    private final Session session;

    CageReader(Session session) {
        this.session = session;
    }

    List<Cage> all() {
        Source every = new Every();
        return FactTables.all(session, Fact.Cage.class).stream()
                .map(row -> cage(
                        row.entry(),
                        row.fact().number(),
                        row.fact().name(),
                        new Parts(every, Optional.empty(), Set.of())))
                .toList();
    }

    /**
     * One cage.
     *
     * @param before the cage as it was known
     * @param touched the kinds of fact about it that have come or gone since
     * @return empty when there is no such cage, or no longer
     */
    Optional<Cage> one(long id, Optional<Cage> before, Set<Class<? extends Fact>> touched) {
        Source single = new Single();
        if (before.isPresent() && !touched.contains(Fact.Cage.class)) {
            Cage known = before.get();
            return Optional.of(cage(id, known.number(), known.name(), new Parts(single, before, touched)));
        }
        return FactTables.select(session, Fact.Cage.class, "entry = ?", id).stream()
                .findFirst()
                .map(row -> cage(
                        id, row.fact().number(), row.fact().name(), new Parts(single, Optional.empty(), Set.of())));
    }

    private static Cage cage(long id, int number, String name, Parts parts) {
        return new Cage(
                id,
                number,
                name,
                parts.of(id, Fact.Placement.class, Cage::place, rows -> last(rows)
                        .map(Row::fact)
                        .map(at -> new Place(at.wall(), at.line(), at.slot()))),
                parts.of(id, Fact.Purpose.class, Cage::use, rows -> last(rows)
                        .orElseThrow()
                        .fact()
                        .purpose()),
                parts.of(id, Fact.Purpose.class, Cage::keeps, rows -> last(rows)
                        .flatMap(row -> row.fact().keeps())),
                parts.of(id, Fact.Retirement.class, Cage::retired, rows -> last(rows)
                        .map(Row::day)),
                parts.of(id, Fact.Joint.class, Cage::joinedTo, rows -> last(rows)
                        .map(Row::fact)
                        .filter(Fact.Joint::together)
                        .map(Fact.Joint::partner)),
                parts.of(
                        id,
                        Fact.Routine.class,
                        Cage::routine,
                        rows -> routine(rows, parts.source().rows(Fact.Feed.class, id))),
                parts.of(id, Fact.Flock.class, Cage::flock, rows -> rows.stream()
                        .mapToInt(row -> row.fact().change())
                        .sum()),
                parts.of(id, Fact.Box.class, Cage::box, CageReader::box),
                parts.newest(id, Fact.Dummies.class, CageReader::dummies, row -> row.fact()
                                .laid())
                        .orElse(0),
                parts.looks(id),
                parts.newest(id, Fact.Cleaning.class, Cage::cleaned, Row::day),
                parts.newest(
                        id,
                        Fact.Headcount.class,
                        Cage::counted,
                        row -> new Headcount(row.fact().birds(), row.day())),
                parts.newest(
                        id,
                        Fact.Card.class,
                        Cage::card,
                        row -> new PrintedCard(
                                CardFace.parse(row.fact().face()),
                                row.fact().digest(),
                                row.fact().revision(),
                                row.day())),
                parts.newest(id, Fact.Visit.class, Cage::lastVisit, RoomReader::visit));
    }

    private static <F extends Fact> Optional<Row<F>> last(List<Row<F>> rows) {
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(rows.size() - 1));
    }

    private static Routine routine(List<Row<Fact.Routine>> routines, List<Row<Fact.Feed>> feeds) {
        if (routines.isEmpty()) {
            return Routine.NONE;
        }
        long entry = routines.get(routines.size() - 1).entry();
        Set<Permission> allowed = routines.stream()
                .filter(row -> row.entry() == entry)
                .flatMap(row -> row.fact().permission().stream())
                .collect(Collectors.toSet());
        List<FeedLine> lines = feeds.stream()
                .filter(row -> row.entry() == entry)
                .map(Row::fact)
                .sorted(Comparator.comparing(Fact.Feed::line))
                .map(feed -> new FeedLine(feed.what(), feed.amount(), feed.part(), feed.kind()))
                .toList();
        return new Routine(lines, allowed);
    }

    private static Optional<Integer> dummies(Cage cage) {
        return Optional.of(cage.dummies());
    }

    private static NestLook nestLook(Row<Fact.NestLook> row) {
        Fact.NestLook look = row.fact();
        return new NestLook(row.day(), look.chicks(), look.crops(), look.feet(), look.damp(), look.plucked());
    }

    private static Box box(List<Row<Fact.Box>> rows) {
        Map<BoxStep, LocalDate> last = new HashMap<>();
        List<Hung> hung = new ArrayList<>();
        Optional<BoxStep> hanging = Optional.empty();
        for (Row<Fact.Box> row : rows) {
            BoxStep step = row.fact().step();
            last.put(step, row.day());
            if (step == BoxStep.ON || step == BoxStep.OFF) {
                takeOff(hung, row.day());
            }
            if (step == BoxStep.ON) {
                hung.add(new Hung(row.day(), row.fact().about(), Optional.empty()));
            }
            hanging = switch (step) {
                case ON, TURNED -> Optional.of(step);
                case OFF -> Optional.empty();
                case CLEANED -> hanging;
            };
        }
        return new Box(
                hung,
                Optional.ofNullable(last.get(BoxStep.TURNED)),
                Optional.ofNullable(last.get(BoxStep.OFF)),
                Optional.ofNullable(last.get(BoxStep.CLEANED)),
                hanging);
    }

    private static void takeOff(List<Hung> hung, LocalDate day) {
        int last = hung.size() - 1;
        if (last >= 0 && hung.get(last).off().isEmpty()) {
            hung.set(last, new Hung(hung.get(last).on(), hung.get(last).about(), Optional.of(day)));
        }
    }

    /** What a cage is made of: as it was known, or read from the facts. */
    private record Parts(Source source, Optional<Cage> before, Set<Class<? extends Fact>> touched) {

        <F extends Fact.OfCage, T> T of(
                long id, Class<F> kind, Function<Cage, T> known, Function<List<Row<F>>, T> read) {
            return before.filter(cage -> !touched.contains(kind))
                    .map(known)
                    .orElseGet(() -> read.apply(source.rows(kind, id)));
        }

        List<NestLook> looks(long id) {
            return before.filter(cage -> !touched.contains(Fact.NestLook.class))
                    .map(Cage::looks)
                    .orElseGet(() -> source.looks(id).stream()
                            .distinct()
                            .sorted(IN_ORDER)
                            .map(CageReader::nestLook)
                            .toList());
        }

        <F extends Fact.OfCage, T> Optional<T> newest(
                long id, Class<F> kind, Function<Cage, Optional<T>> known, Function<Row<F>, T> read) {
            return before.filter(cage -> !touched.contains(kind)).map(known).orElseGet(() -> source.newest(kind, id)
                    .map(read));
        }
    }

    /** Where the facts about a cage are found. */
    private interface Source {

        <F extends Fact.OfCage> List<Row<F>> rows(Class<F> kind, long cage);

        <F extends Fact.OfCage> Optional<Row<F>> newest(Class<F> kind, long cage);

        /** The last and the last on an earlier day, of all looks and of those that told of plucking; some may be the same. */
        List<Row<Fact.NestLook>> looks(long cage);
    }

    private class Single implements Source {

        @Override
        public <F extends Fact.OfCage> List<Row<F>> rows(Class<F> kind, long cage) {
            return FactTables.select(session, kind, "cage = ?", cage);
        }

        @Override
        public <F extends Fact.OfCage> Optional<Row<F>> newest(Class<F> kind, long cage) {
            return FactTables.newest(session, kind, "cage = ?", cage).stream().findFirst();
        }

        @Override
        public List<Row<Fact.NestLook>> looks(long cage) {
            List<Row<Fact.NestLook>> looks = lastTwo("cage = ?", cage);
            return looks.isEmpty()
                    ? looks
                    : Stream.concat(looks.stream(), lastTwo("cage = ? AND plucked IS NOT NULL", cage).stream())
                            .toList();
        }

        private List<Row<Fact.NestLook>> lastTwo(String which, long cage) {
            List<Row<Fact.NestLook>> last = FactTables.newest(session, Fact.NestLook.class, which, cage);
            return Stream.concat(
                            last.stream(),
                            last.stream()
                                    .flatMap(look -> FactTables.newest(
                                            session, Fact.NestLook.class, which + " AND day < ?", cage, look.day())
                                            .stream()))
                    .toList();
        }
    }

    /** Asks for each kind once, for all cages. */
    private final class Every extends Single {

        private final Map<Class<?>, Map<Long, List<Row<? extends Fact>>>> read = new HashMap<>();

        @Override
        public <F extends Fact.OfCage> List<Row<F>> rows(Class<F> kind, long cage) {
            Map<Long, List<Row<? extends Fact>>> all = read.computeIfAbsent(kind, missing -> grouped(kind));
            return all.getOrDefault(cage, List.of()).stream()
                    .map(row -> new Row<>(row.entry(), row.day(), kind.cast(row.fact())))
                    .toList();
        }

        private <F extends Fact.OfCage> Map<Long, List<Row<? extends Fact>>> grouped(Class<F> kind) {
            return FactTables.all(session, kind).stream()
                    .collect(Collectors.groupingBy(row -> row.fact().cage(), Collectors.toList()));
        }
    }
}
