package org.cagewall.cards;

import static org.junit.jupiter.api.Assertions.fail;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.File;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Runs the general-purpose programs that judge printed cards and shown symbols; where one is missing the test is skipped or fails. */
public final class OutsidePrograms {

    private OutsidePrograms() {}

    /** Skips the test when a program is not installed, unless the run demands that none is skipped. */
    public static void need(String... programs) {
        for (String program : programs) {
            boolean there = Stream.of(System.getenv().getOrDefault("PATH", "").split(File.pathSeparator))
                    .anyMatch(folder -> Files.isExecutable(Path.of(folder, program)));
            if (!there && Boolean.getBoolean("cagewall.requireDisplay")) {
                fail("the program " + program + " is not installed");
            }
            assumeTrue(there, () -> "the program " + program + " is not installed");
        }
    }

    /** What stands in the QR symbols of these pictures, one text each, as ZBar reads it. */
    public static List<String> symbols(Path folder, List<Path> pictures) throws IOException, InterruptedException {
        need("zbarimg");
        List<String> command = new ArrayList<>(List.of("zbarimg", "-q", "--raw", "-Sdisable", "-Sqrcode.enable"));
        pictures.forEach(picture -> command.add(picture.toAbsolutePath().toString()));
        return run(folder, command);
    }

    /** Runs a program in a folder and gives the lines that it wrote. */
    public static List<String> run(Path folder, List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectError(folder.resolve("errors.txt").toFile())
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return out.lines().toList();
    }
}
