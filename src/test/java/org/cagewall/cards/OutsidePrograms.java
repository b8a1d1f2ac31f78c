package org.cagewall.cards;

import static org.junit.jupiter.api.Assertions.assertTrue;
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

    private static final String ERRORS = "errors.txt";

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

    /** The same as the C++ port of ZXing reads it: the file's name and the text of every symbol, upright or not. */
    public static List<String> symbolsByFile(Path folder, List<Path> pictures)
            throws IOException, InterruptedException {
        need("ZXingReader");
        List<String> command = new ArrayList<>(List.of("ZXingReader", "-1", "-format", "QRCode"));
        pictures.forEach(picture -> command.add(picture.toAbsolutePath().toString()));
        return run(folder, command).stream()
                .map(line -> line.replaceFirst("^.*/", "").replaceFirst(" QRCode \"(.*)\"$", " $1"))
                .toList();
    }

    /** Fails unless qpdf finds neither an error nor anything to warn of in the file. */
    public static void requireSound(Path folder, Path pdf) throws IOException, InterruptedException {
        need("qpdf");
        List<String> said =
                run(folder, List.of("qpdf", "--check", pdf.toAbsolutePath().toString()));
        assertTrue(
                said.stream().anyMatch(line -> line.startsWith("No syntax or stream encoding errors found"))
                        && Files.size(folder.resolve(ERRORS)) == 0,
                () -> "qpdf says of " + pdf + ": " + said);
    }

    /** Runs a program in a folder and gives the lines that it wrote. */
    public static List<String> run(Path folder, List<String> command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command)
                .directory(folder.toFile())
                .redirectError(folder.resolve(ERRORS).toFile())
                .start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        process.waitFor();
        return out.lines().toList();
    }
}
