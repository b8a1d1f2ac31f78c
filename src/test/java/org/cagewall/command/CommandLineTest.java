package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.cagewall.desk.DataFolder;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What holds for every command: its options, its exit code, where it speaks, and what it leaves alone. */
class CommandLineTest {

    @TempDir
    Path folder;

    @Test
    void theOptionsForAllStandBeforeOrAfterTheCommand() {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        String data = cli.data().toString();

        Ran before = Cli.bare(new byte[0], "--json", "--data", data, "--today", Cli.TODAY, "show", "A1");
        Ran after = Cli.bare(new byte[0], "show", "A1", "--today", Cli.TODAY, "--data", data, "--json");
        Ran around = Cli.bare(new byte[0], "--data", data, "show", "--json", "--today", Cli.TODAY, "A1");

        assertThat(before.code()).as(before.err()).isZero();
        assertThat(before.out()).startsWith("{\"cage\":\"A1\"");
        assertThat(after).isEqualTo(before);
        assertThat(around).isEqualTo(before);
    }

    static Stream<List<String>> commandsThatNeedARoom() {
        return Stream.of(
                List.of("check", "A1", "--by", "Ines", "--answer", "well"),
                List.of("cards", "--out", "cards.pdf"),
                List.of("scan", "card.png"),
                List.of("tasks"),
                List.of("show", "A1"),
                List.of("review"),
                List.of("export", "out"),
                List.of("backup", "out"),
                List.of("restore", "nowhere"),
                List.of("verify"),
                List.of("report", "out"));
    }

    @ParameterizedTest
    @MethodSource("commandsThatNeedARoom")
    void aCommandThatNeedsABirdroomMakesNone(List<String> command) {
        Ran ran = new Cli(folder.resolve("birds")).run(command.toArray(String[]::new));

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("cagewall: there is no b").hasLineCount(1);
        assertThat(folder).isEmptyDirectory();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "fly",
                "show",
                "show A1 A2",
                "verify --data",
                "verify --today yesterday",
                "check A1 --by Ines --answer fine",
                "check A1 --answer well",
                "tasks --for vet",
                "tasks --lang xx",
                "kiosk --window large",
                "--demo verify",
                "record a b"
            })
    void whatIsTypedWronglyIsSaidInOneSentenceWithAWayOn(String words) {
        Ran ran = new Cli(folder.resolve("birds")).run(words.split(" "));

        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("cagewall: ").contains("--help").hasLineCount(1);
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void theHelpNamesEveryCommandAndTheOptionsForAll() {
        Ran ran = Cli.bare(new byte[0], "--help");

        assertThat(ran.code()).isZero();
        assertThat(ran.out())
                .contains("--data", "--today", "--json", "--window", "--demo")
                .contains("kiosk", "demo", "record", "check", "cards", "scan", "tasks", "show", "review")
                .contains("export", "backup", "restore", "verify", "report");
        assertThat(Cli.bare(new byte[0], "record", "--help").out()).contains("refused LINE: reason");
    }

    @Test
    void aFolderThatIsOpenElsewhereIsLeftAlone() {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        try (DataFolder held = DataFolder.open(cli.data())) {
            Ran ran = cli.run("verify");

            assertThat(ran.code()).isEqualTo(1);
            assertThat(ran.err())
                    .isEqualTo("cagewall: the birdroom in " + held.path()
                            + " is already open in another window or program. Use that one, or close it first.\n");
            assertThat(cli.record("{\"deed\":\"noted\",\"note\":\"x\",\"by\":\"Ines\"}")
                            .out())
                    .isEmpty();
        }
    }

    @Test
    void aFolderThatCannotBeMadeIsSaid() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "in the way");

        Ran ran = new Cli(file.resolve("birds")).record("");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("cannot be written to. Check who owns it");
    }

    @Test
    void whatBreaksEndsWithACodeThatTheLogKnowsToo() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Files.writeString(cli.data().resolve("room/service.properties"), "this is none");

        Ran ran = cli.run("verify");

        assertThat(ran.code()).isIn(1, 3);
        assertThat(ran.err()).startsWith("cagewall: ").hasLineCount(1).doesNotContain("Exception");
    }

    @Test
    void anInventedBirdroomIsMadeOnlyWhereThereIsNone() {
        Cli cli = new Cli(folder.resolve("birds"));

        Ran made = cli.run("demo");
        Ran again = cli.run("demo");

        assertThat(made.code()).as(made.err()).isZero();
        assertThat(made.out()).contains("An invented birdroom of ");
        assertThat(again.code()).isEqualTo(1);
        assertThat(again.err()).contains("there is already a birdroom in");
    }
}
