package org.cagewall.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.cagewall.room.Room;

/**
 * Turns a room into bytes and back, whatever records it is made of: component by component, in their order. Its shape
 * names them all, so that bytes of another version are known for what they are. Immutable once made; any thread.
 */
final class RoomCoder {

    /** The values that stand in the components, by their types. */
    private static final Map<Type, Coder> VALUES = Map.ofEntries(
            Map.entry(long.class, Coder.of((out, value) -> out.writeLong((Long) value), DataInputStream::readLong)),
            Map.entry(Long.class, Coder.of((out, value) -> out.writeLong((Long) value), DataInputStream::readLong)),
            Map.entry(int.class, Coder.of((out, value) -> out.writeInt((Integer) value), DataInputStream::readInt)),
            Map.entry(Integer.class, Coder.of((out, value) -> out.writeInt((Integer) value), DataInputStream::readInt)),
            Map.entry(
                    boolean.class,
                    Coder.of((out, value) -> out.writeBoolean((Boolean) value), DataInputStream::readBoolean)),
            Map.entry(
                    Boolean.class,
                    Coder.of((out, value) -> out.writeBoolean((Boolean) value), DataInputStream::readBoolean)),
            Map.entry(
                    LocalDate.class,
                    Coder.of(
                            (out, value) -> out.writeLong(((LocalDate) value).toEpochDay()),
                            in -> LocalDate.ofEpochDay(in.readLong()))),
            Map.entry(
                    LocalTime.class,
                    Coder.of(
                            (out, value) -> out.writeLong(((LocalTime) value).toNanoOfDay()),
                            in -> LocalTime.ofNanoOfDay(in.readLong()))),
            Map.entry(String.class, Coder.text(text -> text)),
            Map.entry(MonthDay.class, Coder.text(MonthDay::parse)),
            Map.entry(ZoneId.class, Coder.text(ZoneId::of)),
            Map.entry(BigDecimal.class, Coder.text(BigDecimal::new)));

    private final Map<Type, Coder> coders = new LinkedHashMap<>(VALUES);
    private final StringBuilder shapes = new StringBuilder();
    private final Coder room = coder(Room.class);
    private final String shape = Chain.next(Chain.START, shapes.toString());

    /** What tells the records of this version from those of another. */
    String shape() {
        return shape;
    }

    byte[] write(Room whole) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        room.writing().to(new DataOutputStream(bytes), whole);
        return bytes.toByteArray();
    }

    Room read(byte[] bytes) throws IOException {
        return (Room) room.reading().from(new DataInputStream(new ByteArrayInputStream(bytes)));
    }

    private Coder coder(Type type) {
        Coder known = coders.get(type);
        if (known == null) {
            known = type instanceof ParameterizedType several ? container(several) : made((Class<?>) type);
            coders.put(type, known);
        }
        return known;
    }

    private Coder container(ParameterizedType type) {
        Coder part = coder(type.getActualTypeArguments()[0]);
        if (type.getRawType() == Optional.class) {
            return optional(part);
        }
        if (type.getRawType() == List.class) {
            return Coder.of((out, value) -> writeAll(out, (Collection<?>) value, part), in -> {
                List<Object> all = new ArrayList<>();
                readAll(in, part, all);
                return all;
            });
        }
        if (type.getRawType() == Set.class) {
            return Coder.of((out, value) -> writeAll(out, (Collection<?>) value, part), in -> {
                Set<Object> all = new HashSet<>();
                readAll(in, part, all);
                return all;
            });
        }
        if (type.getRawType() == Map.class) {
            return map(part, coder(type.getActualTypeArguments()[1]));
        }
        throw new IllegalStateException("no way to keep a " + type);
    }

    private static Coder map(Coder keys, Coder values) {
        return Coder.of(
                (out, value) -> {
                    writeAll(out, ((Map<?, ?>) value).keySet(), keys);
                    writeAll(out, ((Map<?, ?>) value).values(), values);
                },
                in -> {
                    List<Object> names = new ArrayList<>();
                    readAll(in, keys, names);
                    List<Object> all = new ArrayList<>();
                    readAll(in, values, all);
                    Map<Object, Object> map = new LinkedHashMap<>();
                    names.forEach(name -> map.put(name, all.get(map.size())));
                    return map;
                });
    }

    private static Coder optional(Coder part) {
        return Coder.of(
                (out, value) -> {
                    Optional<?> perhaps = (Optional<?>) value;
                    out.writeBoolean(perhaps.isPresent());
                    if (perhaps.isPresent()) {
                        part.writing().to(out, perhaps.get());
                    }
                },
                in -> in.readBoolean() ? Optional.of(part.reading().from(in)) : Optional.empty());
    }

    private static void writeAll(DataOutputStream out, Collection<?> all, Coder part) throws IOException {
        out.writeInt(all.size());
        for (Object each : all) {
            part.writing().to(out, each);
        }
    }

    private static void readAll(DataInputStream in, Coder part, Collection<Object> into) throws IOException {
        for (int left = in.readInt(); left > 0; left--) {
            into.add(part.reading().from(in));
        }
    }

    private Coder made(Class<?> type) {
        if (type.isEnum()) {
            Object[] constants = type.getEnumConstants();
            shapes.append(type.getName()).append(Arrays.toString(constants)).append('\n');
            return Coder.of((out, value) -> out.writeByte(((Enum<?>) value).ordinal()), in -> constants[in.readByte()]);
        }
        if (type.isRecord()) {
            return record(type);
        }
        throw new IllegalStateException("no way to keep a " + type);
    }

    private Coder record(Class<?> type) {
        RecordComponent[] components = type.getRecordComponents();
        List<Coder> parts = new ArrayList<>();
        for (RecordComponent component : components) {
            parts.add(coder(component.getGenericType()));
        }
        shapes.append(type.getName()).append(Arrays.toString(components)).append('\n');
        Constructor<?> constructor = constructor(type, components);
        return Coder.of(
                (out, value) -> {
                    for (int i = 0; i < components.length; i++) {
                        parts.get(i).writing().to(out, component(value, components[i]));
                    }
                },
                in -> {
                    Object[] values = new Object[components.length];
                    for (int i = 0; i < components.length; i++) {
                        values[i] = parts.get(i).reading().from(in);
                    }
                    try {
                        return constructor.newInstance(values);
                    } catch (ReflectiveOperationException e) {
                        throw new IOException(e);
                    }
                });
    }

    private static Constructor<?> constructor(Class<?> type, RecordComponent[] components) {
        try {
            return type.getDeclaredConstructor(
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new));
        } catch (NoSuchMethodException e) {
            throw new IllegalStateException("a record has its constructor", e);
        }
    }

    private static Object component(Object of, RecordComponent component) throws IOException {
        try {
            return component.getAccessor().invoke(of);
        } catch (ReflectiveOperationException e) {
            throw new IOException(e);
        }
    }

    /** How one type is written and read. */
    private record Coder(Writing writing, Reading reading) {

        static Coder of(Writing writing, Reading reading) {
            return new Coder(writing, reading);
        }

        static Coder text(java.util.function.Function<String, Object> parse) {
            return of(
                    (out, value) -> {
                        byte[] bytes = value.toString().getBytes(StandardCharsets.UTF_8);
                        out.writeInt(bytes.length);
                        out.write(bytes);
                    },
                    in -> parse.apply(new String(in.readNBytes(in.readInt()), StandardCharsets.UTF_8)));
        }
    }

    private interface Writing {
        void to(DataOutputStream out, Object value) throws IOException;
    }

    private interface Reading {
        Object from(DataInputStream in) throws IOException;
    }
}
