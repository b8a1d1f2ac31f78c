package org.cagewall.command;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.TypeConversionException;

/** Reads a day, as it is typed. Stateless; any thread. */
final class DayWord implements ITypeConverter<LocalDate> {

    @Override
    public LocalDate convert(String word) {
        try {
            return LocalDate.parse(word);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("say a day that there is, such as 2026-04-14, not '" + word + "'");
        }
    }
}
