package org.cagewall.store;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.deed.Fact;

/**
 * The one writer and the one reader of live facts: a fact's table has the name of its record and its components as
 * columns, next to {@code entry}, {@code n} and {@code day}. Holds no state but what it knows of the records; any thread.
 */
final class FactTables {

    /** All kinds, those that others lean on first. */
    static final List<Class<? extends Fact>> KINDS = List.of(
            Fact.Setting.class,
            Fact.Wall.class,
            Fact.Person.class,
            Fact.Duty.class,
            Fact.Climate.class,
            Fact.Cage.class,
            Fact.Placement.class,
            Fact.Purpose.class,
            Fact.Retirement.class,
            Fact.Joint.class,
            Fact.Feed.class,
            Fact.Routine.class,
            Fact.Cleaning.class,
            Fact.Headcount.class,
            Fact.Flock.class,
            Fact.Box.class,
            Fact.Card.class,
            Fact.Visit.class,
            Fact.Bird.class,
            Fact.Ring.class,
            Fact.Naming.class,
            Fact.Sexing.class,
            Fact.Parentage.class,
            Fact.Trait.class,
            Fact.Move.class,
            Fact.Finding.class,
            Fact.Treatment.class,
            Fact.Outing.class,
            Fact.Loose.class,
            Fact.Departure.class,
            Fact.Plan.class,
            Fact.Pairing.class,
            Fact.Round.class,
            Fact.RoundEnd.class,
            Fact.Egg.class,
            Fact.Sitting.class,
            Fact.Candling.class,
            Fact.Pip.class,
            Fact.Removal.class,
            Fact.NestMove.class,
            Fact.Hatching.class,
            Fact.Ringing.class,
            Fact.RingCheck.class,
            Fact.BoxTrip.class,
            Fact.ChickMark.class,
            Fact.ChickLoss.class,
            Fact.Weaning.class,
            Fact.Parting.class,
            Fact.StageSkip.class,
            Fact.Dummies.class,
            Fact.NestLook.class,
            Fact.SplitRing.class,
            Fact.Outcome.class,
            Fact.PhoneCall.class,
            Fact.AgreementEnd.class,
            Fact.Absence.class,
            Fact.AbsencePlan.class,
            Fact.LeaveAlone.class,
            Fact.AbsenceEnd.class,
            Fact.Seen.class,
            Fact.RingStock.class,
            Fact.RingSpoilt.class);

    /** What can be told only of an egg that hatched. */
    private static final Set<Class<? extends Fact>> OF_CHICKS = Set.of(
            Fact.Ringing.class,
            Fact.RingCheck.class,
            Fact.BoxTrip.class,
            Fact.ChickMark.class,
            Fact.ChickLoss.class,
            Fact.Weaning.class);

    private static final Map<Class<? extends Fact>, Table<?>> TABLES = Collections.unmodifiableMap(tables());

    private FactTables() {}

    static void insert(Session session, long entry, LocalDate day, List<Fact> facts) {
        for (int n = 0; n < facts.size(); n++) {
            Fact fact = facts.get(n);
            TABLES.get(fact.getClass()).insert(session, entry, n, day, fact);
        }
    }

    /** The rows for which the condition holds, in the order of their days, then of their entries. */
    static <F extends Fact> List<Row<F>> select(Session session, Class<F> kind, String where, Object... args) {
        return table(kind).read(session, " WHERE " + where + " ORDER BY day, entry, n", args);
    }

    /** The rows of one entry, in their order; all are of its day, so that Derby need not sort them by days. */
    static <F extends Fact> List<Row<F>> of(Session session, Class<F> kind, long entry) {
        return table(kind).read(session, " WHERE entry = ? ORDER BY entry, n", entry);
    }

    static <F extends Fact> List<Row<F>> all(Session session, Class<F> kind) {
        return select(session, kind, "1 = 1");
    }

    /** The newest row for which the condition holds. */
    static <F extends Fact> List<Row<F>> newest(Session session, Class<F> kind, String where, Object... args) {
        String newestFirst = " ORDER BY day DESC, entry DESC, n DESC FETCH FIRST 1 ROWS ONLY";
        return table(kind).read(session, " WHERE " + where + newestFirst, args);
    }

    /** Takes away all rows of an entry and hands them back. */
    static List<Row<? extends Fact>> delete(Session session, long entry) {
        List<Row<? extends Fact>> gone = new ArrayList<>();
        for (int i = KINDS.size() - 1; i >= 0; i--) {
            Class<? extends Fact> kind = KINDS.get(i);
            List<? extends Row<? extends Fact>> rows = select(session, kind, "entry = ?", entry);
            if (!rows.isEmpty()) {
                gone.addAll(rows);
                session.write("DELETE FROM " + tableName(kind) + " WHERE entry = ?", entry);
            }
        }
        return gone;
    }

    static String tableName(Class<? extends Fact> kind) {
        return snake(kind.getSimpleName());
    }

    static List<String> columns(Class<? extends Fact> kind) {
        return Arrays.stream(kind.getRecordComponents())
                .map(component -> snake(component.getName()))
                .toList();
    }

    /** The columns that hold the number of the entry which added what the fact is about. */
    static Stream<String> leaningColumns(Class<? extends Fact> kind) {
        if (kind == Fact.Seen.class || kind == Fact.AgreementEnd.class) {
            return Stream.empty();
        }
        return Arrays.stream(kind.getRecordComponents())
                .filter(component -> component.getType() == long.class
                        || component.getGenericType().getTypeName().equals("java.util.Optional<java.lang.Long>"))
                .map(component -> snake(component.getName()));
    }

    /** Whether what is told by one kind about an egg or a chick is possible only after the other kind. */
    static boolean leansOn(Class<? extends Fact> kind, Class<? extends Fact> ground) {
        if (ground == Fact.Ringing.class) {
            return kind == Fact.RingCheck.class;
        }
        boolean ofChick = OF_CHICKS.contains(kind);
        return ground == Fact.Hatching.class ? ofChick : !ofChick;
    }

    @SuppressWarnings("unchecked") // the map holds under each kind the table of that kind
    private static <F extends Fact> Table<F> table(Class<F> kind) {
        return (Table<F>) TABLES.get(kind);
    }

    private static Map<Class<? extends Fact>, Table<?>> tables() {
        Map<Class<? extends Fact>, Table<?>> tables = new LinkedHashMap<>();
        KINDS.forEach(kind -> tables.put(kind, new Table<>(kind)));
        return tables;
    }

    private static String snake(String camel) {
        return camel.replaceAll("(?<!^)([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    /** One kind's table. */
    private static final class Table<F extends Fact> {

        private final RecordComponent[] components;
        private final List<Columns.Reader> readers;
        private final Constructor<F> constructor;
        private final String insert;
        private final String select;

        Table(Class<F> kind) {
            components = kind.getRecordComponents();
            readers = Arrays.stream(components)
                    .map(component -> Columns.reader(component.getGenericType()))
                    .toList();
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                constructor = kind.getDeclaredConstructor(types);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException("a record has its constructor", e);
            }
            List<String> all = new ArrayList<>(List.of("entry", "n", "day"));
            all.addAll(columns(kind));
            insert = "INSERT INTO " + tableName(kind) + " (" + String.join(", ", all) + ") VALUES ("
                    + all.stream().map(column -> "?").collect(Collectors.joining(", ")) + ")";
            select = "SELECT " + String.join(", ", all) + " FROM " + tableName(kind);
        }

        void insert(Session session, long entry, int n, LocalDate day, Fact fact) {
            Object[] values = new Object[3 + components.length];
            values[0] = entry;
            values[1] = n;
            values[2] = day;
            for (int i = 0; i < components.length; i++) {
                values[3 + i] = value(fact, components[i]);
            }
            session.write(insert, values);
        }

        List<Row<F>> read(Session session, String which, Object... args) {
            return session.lend(select + which, statement -> {
                Session.fill(statement, args);
                List<Row<F>> all = new ArrayList<>();
                try (ResultSet rows = statement.executeQuery()) {
                    while (rows.next()) {
                        all.add(row(rows));
                    }
                }
                return all;
            });
        }

        private Row<F> row(ResultSet rows) throws SQLException {
            Object[] values = new Object[readers.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = readers.get(i).read(rows, 4 + i);
            }
            try {
                return new Row<>(rows.getLong(1), LocalDate.parse(rows.getString(3)), constructor.newInstance(values));
            } catch (ReflectiveOperationException e) {
                throw new IllegalStateException("a row of " + constructor.getDeclaringClass() + " does not fit", e);
            }
        }

        private static Object value(Fact fact, RecordComponent component) {
            try {
                return component.getAccessor().invoke(fact);
            } catch (IllegalAccessException | InvocationTargetException e) {
                throw new IllegalStateException(component.toString(), e);
            }
        }
    }
}
