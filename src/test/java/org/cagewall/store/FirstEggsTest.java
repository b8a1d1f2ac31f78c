package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.cagewall.almanac.Almanac;
import org.cagewall.almanac.OwnNumbers;
import org.cagewall.room.Room;
import org.cagewall.room.Span;
import org.cagewall.room.Timing;
import org.cagewall.room.care.LogQuery;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** How long pairs waited for their first egg, as long as they are in the room and when they are long gone. */
class FirstEggsTest extends InMemory {

    private static final LocalDate NEXT_YEAR = LocalDate.of(2027, 2, 1);

    @Override
    boolean isFurnished() {
        return true;
    }

    /** Paired up on 20 February, box on on 3 March. */
    @BeforeEach
    void theFirstEggComesElevenDaysAfterTheBox() {
        tell("""
                {"deed":"egg-laid","cage":"A1","on":"2026-03-14","by":"Ines"}
                """);
    }

    @Test
    void aPairLongGoneTellsTheSameAsWhileItWasHere() {
        assertThat(own(room()).own(Timing.FIRST_EGG)).contains(new Span(11, 11, 11));

        theyLeave();

        Room later = store().room(NEXT_YEAR);
        assertThat(later.pairs()).isEmpty();
        assertThat(own(later).own(Timing.FIRST_EGG)).contains(new Span(11, 11, 11));
    }

    @Test
    void theBoxOfTheNextSeasonTellsNothingOfThisOne() {
        theyLeave();
        tell("""
                {"deed":"box-off","cage":"A1","on":"2026-04-14","by":"Ines"}
                """);

        Room later = recordedLater("""
                {"deed":"box-on","cage":"A1","on":"2027-01-20","by":"Ines"}
                """);

        assertThat(own(later).own(Timing.FIRST_EGG)).contains(new Span(11, 11, 11));
    }

    @Test
    void aBoxThatIsStruckOutIsNoLongerCountedFromThoughThePairIsLongGone() {
        long box = store().read(reading -> reading.log(LogQuery.newest(200))).stream()
                .filter(entry -> entry.deed().equals("box-on"))
                .findFirst()
                .orElseThrow()
                .number();
        theyLeave();

        Room later = recordedLater("""
                {"deed":"struck-out","entry":%d,"why":"the wrong cage","by":"Ines"}
                """.formatted(box));

        assertThat(own(later).count(Timing.FIRST_EGG)).isZero();
    }

    @Test
    void aGuessedDayIsKnownAsAGuess() {
        guessAtTheSecondPair();

        assertThat(own(room()).count(Timing.FIRST_EGG)).isEqualTo(1);
        assertThat(room()).isEqualTo(roomReadAnew());
    }

    @Test
    void whatWasToldBeforeGuessesWereKeptIsFoundInItsLine() {
        guessAtTheSecondPair();
        useDatabase(session -> {
            session.write("UPDATE box SET about = FALSE");
            session.write("UPDATE pairing SET about = FALSE");
            assertThat(roomReadAnew()).isNotEqualTo(room());
            updatesOf("V3__guesses.sql").forEach(session::write);
        });

        assertThat(roomReadAnew()).isEqualTo(room());
    }

    /** The note says what a guess would say, and is none. */
    private void guessAtTheSecondPair() {
        tell("""
                {"deed":"paired-up","cage":"A2","cock":"HB 24-013","hen":"HB 24-014","on":"2026-03-02","by":"Ines"}
                {"deed":"box-on","cage":"A2","on":"2026-03-05","about":true,"by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-03-15","by":"Ines"}
                {"deed":"box-on","cage":"A3","on":"2026-03-05","note":"\\"about\\":true","by":"Ines"}
                """);
    }

    private void theyLeave() {
        tell("""
                {"deed":"egg-removed","cage":"A1","mark":"1","why":"clear","on":"2026-04-10","sure":true,"by":"Ines"}
                {"deed":"bird-left","bird":"HB 24-011","how":"sold","sure":true,"on":"2026-04-14","by":"Ines"}
                {"deed":"bird-left","bird":"HB 24-012","how":"sold","sure":true,"on":"2026-04-14","by":"Ines"}
                """);
    }

    private Room recordedLater(String line) {
        Recording recording = store().record(store().room(NEXT_YEAR), List.of(line(line.strip())), NEXT_YEAR, NOW);
        assertThat(recording).as(said(recording)).isInstanceOf(Recording.Done.class);
        Room later = ((Recording.Done) recording).room();
        assertThat(later).isEqualTo(store().room(NEXT_YEAR));
        return later;
    }

    private static OwnNumbers own(Room room) {
        return Almanac.of(room).ownNumbers("budgerigar");
    }
}
