package org.cagewall.almanac;

import java.time.LocalDate;
import org.cagewall.room.Span;

/**
 * Between which days something is expected, worked out from what was recorded and never from today. Immutable; any
 * thread.
 *
 * @param about whether it leans on a day that was the keeper's guess
 * @throws IllegalArgumentException where the three days do not rise
 */
public record Window(LocalDate earliest, LocalDate expected, LocalDate latest, boolean about) {

    public Window {
        if (earliest.isAfter(expected) || expected.isAfter(latest)) {
            throw new IllegalArgumentException(
                    "earliest, expected, latest must rise: " + earliest + " " + expected + " " + latest);
        }
    }

    static Window on(LocalDate day) {
        return new Window(day, day, day, false);
    }

    static Window after(LocalDate day, Span span) {
        return on(day).plus(span);
    }

    Window guessed(boolean guess) {
        return new Window(earliest, expected, latest, about || guess);
    }

    /** Column by column: the earliest that much later at the earliest, and so on. */
    Window plus(Span span) {
        return new Window(
                earliest.plusDays(span.earliest()),
                expected.plusDays(span.expected()),
                latest.plusDays(span.latest()),
                about);
    }

    Window plusDays(int days) {
        return new Window(earliest.plusDays(days), expected.plusDays(days), latest.plusDays(days), about);
    }

    /** When both have come: the later of each column. */
    Window and(Window other) {
        return new Window(
                later(earliest, other.earliest),
                later(expected, other.expected),
                later(latest, other.latest),
                about || other.about);
    }

    /** When the first of the two has come: the earlier of each column. */
    public Window or(Window other) {
        return new Window(
                earlier(earliest, other.earliest),
                earlier(expected, other.expected),
                earlier(latest, other.latest),
                about || other.about);
    }

    /** Whether it is expected on that day. */
    public boolean holds(LocalDate day) {
        return !day.isBefore(earliest) && !day.isAfter(latest);
    }

    /** Whether every day of it lies behind that day. */
    public boolean isPast(LocalDate day) {
        return day.isAfter(latest);
    }

    private static LocalDate earlier(LocalDate one, LocalDate other) {
        return one.isBefore(other) ? one : other;
    }

    /** The later of two days. */
    public static LocalDate later(LocalDate one, LocalDate other) {
        return one.isAfter(other) ? one : other;
    }
}
