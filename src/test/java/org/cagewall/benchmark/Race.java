package org.cagewall.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;

/**
 * Runs two pieces of work in turn, five times each after both are warm, and prints the medians and their ratio: what the
 * program does, against the least that could be done. On the caller's thread.
 */
final class Race {

    private static final int RUNS = 5;
    private static final Path RESULTS = Path.of("target", "benchmarks.txt");

    /** A piece of work that says how long it took, in milliseconds. */
    interface Work {
        double millis();
    }

    /** A piece of work that is timed from outside. */
    interface Step {
        void run(int which);
    }

    private Race() {}

    /** The mean time of one of many like steps. */
    static Work of(int steps, Step step) {
        return () -> {
            long begun = System.nanoTime();
            for (int i = 0; i < steps; i++) {
                step.run(i);
            }
            return (System.nanoTime() - begun) / 1e6 / steps;
        };
    }

    static void run(String name, double aim, int warmUps, Work ours, Work bare) {
        for (int i = 0; i < warmUps; i++) {
            bare.millis();
            ours.millis();
        }
        List<Double> our = new ArrayList<>();
        List<Double> their = new ArrayList<>();
        for (int i = 0; i < RUNS; i++) {
            their.add(bare.millis());
            our.add(ours.millis());
        }
        double median = median(our);
        double base = median(their);
        print(String.format(
                Locale.ROOT,
                "%-44s %9.2f ms  against %9.2f ms  ratio %5.2f  aim %.2f",
                name,
                median,
                base,
                median / base,
                aim));
    }

    static double median(List<Double> times) {
        List<Double> sorted = new ArrayList<>(times);
        Collections.sort(sorted);
        return sorted.get(sorted.size() / 2);
    }

    /** Prints a line of results, and keeps it in a file. */
    static void print(String line) {
        System.out.println(line);
        try {
            Files.createDirectories(RESULTS.getParent());
            Files.writeString(RESULTS, line + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
