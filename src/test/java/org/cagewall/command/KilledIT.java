package org.cagewall.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The program killed outright (SIGKILL) at any moment: what was acknowledged is there, and the next start works. */
@Tag("slow")
class KilledIT {

    private static final int KILLS = 10;
    private static final long SEED = 7064;
    private static final int MOST_ACKNOWLEDGED = 60;
    private static final int MOST_MICROS_ON = 20_000;

    @TempDir
    Path home;

    @Test
    void everyAcknowledgedLineIsThereAndTheChainHoldsHoweverOftenRecordingIsKilled() throws Exception {
        Random random = new Random(SEED);
        Cli cli = Cli.furnished(home.resolve("birds"));
        Map<Long, String> acknowledged = new TreeMap<>();

        for (int kill = 0; kill < KILLS; kill++) {
            acknowledged.putAll(recordUntilKilled(random, kill));
        }

        Ran verified = cli.run("verify", "--json");
        assertThat(verified.code()).as(verified.err()).isZero();
        assertThat(verified.out()).contains("\"whole\":true");
        cli.run("export", home.resolve("out").toString());
        List<String> lines = Files.readAllLines(home.resolve("out/record.jsonl"), UTF_8);
        assertThat(acknowledged).hasSizeGreaterThan(KILLS);
        acknowledged.forEach((entry, note) ->
                assertThat(lines.get(Math.toIntExact(entry - 1))).contains(note, "\"entry\":" + entry + ","));
    }

    /** Feeds lines until the process dies; which entry was acknowledged for which note. */
    private Map<Long, String> recordUntilKilled(Random random, int kill) throws IOException, InterruptedException {
        int enough = 1 + random.nextInt(MOST_ACKNOWLEDGED);
        long on = random.nextInt(MOST_MICROS_ON) * 1_000L;
        Map<Long, String> acknowledged = new TreeMap<>();
        Process process = new Jar(home).prepared("--data", "birds", "record").start();
        Thread feeder = new Thread(() -> feed(process, kill), "feeder");
        feeder.start();
        try (BufferedReader out = new BufferedReader(new InputStreamReader(process.getInputStream(), UTF_8))) {
            String line = out.readLine();
            while (line != null) {
                assertThat(line).startsWith("ok ");
                acknowledged.put(Long.valueOf(line.substring("ok ".length())), note(kill, acknowledged.size()));
                if (acknowledged.size() == enough) {
                    killAfter(process, on);
                }
                line = out.readLine();
            }
        }
        process.waitFor();
        feeder.join();
        assertThat(acknowledged).hasSizeGreaterThanOrEqualTo(enough);
        return acknowledged;
    }

    /** Writes lines until the pipe breaks with the kill. */
    private static void feed(Process process, int kill) {
        try (OutputStream in = process.getOutputStream()) {
            for (int i = 0; process.isAlive(); i++) {
                String line = "{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"well\",\"how\":\"hand\",\"note\":\""
                        + note(kill, i) + "\",\"by\":\"Ines\"}\n";
                in.write(line.getBytes(UTF_8));
                in.flush();
            }
        } catch (IOException brokenByTheKill) {
            return;
        }
    }

    private static String note(int kill, int line) {
        return "kill " + kill + " line " + line + ".";
    }

    /** Kills it by its handle, which leaves what it said before in the pipe to be read. */
    private static void killAfter(Process process, long nanos) {
        long since = System.nanoTime();
        until(() -> System.nanoTime() - since >= nanos);
        process.toHandle().destroyForcibly();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"birds/lock", "birds/room.new/service.properties", "birds/room.new/seg0/c700.dat", "birds/room"})
    void aFirstStartThatIsKilledLeavesNothingThatStopsTheNext(String sign) throws Exception {
        Process first = new Jar(home).prepared("--data", "birds", "record").start();
        until(() -> !first.isAlive() || appeared(sign));
        first.destroyForcibly();
        first.waitFor();

        Ran next = new Jar(home).run(Cli.ROOM, "--data", "birds", "--today", Cli.TODAY, "record");

        assertThat(next.err()).isEmpty();
        assertThat(next.lines()).hasSize(13).last().isEqualTo("ok 13");
        assertThat(new Cli(home.resolve("birds")).run("verify").code()).isZero();
    }

    /** The file is there, or a later one of the database's numbered files: how far the making has come. */
    private boolean appeared(String sign) {
        Path file = home.resolve(sign);
        if (Files.exists(file) || Files.exists(home.resolve("birds/room"))) {
            return true;
        }
        if (!sign.endsWith(".dat") || !Files.isDirectory(file.getParent())) {
            return false;
        }
        try (Stream<Path> files = Files.list(file.getParent())) {
            String wanted = file.getFileName().toString();
            return files.map(each -> each.getFileName().toString())
                    .anyMatch(name -> name.length() == wanted.length() && name.compareTo(wanted) >= 0);
        } catch (IOException e) {
            return false;
        }
    }

    private static void until(BooleanSupplier condition) {
        while (!condition.getAsBoolean()) {
            Thread.onSpinWait();
        }
    }
}
