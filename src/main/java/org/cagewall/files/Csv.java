package org.cagewall.files;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.cagewall.text.Message;

/**
 * A table as RFC 4180 writes it: a comma between fields, CR LF after every record, and quotes around a field that needs
 * them. A field that a spreadsheet would take for a formula gets an apostrophe in front. Pure; any thread.
 */
final class Csv {

    private static final String END = "\r\n";

    /** What makes a spreadsheet reckon instead of show. Common practice, no source. */
    private static final String FORMULA_MARKS = "=+-@\t\r";

    private final StringBuilder text = new StringBuilder();

    Csv(List<String> header) {
        append(header);
    }

    /** A record of the table: texts, numbers, dates, constants, or one of them that may be missing. */
    void row(Object... fields) {
        append(Arrays.stream(fields).map(Csv::shown).toList());
    }

    String text() {
        return text.toString();
    }

    private void append(List<String> fields) {
        text.append(fields.stream().map(Csv::quoted).collect(Collectors.joining(",")))
                .append(END);
    }

    private static String shown(Object field) {
        if (field instanceof Optional<?> maybe) {
            return maybe.map(Csv::shown).orElse("");
        }
        if (field instanceof Enum<?> constant) {
            return Message.word(constant);
        }
        if (field instanceof List<?> several) {
            return several.stream().map(Csv::shown).collect(Collectors.joining("; "));
        }
        return field.toString();
    }

    private static String quoted(String field) {
        String harmless = !field.isEmpty() && FORMULA_MARKS.indexOf(field.charAt(0)) >= 0 ? "'" + field : field;
        boolean plain = harmless.chars().noneMatch(c -> c == ',' || c == '"' || c == '\r' || c == '\n');
        return plain ? harmless : "\"" + harmless.replace("\"", "\"\"") + "\"";
    }
}
