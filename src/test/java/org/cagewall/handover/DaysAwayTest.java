package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import org.cagewall.desk.Daybook;
import org.cagewall.room.Absence;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Days away that do not go as planned: each change is an entry. */
class DaysAwayTest {

    private static final LocalDate LEAVES = LocalDate.of(2026, 4, 10);

    @TempDir
    Path folder;

    private Daybook book;

    @BeforeEach
    void inesGoesForTenDays() {
        book = Daybook.furnished(folder.resolve("room"), LEAVES).tell("""
                {"deed":"away-planned","from":"2026-04-10","to":"2026-04-19","sitter":"Tomas","second":"Joan","by":"Ines"}
                """);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void anOwnerWhoComesBackEarlyIsAwayOnlyUntilTheDayBefore() {
        book = book.on(LEAVES.plusDays(4)).tell("{\"deed\":\"away-ended\",\"by\":\"Ines\"}");

        assertThat(away().last()).isEqualTo(LEAVES.plusDays(3));
        assertThat(away().runsOn(LEAVES.plusDays(3))).isTrue();
        assertThat(away().runsOn(LEAVES.plusDays(4))).isFalse();
    }

    @Test
    void anOwnerWhoIsHeldUpComesBackLater() {
        book = book.on(LEAVES.plusDays(8)).tell("{\"deed\":\"away-changed\",\"to\":\"2026-04-22\",\"by\":\"Joan\"}");

        assertThat(away().to()).isEqualTo(LocalDate.of(2026, 4, 22));
        assertThat(away().sitter()).isEqualTo("Tomas");
    }

    @Test
    void anOwnerWhoIsHeldUpIsStillAwayThoughNobodySaidSoInTime() {
        book = book.on(LEAVES.plusDays(11)).tell("{\"deed\":\"away-changed\",\"to\":\"2026-04-23\",\"by\":\"Joan\"}");

        assertThat(book.desk().room().absenceOn(LEAVES.plusDays(11))).contains(away());
        assertThat(away().from()).isEqualTo(LEAVES);
    }

    @Test
    void whatAKeeperSaysTooLateEndsTheDaysAwayAsTheyWerePlanned() {
        book = book.on(LEAVES.plusDays(14)).tell("{\"deed\":\"away-ended\",\"by\":\"Ines\"}");

        assertThat(away().ended()).contains(LEAVES.plusDays(14));
        assertThat(away().last()).isEqualTo(LocalDate.of(2026, 4, 19));
    }

    @Test
    void anotherSitterTakesOverInTheMiddle() {
        book = book.on(LEAVES.plusDays(3)).tell("""
                {"deed":"away-changed","sitter":"Joan","second":null,"by":"Ines"}
                """);

        assertThat(away().sitter()).isEqualTo("Joan");
        assertThat(away().second()).isEmpty();
        assertThat(away().from()).isEqualTo(LEAVES);
        assertThat(book.lines("away-")).hasSize(2).anyMatch(line -> line.contains("\"sitter\":\"Tomas\""));
    }

    @Test
    void theReviewTellsOfAnOwnerWhoCameBackEarly() {
        book = book.on(LEAVES.plusDays(4)).tell("{\"deed\":\"away-ended\",\"by\":\"Ines\"}");

        DaysAway came = reviewed();

        assertThat(came.plannedTo()).isEqualTo(LocalDate.of(2026, 4, 19));
        assertThat(came.last()).isEqualTo(LEAVES.plusDays(3));
        assertThat(came.daysLate()).isEqualTo(-6);
        assertThat(came.sitters()).containsExactly(new DaysAway.Stint("Tomas", LEAVES, LEAVES.plusDays(3)));
    }

    @Test
    void theReviewTellsOfAnOwnerWhoCameBackLate() {
        book = book.on(LEAVES.plusDays(8))
                .tell("{\"deed\":\"away-changed\",\"to\":\"2026-04-22\",\"by\":\"Joan\"}")
                .on(LEAVES.plusDays(14));

        assertThat(reviewed().daysLate()).isEqualTo(3);
        assertThat(reviewed().plannedTo()).isEqualTo(LocalDate.of(2026, 4, 19));
    }

    @Test
    void theReviewTellsWhoLookedAfterTheBirdsOnWhichDays() {
        book = book.on(LEAVES.plusDays(3))
                .tell("{\"deed\":\"away-changed\",\"sitter\":\"Joan\",\"by\":\"Ines\"}")
                .on(LEAVES.plusDays(11));

        assertThat(reviewed().sitters())
                .containsExactly(
                        new DaysAway.Stint("Tomas", LEAVES, LEAVES.plusDays(2)),
                        new DaysAway.Stint("Joan", LEAVES.plusDays(3), LEAVES.plusDays(9)));
        assertThat(book.log().get(0).what())
                .satisfies(what -> assertThat(Words.english().say(what))
                        .isEqualTo("days away changed: Joan looks after the birds from now on"));
    }

    @Test
    void aPlanThatWasChangedBeforeTheOwnerLeftIsThePlan() {
        book.close();
        book = Daybook.furnished(folder.resolve("other"), LEAVES.minusDays(5))
                .tell("""
                {"deed":"away-planned","from":"2026-04-08","to":"2026-04-12","sitter":"Tomas","by":"Ines"}
                {"deed":"away-changed","from":"2026-04-10","to":"2026-04-14","sitter":"Joan","by":"Ines"}
                """)
                .on(LEAVES.plusDays(8));

        assertThat(reviewed().daysLate()).isZero();
        assertThat(reviewed().plannedFrom()).isEqualTo(LEAVES);
        assertThat(reviewed().sitters()).containsExactly(new DaysAway.Stint("Joan", LEAVES, LEAVES.plusDays(4)));
    }

    @Test
    void anOwnerWhoStayedAtHomeHasNothingToRead() {
        book.tell("{\"deed\":\"away-ended\",\"by\":\"Ines\"}");

        Room room = book.desk().room();
        assertThat(DailyList.of(room, LEAVES, Audience.OWNER)).noneMatch(task -> task.kind() == Kind.BACK);
        assertThat(Review.of(room, book.log(), LEAVES.minusDays(6), LEAVES).away())
                .isEmpty();
    }

    @Test
    void theTaskToReadNamesEachSitter() {
        book = book.on(LEAVES.plusDays(3))
                .tell("{\"deed\":\"away-changed\",\"sitter\":\"Joan\",\"by\":\"Ines\"}")
                .on(LEAVES.plusDays(11));

        assertThat(DailyList.of(book.desk().room(), LEAVES.plusDays(11), Audience.OWNER))
                .filteredOn(task -> task.kind() == Kind.BACK)
                .singleElement()
                .satisfies(
                        task -> assertThat(Words.english().say(task.why()))
                                .isEqualTo(
                                        "You were away from 10 April 2026 to 19 April 2026; Tomas, Joan looked after the birds."));
    }

    private DaysAway reviewed() {
        return Review.of(book.desk().room(), book.log(), LEAVES, away().last())
                .away()
                .orElseThrow();
    }

    private Absence away() {
        assertThat(book.desk().room().absences()).hasSize(1);
        return book.desk().room().absences().get(0);
    }
}
