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
class JavaTimeTest extends InMemory {

    @ParameterizedTest
    @ValueSource(
            strings = {"1950-01-01", "1969-12-31", "1970-01-01", "2024-02-29", "2026-03-29", "2026-10-25", "9999-12-31"
            })
    void aDateComesBackAsItWentIn(LocalDate date) {
        assertThat(there("DATE", LocalDate.class, date)).contains(date);
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
            assertThat(there("DATE", LocalDate.class, date)).contains(date);
        } finally {
            TimeZone.setDefault(before);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"00:00", "02:30", "07:40:12", "23:59:59"})
    void aTimeOfDayComesBackToTheSecond(LocalTime time) {
        assertThat(there("TIME", LocalTime.class, time)).contains(time);
    }

    @Test
    void nothingComesBackAsNothing() {
        useDatabase(handle -> {
            assertThat(handle.select("SELECT CAST(NULL AS DATE) FROM head")
                            .mapTo(LocalDate.class)
                            .one())
                    .isNull();
            assertThat(handle.select("SELECT CAST(NULL AS TIME) FROM head")
                            .mapTo(LocalTime.class)
                            .one())
                    .isNull();
        });
    }

    @Test
    void datesAreFoundByTheirOrder() {
        useDatabase(handle -> assertThat(handle.select(
                                "SELECT d.day FROM (VALUES (DATE('1969-12-31')), (DATE('2026-04-14'))) AS d (day)"
                                        + " WHERE d.day >= ?",
                                LocalDate.of(1970, 1, 1))
                        .mapTo(LocalDate.class)
                        .list())
                .containsExactly(LocalDate.of(2026, 4, 14)));
    }

    private <T> Optional<T> there(String type, Class<T> kind, T value) {
        List<T> back = new ArrayList<>();
        useDatabase(handle -> back.add(handle.select("SELECT CAST(? AS " + type + ") FROM head", value)
                .mapTo(kind)
                .one()));
        return Optional.ofNullable(back.get(0));
    }
}
