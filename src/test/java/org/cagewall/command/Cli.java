package org.cagewall.command;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.desk.Clocks;
import org.cagewall.text.Words;

/** Runs commands in this process on one data folder, and keeps what they say. */
final class Cli {

    /** The day that the tests call today; the clock of the entries stands on it. */
    static final String TODAY = "2026-04-14";

    private final Path data;

    Cli(Path data) {
        this.data = data;
    }

    /** Commands on a birdroom of its own in the folder, furnished with {@link #ROOM}. */
    static Cli furnished(Path folder) {
        copy(Furnished.ONCE, folder);
        return new Cli(folder);
    }

    static void copy(Path from, Path to) {
        try (Stream<Path> files = Files.walk(from)) {
            for (Path file : files.toList()) {
                Files.copy(file, to.resolve(from.relativize(file).toString()));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Made once, since making a record takes longer than copying it. */
    private static final class Furnished {

        private static final Path ONCE = make();

        private static Path make() {
            try {
                Path folder = Files.createTempDirectory(Path.of("target"), "furnished")
                        .resolve("birds");
                Ran ran = new Cli(folder).record(ROOM);
                if (ran.code() != 0) {
                    throw new IllegalStateException(ran.toString());
                }
                return folder;
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }

    Path data() {
        return data;
    }

    /** How a command ended and what it said. */
    record Ran(int code, String out, String err) {

        List<String> lines() {
            return out.lines().toList();
        }
    }

    Ran run(String... args) {
        return fed("", args);
    }

    /** Runs {@code record} with this as its input. */
    Ran record(String lines) {
        return fed(lines, "record");
    }

    Ran fed(String input, String... args) {
        return fed(input.getBytes(UTF_8), args);
    }

    Ran fed(byte[] input, String... args) {
        List<String> all = new ArrayList<>(List.of("--data", data.toString(), "--today", TODAY));
        all.addAll(Arrays.asList(args));
        return bare(input, all.toArray(String[]::new));
    }

    /** Runs exactly these words. */
    static Ran bare(byte[] input, String... args) {
        Clocks clocks = new Clocks(Clock.fixed(Instant.parse(TODAY + "T09:00:00Z"), ZoneOffset.UTC), Optional.empty());
        return ran(clocks, input, args);
    }

    /** Runs exactly these words with that clock. */
    static Ran at(Clocks clocks, String input, String... args) {
        return ran(clocks, input.getBytes(UTF_8), args);
    }

    private static Ran ran(Clocks clocks, byte[] input, String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Console console = new Console(
                new ByteArrayInputStream(input),
                new PrintStream(out, false, UTF_8),
                new PrintStream(err, false, UTF_8),
                Words.english());
        int code = Main.run(console, clocks, args);
        console.flush();
        return new Ran(code, out.toString(UTF_8), err.toString(UTF_8));
    }

    /** A small room: two people, a wall, three cages, a pair with eggs, a flight. */
    static final String ROOM = """
            {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
            {"deed":"person-added","person":"Tom","role":"sitter","phone":"0555 0143","by":"Ines"}
            {"deed":"wall-added","wall":"North wall","rows":3,"columns":6,"by":"Ines"}
            {"deed":"cage-added","cage":"A1","wall":"North wall","row":1,"column":1,"use":"breeding","by":"Ines"}
            {"deed":"cage-added","cage":"A2","wall":"North wall","row":1,"column":2,"use":"breeding","by":"Ines"}
            {"deed":"cage-added","cage":"F1","wall":"North wall","row":3,"column":1,"use":"flight","keeps":"mixed","by":"Ines"}
            {"deed":"bird-added","bird":"HB 26-041","sex":"cock","cage":"A2","hatched":"2025","colour":"light green","by":"Ines"}
            {"deed":"bird-added","bird":"HB 25-117","sex":"hen","cage":"A1","by":"Ines"}
            {"deed":"birds-added","cage":"F1","count":5,"by":"Ines"}
            {"deed":"paired-up","cage":"A1","cock":"HB 26-041","hen":"HB 25-117","on":"2026-03-20","sure":true,"by":"Ines"}
            {"deed":"box-on","cage":"A1","on":"2026-03-20","by":"Ines"}
            {"deed":"egg-laid","cage":"A1","on":"2026-04-02","by":"Ines"}
            {"deed":"egg-laid","cage":"A1","on":"2026-04-04","by":"Ines"}
            """;
}
