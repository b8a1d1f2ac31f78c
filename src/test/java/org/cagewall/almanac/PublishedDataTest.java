package org.cagewall.almanac;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The shipped timetables against two open datasets: the amniote life-history database (Myhrvold et al. 2015, Ecology
 * 96:3109, CC0) and AnAge (Human Ageing Genomic Resources, CC BY 3.0). In part this is a circle: the files of the species
 * name the same datasets beside many of their windows, and where they name no other source, agreement shows only that
 * nothing was mistyped. It is a check from outside where a window was set by breeders' pages or by common practice.
 */
class PublishedDataTest {

    private static final List<String> AMNIOTE = rows("amniote-rows.csv");
    private static final List<String> ANAGE = rows("anage-rows.csv");

    @TestFactory
    Stream<DynamicTest> aSpeciesIncubationClutchAndFledgingAreWithinItsWindows() {
        return Stream.concat(
                AMNIOTE.stream()
                        .map(row -> row.split(","))
                        .flatMap(row -> Stream.of(
                                within("Myhrvold et al. 2015", row[0], Timing.INCUBATION, row[3]),
                                within("Myhrvold et al. 2015", row[0], Timing.CLUTCH, row[4]),
                                within("Myhrvold et al. 2015", row[0], Timing.OUT_OF_BOX, row[5]))),
                ANAGE.stream()
                        .map(row -> row.split(","))
                        .filter(row -> !row[4].equals("NA"))
                        .flatMap(row -> Stream.of(
                                        within("AnAge " + row[3], row[0], Timing.INCUBATION, row[4]),
                                        within("AnAge " + row[3], row[0], Timing.CLUTCH, row[5]))
                                .filter(test -> !test.getDisplayName().endsWith("NA"))));
    }

    private static DynamicTest within(String source, String species, Timing timing, String published) {
        return dynamicTest(species + ", " + timing + ", " + source + ": " + published, () -> {
            Span span = Timetables.of(species).orElseThrow().span(timing).orElseThrow();
            assertThat(Double.parseDouble(published)).isBetween((double) span.earliest(), (double) span.latest());
        });
    }

    /** Where the two datasets, or a dataset and the expected day, are a day or more apart, one by one. */
    @Test
    void theKnownDisagreementsAreTheseAndNoOthers() {
        Map<String, String> apart = new TreeMap<>();
        AMNIOTE.stream().map(row -> row.split(",")).forEach(row -> {
            note(apart, row[0], Timing.INCUBATION, "Myhrvold", row[3]);
            note(apart, row[0], Timing.CLUTCH, "Myhrvold", row[4]);
            note(apart, row[0], Timing.OUT_OF_BOX, "Myhrvold", row[5]);
        });
        ANAGE.stream().map(row -> row.split(",")).forEach(row -> {
            note(apart, row[0], Timing.INCUBATION, "AnAge", row[4]);
            note(apart, row[0], Timing.CLUTCH, "AnAge", row[5]);
        });

        assertThat(apart)
                .containsExactlyInAnyOrderEntriesOf(Map.of(
                        "bengalese INCUBATION Myhrvold", "13.5 against 15: the wild munia, not the domestic form",
                        "bourke OUT_OF_BOX Myhrvold", "27 against 28",
                        "budgerigar OUT_OF_BOX Myhrvold", "35.25 against 32: the wild bird",
                        "canary OUT_OF_BOX Myhrvold", "14 against 16: the wild bird",
                        "cockatiel OUT_OF_BOX Myhrvold", "31.5 against 33",
                        "gouldian INCUBATION AnAge", "13 against 15: and against Myhrvold's 14.5"));
    }

    private static final Map<String, String> WHY = Map.of(
            "bengalese INCUBATION Myhrvold", ": the wild munia, not the domestic form",
            "budgerigar OUT_OF_BOX Myhrvold", ": the wild bird",
            "canary OUT_OF_BOX Myhrvold", ": the wild bird",
            "gouldian INCUBATION AnAge", ": and against Myhrvold's 14.5");

    private static void note(
            Map<String, String> apart, String species, Timing timing, String source, String published) {
        if (published.equals("NA")) {
            return;
        }
        int expected =
                Timetables.of(species).orElseThrow().span(timing).orElseThrow().expected();
        if (Math.abs(Double.parseDouble(published) - expected) >= 1) {
            String what = species + " " + timing + " " + source;
            apart.put(what, published + " against " + expected + WHY.getOrDefault(what, ""));
        }
    }

    private static List<String> rows(String file) {
        try (InputStream in = PublishedDataTest.class.getResourceAsStream(file)) {
            List<String> rows = new ArrayList<>(new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .toList());
            rows.remove(0);
            return rows;
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
