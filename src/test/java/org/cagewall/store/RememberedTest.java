package org.cagewall.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.cagewall.room.nest.NestLook;
import org.junit.jupiter.api.Test;

/** What is remembered of a bird that was away, and of the looks into a box, so that the list can tell what was done. */
class RememberedTest extends InMemory {

    @Override
    boolean isFurnished() {
        return true;
    }

    @Test
    void aBirdIsBackFromAShowUntilItGoesOutAgain() {
        tell("""
                {"deed":"bird-out","bird":"HB 24-013","where":"show","on":"2026-04-10","by":"Ines"}
                """);
        assertThat(back()).isEmpty();

        tell("""
                {"deed":"bird-back","bird":"HB 24-013","on":"2026-04-12","by":"Ines"}
                """);
        assertThat(back()).contains(LocalDate.of(2026, 4, 12));
        assertThat(room()).isEqualTo(roomReadAnew());

        tell("""
                {"deed":"bird-out","bird":"HB 24-013","where":"vet","on":"2026-04-13","by":"Ines"}
                {"deed":"bird-back","bird":"HB 24-013","on":"2026-04-14","by":"Ines"}
                """);
        assertThat(back()).as("from the vet, not from a show").isEmpty();
    }

    private Optional<LocalDate> back() {
        return room().bird("HB 24-013").orElseThrow().backFromShow();
    }

    @Test
    void ofTheLooksIntoABoxThoseAreRememberedThatTellWhatWasOpenThatDay() {
        tell("""
                {"deed":"nest-looked-at","cage":"A1","plucked":false,"on":"2026-04-02","by":"Ines"}
                {"deed":"nest-looked-at","cage":"A1","plucked":false,"on":"2026-04-04","by":"Ines"}
                {"deed":"nest-looked-at","cage":"A1","plucked":true,"on":"2026-04-06","by":"Ines"}
                {"deed":"nest-looked-at","cage":"A1","on":"2026-04-08","by":"Ines"}
                {"deed":"nest-looked-at","cage":"A1","on":"2026-04-10","by":"Ines"}
                {"deed":"nest-looked-at","cage":"A1","on":"2026-04-10","chicks":3,"by":"Ines"}
                """);

        assertThat(cage("A1").looks().stream().map(NestLook::day))
                .containsExactly(
                        LocalDate.of(2026, 4, 4),
                        LocalDate.of(2026, 4, 6),
                        LocalDate.of(2026, 4, 8),
                        LocalDate.of(2026, 4, 10));
        assertThat(cage("A1").nestLook().flatMap(NestLook::chicks)).contains(3);
        assertThat(cage("A1").backsSeen()).contains(LocalDate.of(2026, 4, 6));
        assertThat(room()).isEqualTo(roomReadAnew());
    }
}
