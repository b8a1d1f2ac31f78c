package org.cagewall.deed;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Year;
import java.util.Optional;

/** A date, or only its year, as it was told. Immutable; any thread. */
public record DateOrYear(String text) {

    /** Reads {@code 2025-04-14} or {@code 2025}; anything else is empty. */
    public static Optional<DateOrYear> parse(String text) {
        try {
            if (text.matches("[1-9]\\d{3}")) {
                Year.parse(text);
            } else {
                exactly(text).orElseThrow(() -> new DateTimeException(text));
            }
            return Optional.of(new DateOrYear(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** A whole date of the years 1 to 9999, written with all its ten characters (ISO 8601). */
    static Optional<LocalDate> exactly(String text) {
        try {
            return text.length() == 10
                    ? Optional.of(LocalDate.parse(text)).filter(date -> date.getYear() > 0)
                    : Optional.empty();
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }

    /** Whether the very day is known. */
    public boolean isExact() {
        return text.length() > 4;
    }

    public LocalDate earliest() {
        return text.length() == 4 ? LocalDate.of(Integer.parseInt(text), 1, 1) : LocalDate.parse(text);
    }
}
