package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.cagewall.desk.Daybook;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the owner reads after some days away, from a real record. */
class ReviewTest {

    private static final LocalDate LEAVES = LocalDate.of(2026, 4, 10);
    private static final LocalDate BACK = LocalDate.of(2026, 4, 13);
    private static final Words WORDS = Words.english();

    @TempDir
    Path folder;

    private Daybook book;

    @BeforeEach
    void aSitterHasThreeDays() {
        book = Daybook.furnished(folder.resolve("room"), LEAVES).tell("""
                {"deed":"away-planned","from":"2026-04-10","to":"2026-04-12","sitter":"Tomas","by":"Ines"}
                """);
    }

    @AfterEach
    void close() {
        book.close();
    }

    @Test
    void whatIsMostUrgentComesFirstAndNothingTwice() {
        tellOf(LEAVES);
        book = book.on(BACK).tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"scan","when":"morning","signs":["puffed-up"],"on":"2026-04-11","at":"07:40","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-11/A2/morning","why":"no time","on":"2026-04-11","by":"Tomas"}
                {"deed":"phoned","who":"Ines","about":"A1 puffed up","agreed":"keep warm","on":"2026-04-11","by":"Tomas"}
                {"deed":"bird-left","bird":"HB 24-006","how":"died","on":"2026-04-11","by":"Tomas"}
                {"deed":"noted","note":"Lights were off","on":"2026-04-11","by":"Tomas"}
                """);

        Review review = review();

        assertThat(review.different()).singleElement().satisfies(item -> {
            assertThat(item.cages()).containsExactly("A1");
            assertThat(item.by()).isEqualTo("Tomas");
            assertThat(item.how().map(how -> WORDS.say("word.how." + how.name().toLowerCase())))
                    .contains("by scan");
            assertThat(item.read()).isFalse();
        });
        assertThat(review.notDone())
                .filteredOn(undone -> undone.said().isPresent())
                .singleElement()
                .matches(undone -> undone.task().equals("2026-04-11/A2/morning"));
        assertThat(review.phoned()).hasSize(1);
        assertThat(review.deaths()).hasSize(1);
        assertThat(review.births()).isEmpty();
        assertThat(review.entries().stream().map(Item::deed))
                .doesNotContain("phoned", "bird-left", "task-not-done")
                .contains("noted", "check", "row-checked");
    }

    @Test
    void aReadingPastALimitStandsUnderWhatWasDifferent() {
        book = book.on(BACK).tell("""
                {"deed":"room-read","high":29.5,"low":18,"on":"2026-04-10","by":"Tomas"}
                {"deed":"room-read","high":30,"on":"2026-04-11","by":"Tomas"}
                {"deed":"room-read","low":4.5,"on":"2026-04-12","by":"Tomas"}
                """);

        assertThat(review().different().stream().map(Item::what).map(WORDS::say))
                .containsExactly("thermometer read, 30.0 C", "thermometer read, coldest 4.5 C");
        assertThat(review().entries().stream().map(Item::deed)).containsOnlyOnce("room-read");
    }

    @Test
    void chicksThatHatchedDiedOrAreMissingAreToldOfOnTheirOwn() {
        book = book.on(BACK).tell("""
                {"deed":"paired-up","cage":"A2","cock":"HB 24-006","hen":"HB 25-118","on":"2026-03-10","by":"Ines"}
                {"deed":"eggs-found","cage":"A2","count":3,"first":"2026-03-22","on":"2026-04-09","by":"Ines"}
                {"deed":"chick-hatched","cage":"A2","mark":"1","on":"2026-04-10","by":"Tomas"}
                {"deed":"chick-hatched","cage":"A2","mark":"2","on":"2026-04-11","by":"Tomas"}
                {"deed":"chick-died","cage":"A2","mark":"1","likely":"cold","on":"2026-04-11","by":"Tomas"}
                {"deed":"chick-missing","cage":"A2","mark":"2","on":"2026-04-12","by":"Tomas"}
                """);

        Review review = review();

        assertThat(review.births().stream().map(Item::day)).containsExactly(LEAVES, LEAVES.plusDays(1));
        assertThat(review.deaths().stream().map(Item::deed)).containsExactly("chick-died", "chick-missing");
        assertThat(review.deaths()).allMatch(item -> item.cages().equals(List.of("A2")));
        assertThat(review.entries().stream().map(Item::deed)).doesNotContain("chick-hatched", "chick-died");
    }

    @Test
    void aCageThatNobodyLookedAtIsWorkedOutForEachDayThatIsOver() {
        tellOf(LEAVES);
        book = book.on(BACK).tell("""
                {"deed":"row-checked","wall":"North wall","row":1,"when":"morning","on":"2026-04-11","by":"Tomas"}
                """);

        assertThat(review().unvisited().stream().map(each -> each.day().getDayOfMonth() + " " + each.cage()))
                .containsExactly("11 B1", "11 B2", "11 B3", "12 A1", "12 A2", "12 A3", "12 B1", "12 B2", "12 B3");
    }

    @Test
    void aTaskThatNobodyAnsweredIsNotDoneUnlessItsCageWasNotVisitedAtAll() {
        tellOf(LEAVES);
        book = book.on(LEAVES.plusDays(1));

        assertThat(Review.of(book.desk().room(), book.log(), LEAVES, LEAVES).notDone().stream()
                        .map(Undone::task))
                .containsExactly("2026-04-10/A2/evening-food");
        assertThat(review().unvisited()).as("today is not over yet").isEmpty();
    }

    @Test
    void aCageThatWasEmptyOnThoseDaysLeftNothingUndoneThoughABirdLivesThereNow() {
        book.tell("""
                {"deed":"wall-added","wall":"East wall","rows":1,"columns":1,"by":"Ines"}
                {"deed":"cage-added","cage":"C1","wall":"East wall","row":1,"column":1,"use":"stock","by":"Ines"}
                {"deed":"row-checked","wall":"East wall","row":1,"when":"evening","on":"2026-04-10","by":"Tomas"}
                """);
        tellOf(LEAVES);
        book = book.on(BACK).tell("""
                {"deed":"bird-moved","bird":"HB 24-006","to":"C1","on":"2026-04-13","by":"Ines"}
                """);

        assertThat(review().notDone()).isNotEmpty().noneMatch(undone -> undone.cage()
                .equals("C1"));
    }

    @Test
    void whatWasDoneAfterAllIsNotAmongTheUndone() {
        book = book.on(BACK).tell("""
                {"deed":"task-not-done","task":"2026-04-11/A1/morning","why":"no time","on":"2026-04-11","by":"Tomas"}
                {"deed":"check","cage":"A1","answer":"well","how":"hand","when":"morning","on":"2026-04-11","by":"Tomas"}
                """);

        assertThat(review().notDone().stream().map(Undone::task)).doesNotContain("2026-04-11/A1/morning");
    }

    @Test
    void aStruckEntryIsShownAsStruckAndCountsForNothing() {
        book = book.on(LEAVES.plusDays(1)).tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"hand","on":"2026-04-10","signs":["other"],"by":"Tomas"}
                """);
        long entry = book.desk().room().head();
        book.tell("{\"deed\":\"struck-out\",\"entry\":" + entry + ",\"why\":\"wrong cage\",\"by\":\"Tomas\"}");

        Review review = review();

        assertThat(review.different()).singleElement().satisfies(item -> {
            assertThat(item.isStruck()).isTrue();
            assertThat(item.strike().map(strike -> strike.why())).contains("wrong cage");
        });
        assertThat(review.unvisited()).contains(new Unvisited("A1", LEAVES, false));
    }

    @Test
    void anEntryThatTheOwnerHasReadIsTicked() {
        book = book.on(BACK).tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"hand","on":"2026-04-12","signs":["other"],"by":"Tomas"}
                """);
        long entry = book.desk().room().head();
        book.tell("{\"deed\":\"entry-seen\",\"entry\":" + entry + ",\"by\":\"Ines\"}");

        assertThat(review().different()).singleElement().matches(Item::read);
        assertThat(review().entries().stream().map(Item::deed)).doesNotContain("entry-seen");
    }

    @Test
    void whatNobodyRecordedIsTickedByItsDay() {
        tellOf(LEAVES);
        book = book.on(BACK);
        assertThat(review().unvisited()).hasSize(12).noneMatch(Unvisited::read);

        tick(Missed.CAGES, LEAVES.plusDays(1));

        assertThat(review().unvisited()).filteredOn(Unvisited::read).hasSize(6).allMatch(each -> each.day()
                .equals(LEAVES.plusDays(1)));
        assertThat(review().notDone()).isNotEmpty().noneMatch(Undone::read);

        tick(Missed.TASKS, LEAVES);

        assertThat(review().notDone()).filteredOn(Undone::read).isNotEmpty().allMatch(each -> each.day()
                .equals(LEAVES));
    }

    private void tick(Missed missed, LocalDate day) {
        String task = missed.task(book.desk().room(), day).orElseThrow();
        book.tell("{\"deed\":\"task-done\",\"task\":\"" + task + "\",\"by\":\"Ines\"}");
    }

    @Test
    void allThatWasRecordedOfACageStandsTogetherInOrder() {
        book = book.on(BACK).tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"scan","when":"morning","on":"2026-04-11","signs":["other"],"by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-10/A1/morning","why":"no time","on":"2026-04-10","by":"Tomas"}
                {"deed":"check","cage":"A2","answer":"well","how":"hand","on":"2026-04-11","by":"Tomas"}
                {"deed":"row-checked","wall":"North wall","row":1,"when":"evening","on":"2026-04-12","by":"Tomas"}
                """);

        assertThat(review().of("A1").stream().map(Item::deed)).containsExactly("task-not-done", "check", "row-checked");
    }

    @Test
    void whereNobodyWasAwayEveryDayAskedForCountsFromTheFirstEntryOn() {
        LocalDate may = LocalDate.of(2026, 5, 4);
        book = book.on(may).tell("""
                {"deed":"row-checked","wall":"North wall","row":1,"on":"2026-05-02","by":"Ines"}
                """);

        Review review = Review.of(book.desk().room(), book.log(), may.minusDays(10), may);

        assertThat(review.unvisited().stream().map(Unvisited::day).distinct())
                .containsExactly(may.minusDays(2), may.minusDays(1));
    }

    private Review review() {
        return Review.of(book.desk().room(), book.log(), LEAVES, LocalDate.of(2026, 4, 12));
    }

    /** A whole day's round, but for the old soft food. */
    private void tellOf(LocalDate day) {
        for (String cage : List.of("A1", "A2", "A3", "B1", "B2", "B3")) {
            book.tell("{\"deed\":\"check\",\"cage\":\"" + cage + "\",\"answer\":\"well\",\"how\":\"hand\","
                    + "\"when\":\"morning\",\"on\":\"" + day + "\",\"by\":\"Tomas\"}");
        }
        for (int row = 1; row <= 2; row++) {
            book.tell("{\"deed\":\"row-checked\",\"wall\":\"North wall\",\"row\":" + row
                    + ",\"when\":\"evening\",\"on\":\"" + day + "\",\"by\":\"Tomas\"}");
        }
    }
}
