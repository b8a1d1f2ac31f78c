package org.cagewall.room;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Reads the text files that are part of the program, such as the book of species. Pure; any thread. */
public final class Shipped {

    private Shipped() {}

    /**
     * The lines of a file beside a class, blank ones and those that begin with # left out.
     *
     * @throws IllegalStateException where the file is not part of the program
     */
    public static List<String> lines(Class<?> beside, String file) {
        try (InputStream in = beside.getResourceAsStream(file)) {
            if (in == null) {
                throw new IllegalStateException("not shipped: " + file);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .map(String::trim)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }
}
