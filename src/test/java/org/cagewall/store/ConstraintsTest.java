package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.sql.SQLIntegrityConstraintViolationException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Each constraint of the schema has a name, a sentence, and is broken here to hear it. */
class ConstraintsTest extends InMemory {

    private static final Map<String, String> BROKEN_CHECKS = Map.of(
            "CK_HEAD_ONE", "UPDATE head SET id = 2",
            "CK_MENTION_KIND", "INSERT INTO mention (entry, kind, id) VALUES (1, 'EGGS', 1)");

    @Test
    void everyConstraintHasANameOfOurs() {
        useDatabase(session -> assertThat(constraints(session))
                .hasSizeGreaterThan(100)
                .extracting(Constraint::name)
                .allMatch(name -> name.matches("(PK|UQ|FK|CK)_[A-Z_]+")));
    }

    @Test
    void everyConstraintHasASentence() {
        useDatabase(session -> constraints(session)
                .forEach(constraint -> assertThat(WORDS.knows("store." + Constraints.key(constraint.name())))
                        .as("store." + Constraints.key(constraint.name()))
                        .isTrue()));
    }

    @TestFactory
    Stream<DynamicTest> whoBreaksAConstraintHearsItsSentence() {
        List<Constraint> all = new ArrayList<>();
        useDatabase(session -> all.addAll(constraints(session)));
        Samples samples = new Samples(all);
        return all.stream()
                .map(constraint -> dynamicTest(
                        constraint.name(),
                        () -> tryInDatabase(breaking -> {
                            layGround(breaking, samples, constraint.table());
                            assertThatItsSentenceIsHeard(breaking, constraint, samples);
                        })));
    }

    private static void assertThatItsSentenceIsHeard(Session session, Constraint constraint, Samples samples) {
        SqlProblem broken = catchThrowableOfType(SqlProblem.class, () -> constraint.breakIn(session, samples));
        assertThat(broken).as("nothing stopped it").isNotNull();
        assertThat(broken.getCause()).isInstanceOf(SQLIntegrityConstraintViolationException.class);
        String said = broken.getCause().getMessage();
        assertThat(said).contains("'" + constraint.name() + "'");
        assertThat(Constraints.sentence(said).key()).isEqualTo("store." + Constraints.key(constraint.name()));
    }

    /** Entries 1 to 4, and with the number 1 one of everything that others lean on. */
    private static void layGround(Session session, Samples samples, String broken) {
        for (int entry = 1; entry <= 4; entry++) {
            session.write(
                    "INSERT INTO entry (number, touch, recorded, person, deed, day, line, digest)"
                            + " VALUES (?, 1, '2026-04-14T08:00:00Z', 'Ines', 'noted', '2026-04-14', '{}', '0')",
                    entry);
        }
        for (String table : List.of("wall", "person", "cage", "bird", "pairing", "round", "absence")) {
            insert(session, table, samples.row(session, table, 1));
        }
        for (int egg = 1; egg <= 4; egg++) {
            for (String table : List.of("egg", "hatching", "ringing")) {
                if (table.equals(broken)) {
                    break;
                }
                Map<String, String> row = samples.row(session, table, egg);
                row.put("mark", Samples.groundEgg(egg));
                insert(session, table, row);
            }
        }
    }

    private static void insert(Session session, String table, Map<String, String> row) {
        session.write("INSERT INTO " + table + " (" + String.join(", ", row.keySet()) + ") VALUES ("
                + String.join(", ", row.values()) + ")");
    }

    /**
     * A constraint as the catalogue has it.
     *
     * @param type primary, unique, foreign or check, by its first letter
     */
    private record Constraint(String name, String type, String table, List<String> columns) {

        void breakIn(Session session, Samples samples) {
            if (type.equals("C")) {
                session.write(Optional.ofNullable(BROKEN_CHECKS.get(name)).orElseThrow());
            } else if (type.equals("F")) {
                Map<String, String> row = samples.row(session, table, 3);
                if (columns.contains("mark")) {
                    row.put("mark", "'none'");
                } else {
                    columns.forEach(column -> row.put(column, "999"));
                }
                insert(session, table, row);
            } else if (table.equals("head")) {
                session.write("INSERT INTO head SELECT * FROM head");
            } else {
                Map<String, String> first = samples.row(session, table, 3);
                Map<String, String> second = samples.row(session, table, 4);
                columns.forEach(column -> second.put(column, first.get(column)));
                insert(session, table, first);
                insert(session, table, second);
            }
        }
    }

    /** Rows of a table that keep every rule and differ in everything but what they lean on. */
    private record Samples(List<Constraint> constraints) {

        Map<String, String> row(Session session, String table, int which) {
            Map<String, String> row = new LinkedHashMap<>();
            List<String> foreign = constraints.stream()
                    .filter(each -> each.table().equals(table) && each.type().equals("F"))
                    .flatMap(each -> each.columns().stream())
                    .toList();
            columnsOf(session, table)
                    .forEach((column, type) ->
                            row.put(column, value(table, column, type, foreign.contains(column), which)));
            return row;
        }

        static String groundEgg(int which) {
            return "'egg " + which + "'";
        }

        private static String value(String table, String column, String type, boolean leans, int which) {
            if (column.equals("entry") || table.equals("entry") && column.equals("number")) {
                return Integer.toString(table.equals("entry") ? which + 10 : which);
            }
            if (leans && column.equals("mark")) {
                return groundEgg(which);
            }
            if (leans) {
                return "1";
            }
            if (column.equals("kind")) {
                return "'CAGE'";
            }
            return switch (type.replaceAll("\\(.*", "").replace(" NOT NULL", "")) {
                case "VARCHAR", "CHAR" -> "'v" + which + "'";
                case "DATE" -> "'2026-04-1" + which + "'";
                case "TIME" -> "'07:4" + which + ":00'";
                case "BOOLEAN" -> "TRUE";
                default -> Integer.toString(which);
            };
        }
    }

    private static List<Constraint> constraints(Session session) {
        return session
                .select(
                        "SELECT c.constraintname, c.type, t.tablename, CAST(g.descriptor AS VARCHAR(200))"
                                + " FROM sys.sysconstraints c JOIN sys.systables t ON t.tableid = c.tableid"
                                + " LEFT JOIN sys.syskeys k ON k.constraintid = c.constraintid"
                                + " LEFT JOIN sys.sysforeignkeys f ON f.constraintid = c.constraintid"
                                + " LEFT JOIN sys.sysconglomerates g ON g.tableid = c.tableid"
                                + " AND g.conglomerateid = COALESCE(k.conglomerateid, f.conglomerateid)"
                                + " WHERE t.tablename <> 'schema_history' ORDER BY c.constraintname",
                        rows -> constraint(
                                session,
                                rows.getString(1),
                                rows.getString(2),
                                lower(rows.getString(3)),
                                Optional.ofNullable(rows.getString(4))))
                .stream()
                .collect(Collectors.toMap(Constraint::name, each -> each, (one, same) -> one, LinkedHashMap::new))
                .values()
                .stream()
                .toList();
    }

    private static Constraint constraint(
            Session session, String name, String type, String table, Optional<String> index) {
        List<String> columns = index.map(it -> named(session, table, it)).orElse(List.of());
        return new Constraint(name, type, table, columns);
    }

    /** The columns that an index is on, from what the catalogue says of it: {@code UNIQUE BTREE (1, 2)}. */
    private static List<String> named(Session session, String table, String index) {
        List<String> columns = List.copyOf(columnsOf(session, table).keySet());
        String numbers = index.substring(index.lastIndexOf('(') + 1, index.lastIndexOf(')'));
        return Arrays.stream(numbers.split(","))
                .map(number -> columns.get(Integer.parseInt(number.strip()) - 1))
                .toList();
    }

    private static Map<String, String> columnsOf(Session session, String table) {
        Map<String, String> columns = new LinkedHashMap<>();
        session.select(
                        "SELECT c.columnname, CAST(c.columndatatype AS VARCHAR(100)) FROM sys.syscolumns c"
                                + " JOIN sys.systables t ON t.tableid = c.referenceid"
                                + " WHERE t.tablename = ? ORDER BY c.columnnumber",
                        rows -> List.of(lower(rows.getString(1)), rows.getString(2)),
                        table.toUpperCase(Locale.ROOT))
                .forEach(column -> columns.put(column.get(0), column.get(1)));
        return columns;
    }

    private static String lower(String name) {
        return name.toLowerCase(Locale.ROOT);
    }
}
