package org.cagewall.room.bird;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;

/**
 * Rings bought: a run of numbers of one year and size. Immutable; any thread.
 *
 * @param form what is printed on them, with a {@code #} for each digit of the number: {@code HB 26-###}
 */
public record RingStock(int year, String size, int first, int last, String form) {

    private static final Pattern NUMBER = Pattern.compile("#+");

    /** What is printed where nothing else was said: the year and a number of three digits. */
    public static String usualForm(int year) {
        return "%02d-###".formatted(year % 100);
    }

    /** Whether a number can be set into it, in one place. */
    public static boolean isForm(String form) {
        return NUMBER.matcher(form).results().count() == 1;
    }

    /** Whether a ring is one of these. */
    public boolean holds(String ring) {
        return rings().stream().anyMatch(ring::equalsIgnoreCase);
    }

    /** All of them, in the order of their numbers. */
    public List<String> rings() {
        return IntStream.rangeClosed(first, last).mapToObj(this::ring).toList();
    }

    /** What is printed on the ring of that number. */
    public String ring(int number) {
        Matcher digits = NUMBER.matcher(form);
        return digits.replaceFirst(match -> ("%0" + match.group().length() + "d").formatted(number));
    }
}
