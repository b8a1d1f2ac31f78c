package org.cagewall.almanac;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cagewall.room.Settings;
import org.cagewall.room.Timing;

/**
 * The timetables that are shipped, a text file a species, found by any usual name of the bird. Read once; immutable; any
 * thread.
 */
public final class Timetables {

    private static final List<String> FILES = List.of(
            "budgerigar",
            "canary",
            "zebra-finch",
            "bengalese",
            "gouldian",
            "cockatiel",
            "peach-faced-lovebird",
            "bourke");

    private static final Pattern NO_LETTER = Pattern.compile("[^\\p{L}]");

    private static final List<Timetable> SHIPPED =
            FILES.stream().map(Timetables::read).toList();

    private static final Map<String, Timetable> BY_NAME = byName();

    private Timetables() {}

    /** All of them, the budgerigar's first. */
    public static List<Timetable> shipped() {
        return SHIPPED;
    }

    /** The shipped timetable of a species; empty where there is none. */
    public static Optional<Timetable> of(String species) {
        return spellings(species)
                .map(BY_NAME::get)
                .filter(found -> found != null)
                .findFirst();
    }

    /** What holds in a room: the shipped values, and the owner's in their place. A value nobody can read is left out. */
    static Timetable in(Settings settings, String species) {
        Timetable table = of(species).orElseGet(() -> new Timetable(species, Map.of()));
        for (Map.Entry<String, String> set : settings.timetable().entrySet()) {
            int dot = set.getKey().lastIndexOf('.');
            if (dot > 0 && areSame(set.getKey().substring(0, dot), species)) {
                Optional<Value> value = value(table, set.getKey().substring(dot + 1), set.getValue());
                table = value.map(table::with).orElse(table);
            }
        }
        return table;
    }

    /** Whether two names mean the same species. */
    static boolean areSame(String one, String other) {
        return nameOf(one).equals(nameOf(other));
    }

    /** One name for all the names of a species. */
    static String nameOf(String species) {
        return of(species).map(Timetable::species).orElseGet(() -> letters(species));
    }

    private static Optional<Value> value(Timetable table, String timing, String days) {
        try {
            Timing named = timing(timing);
            Span span = Span.parse(days);
            return Optional.of(
                    table.value(named).map(book -> book.setByOwner(span)).orElseGet(() -> Value.ofOwner(named, span)));
        } catch (IllegalArgumentException unreadable) {
            return Optional.empty();
        }
    }

    private static Timing timing(String name) {
        return Timing.valueOf(name.toUpperCase(Locale.ROOT).replace('-', '_'));
    }

    private static Map<String, Timetable> byName() {
        Map<String, Timetable> byName = new HashMap<>();
        for (int i = 0; i < FILES.size(); i++) {
            Timetable table = SHIPPED.get(i);
            names(FILES.get(i)).forEach(name -> byName.put(letters(name), table));
        }
        return Map.copyOf(byName);
    }

    /** A name as it is written, then as one of many: canaries, finches, budgerigars. */
    private static Stream<String> spellings(String species) {
        String name = letters(species);
        return Stream.concat(
                Stream.of(name),
                Stream.of("ies:y", "es:", "s:")
                        .map(ending -> ending.split(":", -1))
                        .filter(ending -> name.endsWith(ending[0]))
                        .map(ending -> name.substring(0, name.length() - ending[0].length()) + ending[1]));
    }

    private static String letters(String name) {
        String plain = Normalizer.normalize(name, Normalizer.Form.NFKD).toLowerCase(Locale.ROOT);
        return NO_LETTER.matcher(plain).replaceAll("");
    }

    private static Timetable read(String file) {
        String species = names(file).get(0);
        Map<Timing, Value> values = new EnumMap<>(Timing.class);
        for (String line : lines(file)) {
            if (!line.startsWith("names ")) {
                Value value = value(file, line);
                values.put(value.timing(), value);
            }
        }
        return new Timetable(species, values);
    }

    private static List<String> names(String file) {
        return lines(file).stream()
                .filter(line -> line.startsWith("names "))
                .flatMap(line -> Arrays.stream(line.substring("names ".length()).split(",")))
                .map(String::trim)
                .toList();
    }

    private static Value value(String file, String line) {
        try {
            String[] valueAndSource = line.split("#", 2);
            String[] nameAndDays = valueAndSource[0].trim().split("\\s+", 2);
            return Value.ofBook(timing(nameAndDays[0]), Span.parse(nameAndDays[1]), valueAndSource[1].trim());
        } catch (IllegalArgumentException | ArrayIndexOutOfBoundsException e) {
            throw new IllegalStateException("cannot read in " + file + ": " + line, e);
        }
    }

    /** The lines of a file of this package, blank ones and those that begin with # left out. */
    static List<String> lines(String file) {
        try (InputStream in = Timetables.class.getResourceAsStream(file + ".txt")) {
            if (in == null) {
                throw new IllegalStateException("not shipped: " + file);
            }
            return new BufferedReader(new InputStreamReader(in, StandardCharsets.UTF_8))
                    .lines()
                    .map(String::trim)
                    .filter(line -> !line.isEmpty() && !line.startsWith("#"))
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read " + file, e);
        }
    }
}
