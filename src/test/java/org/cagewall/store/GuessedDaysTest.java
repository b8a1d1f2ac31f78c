package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.Evidence;
import org.cagewall.almanac.Outlook;
import org.cagewall.almanac.OwnNumbers;
import org.cagewall.almanac.Rate;
import org.cagewall.room.Room;
import org.cagewall.room.Timing;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** A day that the keeper guessed is shown as about, and tells the room's own numbers nothing, now and years later. */
class GuessedDaysTest extends InMemory {

    private static final LocalDate NEXT_YEAR = LocalDate.of(2027, 2, 1);

    @Override
    boolean isFurnished() {
        return true;
    }

    @BeforeEach
    void oneChickIsRearedByGuessedDaysAndOneByWrittenOnes() {
        tell("""
                {"deed":"paired-up","cage":"A2","cock":"HB 24-013","hen":"HB 24-014","on":"2025-12-18","by":"Ines"}
                {"deed":"box-on","cage":"A2","on":"2025-12-20","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-01-01","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-01-03","by":"Ines"}
                {"deed":"sitting","cage":"A2","on":"2026-01-03","about":true,"by":"Ines"}
                {"deed":"chick-hatched","cage":"A2","mark":"1","on":"2026-01-21","by":"Ines"}
                {"deed":"chick-hatched","cage":"A2","mark":"2","on":"2026-01-22","by":"Ines"}
                {"deed":"chick-ringed","cage":"A2","mark":"1","ring":"HB 26-101","on":"2026-01-28","about":true,"by":"Ines"}
                {"deed":"chick-ringed","cage":"A2","mark":"2","ring":"HB 26-102","on":"2026-01-29","by":"Ines"}
                {"deed":"chick-left-box","cage":"A2","mark":"1","on":"2026-02-22","about":true,"by":"Ines"}
                {"deed":"chick-left-box","cage":"A2","mark":"2","on":"2026-02-23","by":"Ines"}
                {"deed":"chick-weaned","cage":"A2","mark":"1","to":"B2","on":"2026-03-05","about":true,"by":"Ines"}
                {"deed":"chick-weaned","cage":"A2","mark":"2","to":"B2","on":"2026-03-07","by":"Ines"}
                """);
    }

    @Test
    void onlyWrittenDaysCount() {
        assertThatOnlyTheSecondChickCounts(room());
        assertThat(room()).isEqualTo(roomReadAnew());
    }

    @Test
    void thePairLongGoneTellsTheSame() {
        tell("""
                {"deed":"bird-left","bird":"HB 24-013","how":"sold","sure":true,"on":"2026-04-14","by":"Ines"}
                {"deed":"bird-left","bird":"HB 24-014","how":"sold","sure":true,"on":"2026-04-14","by":"Ines"}
                """);

        Room later = store().room(NEXT_YEAR);

        assertThat(later.pairIn(later.cage("A2").orElseThrow())).isEmpty();
        assertThatOnlyTheSecondChickCounts(later);
    }

    @Test
    void aChickRingedOnAGuessedDayWasRingedAllTheSame() {
        tell("""
                {"deed":"bird-left","bird":"HB 24-013","how":"sold","sure":true,"on":"2026-04-14","by":"Ines"}
                {"deed":"bird-left","bird":"HB 24-014","how":"sold","sure":true,"on":"2026-04-14","by":"Ines"}
                """);
        Room later = store().room(NEXT_YEAR);

        Evidence evidence = Almanac.of(later).evidence(later.pairs().get(0), NEXT_YEAR);

        assertThat(evidence.ringed().room()).isEqualTo(new Rate(2, 2));
        assertThat(evidence.weaned().room()).isEqualTo(new Rate(2, 2));
    }

    @Test
    void whatIsCountedFromAGuessIsAbout() {
        Outlook nest = Almanac.of(room()).nest(cage("A2"));

        assertThat(nest.rounds().get(0).sitting().orElseThrow().window().about())
                .isTrue();
        assertThat(nest.eggs()).allMatch(egg -> egg.satFrom().orElseThrow().about());
        assertThat(nest.chicks())
                .extracting(chick -> Stream.of(chick.ringing(), chick.outOfBox(), chick.independent())
                        .map(due -> due.orElseThrow().window().about())
                        .distinct()
                        .toList())
                .containsExactly(List.of(true), List.of(false));
    }

    @Test
    void whatWasToldBeforeGuessesWereKeptIsFoundInItsLine() {
        useDatabase(session -> {
            Stream.of("sitting", "ringing", "box_trip", "weaning")
                    .forEach(table -> session.write("UPDATE " + table + " SET about = FALSE"));
            assertThat(roomReadAnew()).isNotEqualTo(room());
            updatesOf("V4__more_guesses.sql").forEach(session::write);
        });

        assertThat(roomReadAnew()).isEqualTo(room());
    }

    private static void assertThatOnlyTheSecondChickCounts(Room room) {
        OwnNumbers own = Almanac.of(room).ownNumbers("budgerigar");
        assertThat(own.count(Timing.INCUBATION)).isZero();
        assertThat(own.own(Timing.RINGING).orElseThrow().expected()).isEqualTo(7);
        assertThat(own.count(Timing.RINGING)).isEqualTo(1);
        assertThat(own.own(Timing.OUT_OF_BOX).orElseThrow().expected()).isEqualTo(32);
        assertThat(own.count(Timing.OUT_OF_BOX)).isEqualTo(1);
        assertThat(own.own(Timing.INDEPENDENT).orElseThrow().expected()).isEqualTo(44);
        assertThat(own.count(Timing.INDEPENDENT)).isEqualTo(1);
    }
}
