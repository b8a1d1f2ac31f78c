package org.cagewall.deed;

import java.text.Normalizer;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** How names are written and compared in the record. Pure; any thread. */
final class Names {

    static final int MOST = 40;

    private Names() {}

    /** The name as it is kept: normalised (Unicode NFC) and trimmed. */
    static String kept(String name) {
        return Normalizer.normalize(name, Normalizer.Form.NFC).strip();
    }

    static boolean isFit(String kept) {
        return !kept.isEmpty() && kept.codePointCount(0, kept.length()) <= MOST && isPrintable(kept);
    }

    /** Whether every character can be seen on a card: no control, format or unassigned ones. */
    static boolean isPrintable(String text) {
        return text.codePoints().allMatch(Names::isPrintable);
    }

    static boolean isPrintable(int point) {
        return switch (Character.getType(point)) {
            case Character.CONTROL,
                    Character.FORMAT,
                    Character.UNASSIGNED,
                    Character.PRIVATE_USE,
                    Character.SURROGATE,
                    Character.LINE_SEPARATOR,
                    Character.PARAGRAPH_SEPARATOR -> false;
            default -> true;
        };
    }

    static boolean same(String one, String other) {
        return one.toLowerCase(Locale.ROOT).equals(other.toLowerCase(Locale.ROOT));
    }

    /** The name among those given that is spelled most like this one, when there is any. */
    static Optional<String> nearest(String name, Stream<String> among) {
        String wanted = name.toLowerCase(Locale.ROOT);
        return among.min(Comparator.<String>comparingInt(each -> distance(wanted, each.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()));
    }

    /** BirdMoved or heatAct as bird-moved or heat-act. */
    static String hyphened(String camel) {
        StringBuilder out = new StringBuilder();
        for (char c : camel.toCharArray()) {
            if (Character.isUpperCase(c) && out.length() > 0) {
                out.append('-');
            }
            out.append(Character.toLowerCase(c));
        }
        return out.toString();
    }

    /** The fewest single-letter changes that turn one into the other (Levenshtein 1966). */
    private static int distance(String one, String other) {
        int[] above = new int[other.length() + 1];
        for (int j = 0; j <= other.length(); j++) {
            above[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int[] row = new int[other.length() + 1];
            row[0] = i;
            for (int j = 1; j <= other.length(); j++) {
                int change = one.charAt(i - 1) == other.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], above[j]) + 1, above[j - 1] + change);
            }
            above = row;
        }
        return above[other.length()];
    }
}
