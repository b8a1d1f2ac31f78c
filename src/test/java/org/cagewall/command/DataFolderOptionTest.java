package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The folder of the birdroom, whatever it is called and whoever may look into it. */
class DataFolderOptionTest {

    @TempDir
    Path home;

    @ParameterizedTest
    @ValueSource(strings = {"demo", "record", "kiosk", "show", "cards"})
    void aFolderIsNotTakenForTheCommandOfItsName(String name) {
        Ran ran = Cli.bare(new byte[0], "--data", name, "show", "A1");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("there is no birdroom in").contains("/" + name + ".");
    }

    @ParameterizedTest
    @ValueSource(strings = {"a;b", ";create=true", "with blank", "Vögel", "(x)"})
    void anyNameOfAFolderWorks(String name) {
        Cli cli = new Cli(home.resolve(name));

        assertThat(cli.record(Cli.ROOM).code()).isZero();
        assertThat(cli.run("verify").code()).isZero();
        assertThat(home.resolve(name).resolve("room/service.properties")).exists();
    }

    @ParameterizedTest
    @ValueSource(strings = {"a:b", "a:b/birds", "memory:x"})
    void aColonInANameIsRefusedWithASentenceBeforeAnythingIsMade(String name) throws IOException {
        Cli cli = new Cli(home.resolve(name));

        assertThat(List.of(cli.record(Cli.ROOM), cli.run("verify"), cli.run("kiosk")))
                .allSatisfy(ran -> {
                    assertThat(ran.code()).isEqualTo(Main.REFUSED);
                    assertThat(ran.err())
                            .isEqualTo("cagewall: no record can be kept in " + cli.data()
                                    + ": there is a colon in that name. Take a folder without one.\n");
                });
        try (Stream<Path> files = Files.list(home)) {
            assertThat(files).isEmpty();
        }
    }

    @Test
    void aFolderThatOneMayNotLookIntoIsNotAnEmptyOne() throws IOException {
        Path loop = home.resolve("loop");
        Files.createSymbolicLink(loop, loop);

        Ran ran = new Cli(loop).run("show", "A1");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("cannot be looked into").doesNotContain("no birdroom");
    }

    @Test
    void aNewFolderAndWhatIsExportedAndBackedUpAreItsOwnersAlone() throws IOException {
        Cli cli = new Cli(home.resolve("birds"));
        cli.record(Cli.ROOM);
        cli.run("export", home.resolve("out").toString());
        cli.run("backup", home.resolve("backup").toString());

        assertThat(rights("birds")).isEqualTo("rwx------");
        assertThat(rights("birds/log")).isEqualTo("rwx------");
        assertThat(rights("out")).isEqualTo("rwx------");
        assertThat(rights("backup")).isEqualTo("rwx------");
        assertThat(rights("out/record.jsonl")).isEqualTo("rw-------");
        assertThat(rights("backup/record.jsonl")).isEqualTo("rw-------");
    }

    @Test
    void aFolderThatOthersMayLookIntoIsTightenedWithAWordInTheLog() throws IOException {
        Cli cli = Cli.furnished(home.resolve("birds"));
        Path backup = Files.createDirectory(home.resolve("backup"));
        for (Path each : new Path[] {cli.data(), cli.data().resolve("log"), backup}) {
            Files.setPosixFilePermissions(each, PosixFilePermissions.fromString("rwxr-xr-x"));
        }

        cli.run("backup", backup.toString());

        assertThat(rights("birds")).isEqualTo("rwx------");
        assertThat(rights("birds/log")).isEqualTo("rwx------");
        assertThat(rights("backup")).isEqualTo("rwx------");
        assertThat(Files.readString(cli.data().resolve("log/cagewall.0.log")))
                .contains("others may no longer look into " + cli.data())
                .contains("others may no longer look into " + backup);
    }

    @Test
    void aFolderThatHoldsOtherThingsKeepsItsRights() throws IOException {
        Path shared = Files.createDirectory(home.resolve("shared"));
        Files.writeString(shared.resolve("letter.txt"), "Dear Ines");
        Files.setPosixFilePermissions(shared, PosixFilePermissions.fromString("rwxr-xr-x"));

        Cli.furnished(home.resolve("birds")).run("export", shared.toString());

        assertThat(rights("shared")).isEqualTo("rwxr-xr-x");
        assertThat(rights("shared/record.jsonl")).isEqualTo("rw-------");
    }

    @Test
    void aStartOnADisplayThatIsGoneMakesNoInventedRoomAndEndsWithACodeOfItsOwn() throws Exception {
        Ran ran = onADeadDisplay();

        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.err()).contains("the display does not answer").hasLineCount(1);
        try (Stream<Path> files = Files.list(home)) {
            assertThat(files).as("nothing was made").isEmpty();
        }
    }

    private Ran onADeadDisplay() throws IOException, InterruptedException {
        ProcessBuilder process = new ProcessBuilder(
                Jar.java(),
                "-cp",
                Jar.classPath(),
                Main.class.getName(),
                "--data",
                home.resolve("birds").toString());
        process.environment().put("DISPLAY", ":9");
        return Jar.ran(process, "");
    }

    private String rights(String name) throws IOException {
        return PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve(name)));
    }
}
