package org.cagewall.store;

import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.Fact;
import org.cagewall.room.Absence;
import org.cagewall.room.Cage;
import org.cagewall.room.Call;
import org.cagewall.room.FirstCall;
import org.cagewall.room.PastEgg;
import org.cagewall.room.Person;
import org.cagewall.room.Quiet;
import org.cagewall.room.RingBody;
import org.cagewall.room.RingCustom;
import org.cagewall.room.RingsOf;
import org.cagewall.room.Room;
import org.cagewall.room.Settings;
import org.cagewall.room.Wall;
import org.cagewall.room.bird.Bird;
import org.cagewall.room.bird.Departure;
import org.cagewall.room.bird.LookedOver;
import org.cagewall.room.bird.Outing;
import org.cagewall.room.bird.RingStock;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Stay;
import org.cagewall.room.bird.Whither;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.TaskOutcome;
import org.cagewall.room.care.Visit;
import org.cagewall.room.nest.Pair;
import org.cagewall.room.nest.PairPlan;

/**
 * Reads the room from the live facts: all of it at the start, and after each deed only what the deed touched, with the
 * same queries. Bound to the session's thread.
 */
final class RoomReader {

    static final String HEAD = "SELECT number, digest, code, zone FROM head WHERE id = 1";

    private static final String ANY = "1 = 1";

    /** Before the first day that a deed may tell of. */
    private static final LocalDate BEFORE_ALL = LocalDate.of(1900, 1, 1);

    private static final Set<Class<? extends Fact>> ABSENCES =
            Set.of(Fact.Absence.class, Fact.AbsencePlan.class, Fact.LeaveAlone.class, Fact.AbsenceEnd.class);

    private static final Set<Class<? extends Fact>> RINGED =
            Set.of(Fact.Bird.class, Fact.Ring.class, Fact.Ringing.class);

    private static final Comparator<Visit> IN_ORDER =
            Comparator.comparing(Visit::day).thenComparing(Visit::entry).thenComparing(Visit::cage);

    private static final String UNREAD = "answer = ? AND NOT EXISTS (SELECT 1 FROM seen s WHERE s.seen = visit.entry)";

    private final Session session;
    private final KeptPairs keptPairs;

    RoomReader(Session session) {
        this(session, new KeptPairs());
    }

    /** Reads only those pairs that are not kept. */
    RoomReader(Session session, KeptPairs keptPairs) {
        this.session = session;
        this.keptPairs = keptPairs;
    }

    private static Absence.Plan plan(Row<Fact.AbsencePlan> row) {
        Fact.AbsencePlan plan = row.fact();
        return new Absence.Plan(row.day(), plan.firstDay(), plan.lastDay(), plan.sitter());
    }

    /** The head of the record: its last number and digest, and what tells this birdroom from others. */
    record Head(long number, String digest, String code, String zone) {}

    Head head() {
        return session.lend(HEAD, statement -> {
            try (ResultSet rows = statement.executeQuery()) {
                return head(rows);
            }
        });
    }

    static Head head(ResultSet rows) throws SQLException {
        rows.next();
        return new Head(rows.getLong(1), rows.getString(2), rows.getString(3), rows.getString(4));
    }

    /** The room as it stands, read anew. */
    Room read(LocalDate today) {
        Parts parts = new Parts(head(), today);
        parts.readRoom();
        parts.cages = byId(new CageReader(session).all(), Cage::id);
        parts.birds = byId(readBirds(Scope.ALL), Bird::id);
        parts.readPairs(candidatePairs(today));
        parts.settle();
        parts.readSince();
        parts.readUnread();
        parts.readPlans();
        parts.readWorn();
        parts.past = new PastReader(session).eggsBut(parts.pairs.keySet());
        return parts.room();
    }

    /** The room with every bird, pair, check and outcome there ever was, as of that day. */
    Room readEverything(LocalDate today) {
        Parts parts = new Parts(head(), today);
        parts.readRoom();
        parts.since = BEFORE_ALL;
        parts.outcomes = parts.readOutcomes();
        parts.calls = parts.readCalls();
        parts.cages = byId(new CageReader(session).all(), Cage::id);
        parts.birds = byId(readBirds(Scope.EVER), Bird::id);
        parts.readPairs(new HashSet<>(session.numbers("SELECT entry FROM pairing")));
        parts.readSince();
        parts.readUnread();
        parts.readPlans();
        parts.readWorn();
        return parts.room();
    }

    /** The room after a deed that touched these parts of it. */
    Room refresh(Room before, Touched touched, long head) {
        Parts parts = refreshed(before, touched, head);
        parts.readPast(touched.pairs());
        return parts.room();
    }

    /** The same without what a room knows of pairs gone by: for a record that is put back and read as a whole in the end. */
    Room refreshWithoutPast(Room before, Touched touched, long head) {
        return refreshed(before, touched, head).room();
    }

    private Parts refreshed(Room before, Touched touched, long head) {
        keptPairs.touched(touched.kindsOfPairs());
        Parts parts = new Parts(before, head);
        parts.readRoom(touched.ofRoom(), touched.entries());
        boolean visits = touched.any(Set.of(Fact.Visit.class));
        Map<Long, List<Visit>> told = visits ? visitsOf(touched.entries()) : Map.of();
        touched.cages().forEach((id, kinds) -> {
            Optional<Cage> known = Optional.ofNullable(parts.cages.get(id));
            Optional<Cage> read = known.flatMap(cage -> visitedAgain(cage, kinds, told.values()))
                    .or(() -> new CageReader(session).one(id, known, kinds));
            replace(parts.cages, id, read.stream().toList(), Cage::id);
        });
        Set<Long> pairs = new HashSet<>(touched.pairs());
        touched.birds().forEach(id -> {
            replace(parts.birds, id, readBirds(Scope.of(id)), Bird::id);
            pairs.addAll(pairsOf(id));
        });
        if (!pairs.isEmpty() || !touched.birds().isEmpty()) {
            parts.readPairs(pairs);
            parts.settle();
        }
        if (!parts.since.equals(before.since())) {
            parts.readSince();
        } else if (visits) {
            parts.readVisits(told);
        }
        if (touched.any(Set.of(Fact.Seen.class))) {
            parts.readUnread();
        } else if (visits) {
            parts.readUnread(told);
        }
        boolean struck = touched.entries().stream().anyMatch(entry -> entry < head);
        if (touched.any(Set.of(Fact.RingStock.class)) || struck && touched.any(RINGED)) {
            parts.readWorn();
        } else if (touched.any(RINGED)) {
            parts.readWorn(head);
        }
        if (touched.any(Set.of(Fact.Plan.class, Fact.Pairing.class, Fact.Departure.class))) {
            parts.readPlans();
        }
        return parts;
    }

    /** What these entries tell of visits now. */
    private Map<Long, List<Visit>> visitsOf(Set<Long> entries) {
        Map<Long, List<Visit>> told = new TreeMap<>();
        entries.forEach(entry -> told.put(
                entry,
                FactTables.of(session, Fact.Visit.class, entry).stream()
                        .map(RoomReader::visit)
                        .toList()));
        return told;
    }

    /** The cage after visits were told of it and nothing else, if none that was known has gone. */
    private static Optional<Cage> visitedAgain(
            Cage cage, Set<Class<? extends Fact>> kinds, Collection<List<Visit>> told) {
        boolean onlyMore =
                kinds.equals(Set.of(Fact.Visit.class)) && told.stream().noneMatch(List::isEmpty);
        return onlyMore
                ? Stream.concat(
                                cage.lastVisit().stream(),
                                told.stream().flatMap(List::stream).filter(visit -> visit.cage() == cage.id()))
                        .max(Comparator.comparing(Visit::day).thenComparing(Visit::entry))
                        .map(cage::visited)
                : Optional.empty();
    }

    /** A bird by its number, present or gone. */
    Optional<Bird> bird(long id) {
        return readBirds(Scope.of(id)).stream().findFirst();
    }

    /**
     * Every subject of the room, a single one, or all there ever were.
     *
     * @param birds which rows are meant, where it is not a single bird's, by the column that names the bird
     */
    private record Scope(Optional<Long> id, UnaryOperator<String> birds) {

        static final Scope ALL = new Scope(
                Optional.empty(), bird -> "NOT EXISTS (SELECT 1 FROM departure gone WHERE gone.bird = " + bird + ")");
        static final Scope EVER = new Scope(Optional.empty(), bird -> ANY);

        static Scope of(long id) {
            return new Scope(Optional.of(id), bird -> ANY);
        }
    }

    static Visit visit(Row<Fact.Visit> row) {
        Fact.Visit fact = row.fact();
        return new Visit(
                row.entry(),
                fact.cage(),
                fact.person(),
                fact.answer(),
                fact.how(),
                fact.part(),
                fact.signs().map(signs -> Arrays.asList(signs.split("\n"))).orElse(List.of()),
                row.day(),
                fact.clock(),
                fact.note());
    }

    // ------------------------------------------------------------------ birds

    private <F extends Fact.OfBird> Map<Long, List<Row<F>>> ofBirds(Class<F> kind, Scope scope) {
        List<Row<F>> rows = scope.id()
                .map(id -> FactTables.select(session, kind, "bird = ?", id))
                .orElseGet(() ->
                        FactTables.select(session, kind, scope.birds().apply(FactTables.tableName(kind) + ".bird")));
        return rows.stream().collect(Collectors.groupingBy(row -> row.fact().bird()));
    }

    private List<Bird> readBirds(Scope scope) {
        List<Row<Fact.Bird>> added = scope.id()
                .map(id -> FactTables.select(session, Fact.Bird.class, "entry = ?", id))
                .orElseGet(() -> FactTables.select(
                        session, Fact.Bird.class, scope.birds().apply("bird.entry")));
        if (added.isEmpty()) {
            return List.of();
        }
        Map<Long, List<Row<Fact.Ring>>> rings = ofBirds(Fact.Ring.class, scope);
        Map<Long, List<Row<Fact.SplitRing>>> splits = ofBirds(Fact.SplitRing.class, scope);
        Map<Long, List<Row<Fact.Naming>>> namings = ofBirds(Fact.Naming.class, scope);
        Map<Long, List<Row<Fact.Sexing>>> sexings = ofBirds(Fact.Sexing.class, scope);
        Map<Long, List<Row<Fact.Parentage>>> parents = ofBirds(Fact.Parentage.class, scope);
        Map<Long, List<Row<Fact.Move>>> moves = ofBirds(Fact.Move.class, scope);
        Map<Long, List<Row<Fact.Trait>>> traits = ofBirds(Fact.Trait.class, scope);
        Map<Long, List<Row<Fact.Finding>>> findings = ofBirds(Fact.Finding.class, scope);
        Map<Long, List<Row<Fact.Treatment>>> treatments = ofBirds(Fact.Treatment.class, scope);
        Map<Long, List<Row<Fact.Outing>>> outings = ofBirds(Fact.Outing.class, scope);
        Map<Long, List<Row<Fact.Loose>>> escapes = ofBirds(Fact.Loose.class, scope);
        Map<Long, List<Row<Fact.Departure>>> departures = ofBirds(Fact.Departure.class, scope);
        return added.stream()
                .map(row -> {
                    long id = row.entry();
                    Fact.Bird bird = row.fact();
                    return new Bird(
                            id,
                            last(rings, id).map(it -> it.fact().ring()).orElse(bird.ring()),
                            last(rings, id).map(it -> it.fact().ringYear()).orElse(bird.ringYear()),
                            last(splits, id).flatMap(it -> it.fact().ring()),
                            last(namings, id).map(it -> it.fact().name()),
                            last(sexings, id).map(it -> it.fact().sex()).orElse(Sex.UNKNOWN),
                            bird.species(),
                            bird.hatched(),
                            bird.colour(),
                            lastOf(rows(parents, id), Fact.Parentage::father),
                            lastOf(rows(parents, id), Fact.Parentage::mother),
                            bird.origin(),
                            stays(row, rows(moves, id)),
                            rows(traits, id).stream()
                                    .map(it -> it.fact().trait())
                                    .distinct()
                                    .toList(),
                            last(findings, id)
                                    .map(it -> new LookedOver(
                                            it.fact().condition(), it.fact().weight(), it.day())),
                            last(treatments, id).map(Row::day),
                            last(outings, id).flatMap(it -> it.fact()
                                    .whither()
                                    .map(where -> new Outing(where, it.fact().place(), it.day()))),
                            backFromShow(rows(outings, id)),
                            last(escapes, id).filter(it -> it.fact().loose()).isPresent(),
                            last(departures, id)
                                    .map(it -> new Departure(
                                            it.fact().way(),
                                            it.day(),
                                            it.fact().place(),
                                            it.fact().likely())));
                })
                .toList();
    }

    /** A bird's first cage comes before every move of it. */
    private static List<Stay> stays(Row<Fact.Bird> added, List<Row<Fact.Move>> moves) {
        List<Stay> stays = new ArrayList<>();
        added.fact().home().ifPresent(cage -> stays.add(new Stay(cage, LocalDate.MIN, added.entry())));
        moves.forEach(move -> stays.add(new Stay(move.fact().cage(), move.day(), move.entry())));
        return stays;
    }

    private static Optional<LocalDate> backFromShow(List<Row<Fact.Outing>> outings) {
        if (outings.size() < 2) {
            return Optional.empty();
        }
        Row<Fact.Outing> last = outings.get(outings.size() - 1);
        boolean wasAtShow = outings.get(outings.size() - 2)
                .fact()
                .whither()
                .filter(where -> where == Whither.SHOW)
                .isPresent();
        return Optional.of(last.day())
                .filter(day -> wasAtShow && last.fact().whither().isEmpty());
    }

    private static Optional<Long> lastOf(
            List<Row<Fact.Parentage>> rows, java.util.function.Function<Fact.Parentage, Optional<Long>> parent) {
        return rows.stream().flatMap(row -> parent.apply(row.fact()).stream()).reduce((earlier, later) -> later);
    }

    // ------------------------------------------------------------------ pairs

    /** All pairs that may have to be held: those with a bird that is present or has not been gone for long. */
    private Set<Long> candidatePairs(LocalDate today) {
        LocalDate bound = today.minusDays(Room.PAIR_HELD_DAYS);
        return new HashSet<>(session.numbers(
                "SELECT p.entry FROM pairing p WHERE"
                        + " NOT EXISTS (SELECT 1 FROM departure d WHERE d.bird = p.cock AND d.day < ?)"
                        + " OR NOT EXISTS (SELECT 1 FROM departure d WHERE d.bird = p.hen AND d.day < ?)"
                        + " OR EXISTS (SELECT 1 FROM egg e WHERE e.pair = p.entry AND e.day >= ?)",
                bound,
                bound,
                today.minusDays(Room.YOUNG_HELD_DAYS)));
    }

    private List<Long> pairsOf(long bird) {
        return session.numbers("SELECT entry FROM pairing WHERE cock = ? OR hen = ?", bird, bird);
    }

    /** A pair by its number, held by the room or not. */
    Optional<Pair> pair(long id) {
        return keptPairs.pair(session, id);
    }

    // ------------------------------------------------------------------ shared

    private static <F extends Fact> List<Row<F>> rows(Map<Long, List<Row<F>>> grouped, long id) {
        return grouped.getOrDefault(id, List.of());
    }

    private static <F extends Fact> Optional<Row<F>> last(Map<Long, List<Row<F>>> grouped, long id) {
        List<Row<F>> rows = rows(grouped, id);
        return rows.isEmpty() ? Optional.empty() : Optional.of(rows.get(rows.size() - 1));
    }

    private static <T> TreeMap<Long, T> byId(List<T> all, java.util.function.ToLongFunction<T> id) {
        TreeMap<Long, T> map = new TreeMap<>();
        all.forEach(each -> map.put(id.applyAsLong(each), each));
        return map;
    }

    private static <T> void replace(Map<Long, T> map, long id, List<T> read, java.util.function.ToLongFunction<T> key) {
        map.remove(id);
        read.forEach(each -> map.put(key.applyAsLong(each), each));
    }

    /** A room in the making. */
    private final class Parts {

        private final long head;
        private final String code;
        private final LocalDate today;
        private LocalDate since;
        private Settings settings;
        private List<Wall> walls = List.of();
        private Map<Long, Cage> cages = new TreeMap<>();
        private Map<Long, Bird> birds = new TreeMap<>();
        private Map<Long, Pair> pairs = new TreeMap<>();
        private List<PairPlan> plans = List.of();
        private List<Person> people = List.of();
        private List<Absence> absences = List.of();
        private List<Visit> visits = List.of();
        private List<Visit> unread = List.of();
        private List<TaskOutcome> outcomes = List.of();
        private List<Call> calls = List.of();
        private List<RingStock> rings = List.of();
        private List<String> spoilt = List.of();
        private List<String> worn = List.of();
        private List<PastEgg> past = List.of();
        private Set<Long> heldBefore = Set.of();

        Parts(Head head, LocalDate today) {
            this.head = head.number();
            this.code = head.code();
            this.today = today;
            this.since = today.minusDays(1);
            this.settings = Settings.initial(ZoneId.of(head.zone()));
        }

        Parts(Room before, long head) {
            this.head = head;
            code = before.code();
            today = before.day();
            since = before.since();
            settings = before.settings();
            walls = before.walls();
            cages = byId(before.cages(), Cage::id);
            birds = byId(before.birds(), Bird::id);
            pairs = byId(before.pairs(), Pair::id);
            plans = before.plans();
            people = before.people();
            absences = before.absences();
            visits = before.visits();
            unread = before.unread();
            outcomes = before.outcomes();
            calls = before.calls();
            rings = before.rings();
            spoilt = before.ringsSpoilt();
            worn = before.ringsWorn();
            past = before.past();
            heldBefore = Set.copyOf(pairs.keySet());
        }

        void readRoom() {
            readRoom(Set.copyOf(FactTables.KINDS), Set.of());
        }

        /**
         * Reads what these kinds of fact tell of the room as a whole.
         *
         * @param entries those whose facts have come or gone; none where all is read
         */
        void readRoom(Set<Class<? extends Fact>> kinds, Set<Long> entries) {
            if (kinds.contains(Fact.Setting.class)) {
                settings = readSettings();
            }
            if (kinds.contains(Fact.Wall.class)) {
                walls = readWalls();
            }
            if (kinds.contains(Fact.Person.class) || kinds.contains(Fact.Duty.class)) {
                people = readPeople();
            }
            LocalDate sinceBefore = since;
            if (ABSENCES.stream().anyMatch(kinds::contains)) {
                absences = readAbsences();
                since = Later.since(absences, today);
            }
            if (!since.equals(sinceBefore)) {
                outcomes = readOutcomes();
            } else if (kinds.contains(Fact.Outcome.class)) {
                outcomes = entries.isEmpty() ? readOutcomes() : readOutcomes(entries);
            }
            if (kinds.contains(Fact.PhoneCall.class)
                    || kinds.contains(Fact.AgreementEnd.class)
                    || !since.equals(sinceBefore)) {
                calls = readCalls();
            }
            if (kinds.contains(Fact.RingStock.class)) {
                rings = readRings();
            }
            if (kinds.contains(Fact.RingSpoilt.class)) {
                spoilt = FactTables.all(session, Fact.RingSpoilt.class).stream()
                        .map(row -> row.fact().ring())
                        .toList();
            }
        }

        private List<Wall> readWalls() {
            return FactTables.all(session, Fact.Wall.class).stream()
                    .map(row -> new Wall(
                            row.entry(),
                            row.fact().name(),
                            row.fact().height(),
                            row.fact().width()))
                    .sorted(Comparator.comparing(Wall::id))
                    .toList();
        }

        private List<RingStock> readRings() {
            return FactTables.all(session, Fact.RingStock.class).stream()
                    .map(Row::fact)
                    .map(stock -> new RingStock(
                            stock.season(),
                            stock.size(),
                            stock.lowest(),
                            stock.highest(),
                            stock.form().orElse(RingStock.usualForm(stock.season()))))
                    .toList();
        }

        private List<TaskOutcome> readOutcomes() {
            return held(FactTables.select(session, Fact.Outcome.class, "day >= ?", Later.outcomesFrom(since, today)))
                    .toList();
        }

        /** What is known, with what these entries tell now in the place of what they told before. */
        private List<TaskOutcome> readOutcomes(Set<Long> entries) {
            return Stream.concat(
                            outcomes.stream().filter(outcome -> !entries.contains(outcome.entry())),
                            entries.stream().flatMap(entry -> held(FactTables.of(session, Fact.Outcome.class, entry))))
                    .sorted(Comparator.comparing(TaskOutcome::day).thenComparing(TaskOutcome::entry))
                    .toList();
        }

        private Stream<TaskOutcome> held(List<Row<Fact.Outcome>> rows) {
            return rows.stream()
                    .map(row -> new TaskOutcome(
                            row.entry(),
                            row.fact().task(),
                            row.fact().done(),
                            row.fact().why(),
                            row.fact().person(),
                            row.day(),
                            row.fact().clock(),
                            row.fact().note()))
                    .filter(outcome -> Later.isHeld(outcome, since, today));
        }

        /** An agreement that is over held until the day before it was said to be. */
        private List<Call> readCalls() {
            Map<Long, LocalDate> over = FactTables.all(session, Fact.AgreementEnd.class).stream()
                    .collect(Collectors.toMap(
                            row -> row.fact().callEntry(),
                            row -> row.day().minusDays(1),
                            (one, other) -> one.isBefore(other) ? one : other));
            return FactTables.select(session, Fact.PhoneCall.class, "day >= ? OR last_day >= ?", since, today).stream()
                    .map(row -> new Call(
                            row.entry(),
                            row.fact().cage(),
                            row.fact().who(),
                            row.fact().matter(),
                            row.fact().reached(),
                            row.fact().agreed(),
                            row.fact().lastDay().map(last -> over.getOrDefault(row.entry(), last)),
                            row.fact().person(),
                            row.day(),
                            row.fact().clock(),
                            row.fact().note()))
                    .toList();
        }

        private Settings readSettings() {
            Map<String, String> set = new HashMap<>();
            FactTables.all(session, Fact.Setting.class)
                    .forEach(row -> set.put(row.fact().name(), row.fact().words()));
            Settings initial = Settings.initial(ZoneId.of(head().zone()));
            return new Settings(
                    set.getOrDefault("name", initial.name()),
                    Optional.ofNullable(set.get("zone")).map(ZoneId::of).orElse(initial.zone()),
                    set.getOrDefault("species", initial.species()),
                    Optional.ofNullable(set.get("rings-issued"))
                            .map(MonthDay::parse)
                            .orElse(initial.ringsIssued()),
                    setTo(set, "quiet").map(RoomReader::quiet),
                    setTo(set, "rules"),
                    number(set, "heat-act").orElse(initial.heatAct()),
                    number(set, "heat-phone").orElse(initial.heatPhone()),
                    number(set, "cold-phone").orElse(initial.coldPhone()),
                    Optional.ofNullable(set.get("ill-first"))
                            .flatMap(FirstCall::of)
                            .orElse(initial.illFirst()),
                    number(set, "most-eggs").orElse(initial.mostEggs()),
                    number(set, "most-chicks").orElse(initial.mostChicks()),
                    number(set, "most-rounds").orElse(initial.mostRounds()),
                    number(set, "rest-months").orElse(initial.restMonths()),
                    number(set, "least-space").orElse(initial.leastSpace()),
                    timetable(set),
                    rings(set));
        }

        private static RingCustom rings(Map<String, String> set) {
            return new RingCustom(
                    setTo(set, "rings-of").map(RoomReader::word).map(RingsOf::valueOf),
                    setTo(set, "ring-body").map(RoomReader::word).map(RingBody::valueOf),
                    set.entrySet().stream()
                            .filter(each -> each.getKey().startsWith(RingCustom.COLOUR))
                            .collect(Collectors.toMap(
                                    each -> Integer.valueOf(each.getKey().substring(RingCustom.COLOUR.length())),
                                    Map.Entry::getValue)));
        }

        private static Optional<Integer> number(Map<String, String> set, String name) {
            return Optional.ofNullable(set.get(name)).map(Integer::valueOf);
        }

        private static Map<String, String> timetable(Map<String, String> set) {
            return set.entrySet().stream()
                    .filter(each -> each.getKey().startsWith(Settings.TIMETABLE)
                            && !each.getValue().isEmpty())
                    .collect(Collectors.toMap(
                            each -> each.getKey().substring(Settings.TIMETABLE.length()), Map.Entry::getValue));
        }

        /** What was set last; an empty text stands for what was taken away. */
        private static Optional<String> setTo(Map<String, String> set, String name) {
            return Optional.ofNullable(set.get(name)).filter(words -> !words.isEmpty());
        }

        private List<Person> readPeople() {
            Map<Long, List<Row<Fact.Duty>>> duties = FactTables.all(session, Fact.Duty.class).stream()
                    .collect(Collectors.groupingBy(row -> row.fact().person()));
            return FactTables.all(session, Fact.Person.class).stream()
                    .sorted(Comparator.comparing(Row::entry))
                    .map(row -> {
                        Fact.Duty duty = last(duties, row.entry()).orElseThrow().fact();
                        return new Person(row.entry(), row.fact().name(), duty.role(), duty.phone());
                    })
                    .toList();
        }

        private List<Absence> readAbsences() {
            Map<Long, List<Row<Fact.AbsencePlan>>> planned = FactTables.all(session, Fact.AbsencePlan.class).stream()
                    .collect(Collectors.groupingBy(row -> row.fact().absence()));
            Map<Long, List<Long>> alone = FactTables.all(session, Fact.LeaveAlone.class).stream()
                    .collect(Collectors.groupingBy(
                            Row::entry, Collectors.mapping(row -> row.fact().cage(), Collectors.toList())));
            Map<Long, LocalDate> ended = FactTables.all(session, Fact.AbsenceEnd.class).stream()
                    .collect(Collectors.toMap(row -> row.fact().absence(), Row::day, (one, other) -> other));
            return FactTables.all(session, Fact.Absence.class).stream()
                    .map(row -> {
                        List<Row<Fact.AbsencePlan>> plans = rows(planned, row.entry());
                        Row<Fact.AbsencePlan> latest = plans.stream()
                                .max(Comparator.comparing(Row::entry))
                                .orElseThrow();
                        Fact.AbsencePlan plan = latest.fact();
                        return new Absence(
                                row.entry(),
                                plan.firstDay(),
                                plan.lastDay(),
                                plan.sitter(),
                                plan.keeper(),
                                plan.vet(),
                                plan.feeder(),
                                alone.getOrDefault(latest.entry(), List.of()),
                                Optional.ofNullable(ended.get(row.entry())),
                                plans.stream()
                                        .sorted(Comparator.comparing(Row<Fact.AbsencePlan>::day)
                                                .thenComparing(Row::entry))
                                        .map(RoomReader::plan)
                                        .toList());
                    })
                    .sorted(Comparator.comparing(Absence::from).thenComparing(Absence::id))
                    .toList();
        }

        void readPairs(Set<Long> ids) {
            ids.forEach(id -> {
                pairs.remove(id);
                pair(id).ifPresent(pair -> pairs.put(id, pair));
            });
        }

        /** Keeps the pairs that are to be held with their birds, and lets go of birds that have left otherwise. */
        void settle() {
            for (Pair pair : pairs.values()) {
                for (long id : List.of(pair.cock(), pair.hen())) {
                    if (!birds.containsKey(id)) {
                        bird(id).ifPresent(bird -> birds.put(id, bird));
                    }
                }
            }
            Later.letGo(pairs, birds, today);
        }

        void readSince() {
            visits = inOrder(FactTables.select(session, Fact.Visit.class, "day >= ?", since).stream()
                    .map(RoomReader::visit));
        }

        void readVisits(Map<Long, List<Visit>> told) {
            visits = withNews(visits, told, visit -> !visit.day().isBefore(since));
        }

        /** What is told by these entries now, in the place of what they told before. */
        private List<Visit> withNews(List<Visit> known, Map<Long, List<Visit>> told, Predicate<Visit> which) {
            List<Visit> all = new ArrayList<>(known.size() + told.size());
            all.addAll(known);
            boolean toldBefore = told.keySet().stream().anyMatch(entry -> entry < head);
            if (toldBefore) {
                all.removeIf(visit -> told.containsKey(visit.entry()));
            }
            told.values().stream()
                    .flatMap(List::stream)
                    .filter(which)
                    .forEach(visit -> all.add(-1 - Collections.binarySearch(all, visit, IN_ORDER), visit));
            return all;
        }

        private static List<Visit> inOrder(Stream<Visit> any) {
            return any.sorted(IN_ORDER).toList();
        }

        void readUnread() {
            unread = inOrder(FactTables.select(session, Fact.Visit.class, UNREAD, Answer.DIFFERENT).stream()
                    .map(RoomReader::visit));
        }

        void readUnread(Map<Long, List<Visit>> told) {
            unread = withNews(unread, told, visit -> visit.answer() == Answer.DIFFERENT && !isRead(visit.entry()));
        }

        private boolean isRead(long visit) {
            return !session.numbers("SELECT entry FROM seen WHERE seen = ?", visit)
                    .isEmpty();
        }

        /** Those of the rings bought that are told of any bird or chick there ever was. */
        void readWorn() {
            if (rings.isEmpty()) {
                worn = List.of();
                return;
            }
            Set<String> ever = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
            ever.addAll(
                    session.texts("SELECT ring FROM bird UNION SELECT ring FROM ring UNION SELECT ring FROM ringing"));
            worn = rings.stream()
                    .flatMap(stock -> stock.rings().stream())
                    .filter(ever::contains)
                    .distinct()
                    .sorted()
                    .toList();
        }

        /** Those of the rings bought that this entry tells of, beside those that are known. */
        void readWorn(long entry) {
            Set<String> told = new TreeSet<>(String.CASE_INSENSITIVE_ORDER);
            told.addAll(session.texts(
                    "SELECT ring FROM bird WHERE entry = ? UNION SELECT ring FROM ring WHERE entry = ?"
                            + " UNION SELECT ring FROM ringing WHERE entry = ?",
                    entry,
                    entry,
                    entry));
            if (!told.isEmpty()) {
                worn = Stream.concat(
                                worn.stream(),
                                rings.stream()
                                        .flatMap(stock -> stock.rings().stream())
                                        .filter(told::contains))
                        .distinct()
                        .sorted()
                        .toList();
            }
        }

        /** Of pairs that were touched, or that are held now and were not or the other way round, the eggs of the past. */
        void readPast(Set<Long> touched) {
            Set<Long> changed = new TreeSet<>(touched);
            changed.removeIf(pairs::containsKey);
            heldBefore.stream().filter(id -> !pairs.containsKey(id)).forEach(changed::add);
            pairs.keySet().stream().filter(id -> !heldBefore.contains(id)).forEach(changed::add);
            if (!changed.isEmpty()) {
                PastReader reader = new PastReader(session);
                past = Stream.concat(
                                past.stream().filter(egg -> !changed.contains(egg.pair())),
                                changed.stream()
                                        .filter(id -> !pairs.containsKey(id))
                                        .flatMap(id -> reader.eggsOf(id).stream()))
                        .sorted(PastReader.IN_ORDER)
                        .toList();
            }
        }

        void readPlans() {
            plans = FactTables.select(
                            session,
                            Fact.Plan.class,
                            "NOT EXISTS (SELECT 1 FROM pairing p"
                                    + " WHERE p.cock = plan.cock AND p.hen = plan.hen AND p.day >= plan.day)"
                                    + " AND NOT EXISTS (SELECT 1 FROM departure d"
                                    + " WHERE d.bird = plan.cock OR d.bird = plan.hen)")
                    .stream()
                    .map(row -> new PairPlan(
                            row.entry(),
                            row.fact().cage(),
                            row.fact().cock(),
                            row.fact().hen(),
                            row.fact().label(),
                            row.day()))
                    .toList();
        }

        Room room() {
            return new Room(
                    head,
                    code,
                    today,
                    since,
                    settings,
                    walls,
                    List.copyOf(cages.values()),
                    List.copyOf(birds.values()),
                    List.copyOf(pairs.values()),
                    plans,
                    people,
                    absences,
                    visits,
                    unread,
                    outcomes,
                    calls,
                    rings,
                    spoilt,
                    worn,
                    past);
        }
    }

    private static String word(String name) {
        return name.toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private static Quiet quiet(String hours) {
        String[] ends = hours.split("-");
        return new Quiet(LocalTime.parse(ends[0]), LocalTime.parse(ends[1]));
    }
}
