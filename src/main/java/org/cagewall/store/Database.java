package org.cagewall.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Properties;
import java.util.stream.Stream;
import org.cagewall.text.Message;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/**
 * Makes, opens and shuts the Derby database. A new one is made and given its schema beside its final place and then
 * renamed, so that a first start that is killed leaves nothing that cannot be opened. Bound to no thread.
 */
final class Database {

    /** The schema this program writes. An older one is brought up to it; a newer one is left alone. */
    static final int SCHEMA = 11;

    /** By what rules Derby folds letters. The machine's own would tell a Turkish i from an English one. */
    private static final String TERRITORY = "en";

    private static final String DERBY = "jdbc:derby:";
    private static final String UNFINISHED = ".new";
    private static final String PROPERTIES = "service.properties";

    /** How the states begin by which Derby tells of pages and logs that it cannot make sense of. */
    private static final List<String> DAMAGE = List.of("XSD", "XSLA", "XSLB", "XSTB");

    /** What Linux, macOS and Windows say when there is no room; Java tells it by no kind of exception. From memory. */
    private static final List<String> FULL =
            List.of("No space left", "Disk quota exceeded", "not enough space on the disk");

    /** Bytes without which Derby opens nothing that can be written to: its lock and a page. */
    private static final long LEAST_TO_OPEN = 64 * 1024;

    private Database() {}

    /**
     * Where Derby writes of its own troubles; must be said before its driver is loaded. A file that cannot be written to
     * is left out, since Derby would turn to standard error.
     */
    static void keepDerbyLogIn(Path file) {
        try {
            Files.newOutputStream(file, StandardOpenOption.CREATE, StandardOpenOption.APPEND)
                    .close();
            System.setProperty("derby.stream.error.file", file.toString());
        } catch (IOException e) {
            System.clearProperty("derby.stream.error.file");
            System.setProperty("derby.stream.error.method", "java.io.OutputStream.nullOutputStream");
        }
    }

    static boolean exists(Path place) {
        return Files.exists(place.resolve(PROPERTIES));
    }

    static boolean isMissing(Path place) {
        return Files.notExists(place.resolve(PROPERTIES));
    }

    /** The files and folders without which nothing that is written is kept. */
    static List<SameFile> files(Path place) {
        try {
            return List.of(
                    SameFile.at(place),
                    SameFile.at(place.resolve(PROPERTIES)),
                    SameFile.at(place.resolve("seg0")),
                    SameFile.at(place.resolve("log")));
        } catch (IOException e) {
            throw problem(place, e);
        }
    }

    /** Makes a database with the current schema and an empty head. */
    static void create(Path place, String code, String zone) {
        Path unfinished = place.resolveSibling(place.getFileName() + UNFINISHED);
        try {
            deleteAll(unfinished);
            Files.createDirectories(place.toAbsolutePath().getParent());
            String url = url(unfinished);
            connect(url, "create", "true", "territory", TERRITORY).close();
            migrate(url);
            fill(url, code, zone);
            shutDown(url);
            Files.move(unfinished, place);
        } catch (IOException | SqlProblem | SQLException e) {
            throw problem(place, e);
        }
    }

    private static void fill(String url, String code, String zone) {
        Session.use(url, session -> insertHead(session, code, zone));
    }

    static void insertHead(Session session, String code, String zone) {
        session.write(
                "INSERT INTO head (id, number, digest, code, zone) VALUES (1, 0, ?, ?, ?)", Chain.START, code, zone);
    }

    /**
     * Opens a database that is there, bringing its schema up to date first if it is an old one.
     *
     * @param beforeUpdate done before anything in an old one is changed
     */
    static void open(Path place, Runnable beforeUpdate) {
        refuseUnsafeDurability();
        String url = url(place);
        try {
            int schema = schemaOf(url, place);
            if (schema > SCHEMA) {
                throw new StoreProblem(Message.of("store.newer"));
            }
            if (schema < SCHEMA) {
                beforeUpdate.run();
                migrate(url);
            }
        } catch (SQLException | SqlProblem e) {
            throw problem(place, e);
        }
    }

    private static void migrate(String url) throws SQLException {
        try {
            Flyway.configure()
                    .dataSource(new PlainSource(url))
                    .locations("classpath:org/cagewall/store/schema")
                    .table("schema_history")
                    .load()
                    .migrate();
        } catch (FlywayException e) {
            throw new SQLException(e);
        }
    }

    private static int schemaOf(String url, Path place) throws SQLException {
        try (Connection connection = connect(url);
                var statement = connection.createStatement();
                var rows = statement.executeQuery(
                        "SELECT MAX(CAST(\"version\" AS INTEGER)) FROM \"schema_history\" WHERE \"success\" = TRUE")) {
            if (connection.isReadOnly()) {
                Path folder = place.toAbsolutePath().getParent();
                throw new StoreProblem(
                        isFull(folder) ? Message.of("store.full") : Message.of("store.read-only", folder.toString()));
            }
            rows.next();
            return rows.getInt(1);
        }
    }

    /** The head of the record, read without anything but Derby. */
    static RoomReader.Head head(String url) throws SQLException {
        try (Connection connection = connect(url);
                var statement = connection.createStatement();
                var rows = statement.executeQuery(RoomReader.HEAD)) {
            return RoomReader.head(rows);
        }
    }

    static void shutDown(String url) {
        try {
            connect(url, "shutdown", "true").close();
        } catch (SQLException e) {
            boolean done = "08006".equals(e.getSQLState());
            if (!done) {
                throw new StoreProblem(Message.of("store.shut"), e);
            }
        }
    }

    static String url(Path place) {
        return DERBY + place.toAbsolutePath();
    }

    /**
     * A connection to the database of that address. Its name is handed over beside the address, where a semicolon in a
     * path would end it.
     *
     * @param attributes names and values by turns
     */
    static Connection connect(String url, String... attributes) throws SQLException {
        Properties told = new Properties();
        told.setProperty("databaseName", url.substring(DERBY.length()));
        for (int i = 0; i < attributes.length; i += 2) {
            told.setProperty(attributes[i], attributes[i + 1]);
        }
        return DriverManager.getConnection(DERBY, told);
    }

    /** Nothing could be written, and why as far as it can be told. */
    static StoreProblem unwritten(Throwable cause) {
        return new StoreProblem(Message.of(isFull(cause) ? "store.full" : "store.cannot-write"), cause);
    }

    /** Whether the system said that there is no room: on a disk, or in what the person may use of it. */
    static boolean isFull(Throwable cause) {
        return chain(cause).map(Throwable::getMessage).filter(Objects::nonNull).anyMatch(said -> FULL.stream()
                .anyMatch(said::contains));
    }

    /** Whether the disk takes nothing more, which Derby tells in as many ways as there are things to write. */
    private static boolean isFull(Path folder) {
        try {
            return Files.getFileStore(folder).getUsableSpace() < LEAST_TO_OPEN;
        } catch (IOException e) {
            return false;
        }
    }

    static StoreProblem problem(Path place, Throwable cause) {
        Path folder = place.toAbsolutePath().getParent();
        if (isFull(cause) || isFull(folder)) {
            return new StoreProblem(Message.of("store.full"), cause);
        }
        if (chainHolds(cause, "XSDB6")) {
            return new StoreProblem(Message.of("store.open-elsewhere", folder.toString()), cause);
        }
        if (!Files.isWritable(folder)) {
            return new StoreProblem(Message.of("store.read-only", folder.toString()), cause);
        }
        if (isDamaged(cause)) {
            return new StoreProblem(Message.of("store.damaged"), cause);
        }
        return new StoreProblem(Message.of("store.cannot-open", folder.toString()), cause);
    }

    /** Whether Derby found a page or a piece of its log that is not as it wrote it. */
    static boolean isDamaged(Throwable cause) {
        return states(cause).anyMatch(state -> DAMAGE.stream().anyMatch(state::startsWith));
    }

    private static boolean chainHolds(Throwable cause, String state) {
        return states(cause).anyMatch(state::equals);
    }

    /** A failure, what it came from, and what Derby hangs beside each. */
    private static Stream<Throwable> chain(Throwable failure) {
        return Stream.iterate(failure, Objects::nonNull, Throwable::getCause)
                .flatMap(each -> each instanceof SQLException sql
                        ? Stream.concat(
                                Stream.of(each),
                                Optional.ofNullable(sql.getNextException()).stream()
                                        .flatMap(Database::chain))
                        : Stream.of(each));
    }

    private static Stream<String> states(Throwable cause) {
        return chain(cause)
                .filter(SQLException.class::isInstance)
                .map(each -> ((SQLException) each).getSQLState())
                .filter(Objects::nonNull);
    }

    static void discard(Path place) {
        try {
            deleteAll(place);
        } catch (IOException e) {
            throw problem(place, e);
        }
    }

    /** With that setting a power cut may cost the whole record. */
    private static void refuseUnsafeDurability() {
        if (System.getProperty("derby.system.durability") != null) {
            throw new StoreProblem(Message.of("store.unsafe"));
        }
    }

    private static void deleteAll(Path folder) throws IOException {
        if (!Files.exists(folder)) {
            return;
        }
        List<Path> all;
        try (Stream<Path> walk = Files.walk(folder)) {
            all = walk.sorted(Comparator.reverseOrder()).toList();
        }
        for (Path each : all) {
            Files.delete(each);
        }
    }
}
