package org.cagewall.deed;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Predicate;
import org.cagewall.room.Quiet;

/**
 * Makes deeds of every kind by chance, about a few cages, birds and people, so that many of them fit together and some do
 * not. The same seed makes the same deeds. Bound to one thread.
 */
public final class RandomDeeds {

    private static final List<String> CAGES = List.of("A1", "A2", "A3", "B1", "B2", "C9");
    private static final List<String> WALLS = List.of("North wall", "East wall");
    private static final List<String> PEOPLE = List.of("Ines", "Joan", "Tomas", "Mara");
    private static final List<String> BIRDS = List.of(
            "HB 24-011",
            "HB 24-012",
            "HB 24-013",
            "HB 24-014",
            "HB 26-015",
            "HB 26-016",
            "HB 26-017",
            "HB 26-018",
            "HB 26-019",
            "HB 26-020",
            "Pip",
            "Ägnes");

    /** Which pool the words of a field come from. */
    private static final Map<String, List<String>> POOLS = Map.ofEntries(
            Map.entry("cage", CAGES),
            Map.entry("to", CAGES),
            Map.entry("from", CAGES),
            Map.entry("with", CAGES),
            Map.entry("leave-alone", CAGES),
            Map.entry("wall", WALLS),
            Map.entry("person", PEOPLE),
            Map.entry("sitter", PEOPLE),
            Map.entry("second", PEOPLE),
            Map.entry("bird", BIRDS),
            Map.entry("cock", BIRDS),
            Map.entry("hen", BIRDS),
            Map.entry("father", BIRDS),
            Map.entry("mother", BIRDS),
            Map.entry("ring", BIRDS),
            Map.entry("name", BIRDS),
            Map.entry("mark", List.of("1", "2", "3", "4")),
            Map.entry("letter", List.of("A", "B", "C")),
            Map.entry("round", List.of("1", "2")),
            Map.entry("pair", List.of("1", "2", "7", "best")),
            Map.entry("size", List.of("4.2 mm")),
            Map.entry("task", List.of("2026-04-13/A1/morning", "2026-04-14/B2/evening-row", "2026-04-14/A1/morning")));

    /** Kinds that change what others stand on, told more often than once in a round of all kinds. */
    private static final List<String> FREQUENT = List.of(
            "bird-moved",
            "paired-up",
            "egg-laid",
            "egg-laid",
            "eggs-found",
            "chick-hatched",
            "chick-hatched",
            "chick-hatched",
            "chick-ringed",
            "egg-moved",
            "chick-moved",
            "chick-left-box",
            "chick-weaned",
            "egg-candled",
            "check",
            "bird-left",
            "struck-out",
            "struck-out",
            "struck-out",
            "cages-split",
            "cages-split",
            "paired-up",
            "round-ended",
            "bird-added");

    private final Random random;
    private final LocalDate today;
    private final List<String> names = new ArrayList<>();

    public RandomDeeds(long seed, LocalDate today) {
        this.random = new Random(seed);
        this.today = today;
        names.addAll(Lines.kinds().keySet());
        names.addAll(FREQUENT);
    }

    /**
     * A line that may or may not fit, sure of itself.
     *
     * @param head the number of the last entry, so that entries that are there are named
     */
    public Line next(long head) {
        String name = names.get(random.nextInt(names.size()));
        Circumstances told = Circumstances.on(day(), "Ines").beingSure();
        if (random.nextInt(3) == 0) {
            told = told.noting("seen in passing");
        }
        if (random.nextInt(3) == 0) {
            told = told.at(LocalTime.of(7, random.nextInt(60)));
        }
        return new Line((Deed) deed(Lines.kinds().get(name), field -> random.nextBoolean(), head), told);
    }

    /** The deed of that kind with every field, or with none but those it must have. */
    public Deed of(Class<? extends Record> kind, boolean full) {
        return (Deed) deed(kind, field -> full, 1_000);
    }

    private Record deed(Class<? extends Record> kind, Predicate<String> isTold, long head) {
        RecordComponent[] components = kind.getRecordComponents();
        Object[] values = new Object[components.length];
        for (int i = 0; i < components.length; i++) {
            values[i] = value(components[i], components[i].getGenericType(), isTold, head);
        }
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            return kind.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(kind.toString(), e);
        }
    }

    private Object value(RecordComponent component, Type type, Predicate<String> isTold, long head) {
        String field = Names.hyphened(component.getName());
        if (type instanceof ParameterizedType holder) {
            Type inner = holder.getActualTypeArguments()[0];
            if (holder.getRawType() == Optional.class) {
                return isTold.test(field) ? Optional.of(value(component, inner, isTold, head)) : Optional.empty();
            }
            if (holder.getRawType() == NewValue.class) {
                return random.nextInt(3) == 0 ? NewValue.none() : NewValue.to(value(component, inner, isTold, head));
            }
            List<Object> several = new ArrayList<>();
            for (int i = random.nextInt(3); i >= 0; i--) {
                several.add(value(component, inner, isTold, head));
            }
            return List.copyOf(several);
        }
        return single(component, (Class<?>) type, field, isTold, head);
    }

    private Object single(RecordComponent component, Class<?> type, String field, Predicate<String> isTold, long head) {
        if (type.isEnum()) {
            return type.getEnumConstants()[random.nextInt(type.getEnumConstants().length)];
        }
        if (type.isRecord() && type != Quiet.class && type != DateOrYear.class) {
            return deed(type.asSubclass(Record.class), isTold, head);
        }
        return switch (type.getSimpleName()) {
            case "String" -> text(component, field);
            case "int", "Integer" -> whole(component, field, head);
            case "BigDecimal" -> BigDecimal.valueOf(within(component) * 10L + random.nextInt(10), 1);
            case "boolean", "Boolean" -> random.nextBoolean();
            case "LocalDate" -> day().plusDays(random.nextInt(40));
            case "LocalTime" -> LocalTime.of(random.nextInt(24), random.nextInt(60));
            case "MonthDay" -> MonthDay.of(1 + random.nextInt(12), 1 + random.nextInt(28));
            case "ZoneId" -> ZoneId.of("Europe/London");
            case "Quiet" -> new Quiet(LocalTime.of(21, 30), LocalTime.of(6, random.nextInt(60)));
            case "DateOrYear" -> new DateOrYear(random.nextBoolean() ? "2025" : day().toString());
            default -> throw new IllegalStateException("no value of " + type);
        };
    }

    private String text(RecordComponent component, String field) {
        List<String> pool = POOLS.get(field);
        if (pool != null) {
            return pool.get(random.nextInt(pool.size()));
        }
        return component.isAnnotationPresent(Prose.class) ? "A few words.\nAnd \"more\" of them." : "word";
    }

    private int whole(RecordComponent component, String field, long head) {
        return field.equals("entry") ? entry(head) : within(component);
    }

    /** Most often one of the last entries, at times any. */
    private int entry(long head) {
        int back = random.nextInt(3) == 0 ? (int) Math.max(1, head) : 10;
        return (int) Math.max(1, head - random.nextInt(back));
    }

    /** A whole number between the bounds of the field, most often near the lower one. */
    private int within(RecordComponent component) {
        Bounds bounds = component.getAnnotation(Bounds.class);
        int least = bounds.least();
        int most = (int) Math.min(bounds.most() - 1L, least + 30L);
        return least + random.nextInt(Math.max(1, most - least));
    }

    private LocalDate day() {
        int ago = random.nextInt(4) == 0 ? random.nextInt(120) : random.nextInt(6);
        return today.minusDays(ago);
    }
}
