package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TimeZone;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Dates and times of day come back from Derby as they went in, whatever the machine's clock is set to. */
class DaysInColumnsTest extends InMemory {

    private static final Columns.Reader DAY = Columns.reader(LocalDate.class);
    private static final Columns.Reader MAYBE_DAY = maybe(0);
    private static final Columns.Reader MAYBE_TIME = maybe(1);

    @ParameterizedTest
    @ValueSource(
            strings = {"1950-01-01", "1969-12-31", "1970-01-01", "2024-02-29", "2026-03-29", "2026-10-25", "9999-12-31"
            })
    void aDateComesBackAsItWentIn(LocalDate date) {
        assertThat(there("DATE", date)).isEqualTo(Optional.of(date));
    }

    /** Days that a zone left out or began later than midnight (IANA time zone database). */
    @ParameterizedTest
    @CsvSource({
        "Pacific/Apia, 2011-12-30",
        "America/Sao_Paulo, 2017-10-15",
        "Asia/Beirut, 2026-03-29",
        "America/Havana, 2019-03-10"
    })
    void aDateThatTheMachinesZoneLeftOutComesBackAllTheSame(String zone, LocalDate date) {
        assertThat(date.atStartOfDay(ZoneId.of(zone)).toLocalDateTime()).isAfter(date.atStartOfDay());
        TimeZone before = TimeZone.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone(zone));
            assertThat(there("DATE", date)).isEqualTo(Optional.of(date));
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"00:00", "02:30", "07:40:12", "23:59:59"})
    void aTimeOfDayComesBackToTheSecond(LocalTime time) {
        assertThat(there("TIME", time)).isEqualTo(Optional.of(time));
    }

    @Test
    void nothingComesBackAsNothing() {
        useDatabase(session -> {
            assertThat(session.select("SELECT CAST(NULL AS DATE) FROM head", rows -> MAYBE_DAY.read(rows, 1)))
                    .containsExactly(Optional.empty());
            assertThat(session.select("SELECT CAST(NULL AS TIME) FROM head", rows -> MAYBE_TIME.read(rows, 1)))
                    .containsExactly(Optional.empty());
        });
    }

    @Test
    void datesAreFoundByTheirOrder() {
        useDatabase(session -> assertThat(session.select(
                        "SELECT d.day FROM (VALUES (DATE('1969-12-31')), (DATE('2026-04-14'))) AS d (day)"
                                + " WHERE d.day >= ?",
                        rows -> DAY.read(rows, 1),
                        LocalDate.of(1970, 1, 1)))
                .containsExactly(LocalDate.of(2026, 4, 14)));
    }

    private record Maybe(Optional<LocalDate> day, Optional<LocalTime> time) {}

    private static Columns.Reader maybe(int component) {
        return Columns.reader(Maybe.class.getRecordComponents()[component].getGenericType());
    }

    private Optional<?> there(String type, Object value) {
        List<Object> back = new ArrayList<>();
        Columns.Reader reader = type.equals("DATE") ? MAYBE_DAY : MAYBE_TIME;
        useDatabase(session -> back.addAll(
                session.select("SELECT CAST(? AS " + type + ") FROM head", rows -> reader.read(rows, 1), value)));
        return (Optional<?>) back.get(0);
    }
}
