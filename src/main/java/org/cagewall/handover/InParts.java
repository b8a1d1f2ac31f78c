package org.cagewall.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Cuts a text into as many messages as it needs, between words, each with its number in front. Pure; any thread. */
public final class InParts {

    /** The most messages that are made of one text. */
    public static final int MOST = 4;

    private static final String LEFT_OUT = " ...";

    private InParts() {}

    /**
     * The text whole where it fits, else in parts that begin with 1/2, 2/2 and so on. What does not go into four parts
     * is left out, and three dots say so.
     *
     * @param fits whether a message of this text fits; must hold for every text of up to 16 characters
     */
    public static List<String> of(String text, Predicate<String> fits) {
        if (fits.test(text)) {
            return List.of(text);
        }
        List<String> parts = cut(text, part -> fits.test(numbered(1, MOST, part) + LEFT_OUT));
        int count = Math.min(MOST, parts.size());
        return IntStream.rangeClosed(1, count)
                .mapToObj(
                        n -> numbered(n, count, parts.get(n - 1)) + (n == MOST && parts.size() > MOST ? LEFT_OUT : ""))
                .toList();
    }

    private static String numbered(int number, int count, String part) {
        return number + "/" + count + " " + part;
    }

    private static List<String> cut(String text, Predicate<String> fits) {
        List<String> parts = new ArrayList<>();
        String rest = text.strip();
        while (!rest.isEmpty() && parts.size() <= MOST) {
            int end = longest(rest, fits);
            parts.add(rest.substring(0, end).strip());
            rest = rest.substring(end).strip();
        }
        return parts;
    }

    /** Where the longest beginning that fits ends: between words where it can, never inside a character. */
    private static int longest(String text, Predicate<String> fits) {
        int end = 0;
        int betweenWords = 0;
        while (end < text.length()) {
            int next = end + Character.charCount(text.codePointAt(end));
            if (!fits.test(text.substring(0, next))) {
                return betweenWords > 0 ? betweenWords : Math.max(end, Character.charCount(text.codePointAt(0)));
            }
            end = next;
            if (end == text.length() || text.charAt(end) == ' ') {
                betweenWords = end;
            }
        }
        return end;
    }
}
