package org.cagewall.room;

import java.math.BigDecimal;
import java.text.Normalizer;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cagewall.room.bird.Sex;
import org.cagewall.text.Message;

/**
 * What the book says of a species, a text file each: the one place from which rules, timetables and tasks have its ages
 * and habits. Read once; immutable; any thread.
 *
 * @param names all that it is called, the usual name first
 * @param lines each value as it is written and where it comes from, by its name
 */
public record Species(List<String> names, Map<String, Sourced> lines) implements Usual {

    /** A value as it is written, and where it comes from in words. */
    public record Sourced(String value, String source) {}

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

    private static final List<Species> SHIPPED =
            FILES.stream().map(Species::read).toList();

    private static final Map<String, Species> BY_NAME = byName();

    public Species {
        names = List.copyOf(names);
        lines = Map.copyOf(lines);
    }

    /** All that there are, the budgerigar first. */
    public static List<Species> shipped() {
        return SHIPPED;
    }

    /** A species by any of its names; empty where nothing is known of it. */
    public static Optional<Species> of(String name) {
        return spellings(name).map(BY_NAME::get).filter(found -> found != null).findFirst();
    }

    /** Whether two names mean the same species. */
    public static boolean areSame(String one, String other) {
        return nameOf(one).equals(nameOf(other));
    }

    /** One name for all the names of a species. */
    public static String nameOf(String species) {
        return of(species).map(Species::name).orElseGet(() -> letters(species));
    }

    /** What holds for a species in a room: what the owner has set, else the book. */
    public static Usual in(Settings settings, String species) {
        return timing -> set(settings, species, timing).or(() -> of(species).flatMap(book -> book.span(timing)));
    }

    /** What the owner has set for a species; empty where nothing is set or nobody can read it. */
    public static Optional<Span> set(Settings settings, String species, Timing timing) {
        return settings.timetable().entrySet().stream()
                .filter(set -> names(set.getKey(), species, timing))
                .flatMap(set -> Span.read(set.getValue()).stream())
                .reduce((earlier, later) -> later);
    }

    private static boolean names(String setting, String species, Timing timing) {
        int dot = setting.lastIndexOf('.');
        return dot > 0
                && setting.substring(dot + 1).equals(Message.word(timing))
                && areSame(setting.substring(0, dot), species);
    }

    /** The earliest and the latest that is known of any species: what holds for one that is in no book. */
    public static Span ofAny(Timing timing) {
        List<Span> all =
                SHIPPED.stream().flatMap(each -> each.span(timing).stream()).toList();
        return new Span(
                all.stream().mapToInt(Span::earliest).min().orElseThrow(),
                SHIPPED.get(0).expected(timing).orElseThrow(),
                all.stream().mapToInt(Span::latest).max().orElseThrow());
    }

    public String name() {
        return names.get(0);
    }

    @Override
    public Optional<Span> span(Timing timing) {
        return line(Message.word(timing)).map(Sourced::value).map(Span::parse);
    }

    /** Where a value comes from, in words. */
    public Optional<String> source(Timing timing) {
        return line(Message.word(timing)).map(Sourced::source);
    }

    /** From which age a cock or a hen is paired up. */
    public BreedingAge breedingAge(Sex sex) {
        String[] months = words(sex == Sex.COCK ? "cock-breeds" : "hen-breeds");
        return new BreedingAge(Integer.parseInt(months[0]), Integer.parseInt(months[1]));
    }

    public WhoSits sits() {
        return WhoSits.valueOf(constant("sits"));
    }

    public CockSleeps cockSleeps() {
        return CockSleeps.valueOf(constant("cock-sleeps"));
    }

    public NestKind nest() {
        return NestKind.valueOf(constant("nest"));
    }

    /** On which morning of a round, its first egg's being 1, the eggs that were taken up are put back. */
    public Optional<Integer> putBack() {
        return line("put-back").map(line -> Integer.valueOf(line.value()));
    }

    public RingSizes rings() {
        String[] sizes = words("rings");
        return new RingSizes(new BigDecimal(sizes[0]), new BigDecimal(sizes[1]));
    }

    private String[] words(String name) {
        return line(name).orElseThrow().value().split("\\s+");
    }

    private String constant(String name) {
        return line(name).orElseThrow().value().toUpperCase(Locale.ROOT).replace('-', '_');
    }

    private Optional<Sourced> line(String name) {
        return Optional.ofNullable(lines.get(name));
    }

    private static Map<String, Species> byName() {
        Map<String, Species> byName = new HashMap<>();
        SHIPPED.forEach(species -> species.names().forEach(name -> byName.put(letters(name), species)));
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

    private static Species read(String file) {
        List<String> names = List.of();
        Map<String, Sourced> lines = new HashMap<>();
        for (String line : Shipped.lines(Species.class, "species/" + file + ".txt")) {
            if (line.startsWith("names ")) {
                names = Arrays.stream(line.substring("names ".length()).split(","))
                        .map(String::trim)
                        .toList();
            } else {
                String[] valueAndSource = line.split("#", 2);
                String[] nameAndValue = valueAndSource[0].trim().split("\\s+", 2);
                lines.put(nameAndValue[0], new Sourced(nameAndValue[1], valueAndSource[1].trim()));
            }
        }
        return checked(new Species(names, lines), file);
    }

    /** A file that cannot be read is found out when the program starts, not when a bird is paired up. */
    private static Species checked(Species species, String file) {
        try {
            Arrays.stream(Timing.values())
                    .forEach(timing -> species.span(timing).orElseThrow());
            Arrays.stream(Sex.values()).forEach(species::breedingAge);
            species.rings();
            species.sits();
            species.cockSleeps();
            species.nest();
            species.putBack();
            return species;
        } catch (RuntimeException e) {
            throw new IllegalStateException("cannot read the species " + file, e);
        }
    }
}
