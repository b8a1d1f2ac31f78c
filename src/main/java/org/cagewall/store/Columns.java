package org.cagewall.store;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.Optional;

/**
 * How each type that a fact is made of stands in a column of Derby, which knows nothing of {@code java.time}. Days and
 * times go as text: a date by way of {@code java.sql} is a moment in the machine's own zone, and there are zones that have
 * left a day out. Pure; any thread.
 */
final class Columns {

    private static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss");

    private Columns() {}

    /** Reads one column. */
    interface Reader {
        Object read(ResultSet rows, int column) throws SQLException;
    }

    static void fill(PreparedStatement statement, int place, Object value) throws SQLException {
        Object given = value instanceof Optional<?> maybe ? maybe.orElse(null) : value;
        if (given == null) {
            statement.setNull(place, Types.VARCHAR);
        } else if (given instanceof Enum<?> constant) {
            statement.setString(place, constant.name());
        } else if (given instanceof LocalDate date) {
            statement.setString(place, date.toString());
        } else if (given instanceof LocalTime time) {
            statement.setString(place, SECONDS.format(time));
        } else {
            statement.setObject(place, given);
        }
    }

    /** The reader of a component of this type. */
    static Reader reader(Type type) {
        if (type instanceof ParameterizedType optional) {
            Reader inner = reader(optional.getActualTypeArguments()[0]);
            return (rows, column) -> {
                String there = rows.getString(column);
                return there == null ? Optional.empty() : Optional.of(inner.read(rows, column));
            };
        }
        Class<?> raw = (Class<?>) type;
        if (raw.isEnum()) {
            return (rows, column) -> constant(raw, rows.getString(column));
        }
        return switch (raw.getSimpleName()) {
            case "String" -> ResultSet::getString;
            case "int", "Integer" -> ResultSet::getInt;
            case "long", "Long" -> ResultSet::getLong;
            case "boolean", "Boolean" -> ResultSet::getBoolean;
            case "BigDecimal" -> ResultSet::getBigDecimal;
            case "LocalDate" -> (rows, column) -> LocalDate.parse(rows.getString(column));
            case "LocalTime" -> (rows, column) -> LocalTime.parse(rows.getString(column));
            default -> throw new IllegalArgumentException("no column is read as " + raw);
        };
    }

    private static Object constant(Class<?> type, String name) {
        for (Object each : type.getEnumConstants()) {
            if (((Enum<?>) each).name().equals(name)) {
                return each;
            }
        }
        throw new IllegalArgumentException(type + " has no " + name);
    }
}
