package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.cagewall.deed.Fact;
import org.cagewall.room.nest.EggPlace;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each kind of fact has a table that fits its record in every column. */
class FactTablesTest extends InMemory {

    /** A text field of a deed is a name of up to 40 or prose of up to 2,000 characters, of two places each at most. */
    private static final int NAME_WIDTH = 80;

    @Test
    void everyKindOfFactIsKnownToTheTables() {
        assertThat(Set.copyOf(FactTables.KINDS)).isEqualTo(kinds(Fact.class));
        assertThat(FactTables.KINDS).doesNotHaveDuplicates();
    }

    @TestFactory
    Stream<DynamicTest> theTableHasTheComponentsOfTheRecordAsColumns() {
        return FactTables.KINDS.stream()
                .map(kind -> dynamicTest(
                        kind.getSimpleName(),
                        () -> useDatabase(session -> assertThat(columns(session, FactTables.tableName(kind)))
                                .isEqualTo(expected(kind)))));
    }

    @Test
    void kindsStandAfterThoseThatTheyLeanOn() {
        useDatabase(session -> {
            List<String> tables =
                    FactTables.KINDS.stream().map(FactTables::tableName).toList();
            session
                    .select(
                            "SELECT t.tablename, r.tablename FROM sys.sysconstraints c"
                                    + " JOIN sys.sysforeignkeys f ON f.constraintid = c.constraintid"
                                    + " JOIN sys.systables t ON t.tableid = c.tableid"
                                    + " JOIN sys.sysconstraints k ON k.constraintid = f.keyconstraintid"
                                    + " JOIN sys.systables r ON r.tableid = k.tableid",
                            rows -> List.of(lower(rows.getString(1)), lower(rows.getString(2))))
                    .stream()
                    .filter(pair -> tables.containsAll(pair))
                    .forEach(pair -> assertThat(tables.indexOf(pair.get(1)))
                            .as("%s leans on %s", pair.get(0), pair.get(1))
                            .isLessThan(tables.indexOf(pair.get(0))));
        });
    }

    @Test
    void everyColumnThatNamesAnEntryIsAForeignKey() {
        useDatabase(session -> FactTables.KINDS.forEach(kind -> FactTables.leaningColumns(kind)
                .forEach(column -> assertThat(isForeign(session, FactTables.tableName(kind), column))
                        .as("%s.%s", FactTables.tableName(kind), column)
                        .isTrue())));
    }

    @TestFactory
    Stream<DynamicTest> aFactIsReadBackAsItWasWritten() {
        return FactTables.KINDS.stream()
                .map(kind -> dynamicTest(kind.getSimpleName(), () -> {
                    assertThatItReadsBack(kind, true);
                    assertThatItReadsBack(kind, false);
                }));
    }

    private <F extends Fact> void assertThatItReadsBack(Class<F> kind, boolean full) {
        tryInDatabase(writing -> {
            writing.write("INSERT INTO entry (number, touch, recorded, person, deed, day, line, digest)"
                    + " VALUES (1, 1, '2026-04-14T08:00:00Z', 'Ines', 'noted', '2026-04-14', '{}', '0'),"
                    + " (2, 2, '2026-04-14T08:00:00Z', 'Ines', 'noted', '2026-04-14', '{}', '0')");
            makeWhatItLeansOn(writing, kind);
            F fact = kind.cast(sample(kind, full));
            FactTables.insert(writing, 1, LocalDate.of(1969, 12, 31), List.of(fact));
            assertThat(FactTables.select(writing, kind, "n = 0 AND day = ?", LocalDate.of(1969, 12, 31)))
                    .containsExactly(new Row<>(1, LocalDate.of(1969, 12, 31), fact));
        });
    }

    /** Rows of entry 2 for all that a fact may lean on. */
    private static void makeWhatItLeansOn(Session session, Class<? extends Fact> kind) {
        List<Fact> ground = List.of(
                new Fact.Wall("West wall", 2, 2),
                new Fact.Person("Mara"),
                new Fact.Cage(900, "W1"),
                new Fact.Bird(
                        "HB 19-001",
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty(),
                        Optional.empty()),
                new Fact.Pairing(2, 2, 2, "900", false),
                new Fact.Round(2, 900),
                new Fact.Absence());
        FactTables.insert(session, 2, TODAY, ground);
        FactTables.insert(session, 2, TODAY, young(kind));
    }

    /** Eggs under the marks of the samples, each with a chick and its ring, but nothing of the kind itself. */
    private static List<Fact> young(Class<? extends Fact> kind) {
        List<Function<String, Fact>> made = List.of(
                mark -> new Fact.Egg(2, 2, mark, EggPlace.BOX, 2, false, Optional.empty()),
                mark -> new Fact.Hatching(2, 2, mark, false, Optional.empty()),
                mark -> new Fact.Ringing(2, 2, mark, "HB 26-" + mark.length(), false));
        return made.stream()
                .flatMap(making -> Stream.of(text(true), text(false)).map(making))
                .takeWhile(fact -> fact.getClass() != kind)
                .toList();
    }

    private static String text(boolean full) {
        return full ? "Ägnes 'quote' " + "\uD83D\uDC26".repeat(25) : "x";
    }

    private static Fact sample(Class<? extends Fact> kind, boolean full) {
        Object[] values = Arrays.stream(kind.getRecordComponents())
                .map(component -> value(component.getGenericType(), full))
                .toArray();
        Class<?>[] types = Arrays.stream(kind.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            return kind.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new AssertionError(e);
        }
    }

    private static Object value(Type type, boolean full) {
        if (type instanceof ParameterizedType optional) {
            return full ? Optional.of(value(optional.getActualTypeArguments()[0], true)) : Optional.empty();
        }
        Class<?> raw = (Class<?>) type;
        if (raw.isEnum()) {
            return raw.getEnumConstants()[raw.getEnumConstants().length - 1];
        }
        return switch (raw.getSimpleName()) {
            case "String" -> text(full);
            case "int", "Integer" -> 7;
            case "long", "Long" -> 2L;
            case "boolean", "Boolean" -> full;
            case "BigDecimal" -> new BigDecimal("-12.5");
            case "LocalDate" -> LocalDate.of(1969, 12, 31);
            case "LocalTime" -> LocalTime.of(23, 59, 59);
            default -> throw new AssertionError("no sample of " + raw);
        };
    }

    private static List<String> expected(Class<? extends Fact> kind) {
        List<String> columns =
                new ArrayList<>(List.of("entry BIGINT NOT NULL", "n SMALLINT NOT NULL", "day DATE NOT NULL"));
        for (RecordComponent component : kind.getRecordComponents()) {
            boolean optional = component.getType() == Optional.class;
            Type type = optional
                    ? ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0]
                    : component.getType();
            columns.add(snake(component.getName()) + " " + sqlType((Class<?>) type) + (optional ? "" : " NOT NULL"));
        }
        return columns;
    }

    private static String sqlType(Class<?> type) {
        return type.isEnum() || type == String.class
                ? "VARCHAR"
                : switch (type.getSimpleName()) {
                    case "int", "Integer" -> "INTEGER";
                    case "long", "Long" -> "BIGINT";
                    case "boolean", "Boolean" -> "BOOLEAN";
                    case "BigDecimal" -> "DECIMAL";
                    case "LocalDate" -> "DATE";
                    case "LocalTime" -> "TIME";
                    default -> throw new AssertionError("no column holds a " + type);
                };
    }

    /** The table's columns in their order: name, type without its width, and whether it must be there. */
    private static List<String> columns(Session session, String table) {
        return session.select(
                "SELECT c.columnname, CAST(c.columndatatype AS VARCHAR(100)) FROM sys.syscolumns c"
                        + " JOIN sys.systables t ON t.tableid = c.referenceid"
                        + " WHERE t.tablename = ? ORDER BY c.columnnumber",
                rows -> lower(rows.getString(1)) + " " + rows.getString(2).replaceAll("\\(.*?\\)", ""),
                table.toUpperCase(Locale.ROOT));
    }

    @Test
    void everyColumnOfTextHoldsANameOfTheLongest() {
        useDatabase(session -> FactTables.KINDS.forEach(kind -> Arrays.stream(kind.getRecordComponents())
                .filter(component -> component.getGenericType().getTypeName().contains("java.lang.String"))
                .forEach(component -> assertThat(width(session, kind, component))
                        .as("%s.%s", kind.getSimpleName(), component.getName())
                        .isGreaterThanOrEqualTo(NAME_WIDTH))));
    }

    private static int width(Session session, Class<? extends Fact> kind, RecordComponent component) {
        String type = session.texts(
                        "SELECT CAST(c.columndatatype AS VARCHAR(100)) FROM sys.syscolumns c"
                                + " JOIN sys.systables t ON t.tableid = c.referenceid"
                                + " WHERE t.tablename = ? AND c.columnname = ?",
                        FactTables.tableName(kind).toUpperCase(Locale.ROOT),
                        snake(component.getName()).toUpperCase(Locale.ROOT))
                .get(0);
        return Integer.parseInt(type.replaceAll("\\D", ""));
    }

    private static boolean isForeign(Session session, String table, String column) {
        String descriptor = session.texts(
                        "SELECT c.columnnumber FROM sys.syscolumns c JOIN sys.systables t ON t.tableid = c.referenceid"
                                + " WHERE t.tablename = ? AND c.columnname = ?",
                        table.toUpperCase(Locale.ROOT),
                        column.toUpperCase(Locale.ROOT))
                .get(0);
        return session
                .texts(
                        "SELECT CAST(g.descriptor AS VARCHAR(200)) FROM sys.sysforeignkeys f"
                                + " JOIN sys.sysconstraints c ON c.constraintid = f.constraintid"
                                + " JOIN sys.systables t ON t.tableid = c.tableid"
                                + " JOIN sys.sysconglomerates g ON g.conglomerateid = f.conglomerateid"
                                + " WHERE t.tablename = ?",
                        table.toUpperCase(Locale.ROOT))
                .stream()
                .anyMatch(index -> index.matches(".*\\((.*, )?" + descriptor + "(, .*)?\\).*"));
    }

    private static String snake(String camel) {
        return camel.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }

    private static Set<Class<?>> kinds(Class<?> sealed) {
        Set<Class<?>> all = new LinkedHashSet<>();
        for (Class<?> each : sealed.getPermittedSubclasses()) {
            if (each.isRecord()) {
                all.add(each);
            } else {
                all.addAll(kinds(each));
            }
        }
        return all;
    }
}
