package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import org.cagewall.command.Cli.Ran;
import org.cagewall.deed.Circumstances;
import org.cagewall.deed.Line;
import org.cagewall.deed.Lines;
import org.cagewall.deed.VisitDeed;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.Outcome;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A backup brings back the very same record, or says why it cannot. */
class BackupCommandTest {

    @TempDir
    Path folder;

    private Cli cli;
    private Path backup;
    private Path lines;

    @BeforeEach
    void backUp() {
        cli = Cli.furnished(folder.resolve("birds"));
        backup = folder.resolve("backup");
        lines = backup.resolve("record.jsonl");
        assertThat(cli.run("backup", backup.toString()).out()).isEqualTo("13 entries backed up in " + backup + ".\n");
    }

    @Test
    void aRestoredRecordHasTheSameNumbersInstantsAndDigestsAndTheSameCards() {
        Cli restored = new Cli(folder.resolve("restored"));

        assertThat(restored.run("restore", backup.toString()).out())
                .isEqualTo("13 entries restored to " + restored.data() + ".\n");

        assertThat(restored.run("verify")).isEqualTo(cli.run("verify"));
        assertThat(restored.run("show", "A1", "--json")).isEqualTo(cli.run("show", "A1", "--json"));
        restored.run("export", folder.resolve("again").toString());
        assertThat(folder.resolve("again/record.jsonl")).hasSameTextualContentAs(lines);
    }

    @Test
    void aLongRestoreSaysHowFarItIsAfterEveryThousandEntries() {
        recordChecks(1_000);
        cli.run("backup", backup.toString());
        Cli restored = new Cli(folder.resolve("restored"));

        Ran ran = restored.run("restore", backup.toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("cagewall: 1000 of 1013 entries are back.\n");
        assertThat(ran.out()).isEqualTo("1013 entries restored to " + restored.data() + ".\n");
    }

    /** In one touch, which takes less long. */
    private void recordChecks(int count) {
        LocalDate day = LocalDate.parse(Cli.TODAY).minusDays(12);
        Line check = new Line(
                new VisitDeed.Check("A1", Answer.WELL, How.HAND, Optional.empty(), Optional.empty()),
                Circumstances.on(day, "Ines"));
        try (Desk desk = Desk.open(DataFolder.open(cli.data()), Lanes.inline(), TestDesk.clocks())) {
            desk.record(Collections.nCopies(count, check), outcome -> assertThat(outcome)
                    .isInstanceOf(Outcome.Done.class));
        }
    }

    @Test
    void aBackupIsNotRestoredOverABirdroom() {
        Ran ran = cli.run("restore", backup.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("there is already a birdroom in");
    }

    @Test
    void aBackupThatWasCutShortIsNotRestored() throws IOException {
        List<String> all = Files.readAllLines(lines);
        Files.write(lines, all.subList(0, 12));

        assertThat(refusal()).isEqualTo("cagewall: the backup ends after 12 of its 13 entries. Use an older backup.\n");
    }

    @Test
    void aBackupInWhichALineWasChangedIsNotRestored() throws IOException {
        Files.writeString(lines, Files.readString(lines).replace("\"count\":5", "\"count\":6"));

        assertThat(refusal())
                .isEqualTo("cagewall: entry 9 of the backup does not fit the ones before it. Use an older backup.\n");
    }

    @Test
    void whatAKilledRestoreLeftDoesNotStandInTheWay() throws IOException {
        Path data = folder.resolve("restored");
        Files.createDirectories(data.resolve("room.restoring/seg0"));
        Files.createDirectories(data.resolve("room.restoring.new"));
        Files.writeString(data.resolve("room.restoring/service.properties"), "half");

        assertThat(new Cli(data).run("restore", backup.toString()).code()).isZero();
        assertThat(data.resolve("room.restoring")).doesNotExist();
    }

    @Test
    void whatAKilledRestoreLeftIsClearedAwayByTheNextStartOfAnything() throws IOException {
        Path data = folder.resolve("restored");
        Files.createDirectories(data.resolve("room.restoring/seg0"));
        Files.createDirectories(data.resolve("room.restoring.new"));

        assertThat(new Cli(data).record(Cli.ROOM).code()).isZero();
        assertThat(data.resolve("room.restoring")).doesNotExist();
        assertThat(data.resolve("room.restoring.new")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            {"deed":"check","cage":"Z9","answer":"well","how":"hand","by":"Ines"}   | there is no cage Z9
            {"deed":"struck-out","entry":99,"why":"typo","by":"Ines"}               | there is no entry 99
            {"deed":"person-added","person":"Tom","role":"sitter","by":"Ines"}      | somebody called Tom
            {"deed":"paired-up","cage":"A2","cock":"X 1","hen":"X 2","by":"Ines"}   | X 1
            {"deed":"card-printed","cage":"Z9","by":"Ines"}                         | there is no cage Z9
            """)
    void aRestoreThatFailsInsideNamesTheEntryAndTheReason(String line, String reason) throws IOException {
        append(line);

        assertThat(refusal())
                .startsWith("cagewall: entry 14 of the backup cannot be put back: ")
                .contains(reason);
    }

    /** Adds a line with a digest that fits, as another program or an older version may have written it. */
    private void append(String text) throws IOException {
        List<String> all = Files.readAllLines(lines);
        String last = property("digest");
        String line = Lines.write(((Lines.Understood) Lines.read(text, LocalDate.parse(Cli.TODAY))).line());
        String digest = sha256(last + line);
        List<String> more = new ArrayList<>(all);
        more.add(Lines.export(line, new Lines.Seal(14, "2026-04-14T09:00:00Z", digest)));
        Files.write(lines, more);
        rewrite("entries=13", "entries=14");
        rewrite("digest=" + last, "digest=" + digest);
    }

    private static String sha256(String text) {
        try {
            return HexFormat.of()
                    .formatHex(MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8)));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException(e);
        }
    }

    private String property(String name) throws IOException {
        Properties fixed = new Properties();
        fixed.load(Files.newBufferedReader(backup.resolve("room.properties")));
        return fixed.getProperty(name);
    }

    private void rewrite(String from, String to) throws IOException {
        Path file = backup.resolve("room.properties");
        String before = Files.readString(file);
        assertThat(before).contains(from);
        Files.writeString(file, before.replace(from, to));
    }

    @ParameterizedTest
    @CsvSource({
        "entries=13, entries=14, the backup ends after 13 of its 14 entries",
        "entries=13, entries=5, entry 5 of the backup does not fit",
        "digest=, digest=0, entry 13 of the backup does not fit",
        "entries=13, entries=many, do not belong together",
        "code=, code=;, do not belong together",
        "code=, code=long, do not belong together",
        "zone=, zone=Nowhere/, do not belong together"
    })
    void aBackupWhoseTwoFilesDoNotBelongTogetherIsNotRestored(String from, String to, String reason)
            throws IOException {
        rewrite(from, to);

        assertThat(refusal()).contains(reason);
    }

    @Test
    void aLineWithoutAnEndIsRefusedBeforeItTakesTheMemory() throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(lines)) {
            for (int i = 0; i < 64; i++) {
                out.write("x".repeat(1024 * 1024));
            }
        }

        assertThat(refusal()).contains("line 1 of the backup cannot be read");
    }

    private String refusal() {
        Path data = folder.resolve("restored");
        Ran ran = new Cli(data).run("restore", backup.toString());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(data.resolve("room")).doesNotExist();
        assertThat(data.resolve("room.restoring")).doesNotExist();
        return ran.err();
    }
}
