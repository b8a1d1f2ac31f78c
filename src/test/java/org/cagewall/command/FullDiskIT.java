package org.cagewall.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A disk that is really full: a small one of memory, which only a process of its own sees. Needs Linux and root. */
@Tag("slow")
class FullDiskIT {

    private static final int MOST_LINES = 3_000;

    @TempDir
    Path home;

    private Path disk;
    private Path errors;

    @BeforeEach
    void furnish() throws Exception {
        assumeTrue(mayMount(), "no small disk can be mounted here");
        disk = Files.createDirectory(home.resolve("disk"));
        errors = home.resolve("errors");
        Cli.furnished(home.resolve("birds"));
    }

    @Test
    void aFullDiskIsSaidWithWhatToDoAndOnceThereIsRoomTheSameRunRecordsAgain() throws Exception {
        Process process = onASmallDisk(24, "record");
        try (Writer in = new OutputStreamWriter(process.getOutputStream(), UTF_8);
                BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8))) {
            assertThat(answer(in, out, 0)).as(Files.readString(errors)).isEqualTo("ok 14");
            Path filler = seenBy(process).resolve("filler");
            fill(filler);
            String refused = "";
            int lines = 1;
            while (!refused.startsWith("refused") && lines < MOST_LINES) {
                refused = answer(in, out, lines++);
            }
            assertThat(refused).contains("the disk is full").contains("Nothing was recorded");
            assertThat(answer(in, out, lines++)).startsWith("refused");

            Files.delete(filler);

            long recorded = lines - 2 + 14;
            assertThat(answer(in, out, lines)).isEqualTo("ok " + recorded);
        }
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(process.exitValue()).isEqualTo(Main.FAILED);
        assertThat(Files.readString(errors))
                .contains("MB are left on the disk that holds the record")
                .hasLineCount(1);
    }

    @Test
    void aRestoreOntoAFullDiskSaysSoAndLeavesNothing() throws Exception {
        new Cli(home.resolve("birds")).run("backup", home.resolve("backup").toString());

        Process process = onASmallDisk(3, "restore", home.resolve("backup").toString());
        process.getOutputStream().close();
        process.getInputStream().readAllBytes();

        assertThat(process.waitFor()).isEqualTo(Main.REFUSED);
        assertThat(Files.readString(errors)).contains("the disk is full").hasLineCount(1);
    }

    @Test
    void aBirdroomThatIsBegunOnAFullDiskSaysThatItIsFull() throws Exception {
        Process process = inAShell("mount -t tmpfs -o size=1m tmpfs disk && " + java() + " record < /dev/null");

        assertThat(process.waitFor()).isEqualTo(Main.REFUSED);
        assertThat(Files.readString(errors)).contains("the disk is full").hasLineCount(1);
    }

    @Test
    void aBirdroomThatIsOpenedOnAFullDiskIsNeverSaidToBeDamaged() throws Exception {
        Process process = inAShell("mount -t tmpfs -o size=24m tmpfs disk && cp -r birds disk/"
                + " && { cat /dev/zero > disk/filler 2>/dev/null; " + java() + " verify; }");

        assertThat(process.waitFor()).isIn(Main.DONE, Main.REFUSED);
        String said = Files.readString(errors);
        assertThat(said.isEmpty() || said.contains("the disk is full")).as(said).isTrue();
    }

    private static String answer(Writer in, BufferedReader out, int line) throws IOException {
        in.write("{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"well\",\"how\":\"hand\",\"note\":\""
                + "n".repeat(400) + " " + line + "\",\"by\":\"Ines\"}\n");
        in.flush();
        return out.readLine();
    }

    private static void fill(Path file) throws IOException {
        byte[] block = new byte[4096];
        try (OutputStream out = Files.newOutputStream(file)) {
            while (true) {
                out.write(block);
            }
        } catch (IOException full) {
            assertThat(full).hasMessageContaining("No space left");
        }
    }

    /** The small disk as the process sees it. */
    private Path seenBy(Process process) {
        return Path.of("/proc/" + process.pid() + "/root" + disk.toAbsolutePath());
    }

    private Process onASmallDisk(int megabytes, String... command) throws IOException {
        String copy = command[0].equals("restore") ? "" : "cp -r birds disk/ && ";
        String script = "mount -t tmpfs -o size=" + megabytes + "m tmpfs disk && " + copy + "exec " + java() + " "
                + String.join(" ", command);
        return inAShell(script);
    }

    private static String java() {
        return Jar.java() + " -Xmx256m -XX:+UseSerialGC -cp '" + Jar.classPath() + "' " + Main.class.getName()
                + " --data disk/birds --today " + Cli.TODAY;
    }

    private Process inAShell(String script) throws IOException {
        return new ProcessBuilder(List.of("unshare", "-m", "sh", "-c", script))
                .directory(home.toFile())
                .redirectError(errors.toFile())
                .start();
    }

    private static boolean mayMount() throws InterruptedException {
        try {
            return new ProcessBuilder("unshare", "-m", "mount", "-t", "tmpfs", "tmpfs", "/mnt")
                            .redirectErrorStream(true)
                            .start()
                            .waitFor()
                    == 0;
        } catch (IOException e) {
            return false;
        }
    }
}
