package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.deed.Lines;
import org.cagewall.room.care.LogEntry;
import org.cagewall.room.care.LogQuery;
import org.cagewall.text.Words;

/** A desk on a real record whose day can be turned, and that is told things by lines of the record. For one thread. */
public final class Daybook implements AutoCloseable {

    private static final LocalTime MORNING = LocalTime.of(8, 10);

    private static final String LINES = """
                {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
                {"deed":"person-added","person":"Tomas","role":"sitter","by":"Ines"}
                {"deed":"person-added","person":"Joan","role":"keeper","phone":"0555 0177","by":"Ines"}
                {"deed":"wall-added","wall":"North wall","rows":2,"columns":3,"by":"Ines"}
                {"deed":"cage-added","cage":"A1","wall":"North wall","row":1,"column":1,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"A2","wall":"North wall","row":1,"column":2,"use":"breeding","by":"Ines"}
                {"deed":"cage-added","cage":"A3","wall":"North wall","row":1,"column":3,"use":"nursery","by":"Ines"}
                {"deed":"cage-added","cage":"B1","wall":"North wall","row":2,"column":1,"use":"stock","by":"Ines"}
                {"deed":"cage-added","cage":"B2","wall":"North wall","row":2,"column":2,"use":"flight","by":"Ines"}
                {"deed":"cage-added","cage":"B3","wall":"North wall","row":2,"column":3,"use":"quarantine","by":"Ines"}
                {"deed":"bird-added","bird":"HB 26-041","sex":"cock","cage":"A1","hatched":"2024","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-117","sex":"hen","cage":"A1","hatched":"2024","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-118","sex":"hen","cage":"A2","hatched":"2024","by":"Ines"}
                {"deed":"birds-added","count":3,"cage":"A3","by":"Ines"}
                {"deed":"bird-added","bird":"HB 24-006","sex":"cock","cage":"B1","hatched":"2024","by":"Ines"}
                {"deed":"birds-added","count":14,"cage":"B2","by":"Ines"}
                {"deed":"bird-added","bird":"N 1","sex":"hen","cage":"B3","by":"Ines"}
                {"deed":"paired-up","cage":"A1","cock":"HB 26-041","hen":"HB 25-117","by":"Ines"}
                {"deed":"box-on","cage":"A1","by":"Ines"}
                {"deed":"routine-set","cage":"A2","feed":[{"what":"soft food","amount":"1 scoop","when":"morning"}],"allowed":["soft-food"],"by":"Ines"}
                """;
    private final DataFolder folder;
    private final LocalDate today;
    private final LocalTime time;
    private final Desk desk;

    private Daybook(DataFolder folder, LocalDate today, LocalTime time) {
        this.folder = folder;
        this.today = today;
        this.time = time;
        this.desk = opened();
    }

    public static Daybook in(Path folder, LocalDate today) {
        return new Daybook(DataFolder.open(folder), today, MORNING);
    }

    /** About eight in the morning of its day: a new room takes the machine's zone. */
    private Desk opened() {
        Clock clock =
                Clock.fixed(today.atTime(time).atZone(ZoneId.systemDefault()).toInstant(), ZoneOffset.UTC);
        return Desk.open(folder, Lanes.inline(), new Clocks(clock, Optional.of(today)));
    }

    public Desk desk() {
        return desk;
    }

    /** The same record on another day. */
    public Daybook on(LocalDate day) {
        Path path = folder.path();
        desk.close();
        return new Daybook(DataFolder.open(path), day, MORNING);
    }

    /** The same record at seven in the evening of the same day. */
    public Daybook inTheEvening() {
        Path path = folder.path();
        desk.close();
        return new Daybook(DataFolder.open(path), today, LocalTime.of(19, 0));
    }

    public Daybook tell(String lines) {
        lines.lines().filter(line -> !line.isBlank()).forEach(line -> {
            Outcome outcome = told(line);
            assertThat(outcome).as("%s: %s", line, reason(outcome)).isInstanceOf(Outcome.Done.class);
        });
        return this;
    }

    private Outcome told(String text) {
        Lines.Read read = Lines.read(text, today);
        assertThat(read).as(text).isInstanceOf(Lines.Understood.class);
        List<Outcome> outcomes = new ArrayList<>();
        desk.record(((Lines.Understood) read).line(), outcomes::add);
        return outcomes.get(0);
    }

    private static String reason(Outcome outcome) {
        return outcome instanceof Outcome.Refused refused ? Words.english().say(refused.reason()) : "";
    }

    /** Three people, a wall of two rows, a flight, birds, a box and soft food, since the first of April. */
    public static Daybook furnished(Path folder, LocalDate today) {
        copy(Furnished.TEMPLATE, folder);
        return in(folder, today);
    }

    private static void copy(Path from, Path to) {
        try (Stream<Path> all = Files.walk(from)) {
            for (Path each : all.toList()) {
                Path copy = to.resolve(from.relativize(each).toString());
                if (Files.isDirectory(each)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(each, copy);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Made once: a new record takes seconds. */
    private static final class Furnished {

        static final Path TEMPLATE = made();

        private static Path made() {
            try {
                Path folder = Files.createTempDirectory("furnished");
                try (Daybook book = in(folder, LocalDate.of(2026, 4, 1))) {
                    book.tell(LINES);
                }
                return folder;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    /** Every entry, the newest first. */
    public List<LogEntry> log() {
        List<LogEntry> log = new ArrayList<>();
        desk.log(LogQuery.newest(Integer.MAX_VALUE), answer -> answer.then(log::addAll, why -> {}, code -> {}));
        return log;
    }

    /** The recorded lines that hold this text, the newest first. */
    public List<String> lines(String holding) {
        return log().stream()
                .map(LogEntry::line)
                .filter(line -> line.contains(holding))
                .toList();
    }

    @Override
    public void close() {
        desk.close();
    }
}
