package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Collectors;
import org.cagewall.desk.Daybook;
import org.cagewall.handover.Strip.Seen;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Who looked at which cage on which day away, from a real record: by scan (S), by hand (H), nobody (-), not yet (?), not asked (.). */
class StripTest {

    private static final LocalDate LEAVES = LocalDate.of(2026, 4, 10);
    private static final LocalDate LAST = LocalDate.of(2026, 4, 12);
    private static final LocalDate BACK = LocalDate.of(2026, 4, 13);

    @TempDir
    Path folder;

    private Daybook book;

    @BeforeEach
    void inesIsAwayForThreeDays() {
        book = Daybook.furnished(folder.resolve("room"), LEAVES).tell("""
                {"deed":"away-planned","from":"2026-04-10","to":"2026-04-12","sitter":"Tomas","leave-alone":["B3"],"on":"2026-04-08","by":"Ines"}
                """);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void eachCageHasARowInWalkingOrderAndEachDayACell() {
        book = book.on(BACK).tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"scan","on":"2026-04-10","by":"Tomas"}
                {"deed":"check","cage":"A2","answer":"well","how":"hand","on":"2026-04-11","by":"Tomas"}
                {"deed":"row-checked","wall":"North wall","row":2,"when":"evening","on":"2026-04-12","by":"Tomas"}
                """);

        assertThat(strip().days()).containsExactly(LEAVES, LEAVES.plusDays(1), LAST);
        assertThat(drawn(strip())).isEqualTo("A1 S-- | A2 -H- | A3 --- | B1 --H | B2 --H | B3 aaH");
    }

    @Test
    void nobodyIsMissedAtAnEmptyCage() {
        book = book.on(LEAVES).tell("""
                {"deed":"bird-moved","bird":"HB 24-006","to":"A3","sure":true,"on":"2026-04-09","by":"Ines"}
                """).on(BACK);

        assertThat(drawn(strip())).contains("B1 eee | B2 ---");
        assertThat(strip().rows().stream().filter(Strip.Row::isEmpty))
                .extracting(Strip.Row::cage)
                .contains("B1");
    }

    @Test
    void aCageWhoseBirdDiedMeanwhileIsMissedUntilThenAndKeepsItsRow() {
        book = book.on(BACK).tell("""
                {"deed":"bird-left","bird":"HB 24-006","how":"died","on":"2026-04-11","by":"Tomas"}
                """);

        assertThat(drawn(strip())).contains("B1 --e");
    }

    @Test
    void aScanCountsBeforeAHandAndADifferenceBeforeAllWell() {
        book = book.on(BACK).tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"hand","when":"morning","on":"2026-04-10","signs":["other"],"by":"Tomas"}
                {"deed":"check","cage":"A1","answer":"well","how":"scan","when":"evening","on":"2026-04-10","by":"Tomas"}
                """);

        Strip.Cell cell = strip().rows().get(0).cells().get(0);

        assertThat(cell.seen()).isEqualTo(Seen.BY_SCAN);
        assertThat(cell.isDifferent()).isTrue();
    }

    @Test
    void aVisitThatWasStruckOutCountsForNothing() {
        book = book.on(BACK).tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"scan","on":"2026-04-10","by":"Tomas"}
                """);
        book.tell("{\"deed\":\"struck-out\",\"entry\":" + book.desk().room().head()
                + ",\"why\":\"wrong cage\",\"by\":\"Tomas\"}");

        assertThat(drawn(strip())).startsWith("A1 ---");
    }

    @Test
    void onADayThatIsNotOverACageIsNotYetSeen() {
        book = book.on(LAST).tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"scan","on":"2026-04-12","by":"Tomas"}
                """);

        assertThat(drawn(strip())).startsWith("A1 --S | A2 --? |");
    }

    @Test
    void daysBeforeACageWasThereAreMissedByNobody() {
        book = book.on(LEAVES).tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"hand","by":"Tomas"}
                """);
        book = book.on(LEAVES.plusDays(1)).tell("""
                {"deed":"wall-added","wall":"East wall","rows":1,"columns":2,"by":"Joan"}
                {"deed":"cage-added","cage":"E1","wall":"East wall","row":1,"column":1,"use":"hospital","by":"Joan"}
                {"deed":"birds-added","count":2,"cage":"E1","by":"Joan"}
                {"deed":"check","cage":"A1","answer":"well","how":"hand","by":"Tomas"}
                """);
        book = book.on(BACK).tell("""
                {"deed":"cage-added","cage":"E2","wall":"East wall","row":1,"column":2,"use":"hospital","by":"Ines"}
                """);

        assertThat(drawn(strip())).endsWith("E1 .-- | E2 eee");
        assertThat(review().unvisited()).noneMatch(each -> each.cage().equals("E2"));
    }

    @Test
    void aCageLeftAloneByPlanIsNeitherMissedNorUndone() {
        book = book.on(BACK);

        assertThat(review().unvisited()).hasSize(15).noneMatch(each -> each.cage()
                .equals("B3"));
        assertThat(review().notDone()).noneMatch(each -> each.cage().equals("B3"));
    }

    private Review review() {
        return Review.of(book.desk().room(), book.log(), LEAVES, LAST);
    }

    private Strip strip() {
        return review().strip();
    }

    private static String drawn(Strip strip) {
        return strip.rows().stream()
                .map(row -> row.cage() + " "
                        + row.cells().stream().map(StripTest::drawn).collect(Collectors.joining()))
                .collect(Collectors.joining(" | "));
    }

    private static String drawn(Strip.Cell cell) {
        return switch (cell.seen()) {
            case BY_SCAN -> "S";
            case BY_HAND -> "H";
            case NOBODY -> "-";
            case LEFT_ALONE -> "a";
            case NOT_YET -> "?";
            case NOT_EXPECTED -> ".";
            case EMPTY -> "e";
        };
    }
}
