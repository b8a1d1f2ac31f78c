package org.cagewall.room;

import java.util.Optional;

/**
 * How soon, how usually and how late something comes, in days, or the fewest, usual and most of what is counted.
 * Immutable; any thread.
 *
 * @throws IllegalArgumentException where the three do not rise
 */
public record Span(int earliest, int expected, int latest) {

    public Span {
        if (earliest > expected || expected > latest) {
            throw new IllegalArgumentException(
                    "earliest, expected, latest must rise: " + earliest + " " + expected + " " + latest);
        }
    }

    /** Of three whole numbers parted by blanks: {@code 17 18 21}. */
    public static Span parse(String days) {
        String[] parts = days.trim().split("\\s+");
        if (parts.length != 3) {
            throw new IllegalArgumentException("not three numbers: " + days);
        }
        return new Span(Integer.parseInt(parts[0]), Integer.parseInt(parts[1]), Integer.parseInt(parts[2]));
    }

    /** The same of words that somebody wrote; empty where they are no such three numbers. */
    static Optional<Span> read(String days) {
        try {
            return Optional.of(parse(days));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    @Override
    public String toString() {
        return earliest + " " + expected + " " + latest;
    }
}
