package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the log says of a failure, and what it never says. */
class LogTest {

    @TempDir
    Path folder;

    @Test
    void aFailureIsInTheLogByItsCodeButNoNoteAndNoPhoneNumberIs() throws IOException, SQLException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        spoil(cli.data(), "RENAME COLUMN entry.touch TO touched");

        Ran check = cli.run("check", "A1", "--by", "Tom", "--answer", "different", "--note", "secret limp");
        Ran person = cli.record(
                "{\"deed\":\"person-changed\",\"person\":\"Tom\",\"phone\":\"0555 987654\",\"note\":\"secret too\",\"by\":\"Ines\"}");

        assertThat(check.code()).as(check.err()).isEqualTo(3);
        assertThat(check.out()).isEmpty();
        assertThat(check.err())
                .matches("cagewall: the entry could not be written\\. .* code [A-Z2-9]{6} .*cagewall\\.0\\.log\\.\n");
        assertThat(person.out())
                .startsWith("refused 1: the entry could not be written.")
                .doesNotContain("0555");
        assertThat(person.code()).isEqualTo(3);
        String log = logs(cli.data());
        String code = check.err().replaceAll("(?s).* code ([A-Z2-9]{6}) .*", "$1");
        assertThat(log).contains(code, "org.cagewall.store.").doesNotContain("secret", "0555");

        cli.run("report", folder.resolve("report").toString());

        assertThat(logs(folder.resolve("report"))).contains(code).doesNotContain("secret", "0555");
    }

    @Test
    void aRecordThatCannotBeOpenedIsReportedAllTheSame() throws IOException, SQLException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        spoil(cli.data(), "ALTER TABLE visit DROP COLUMN note");

        Ran ran = cli.run("report", folder.resolve("report").toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.err())
                .contains("cannot be opened. Restore the last backup")
                .hasLineCount(1);
        assertThat(Files.readString(folder.resolve("report/report.txt"))).contains("entries not known");
        assertThat(logs(folder.resolve("report"))).contains("org.cagewall.store.RoomReader");
    }

    @Test
    void aLogThatCannotBeReadIsSaidAndTheReportIsMadeWithoutIt() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path log = cli.data().resolve("log/cagewall.3.log");
        Files.createSymbolicLink(log, folder.resolve("gone"));

        Ran ran = cli.run("report", folder.resolve("report").toString());

        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEqualTo("cagewall: the log " + log + " cannot be read. The report is without it.\n");
        assertThat(folder.resolve("report/cagewall.0.log")).exists();
    }

    @Test
    void aReportHoldsTheLogTheVersionsAndTheHeadAndNoContent() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        Ran ran = cli.run("report", folder.resolve("report").toString(), "--json");

        assertThat(ran.code()).isZero();
        assertThat(Files.readString(folder.resolve("report/report.txt")))
                .contains("cagewall ", "Java ", "entries 13\n", "digest ")
                .doesNotContain("Ines", "A1", "HB");
        assertThat(folder.resolve("report/cagewall.0.log")).exists();
        assertThat(logs(folder.resolve("report"))).doesNotContain("Ines", "0555", "HB 26");
    }

    @Test
    void aNewRoomDoesNotWarnOfRowsThatItCannotHaveYet() throws IOException {
        Cli cli = new Cli(folder.resolve("birds"));

        cli.record("{\"deed\":\"person-added\",\"person\":\"Ines\",\"role\":\"owner\"}");

        assertThat(logs(cli.data())).contains("schema_history").doesNotContain("No row was found");
    }

    private static void spoil(Path data, String... statements) throws SQLException {
        String url = "jdbc:derby:" + data.resolve("room").toAbsolutePath();
        try (Connection connection = DriverManager.getConnection(url);
                Statement statement = connection.createStatement()) {
            for (String each : statements) {
                statement.execute(each);
            }
        }
        assertThatThrownBy(() ->
                        DriverManager.getConnection(url + ";shutdown=true").close())
                .isInstanceOf(SQLException.class)
                .hasMessageContaining("shutdown");
    }

    /** All that any log file below this folder says. */
    private static String logs(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(".log"))
                    .map(file -> {
                        try {
                            return Files.readString(file);
                        } catch (IOException e) {
                            throw new UncheckedIOException(e);
                        }
                    })
                    .collect(Collectors.joining("\n"));
        }
    }
}
