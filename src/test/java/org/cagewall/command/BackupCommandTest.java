package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

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

    private String refusal() {
        Path data = folder.resolve("restored");
        Ran ran = new Cli(data).run("restore", backup.toString());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(data.resolve("room")).doesNotExist();
        assertThat(data.resolve("room.restoring")).doesNotExist();
        return ran.err();
    }
}
