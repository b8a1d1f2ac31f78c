package org.cagewall.store;

import java.sql.Types;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;

/**
 * Carries dates and times of day to and from Derby, which knows nothing of {@code java.time}. They go as text: a date by
 * way of {@code java.sql} is a moment in the machine's own zone, and there are zones that have left a day out.
 */
final class JavaTime {

    static final DateTimeFormatter SECONDS = DateTimeFormatter.ofPattern("HH:mm:ss");

    private JavaTime() {}

    static void install(Jdbi jdbi) {
        jdbi.registerArgument(new Dates());
        jdbi.registerArgument(new Times());
        jdbi.registerColumnMapper(LocalDate.class, (rows, column, context) -> {
            String date = rows.getString(column);
            return date == null ? null : LocalDate.parse(date);
        });
        jdbi.registerColumnMapper(LocalTime.class, (rows, column, context) -> {
            String time = rows.getString(column);
            return time == null ? null : LocalTime.parse(time);
        });
    }

    private static final class Dates extends AbstractArgumentFactory<LocalDate> {

        Dates() {
            super(Types.DATE);
        }

        @Override
        protected Argument build(LocalDate value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setString(position, value.toString());
        }
    }

    private static final class Times extends AbstractArgumentFactory<LocalTime> {

        Times() {
            super(Types.TIME);
        }

        @Override
        protected Argument build(LocalTime value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setString(position, SECONDS.format(value));
        }
    }
}
