package org.cagewall.deed;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.cagewall.room.Quiet;
import org.cagewall.text.Message;
import org.junit.jupiter.api.Test;

/** docs/record.md says of every deed what the code says of it. */
class RecordDocumentTest {

    private static final Pattern ROW = Pattern.compile("\\| `([a-z-]+)` \\| (.*?) \\| .+ \\|");

    private static final Map<Class<?>, String> WORDS = Map.of(
            int.class, "number of an entry",
            Boolean.class, "true / false",
            LocalDate.class, "date",
            MonthDay.class, "month-day",
            ZoneId.class, "time zone",
            DateOrYear.class, "date or year",
            Quiet.class, "hours",
            String.class, "");

    @Test
    void everyDeedStandsInTheDocumentWithItsFieldsAndTheirValues() throws IOException {
        Map<String, String> told = new TreeMap<>();
        for (String line : Files.readAllLines(Path.of("docs/record.md"))) {
            Matcher row = ROW.matcher(line);
            if (row.matches() && Lines.deeds().contains(row.group(1))) {
                told.put(row.group(1), row.group(2));
            }
        }

        assertThat(told).containsExactlyEntriesOf(deeds());
    }

    private static Map<String, String> deeds() {
        Map<String, String> deeds = new LinkedHashMap<>();
        Lines.kinds().forEach((deed, kind) -> deeds.put(deed, fields(kind)));
        return deeds;
    }

    private static String fields(Class<? extends Record> kind) {
        String fields = Arrays.stream(kind.getRecordComponents())
                .map(RecordDocumentTest::field)
                .collect(Collectors.joining(", "));
        return fields.isEmpty() ? "-" : fields;
    }

    private static String field(RecordComponent component) {
        boolean optional = component.getType() == Optional.class;
        Type type = optional ? argument(component.getGenericType()) : component.getGenericType();
        String values = values(component, type);
        String field = "`" + Names.hyphened(component.getName()) + "`" + (values.isEmpty() ? "" : " " + values);
        return optional ? "[" + field + "]" : field;
    }

    private static String values(RecordComponent component, Type type) {
        Bounds within = component.getAnnotation(Bounds.class);
        if (within != null && within.most() < Integer.MAX_VALUE) {
            return within.least() + " to " + within.most() + (type == BigDecimal.class ? ", one decimal" : "");
        }
        if (type instanceof ParameterizedType change && change.getRawType() == NewValue.class) {
            return (values(component, argument(change)) + " or null").strip();
        }
        if (type instanceof ParameterizedType list) {
            String several = values(component, argument(list));
            return "list of " + (several.isEmpty() ? "names" : several);
        }
        return component.isAnnotationPresent(Prose.class) ? "text" : values((Class<?>) type);
    }

    private static String values(Class<?> type) {
        if (type.isEnum()) {
            return Arrays.stream(type.getEnumConstants())
                    .map(each -> Message.word((Enum<?>) each))
                    .collect(Collectors.joining(" / "));
        }
        if (type.isRecord() && type != DateOrYear.class && type != Quiet.class) {
            return "{"
                    + Arrays.stream(type.getRecordComponents())
                            .map(RecordDocumentTest::field)
                            .collect(Collectors.joining(", "))
                    + "}";
        }
        return WORDS.getOrDefault(type, "");
    }

    private static Type argument(Type generic) {
        return ((ParameterizedType) generic).getActualTypeArguments()[0];
    }
}
