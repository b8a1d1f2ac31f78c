package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Deed;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.care.LogEntry;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;

/**
 * A test on a real Derby that lives in memory, made anew for each test from one that was migrated once. What it is told
 * is written as the lines of the record, one a line; the test's thread does everything.
 */
public abstract class InMemory {

    protected static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    protected static final Words WORDS = Words.english();

    /** When the entries of a test are recorded. */
    static final Instant NOW = Instant.parse("2026-04-14T08:00:00Z");

    private static final String FURNITURE = """
            {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
            {"deed":"person-added","person":"Joan","role":"keeper","by":"Ines"}
            {"deed":"person-added","person":"Tomas","role":"sitter","by":"Ines"}
            {"deed":"wall-added","wall":"North wall","rows":2,"columns":4,"by":"Ines"}
            {"deed":"cage-added","cage":"A1","wall":"North wall","row":1,"column":1,"use":"breeding","by":"Ines"}
            {"deed":"cage-added","cage":"A2","wall":"North wall","row":1,"column":2,"use":"breeding","by":"Ines"}
            {"deed":"cage-added","cage":"A3","wall":"North wall","row":1,"column":3,"use":"breeding","by":"Ines"}
            {"deed":"cage-added","cage":"B1","wall":"North wall","row":2,"column":1,"use":"stock","by":"Ines"}
            {"deed":"cage-added","cage":"B2","wall":"North wall","row":2,"column":2,"use":"flight","by":"Ines"}
            {"deed":"bird-added","bird":"HB 24-011","sex":"cock","cage":"B1","by":"Ines"}
            {"deed":"bird-added","bird":"HB 24-012","sex":"hen","cage":"B1","by":"Ines"}
            {"deed":"bird-added","bird":"HB 24-013","sex":"cock","cage":"B1","by":"Ines"}
            {"deed":"bird-added","bird":"HB 24-014","sex":"hen","cage":"B1","by":"Ines"}
            {"deed":"bird-added","bird":"HB 26-015","sex":"unknown","cage":"B2","hatched":"2026-01-20","by":"Ines"}
            {"deed":"birds-added","count":5,"cage":"B2","by":"Ines"}
            """;

    private static final String PAIR = """
            {"deed":"paired-up","cage":"A1","cock":"HB 24-011","hen":"HB 24-012","on":"2026-02-20","by":"Ines"}
            {"deed":"box-on","cage":"A1","on":"2026-03-03","by":"Ines"}
            """;

    private static final AtomicInteger MADE = new AtomicInteger();

    private String url;
    private Store store;
    private Room room;

    @BeforeEach
    final void makeARecord() {
        open(newRecord(isFurnished() ? Template.FURNISHED : Template.EMPTY));
    }

    /** Whether each test begins in a furnished room with a pair, and not in an empty one. */
    boolean isFurnished() {
        return false;
    }

    /** Leaves the record of this test for a furnished one with a pair, as {@link #furnish} and {@link #pairUp} make it. */
    final void moveIntoAFurnishedRoom() {
        dropTheRecord();
        open(newRecord(Template.FURNISHED));
    }

    private void open(String address) {
        url = address;
        store = Store.at(url);
        room = store.room(TODAY);
    }

    @AfterEach
    final void dropTheRecord() {
        store.close();
        drop(url);
    }

    /** The address of a new and empty record in memory. */
    static String newRecord() {
        return newRecord(Template.EMPTY);
    }

    private static String newRecord(Template template) {
        String address = "jdbc:derby:memory:record" + MADE.incrementAndGet();
        try {
            DriverManager.getConnection(address + ";createFrom=" + template.place)
                    .close();
            return address;
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    static void drop(String address) {
        try {
            DriverManager.getConnection(address + ";drop=true").close();
        } catch (SQLException e) {
            assertThat(e.getSQLState()).as("a database dropped in good order").isEqualTo("08006");
        }
    }

    protected final Store store() {
        return store;
    }

    final String url() {
        return url;
    }

    /** Opens the database beside the store, to see what stands in it or to break its rules. */
    final void useDatabase(Consumer<Session> use) {
        Session.use(url, use);
    }

    /** The same, and takes everything back in the end. */
    final void tryInDatabase(Consumer<Session> use) {
        useDatabase(session -> assertThatExceptionOfType(TakenBack.class)
                .isThrownBy(() -> session.inTransaction(trying -> {
                    use.accept(trying);
                    throw new TakenBack();
                })));
    }

    private static final class TakenBack extends RuntimeException {

        private static final long serialVersionUID = 1;
    }

    /** What a step of the schema changes in the facts that stand already. */
    static List<String> updatesOf(String schema) {
        try (InputStream script = Store.class.getResourceAsStream("schema/" + schema)) {
            String statements = new String(script.readAllBytes(), StandardCharsets.UTF_8).replaceAll("(?m)^--.*$", "");
            return Stream.of(statements.split(";"))
                    .map(String::strip)
                    .filter(statement -> statement.startsWith("UPDATE"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The room after the last deed. */
    protected final Room room() {
        return room;
    }

    protected final Room roomReadAnew() {
        return store.room(TODAY);
    }

    protected final Cage cage(String name) {
        return room.cage(name).orElseThrow();
    }

    /** Records the lines, a touch each, and expects that all are taken. */
    protected final void tell(String lines) {
        lines.lines().filter(line -> !line.isBlank()).forEach(text -> {
            Recording recording = recorded(line(text));
            assertThat(recording).as("%s: %s", text, said(recording)).isInstanceOf(Recording.Done.class);
        });
    }

    /** Records one deed of today by the owner of a furnished room, and expects that it is taken. */
    protected final long tell(Deed deed) {
        Recording recording = recorded(new Line(deed, Circumstances.on(TODAY, "Ines")));
        assertThat(recording).as(said(recording)).isInstanceOf(Recording.Done.class);
        return room.head();
    }

    protected final Recording recorded(Line... lines) {
        Recording recording = store.record(room, List.of(lines), TODAY, NOW);
        if (recording instanceof Recording.Done done) {
            room = done.room();
        }
        return recording;
    }

    /** Why the line is refused. */
    protected final String refusal(String text) {
        Recording recording = recorded(line(text));
        assertThat(recording).as("%s: %s", text, said(recording)).isInstanceOf(Recording.Refused.class);
        return said(recording);
    }

    /** What is asked before the line is recorded. */
    protected final String question(String text) {
        Recording recording = recorded(line(text));
        assertThat(recording).as("%s: %s", text, said(recording)).isInstanceOf(Recording.Asks.class);
        return said(recording);
    }

    /** What is said to a recording that was not done; nothing where it was. */
    static String said(Recording recording) {
        if (recording instanceof Recording.Refused refused) {
            return WORDS.say(refused.reason());
        }
        return recording instanceof Recording.Asks asks ? WORDS.say(asks.question()) : "";
    }

    protected static Line line(String text) {
        Lines.Read read = Lines.read(text, TODAY);
        assertThat(read)
                .as("%s: %s", text, read instanceof Lines.NotUnderstood not ? WORDS.say(not.why()) : "")
                .isInstanceOf(Lines.Understood.class);
        return ((Lines.Understood) read).line();
    }

    protected final LogEntry entry(long number) {
        return store.read(reading -> reading.entry(number)).orElseThrow();
    }

    /**
     * A small birdroom: three people, a wall of two by three cages, two grown pairs and a young bird, a flight of birds
     * not known one by one.
     */
    protected final void furnish() {
        tell(FURNITURE);
    }

    /** The first two birds of the furnished room paired up in A1 on the first of March, with a box. */
    protected final void pairUp() {
        tell(PAIR);
    }

    /** Made once each: a new record takes seconds. */
    private enum Template {
        EMPTY(""),
        FURNISHED(FURNITURE + PAIR);

        private final Path place;

        Template(String lines) {
            try {
                Path folder = Files.createTempDirectory("template");
                Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(folder)));
                place = folder.resolve("room");
                Store.create(place, "K7Q", "Europe/London");
                try (Store store = Store.open(place)) {
                    List<Line> all = lines.lines().map(InMemory::line).toList();
                    Recording recording = store.record(store.room(TODAY), all, TODAY, NOW);
                    assertThat(recording).as(said(recording)).isInstanceOf(Recording.Done.class);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }

        private static void delete(Path folder) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.deleteIfExists(each);
                }
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
