package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.Desk;
import org.cagewall.desk.HandClock;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.LogEntry;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.DailyList;
import org.cagewall.tasks.Kind;
import org.cagewall.tasks.Task;
import org.junit.jupiter.api.Test;

/** A sitter's three days and the owner's review of them, in a real window, read back from the database. */
@RequiresDisplay
class SitterJourneyTest extends InAWindow {

    private final HandClock clock = new HandClock();

    @Override
    void make(Path room) {
        Desk before = TestDesk.furnished(room);
        TestDesk.tell(before, """
                {"deed":"away-planned","from":"2026-04-14","to":"2026-04-28","sitter":"Tomas","second":"Club friend","vet":"Bird vet 0555 0190","by":"Ines"}
                """);
        ZoneId zone = before.room().settings().zone();
        before.close();
        clock.to(LocalTime.of(8, 0), zone);
    }

    @Override
    Clocks clocks() {
        return new Clocks(clock, Optional.empty());
    }

    @Test
    void threeDaysOfTheSitterAndTheOwnersReview() {
        theFirstDayAllIsWell();
        theNextDaySomethingIsDifferent();
        theThirdDaySomethingIsNotDone();
        theOwnerReadsWhatHappened();
        readBack();
    }

    @Test
    void whatHappenedOpensByItselfOnTheDayAfterTheLastAndWhatWaitsLeadsToItsCage() {
        live.read("Good morning, Tomas").press("act.all-well");
        live.waitUntil("a cage is done", () -> checksOf(0) == 1);

        clock.pass(Duration.ofDays(15));

        live.see("strip.A1").read("as planned").picture("return-1-review");
        live.press("count.waiting").picture("return-2-waits");
        live.press("go.waits.0").see("all-well").picture("return-3-cage");
        live.press("person").press("pick.Ines").read("Ines, owner");
        live.see("all-well");
        live.press("nav.handover").press("read").press("all-read").read("All is read");
        leaveAndReopen();

        assertThat(TestDesk.newest(desk, 200))
                .anyMatch(entry ->
                        entry.deed().equals("task-done") && entry.line().contains("/back"))
                .anyMatch(entry -> entry.line().contains("read-missed-cages"));
    }

    private void theFirstDayAllIsWell() {
        live.read("Good morning, Tomas").picture("sitter-1-morning");
        for (long open = openMornings(); open > 0; open--) {
            long left = open - 1;
            live.waitUntil("the next line can be answered", () -> feeding().isPresent());
            live.press(feeding().orElseThrow()).waitUntil(left + " lines are left", () -> openMornings() == left);
        }
        long looks = checksOf(0);
        live.read("The morning is done").picture("sitter-2-all-done");
        live.press("act.evening").press("act.row-well").press("answer.same");
        live.waitUntil("the first row is walked", () -> checksOf(0) > looks);
    }

    private void theNextDaySomethingIsDifferent() {
        clock.pass(Duration.ofDays(1));
        live.waitUntil("it is the next day", () -> desk.room().day().equals(TestDesk.TODAY.plusDays(1)));
        live.press("act.different").press("signs.puffed-up").press("to-questions");
        live.press("eating.no")
                .press("upright.no")
                .press("hurt.no")
                .picture("sitter-2-questions")
                .press("record");
        live.waitUntil("the report is kept", () -> checksOf(1) == 1);
        live.picture("sitter-3-different");
        live.press("phoned").press("phoned.Ines").picture("sitter-4-phone");
    }

    private void theThirdDaySomethingIsNotDone() {
        clock.pass(Duration.ofDays(1));
        live.waitUntil("it is the third day", () -> desk.room().day().equals(TestDesk.TODAY.plusDays(2)));
        live.press("nav.today")
                .press("act.not-done")
                .press("why.no-time")
                .press("dishes.filled")
                .press("record");
        live.waitUntil("the reason is kept", () -> !desk.room().outcomes().isEmpty());
    }

    private void theOwnerReadsWhatHappened() {
        clock.pass(Duration.ofDays(1));
        live.waitUntil("the owner is back", () -> desk.room().day().equals(TestDesk.TODAY.plusDays(3)));
        live.press("person").press("pick.Ines").press("answer.owner").read("Ines, owner");
        live.press("nav.handover").press("end").press("answer.end");
        live.waitUntil(
                "the days away are over",
                () -> desk.room().absences().get(0).ended().isPresent());
        live.read("planned until 28 Apr").picture("sitter-5-review");
        live.press("strip.A2").read("Open A2").picture("sitter-6-one-cage");
        live.press("glance").press("count.different").read("Reported different");
        live.press("all-read");
        live.waitUntil("all is read", () -> desk.room().unread().isEmpty());
    }

    private void readBack() {
        leaveAndReopen();

        List<LogEntry> log = TestDesk.newest(desk, 200);
        assertThat(log)
                .filteredOn(
                        entry -> entry.answer().filter(Answer.DIFFERENT::equals).isPresent()
                                && entry.by().equals("Tomas"))
                .singleElement()
                .satisfies(report -> {
                    assertThat(report.day()).isEqualTo(TestDesk.TODAY.plusDays(1));
                    assertThat(report.seen()).isTrue();
                });
        assertThat(log)
                .anyMatch(entry ->
                        entry.deed().equals("task-not-done") && entry.by().equals("Tomas"));
        assertThat(log)
                .anyMatch(
                        entry -> entry.deed().equals("away-ended") && entry.by().equals("Ines"));
    }

    /** A4 was looked at before the owner left. */
    /** A cage of which something different was reported is answered by Done, any other by All well. */
    private Optional<String> feeding() {
        return Stream.of("act.all-well", "act.done").filter(live::canPress).findFirst();
    }

    private long openMornings() {
        return DailyList.of(desk.room(), TestDesk.TODAY, Audience.SITTER).stream()
                .filter(task -> task.kind() == Kind.MORNING && task.state() == Task.State.OPEN)
                .count();
    }

    private long checksOf(int day) {
        return desk.room().visits().stream()
                .filter(visit -> visit.person().equals("Tomas") && visit.day().equals(TestDesk.TODAY.plusDays(day)))
                .count();
    }
}
