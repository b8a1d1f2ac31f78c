package org.cagewall.command;

import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.cagewall.paper.FreePlaces;
import org.cagewall.paper.Sheet;

/** Reads which places of a part-used sheet are free, as a keeper counts them: from 1, row by row. Pure; any thread. */
final class PlacesOption {

    private static final Pattern RANGE = Pattern.compile("(\\d{1,4})(-)?(\\d{1,4})?");

    private PlacesOption() {}

    /** The places of a text such as {@code 4-} or {@code 2,5-7}; all where there is none. */
    static FreePlaces read(Optional<String> text, Sheet sheet) {
        return text.map(given -> read(given, sheet)).orElseGet(() -> FreePlaces.all(sheet));
    }

    private static FreePlaces read(String text, Sheet sheet) {
        SortedSet<Integer> free = new TreeSet<>();
        for (String part : text.strip().split("\\s*,\\s*", -1)) {
            Matcher range = RANGE.matcher(part);
            if (!range.matches() || range.group(2) == null && range.group(3) != null) {
                throw refusal(text, sheet);
            }
            int first = Integer.parseInt(range.group(1));
            int last = range.group(3) != null
                    ? Integer.parseInt(range.group(3))
                    : range.group(2) != null ? sheet.cards() : first;
            if (first < 1 || last > sheet.cards() || first > last) {
                throw refusal(text, sheet);
            }
            for (int place = first; place <= last; place++) {
                free.add(place - 1);
            }
        }
        return FreePlaces.of(sheet, free);
    }

    private static Refusal refusal(String text, Sheet sheet) {
        return Refusal.of("command.cards-places", text, sheet.name(), sheet.cards());
    }
}
