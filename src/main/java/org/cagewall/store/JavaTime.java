package org.cagewall.store;

import java.sql.Date;
import java.sql.Time;
import java.sql.Types;
import java.time.LocalDate;
import java.time.LocalTime;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.argument.AbstractArgumentFactory;
import org.jdbi.v3.core.argument.Argument;
import org.jdbi.v3.core.config.ConfigRegistry;

/** Carries dates and times of day to and from Derby, which knows nothing of {@code java.time}. */
final class JavaTime {

    private JavaTime() {}

    static void install(Jdbi jdbi) {
        jdbi.registerArgument(new Dates());
        jdbi.registerArgument(new Times());
        jdbi.registerColumnMapper(LocalDate.class, (rows, column, context) -> {
            Date date = rows.getDate(column);
            return date == null ? null : date.toLocalDate();
        });
        jdbi.registerColumnMapper(LocalTime.class, (rows, column, context) -> {
            Time time = rows.getTime(column);
            return time == null ? null : time.toLocalTime();
        });
    }

    private static final class Dates extends AbstractArgumentFactory<LocalDate> {

        Dates() {
            super(Types.DATE);
        }

        @Override
        protected Argument build(LocalDate value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setDate(position, Date.valueOf(value));
        }
    }

    private static final class Times extends AbstractArgumentFactory<LocalTime> {

        Times() {
            super(Types.TIME);
        }

        @Override
        protected Argument build(LocalTime value, ConfigRegistry config) {
            return (position, statement, context) -> statement.setTime(position, Time.valueOf(value));
        }
    }
}
