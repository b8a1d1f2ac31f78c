package org.cagewall.files;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Arrays;
import java.util.Date;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.cagewall.desk.Daybook;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A room's days in a phone's calendar, read back by another library that reads RFC 5545. */
class CalendarTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 14);
    private static final Instant STAMP = Instant.parse("2026-04-14T07:40:00Z");
    private static final Words WORDS = Words.english();

    @TempDir
    Path folder;

    private Daybook book;

    @BeforeEach
    void aNestAndDaysAway() {
        book = Daybook.furnished(folder.resolve("room"), DAY).tell("""
                {"deed":"away-planned","from":"2026-06-14","to":"2026-06-28","sitter":"Tomas","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-10","by":"Ines"}
                {"deed":"egg-laid","cage":"A1","on":"2026-04-12","by":"Ines"}
                {"deed":"check","cage":"B1","answer":"different","how":"hand","signs":["puffed-up"],"by":"Tomas"}
                """);
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** RFC 5545, 3.1: lines end in CR LF and hold at most 75 octets; 3.6: one calendar with product and version. */
    @Test
    void theFileIsWrittenAsTheStandardAsks() {
        book.tell(
                "{\"deed\":\"person-added\",\"person\":\"Zo\u00eb with a very long name, of the club\",\"role\":\"sitter\",\"by\":\"Ines\"}");
        book.tell(
                "{\"deed\":\"away-planned\",\"from\":\"2026-07-14\",\"to\":\"2026-07-28\",\"sitter\":\"Zo\u00eb with a very long name, of the club\",\"by\":\"Ines\"}");
        String text = text();

        assertThat(text)
                .startsWith("BEGIN:VCALENDAR\r\n")
                .endsWith("END:VCALENDAR\r\n")
                .contains("\r\nVERSION:2.0\r\n", "PRODID:");
        assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
        assertThat(Arrays.stream(text.split("\r\n")))
                .allMatch(line -> line.getBytes(StandardCharsets.UTF_8).length <= 75);
        assertThat(events().values().stream().map(CalendarTest::summary))
                .contains("Away, Zo\u00eb with a very long name, of the club looks after the birds");
    }

    /** RFC 5545, 3.8.2.4: VALUE=DATE makes a whole day; 3.6.1: the day of DTEND is no longer part of it. */
    @Test
    void everythingIsOfWholeDays() {
        assertThat(events().values()).isNotEmpty().allSatisfy(event -> {
            assertThat(event.getDateStart().getValue().hasTime()).isFalse();
            assertThat(event.getDateEnd().getValue().hasTime()).isFalse();
        });
        VEvent away = called("Away, Tomas looks after the birds");
        assertThat(day(away.getDateStart().getValue())).isEqualTo(LocalDate.of(2026, 6, 14));
        assertThat(day(away.getDateEnd().getValue())).isEqualTo(LocalDate.of(2026, 6, 29));
        assertThat(text()).contains("DTSTART;VALUE=DATE:20260614\r\n", "DTEND;VALUE=DATE:20260629\r\n");
    }

    /** Sat from the second egg, 12 April, 18 days: 30 April, from 29 April to 3 May (docs, the arithmetic of dates). */
    @Test
    void aWindowStandsOnItsExpectedDayAndSaysTheOthersInWords() {
        VEvent hatch = called("A1: egg 2 hatches");

        assertThat(day(hatch.getDateStart().getValue())).isEqualTo(LocalDate.of(2026, 4, 30));
        assertThat(hatch.getDescription().getValue()).isEqualTo("Expected between 29 April 2026 and 3 May 2026.");
    }

    @Test
    void theOwnersOpenTasksAreThereAndWhatIsDoneEveryDayIsNot() {
        assertThat(events().values().stream().map(CalendarTest::summary))
                .contains("B1: Reported different")
                .noneMatch(summary -> summary.contains("Look at the birds"));
    }

    /** RFC 5545, 3.8.4.7: the UID is the same as long as it is the same event; 3.8.7.4: SEQUENCE rises when it changes. */
    @Test
    void aSecondExportAfterANewEntryHasTheSameNamesAndALaterSequence() {
        Map<String, VEvent> before = events();
        book.tell("""
                {"deed":"sitting","cage":"A1","on":"2026-04-13","by":"Ines"}
                """);
        Map<String, VEvent> after = events();

        assertThat(after.keySet()).containsAll(before.keySet());
        assertThat(before.keySet()).allMatch(uid -> uid.matches("[a-z0-9-]+@[0-9A-Z]{3}\\.cagewall"));
        after.forEach((uid, event) -> assertThat(event.getSequence().getValue())
                .isEqualTo((int) book.desk().room().head()));
        assertThat(before.values())
                .allMatch(event ->
                        event.getSequence().getValue() < book.desk().room().head());
        VEvent hatch = called("A1: egg 2 hatches");
        assertThat(day(before.get(hatch.getUid().getValue()).getDateStart().getValue()))
                .isEqualTo(LocalDate.of(2026, 4, 30));
        assertThat(day(hatch.getDateStart().getValue())).isEqualTo(LocalDate.of(2026, 5, 1));
    }

    @Test
    void theNextDayTheNamesAreTheSame() {
        Map<String, VEvent> before = events();
        book = book.on(DAY.plusDays(1));

        assertThat(events().keySet()).containsAll(before.keySet());
    }

    @Test
    void anEggThatIsMovedKeepsItsName() {
        String before = called("A1: egg 2 hatches").getUid().getValue();
        book.tell(
                "{\"deed\":\"egg-moved\",\"cage\":\"A1\",\"mark\":\"2\",\"to\":\"A2\",\"sure\":true,\"by\":\"Ines\"}");

        assertThat(summary(events().get(before))).startsWith("A2: egg A");
    }

    /** RFC 5545, 3.8.1.11: what is over is cancelled, under the same name and in a later revision. */
    @Test
    void whatIsOverIsCancelledInTheNextFileAndSaysSo() {
        String first = text();
        VEvent hatch = called("A1: egg 2 hatches");
        book.tell("{\"deed\":\"egg-removed\",\"cage\":\"A1\",\"mark\":\"2\",\"why\":\"broken\",\"by\":\"Ines\"}");

        String second = textAfter(first);
        VEvent over = events(second).get(hatch.getUid().getValue());

        assertThat(summary(over)).isEqualTo("Over: A1: egg 2 hatches");
        assertThat(over.getStatus().isCancelled()).isTrue();
        assertThat(over.getSequence().getValue())
                .isGreaterThan(hatch.getSequence().getValue());
        assertThat(over.getDateStart().getValue())
                .isEqualTo(hatch.getDateStart().getValue());
        assertThat(events(second).values().stream()
                        .filter(event -> event.getStatus() == null)
                        .map(CalendarTest::summary))
                .containsAll(
                        events().values().stream().map(CalendarTest::summary).toList());
    }

    @Test
    void whatIsOverAndComesBackIsNoLongerCancelledAndOfALaterRevision() {
        String first = text();
        String uid = called("A1: egg 2 hatches").getUid().getValue();
        book.tell("{\"deed\":\"egg-removed\",\"cage\":\"A1\",\"mark\":\"2\",\"why\":\"broken\",\"by\":\"Ines\"}");
        String second = textAfter(first);
        book.tell("{\"deed\":\"struck-out\",\"entry\":" + book.desk().room().head()
                + ",\"why\":\"wrong egg\",\"by\":\"Ines\"}");

        VEvent back = events(textAfter(second)).get(uid);

        assertThat(summary(back)).isEqualTo("A1: egg 2 hatches");
        assertThat(back.getStatus()).isNull();
        assertThat(back.getSequence().getValue())
                .isGreaterThan(events(second).get(uid).getSequence().getValue());
    }

    @Test
    void theSameRecordOnTheSameDayMakesTheSameFileAgain() {
        String first = text();

        assertThat(textAfter(first)).isEqualTo(first);
    }

    /** Nothing is recorded, but the day of a task has gone by: the revision rises all the same. */
    @Test
    void aDayThatGoesByIsANewRevisionWhereItChangesAnything() {
        String first = text();
        book = book.on(DAY.plusDays(300));

        String later = textAfter(first);

        assertThat(events(later)).isNotEqualTo(events(first));
        assertThat(events(later).values().stream()
                        .map(event -> event.getSequence().getValue()))
                .containsOnly((int) book.desk().room().head() + 1);
    }

    /** Sixty days after its last day nothing is told of it any more; common practice, no source. */
    @Test
    void whatHasLongBeenOverIsLeftOut() {
        String first = text();
        book.tell("{\"deed\":\"egg-removed\",\"cage\":\"A1\",\"mark\":\"2\",\"why\":\"broken\",\"by\":\"Ines\"}");
        String second = textAfter(first);

        book = book.on(LocalDate.of(2026, 6, 29));
        assertThat(second = textAfter(second)).contains("SUMMARY:Over: A1: egg 2 hatches");
        book = book.on(LocalDate.of(2026, 6, 30));
        assertThat(textAfter(second)).doesNotContain("Over: A1: egg 2 hatches");
    }

    @Test
    void aFileOfAnotherRoomOrOfNoRoomIsNotCarriedOn() {
        String other = text().replace("@" + book.desk().room().code() + ".", "@---.");

        assertThat(events(textAfter(other))).containsOnlyKeys(events().keySet());
        assertThat(events(textAfter("BEGIN:VCALENDAR\r\nnonsense"))).containsOnlyKeys(events().keySet());
        assertThat(textAfter("BEGIN:VCALENDAR\r\nnonsense")).isEqualTo(text());
    }

    /** RFC 5545, 3.3.8: an integer ends at 2147483647. */
    @Test
    void afterTheHighestRevisionACalendarIsStillWritten() {
        String highest = text().replaceAll("SEQUENCE:[0-9]+", "SEQUENCE:2147483647");
        book.tell("{\"deed\":\"egg-removed\",\"cage\":\"A1\",\"mark\":\"2\",\"why\":\"broken\",\"by\":\"Ines\"}");

        assertThat(events(textAfter(highest)).values())
                .isNotEmpty()
                .allMatch(event -> event.getSequence().getValue() == Integer.MAX_VALUE);
    }

    @Test
    void theFileThatLiesInTheFolderIsTheOneBefore() throws Exception {
        String uid = called("A1: egg 2 hatches").getUid().getValue();
        write();
        book.tell("{\"deed\":\"egg-removed\",\"cage\":\"A1\",\"mark\":\"2\",\"why\":\"broken\",\"by\":\"Ines\"}");

        assertThat(write()).isEqualTo(Calendar.Came.WRITTEN);
        assertThat(events(Files.readString(folder.resolve(Calendar.FILE)))
                        .get(uid)
                        .getStatus()
                        .isCancelled())
                .isTrue();
    }

    private Calendar.Came write() throws Exception {
        return Calendar.write(folder, book.desk().room(), book.desk().today(), STAMP, WORDS::say);
    }

    /** RFC 5545, 3.8.7.2. */
    @Test
    void theStampIsTheOneHandedIn() {
        assertThat(events().values())
                .allMatch(
                        event -> event.getDateTimeStamp().getValue().toInstant().equals(STAMP));
    }

    private VEvent called(String summary) {
        return events().values().stream()
                .filter(event -> summary(event).equals(summary))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + summary + " in " + text()));
    }

    private static String summary(VEvent event) {
        return event.getSummary().getValue();
    }

    private static LocalDate day(Date date) {
        return date.toInstant().atZone(ZoneId.systemDefault()).toLocalDate();
    }

    private Map<String, VEvent> events() {
        return events(text());
    }

    /** By their names, none of which may come twice. */
    private static Map<String, VEvent> events(String text) {
        List<ICalendar> calendars = Biweekly.parse(text).all();
        assertThat(calendars).hasSize(1);
        return calendars.get(0).getEvents().stream()
                .collect(Collectors.toMap(event -> event.getUid().getValue(), Function.identity()));
    }

    private String text() {
        return textAfter("");
    }

    private String textAfter(String before) {
        return Calendar.of(book.desk().room(), book.desk().today(), STAMP, before, WORDS::say)
                .orElseThrow();
    }
}
