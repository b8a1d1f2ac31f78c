package org.cagewall.deed;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.cagewall.room.Formerly;
import org.cagewall.room.Quiet;
import org.cagewall.text.Message;
import tools.jackson.core.JacksonException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.databind.DeserializationFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * The JSON form of the record: one object a line, strict both ways. A deed's own fields are the components of its
 * record, so a new kind of deed needs nothing here. Thread-safe.
 */
public final class Lines {

    /** The longest line the record keeps, in characters. */
    public static final int LONGEST = 32_000;

    /** What an export adds to a line is shorter than this. */
    private static final int LONGEST_SEAL = 300;

    private static final JsonMapper JSON = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .build();

    /** More digits before the point than anything has that is measured in a birdroom. */
    private static final int MOST_DIGITS = 6;

    /** More digits after the point than anybody writes who means tenths. */
    private static final int MOST_WRITTEN_DIGITS = 20;

    /** What a deed that names an entry calls it in an export, where {@code entry} is the line's own number. */
    private static final String NAMED_ENTRY = "of";

    /** What an export adds to a line. */
    private static final List<String> SEAL = List.of("entry", "recorded", "digest");

    private static final List<String> COMMON = List.of("deed", "on", "at", "about", "by", "cage", "note", "sure");

    private static final Map<String, Class<? extends Record>> KINDS = Collections.unmodifiableMap(kinds(Deed.class));

    private Lines() {}

    /** What became of a line that was read. */
    public sealed interface Read {}

    /**
     * A line understood.
     *
     * @param seal what an export added to it
     */
    public record Understood(Line line, Optional<Seal> seal) implements Read {}

    /** What an export adds to a line: the entry's number, the instant it was recorded and its digest. */
    public record Seal(long entry, String recorded, String digest) {}

    /** A line that is none, and why. */
    public record NotUnderstood(Message why) implements Read {}

    /** The names of all deeds, in alphabetical order. */
    public static List<String> deeds() {
        return List.copyOf(KINDS.keySet());
    }

    /** The record of each deed by its name. */
    public static Map<String, Class<? extends Record>> kinds() {
        return KINDS;
    }

    /**
     * Reads one line.
     *
     * @param today the date meant where the line has none
     */
    public static Read read(String text, LocalDate today) {
        if (text.length() > LONGEST + LONGEST_SEAL) {
            return new NotUnderstood(Message.of("line.too-long", LONGEST));
        }
        try {
            JsonNode node = JSON.readTree(text);
            if (!(node instanceof ObjectNode object)) {
                return new NotUnderstood(Message.of("line.no-object"));
            }
            return understand(object, text.length(), today);
        } catch (JacksonException e) {
            return new NotUnderstood(syntax(e));
        } catch (Misread e) {
            return new NotUnderstood(e.why);
        } catch (ArithmeticException | NumberFormatException e) {
            return new NotUnderstood(Message.of("line.too-many-digits"));
        }
    }

    /** The canonical line of a deed: its fields in the order of the language, absent ones left out. */
    public static String write(Line line) {
        Circumstances told = line.told();
        ObjectNode object = JSON.createObjectNode();
        object.put("deed", line.deed().deed());
        object.put("on", told.on().toString());
        told.at().ifPresent(at -> object.put("at", at.toString()));
        if (told.about()) {
            object.put("about", true);
        }
        told.by().ifPresent(by -> object.put("by", by));
        told.cage().ifPresent(cage -> object.put("cage", cage));
        Record deed = (Record) line.deed();
        for (RecordComponent component : deed.getClass().getRecordComponents()) {
            written(valueOf(deed, component)).ifPresent(value -> object.set(field(component), value));
        }
        told.note().ifPresent(note -> object.put("note", note));
        if (told.sure()) {
            object.put("sure", true);
        }
        return object.toString();
    }

    /** The line as an export writes it, with its number, its instant and its digest. */
    public static String export(String line, Seal seal) {
        ObjectNode sealed = JSON.createObjectNode();
        JSON.readTree(line)
                .properties()
                .forEach(each ->
                        sealed.set(each.getKey().equals("entry") ? NAMED_ENTRY : each.getKey(), each.getValue()));
        sealed.put("entry", seal.entry());
        sealed.put("recorded", seal.recorded());
        sealed.put("digest", seal.digest());
        return sealed.toString();
    }

    /** A line that an export wrote, as it was recorded: without its seal, each name as it stood. */
    public static String recorded(String exported) {
        ObjectNode line = JSON.createObjectNode();
        JSON.readTree(exported).properties().stream()
                .filter(each -> !SEAL.contains(each.getKey()))
                .forEach(
                        each -> line.set(each.getKey().equals(NAMED_ENTRY) ? "entry" : each.getKey(), each.getValue()));
        return line.toString();
    }

    private static Read understand(ObjectNode object, int length, LocalDate today) {
        Fields fields = new Fields(object);
        String name = fields.take("deed").map(Lines::text).orElseThrow(() -> new Misread("line.no-deed"));
        Class<? extends Record> kind = KINDS.get(name);
        if (kind == null) {
            throw new Misread(
                    "line.deed-unknown",
                    name,
                    Names.nearest(name, deeds().stream()).orElseThrow());
        }
        boolean aboutIsOwn = has(kind, "about");
        boolean cageIsOwn = has(kind, "cage");
        Optional<Seal> seal = fields.seal();
        if (seal.isEmpty() && length > LONGEST) {
            throw new Misread("line.too-long", LONGEST);
        }
        Circumstances told = new Circumstances(
                fields.take("on").map(each -> date("on", each)).orElse(today),
                fields.take("at").map(each -> time("at", each)),
                !aboutIsOwn
                        && fields.take("about")
                                .map(each -> truth("about", each))
                                .orElse(false),
                fields.take("by").map(each -> name("by", each)),
                cageIsOwn ? Optional.empty() : fields.take("cage").map(each -> name("cage", each)),
                fields.take("note").map(each -> prose("note", each)),
                fields.take("sure").map(each -> truth("sure", each)).orElse(false));
        Deed deed = (Deed) record(kind, fields);
        fields.complainOfTheRest(name, kind);
        Line line = new Line(deed, told);
        if (write(line).length() > LONGEST) {
            throw new Misread("line.too-long", LONGEST);
        }
        return new Understood(line, seal);
    }

    private static Record record(Class<? extends Record> kind, Fields fields) {
        RecordComponent[] components = kind.getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] = component(components[i], fields);
        }
        return make(kind, values);
    }

    private static Object component(RecordComponent component, Fields fields) {
        String field = field(component);
        if (component.getType() == Optional.class
                && argument(component.getGenericType()) instanceof ParameterizedType change
                && change.getRawType() == NewValue.class) {
            return fields.takeEvenNull(field)
                    .map(node -> node.isNull()
                            ? NewValue.none()
                            : NewValue.to(value(field, argument(change), node, component)));
        }
        Optional<JsonNode> node = fields.take(field);
        if (component.getType() == Optional.class) {
            Type inner = argument(component.getGenericType());
            return node.map(value -> value(field, inner, value, component));
        }
        return node.map(value -> value(field, component.getGenericType(), value, component))
                .orElseThrow(() -> new Misread("line.missing", field));
    }

    private static Object value(String field, Type type, JsonNode node, RecordComponent component) {
        if (type == String.class) {
            return component.isAnnotationPresent(Prose.class) ? prose(field, node) : name(field, node);
        }
        if (type == int.class || type == Integer.class) {
            return within(field, component, whole(field, node));
        }
        if (type == BigDecimal.class) {
            return within(field, component, number(field, node));
        }
        if (type == boolean.class || type == Boolean.class) {
            return truth(field, node);
        }
        if (type == LocalDate.class) {
            return date(field, node);
        }
        if (type == LocalTime.class) {
            return time(field, node);
        }
        if (type == MonthDay.class) {
            return read(
                    field,
                    node,
                    "line.no-month-day",
                    text -> MonthDay.parse(text.startsWith("--") ? text : "--" + text));
        }
        if (type == ZoneId.class) {
            return read(field, node, "line.no-zone", ZoneId::of);
        }
        if (type == DateOrYear.class) {
            return read(field, node, "line.no-date-or-year", text -> DateOrYear.parse(text)
                    .orElseThrow(() -> new DateTimeException(text)));
        }
        if (type == Quiet.class) {
            return read(field, node, "line.no-hours", Lines::quiet);
        }
        if (type instanceof ParameterizedType list && list.getRawType() == List.class) {
            return list(field, argument(list), node, component);
        }
        Class<?> raw = (Class<?>) type;
        if (raw.isEnum()) {
            return constant(field, raw, node);
        }
        return nested(field, raw.asSubclass(Record.class), node);
    }

    private static List<Object> list(String field, Type inner, JsonNode node, RecordComponent component) {
        if (!(node instanceof ArrayNode array)) {
            throw new Misread("line.no-list", field);
        }
        List<Object> values = new ArrayList<>();
        array.forEach(each -> values.add(value(field, inner, each, component)));
        return List.copyOf(values);
    }

    private static Record nested(String field, Class<? extends Record> kind, JsonNode node) {
        if (!(node instanceof ObjectNode object)) {
            throw new Misread("line.no-part", field, fieldNames(kind));
        }
        Fields fields = new Fields(object);
        Record value = record(kind, fields);
        fields.complainOfTheRest(field, kind);
        return value;
    }

    private static Object constant(String field, Class<?> type, JsonNode node) {
        String text = text(field, node);
        Object[] constants = type.getEnumConstants();
        return Arrays.stream(constants)
                .filter(each -> Message.word((Enum<?>) each).equals(text))
                .findFirst()
                .or(() -> Arrays.stream(constants)
                        .filter(each ->
                                formerly(type, each).filter(text::equals).isPresent())
                        .findFirst())
                .orElseThrow(() -> new Misread(
                        "line.no-choice",
                        field,
                        Arrays.stream(constants)
                                .map(each -> Message.word((Enum<?>) each))
                                .toList(),
                        shown(text)));
    }

    /** What an earlier version called the constant. */
    private static Optional<String> formerly(Class<?> type, Object constant) {
        return Arrays.stream(type.getFields())
                .filter(field -> field.getName().equals(((Enum<?>) constant).name()))
                .flatMap(field -> Optional.ofNullable(field.getAnnotation(Formerly.class)).stream())
                .map(Formerly::value)
                .findFirst();
    }

    private static String text(JsonNode node) {
        return text("deed", node);
    }

    private static String text(String field, JsonNode node) {
        if (!node.isString()) {
            throw new Misread("line.no-text", field);
        }
        return node.stringValue();
    }

    private static String name(String field, JsonNode node) {
        String kept = Names.kept(text(field, node));
        if (!Names.isFit(kept)) {
            throw new Misread("line.no-name", field, Names.MOST);
        }
        return kept;
    }

    private static String prose(String field, JsonNode node) {
        String kept = Names.kept(text(field, node));
        boolean fit = kept.codePoints().allMatch(point -> point == '\n' || point == '\t' || Names.isPrintable(point));
        if (kept.isEmpty() || !fit || kept.codePointCount(0, kept.length()) > Prose.MOST) {
            throw new Misread("line.no-prose", field, Prose.MOST);
        }
        return kept;
    }

    private static boolean truth(String field, JsonNode node) {
        if (!node.isBoolean()) {
            throw new Misread("line.no-truth", field);
        }
        return node.booleanValue();
    }

    private static int whole(String field, JsonNode node) {
        if (!node.isIntegralNumber() || !node.canConvertToInt()) {
            throw new Misread("line.no-whole", field);
        }
        return node.intValue();
    }

    private static BigDecimal number(String field, JsonNode node) {
        if (!node.isNumber() || !isOfAFewDigits(node.decimalValue())) {
            throw new Misread("line.no-decimal", field);
        }
        return node.decimalValue().setScale(1);
    }

    /** Asked before anything is reckoned with it: a number of ten letters may have more digits than the memory holds. */
    private static boolean isOfAFewDigits(BigDecimal given) {
        boolean isSmall = (long) given.precision() - given.scale() <= MOST_DIGITS && given.scale() >= -MOST_DIGITS;
        return isSmall
                && given.scale() <= MOST_WRITTEN_DIGITS
                && given.stripTrailingZeros().scale() <= 1;
    }

    private static <N extends Number> N within(String field, RecordComponent component, N number) {
        Bounds bounds = component.getAnnotation(Bounds.class);
        if (bounds != null && (number.doubleValue() < bounds.least() || number.doubleValue() > bounds.most())) {
            throw new Misread(
                    "line.out-of-bounds", field, Integer.toString(bounds.least()), Integer.toString(bounds.most()));
        }
        return number;
    }

    private static LocalDate date(String field, JsonNode node) {
        return read(field, node, "line.no-date", text -> DateOrYear.exactly(text)
                .orElseThrow(() -> new DateTimeException(text)));
    }

    private static LocalTime time(String field, JsonNode node) {
        return read(field, node, "line.no-time", text -> LocalTime.parse(text).truncatedTo(ChronoUnit.SECONDS));
    }

    /** An instant as it was written. */
    private static String instant(String text) {
        Instant.parse(text);
        return text;
    }

    private static Quiet quiet(String text) {
        String[] ends = text.split("-", -1);
        if (ends.length != 2) {
            throw new DateTimeException(text);
        }
        return new Quiet(LocalTime.parse(ends[0].strip()), LocalTime.parse(ends[1].strip()));
    }

    private static <T> T read(String field, JsonNode node, String key, Function<String, T> parse) {
        String text = text(field, node);
        try {
            return parse.apply(text);
        } catch (DateTimeException e) {
            throw new Misread(key, field, shown(text));
        }
    }

    private static Optional<JsonNode> written(Object value) {
        if (value instanceof Optional<?> maybe) {
            return maybe.flatMap(Lines::written);
        }
        if (value instanceof NewValue<?> change) {
            return written(change.value())
                    .or(() -> Optional.of(JSON.getNodeFactory().nullNode()));
        }
        if (value instanceof Integer whole) {
            return Optional.of(JSON.getNodeFactory().numberNode(whole));
        }
        if (value instanceof BigDecimal number) {
            return Optional.of(JSON.getNodeFactory().numberNode(number));
        }
        if (value instanceof Boolean truth) {
            return Optional.of(JSON.getNodeFactory().booleanNode(truth));
        }
        if (value instanceof Enum<?> constant) {
            return Optional.of(JSON.getNodeFactory().stringNode(Message.word(constant)));
        }
        if (value instanceof MonthDay day) {
            return Optional.of(JSON.getNodeFactory().stringNode(day.toString().substring(2)));
        }
        if (value instanceof DateOrYear when) {
            return Optional.of(JSON.getNodeFactory().stringNode(when.text()));
        }
        if (value instanceof Quiet quiet) {
            return Optional.of(JSON.getNodeFactory().stringNode(quiet.from() + "-" + quiet.to()));
        }
        if (value instanceof List<?> several) {
            ArrayNode array = JSON.createArrayNode();
            several.forEach(each -> written(each).ifPresent(array::add));
            return Optional.of(array);
        }
        if (value instanceof Record part) {
            ObjectNode object = JSON.createObjectNode();
            for (RecordComponent component : part.getClass().getRecordComponents()) {
                written(valueOf(part, component)).ifPresent(node -> object.set(field(component), node));
            }
            return Optional.of(object);
        }
        return Optional.of(JSON.getNodeFactory().stringNode(value.toString()));
    }

    private static Message syntax(JacksonException e) {
        String said = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
        if (said.startsWith("Duplicate")) {
            return Message.of("line.twice");
        }
        if (said.startsWith("Trailing token")) {
            return Message.of("line.trailing");
        }
        long column = e.getLocation() == null ? 0 : e.getLocation().getColumnNr();
        return Message.of("line.no-json", Long.toString(Math.max(1, column)));
    }

    /** A bit of what was given, short enough to be read aloud. */
    private static String shown(String text) {
        String clean = text.replaceAll("\\p{Cntrl}", "?");
        return clean.length() > 30 ? clean.substring(0, 30) + "..." : clean;
    }

    private static String field(RecordComponent component) {
        return Names.hyphened(component.getName());
    }

    private static List<String> fieldNames(Class<? extends Record> kind) {
        return Arrays.stream(kind.getRecordComponents()).map(Lines::field).toList();
    }

    private static boolean has(Class<? extends Record> kind, String field) {
        return fieldNames(kind).contains(field);
    }

    private static Type argument(Type generic) {
        return ((ParameterizedType) generic).getActualTypeArguments()[0];
    }

    private static Object valueOf(Record owner, RecordComponent component) {
        try {
            return component.getAccessor().invoke(owner);
        } catch (IllegalAccessException | InvocationTargetException e) {
            throw new IllegalStateException(component.toString(), e);
        }
    }

    private static Record make(Class<? extends Record> kind, Object[] values) {
        Class<?>[] types = Arrays.stream(kind.getRecordComponents())
                .map(RecordComponent::getType)
                .toArray(Class<?>[]::new);
        try {
            Constructor<? extends Record> constructor = kind.getDeclaredConstructor(types);
            return constructor.newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(kind.toString(), e);
        }
    }

    private static Map<String, Class<? extends Record>> kinds(Class<?> sealed) {
        Map<String, Class<? extends Record>> kinds = new TreeMap<>();
        for (Class<?> each : sealed.getPermittedSubclasses()) {
            if (each.isRecord()) {
                kinds.put(Names.hyphened(each.getSimpleName()), each.asSubclass(Record.class));
            } else {
                kinds.putAll(kinds(each));
            }
        }
        return kinds;
    }

    /** The fields of an object, taken one by one; what is left over at the end was not known. */
    private static final class Fields {

        private final Map<String, JsonNode> left = new LinkedHashMap<>();

        Fields(ObjectNode object) {
            object.properties().forEach(each -> left.put(each.getKey(), each.getValue()));
        }

        /** Takes the seal of an exported line off, so that what is left is the line as it was recorded. */
        Optional<Seal> seal() {
            if (!left.containsKey("digest")) {
                return Optional.empty();
            }
            JsonNode entry = left.remove("entry");
            if (entry == null || !entry.isIntegralNumber() || entry.asLong() < 1) {
                throw new Misread("line.no-number", "entry");
            }
            String recorded = take("recorded")
                    .map(each -> read("recorded", each, "line.no-instant", Lines::instant))
                    .orElseThrow(() -> new Misread("line.missing", "recorded"));
            String digest = take("digest").map(each -> text("digest", each)).orElseThrow();
            take(NAMED_ENTRY).ifPresent(each -> left.put("entry", each));
            return Optional.of(new Seal(entry.asLong(), recorded, digest));
        }

        Optional<JsonNode> take(String field) {
            JsonNode node = left.remove(field);
            if (node != null && node.isNull()) {
                throw new Misread("line.null", field);
            }
            return Optional.ofNullable(node);
        }

        Optional<JsonNode> takeEvenNull(String field) {
            return Optional.ofNullable(left.remove(field));
        }

        void complainOfTheRest(String where, Class<? extends Record> kind) {
            if (!left.isEmpty()) {
                String stranger = left.keySet().iterator().next();
                Set<String> known = new LinkedHashSet<>(fieldNames(kind));
                if (Deed.class.isAssignableFrom(kind)) {
                    known.addAll(COMMON);
                }
                throw new Misread(
                        "line.field-unknown",
                        shown(stranger),
                        where,
                        Names.nearest(stranger, known.stream()).orElse("-"));
            }
        }
    }

    /** Carries the reason out of the depths of a line; never leaves this class. */
    private static final class Misread extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final transient Message why;

        Misread(String key, Object... args) {
            super(key, null, false, false);
            this.why = Message.of(key, args);
        }
    }
}
