package org.cagewall.room;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which closed rings a species wears: inner diameters in millimetres, least and most. Immutable; any thread. */
public record RingSizes(BigDecimal least, BigDecimal most) {

    private static final Pattern MILLIMETRES = Pattern.compile("\\d{1,2}(?:[.,]\\d{1,2})?");

    /** The diameter that a size names; empty where it is written in letters. */
    public static Optional<BigDecimal> millimetres(String size) {
        Matcher number = MILLIMETRES.matcher(size);
        return number.find() ? Optional.of(new BigDecimal(number.group().replace(',', '.'))) : Optional.empty();
    }

    /** Whether a ring of that size fits; one written in letters is the owner's to know. */
    public boolean fits(String size) {
        return millimetres(size)
                .map(it -> it.compareTo(least) >= 0 && it.compareTo(most) <= 0)
                .orElse(true);
    }
}
