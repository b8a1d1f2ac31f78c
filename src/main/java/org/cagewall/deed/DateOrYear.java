package org.cagewall.deed;

import java.time.LocalDate;
import java.time.Year;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** A date, or only its year, as it was told. Immutable; any thread. */
public record DateOrYear(String text) {

    /** Reads {@code 2025-04-14} or {@code 2025}; anything else is empty. */
    public static Optional<DateOrYear> parse(String text) {
        try {
            if (text.matches("\\d{4}")) {
                Year.parse(text);
            } else {
                LocalDate.parse(text);
            }
            return Optional.of(new DateOrYear(text));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    public LocalDate earliest() {
        return text.length() == 4 ? LocalDate.of(Integer.parseInt(text), 1, 1) : LocalDate.parse(text);
    }
}
