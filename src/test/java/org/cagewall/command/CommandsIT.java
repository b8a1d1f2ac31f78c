package org.cagewall.command;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.cagewall.desk.DataFolder;
import org.cagewall.kiosk.RequiresDisplay;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The commands as a keeper starts them: the jar alone, a process each. */
class CommandsIT {

    @TempDir
    Path home;

    private Jar jar;

    @BeforeEach
    void prepare() {
        jar = new Jar(home);
    }

    @Test
    void theFirstLinesMakeTheBirdroomInTheHomeFolderAndNothingElseIsSaid() throws Exception {
        Ran ran = jar.run(Cli.ROOM, "--today", Cli.TODAY, "record");

        assertThat(ran.err()).isEmpty();
        assertThat(ran.lines()).hasSize(13).last().isEqualTo("ok 13");
        assertThat(home.resolve(".cagewall/log/cagewall.0.log")).content().contains("schema_history");
        if (Files.getFileStore(home).supportsFileAttributeView("posix")) {
            assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(home.resolve(".cagewall"))))
                    .isEqualTo("rwx------");
        }
        assertThat(jar.run("", "verify", "--json").out()).startsWith("{\"entries\":13,");
        try (Stream<Path> left = Files.list(home)) {
            assertThat(left).containsExactly(home.resolve(".cagewall"));
        }
    }

    @Test
    void wordsWithAccentsComeThroughAnyLanguageSetting() throws Exception {
        Cli.furnished(home.resolve("birds")).record("""
                {"deed":"person-added","person":"Zo\u00eb","role":"keeper","by":"Ines"}
                {"deed":"cage-added","cage":"K\u00fcche 1","wall":"North wall","row":2,"column":1,"use":"stock","by":"Ines"}
                """);
        ProcessBuilder plain = new ProcessBuilder(
                "sh",
                "-c",
                "exec \"$0\" -jar \"$1\" --data birds check \"$(printf 'K\\303\\274che 1')\""
                        + " --by \"$(printf 'Zo\\303\\253')\" --answer different --note \"$(printf '\\303\\204')\"",
                Jar.java(),
                Jar.path());
        plain.directory(home.toFile());
        plain.environment().keySet().removeIf(name -> name.startsWith("LC_") || name.startsWith("LANG"));
        plain.environment().put("LC_ALL", "C");

        Ran check = Jar.ran(plain, "");

        assertThat(check.err()).isEmpty();
        assertThat(check.out()).isEqualTo("ok 16\n");
        assertThat(new Cli(home.resolve("birds")).run("show", "K\u00fcche 1").out())
                .contains("by Zo\u00eb, by hand: something different. Note: \u00c4");
    }

    @Test
    void aBirdroomThatIsOpenElsewhereIsLeftAlone() throws Exception {
        Cli cli = Cli.furnished(home.resolve("birds"));
        try (DataFolder held = DataFolder.open(cli.data())) {
            Ran record = jar.run("{}", "--data", "birds", "record");

            assertThat(record.code()).isEqualTo(1);
            assertThat(record.out()).isEmpty();
            assertThat(record.err())
                    .contains("is already open in another window or program")
                    .hasLineCount(1);
            assertThat(held.isCalledForward()).isFalse();
        }
    }

    @Test
    @RequiresDisplay
    void aSecondKioskSaysThatOneIsOpenAndCallsItForward() throws Exception {
        Cli cli = Cli.furnished(home.resolve("birds"));
        try (DataFolder held = DataFolder.open(cli.data())) {
            ProcessBuilder second = jar.prepared("--data", "birds", "kiosk", "--window", "1280x800");
            second.environment().put("DISPLAY", System.getenv("DISPLAY"));

            Ran ran = Jar.ran(second, "");

            assertThat(ran.code()).isEqualTo(1);
            assertThat(ran.err()).contains("is open already").hasLineCount(1);
            assertThat(held.isCalledForward()).isTrue();
        }
    }

    @Test
    @RequiresDisplay
    void aKioskThatHasJustStartedHasLoadedNothingOfACamerasDriver() throws Exception {
        Path loaded = home.resolve("loaded.txt");
        Path data = Cli.furnished(home.resolve("birds")).data();
        ProcessBuilder kiosk = new ProcessBuilder(
                        Jar.java(),
                        "-Xlog:class+load:file=" + loaded,
                        "-jar",
                        Jar.path(),
                        "--data",
                        data.toString(),
                        "kiosk",
                        "--window",
                        "1280x800")
                .redirectErrorStream(true)
                .redirectOutput(home.resolve("said.txt").toFile());
        Process process = kiosk.start();
        try {
            long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(60);
            while (!isIn(loaded, "org.cagewall.kiosk.wall.WallState$Tile") && System.nanoTime() < end) {
                LockSupport.parkNanos(50_000_000);
            }
        } finally {
            process.destroy();
            process.waitFor(60, TimeUnit.SECONDS);
        }

        assertThat(loaded)
                .content()
                .contains("org.cagewall.kiosk.wall.WallState$Tile", "org.cagewall.scan.Cameras")
                .doesNotContain("com.github.sarxos", "com.github.eduramiba", "com.sun.jna");
    }

    private static boolean isIn(Path file, String text) throws IOException {
        return Files.exists(file) && Files.readString(file).contains(text);
    }

    @Test
    void withoutADisplayTheKioskPaintsAnInventedBirdroomAndLeavesTheRealOneAlone() throws Exception {
        Ran ran = jar.run("", "kiosk", "--demo", "--window", "1280x800");

        Path pictures = home.resolve(".cagewall-demo/pictures");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains(pictures.toString(), "on a desktop", "xvfb-run");
        assertThat(pictures.resolve("wall.png")).isNotEmptyFile();
        assertThat(pictures.resolve("cards.pdf")).content(ISO_8859_1).startsWith("%PDF-");
        assertThat(home.resolve(".cagewall")).doesNotExist();
    }
}
