package org.cagewall.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** Puts items of text into as many messages as they need, each with its number in front. Pure; any thread. */
public final class InParts {

    /** The most messages that are made of one text. */
    public static final int MOST = 4;

    private static final String LEFT_OUT = " ...";

    private InParts() {}

    /**
     * The items in one text where that fits, else in parts that begin with 1/2, 2/2 and so on. What does not go into four
     * parts is left out, and three dots say so.
     *
     * @param items the most urgent first; only one that is too long for a part is cut itself
     * @param fits whether a message of this text fits; must hold for every text of up to 16 characters
     */
    public static List<String> of(List<String> items, Predicate<String> fits) {
        String text = String.join(" ", items);
        if (fits.test(text)) {
            return List.of(text);
        }
        List<String> parts = cut(items, part -> fits.test(numbered(1, MOST, part) + LEFT_OUT));
        int count = Math.min(MOST, parts.size());
        return IntStream.rangeClosed(1, count)
                .mapToObj(
                        n -> numbered(n, count, parts.get(n - 1)) + (n == MOST && parts.size() > MOST ? LEFT_OUT : ""))
                .toList();
    }

    private static String numbered(int number, int count, String part) {
        return number + "/" + count + " " + part;
    }

    private static List<String> cut(List<String> items, Predicate<String> fits) {
        List<String> parts = new ArrayList<>();
        String part = "";
        for (String item : items) {
            String more = (part + " " + item).strip();
            if (fits.test(more)) {
                part = more;
                continue;
            }
            if (!part.isEmpty()) {
                parts.add(part);
            }
            part = item.strip();
            while (!fits.test(part) && parts.size() <= MOST) {
                int end = longest(part, fits);
                parts.add(part.substring(0, end).strip());
                part = part.substring(end).strip();
            }
        }
        if (!part.isEmpty()) {
            parts.add(part);
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
