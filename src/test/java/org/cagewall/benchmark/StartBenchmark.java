package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.File;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.RequiresDisplay;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What it costs from nothing to the painted wall, each time in a process of its own. */
@Tag("benchmark")
@RequiresDisplay
class StartBenchmark {

    /** The demo's absence, and the days on which its review opens by itself, are over by then: the wall is shown. */
    private static final LocalDate LATER = TestDesk.TODAY.plusDays(30);

    @TempDir
    Path folder;

    @Test
    @Timeout(value = 5, unit = TimeUnit.MINUTES)
    void theStartToThePaintedWallAgainstABareWindowAndDatabase() {
        Path room = folder.resolve("room");
        try (Desk desk = TestDesk.demo(room)) {
            assertThat(desk.room().isEmpty()).isFalse();
        }
        Race.run(
                "start to painted wall",
                1.5,
                1,
                () -> start(
                        StartKiosk.class,
                        "--data",
                        room.toString(),
                        "--today",
                        LATER.toString(),
                        "kiosk",
                        "--window",
                        "1280x800"),
                () -> start(StartBare.class, room.resolve("room").toString()));
    }

    private static double start(Class<?> main, String... args) {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Dderby.stream.error.file=" + Path.of("target", "benchmark-derby.log"),
                "-cp",
                System.getProperty("cagewall.jar") + File.pathSeparator + Path.of("target", "test-classes"),
                main.getName()));
        command.addAll(List.of(args));
        long begun = System.nanoTime();
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(Path.of("target", "benchmark-start.log").toFile())
                    .start();
            try (BufferedReader said =
                    new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
                assertThat(said.readLine()).isEqualTo(FirstPaint.PAINTED);
            }
            return (System.nanoTime() - begun) / 1e6;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
