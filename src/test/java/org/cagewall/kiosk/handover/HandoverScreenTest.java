package org.cagewall.kiosk.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.text.JTextComponent;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.Sat;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Absence;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Days away planned, changed and ended by touch, and what happened read and ticked. */
class HandoverScreenTest extends WithDaybook {

    @Test
    void daysAwayArePlannedByTouch() {
        Painted handover = handover(TextSize.NORMAL).png("handover-nothing").assertFit();
        handover.press("plan").png("handover-plan").assertFit();

        handover.press("days.2026-04-20").press("days.2026-04-28");
        handover.press("second.Joan").press("alone.A1").after(() -> handover.find("vet", JTextComponent.class)
                .setText("Bird vet 0555 0190"));
        handover.png("handover-plan-filled").assertFit().press("save");

        assertThat(book.desk().room().absences()).singleElement().satisfies(away -> {
            assertThat(away.from()).isEqualTo(LocalDate.of(2026, 4, 20));
            assertThat(away.to()).isEqualTo(LocalDate.of(2026, 4, 28));
            assertThat(away.sitter()).isEqualTo("Tomas");
            assertThat(away.second()).contains("Joan");
            assertThat(away.vet()).contains("Bird vet 0555 0190");
            assertThat(away.leaveAlone())
                    .containsExactly(book.desk().room().cage("A1").orElseThrow().id());
        });
        handover.png("handover-planned").assertFit();
        assertThat(text(handover)).contains("Bird vet 0555 0190", "Tomas, no phone number yet", "Left alone");
    }

    @Test
    void aPlanIsChangedAndTheDaysAwayAreEnded() {
        away();
        Painted handover = handover(TextSize.NORMAL).png("handover-running").assertFit();

        handover.press("change").press("last-day").press("days.2026-04-22").press("save");
        assertThat(book.desk().room().absences())
                .singleElement()
                .extracting(Absence::to)
                .isEqualTo(LocalDate.of(2026, 4, 22));

        handover.press("end").png("handover-end").press("answer.end");
        assertThat(book.desk().room().absences().get(0).ended()).contains(DAY);
        handover.png("handover-back").assertFit();
    }

    @ParameterizedTest
    @EnumSource
    void everyPageIsWholeAtEveryTextSize(TextSize size) {
        away();
        mixedDays();
        Painted handover = handover(size).assertFit();
        handover.press("tab.what-happened").png("handover-glance-" + size).assertFit();
        handover.press("read").png("handover-review-" + size).assertFit();
        handover.press("glance")
                .press("strip.A3")
                .png("handover-one-cage-" + size)
                .assertFit();
        handover.press("tab.going-away")
                .press("change")
                .png("handover-change-" + size)
                .assertFit();
        handover.press("back")
                .press("rehearse")
                .png("handover-rehearsal-" + size)
                .assertFit();
        handover.press("back").press("pack").png("handover-pack-" + size).assertFit();
    }

    @Test
    void whatHappenedIsReadLineByLine() {
        away();
        mixedDays();
        Painted handover = handover(TextSize.NORMAL).press("tab.what-happened").press("read");
        assertThat(text(handover)
                        .lines()
                        .filter(line -> SECTIONS.contains(line))
                        .distinct())
                .containsExactly(
                        "Reported different", "Not done", "Cages nobody looked at", "Calls", "Notes", "All else");
        long report = book.desk().room().unread().get(0).entry();

        handover.press("tick.entry." + report);

        assertThat(book.lines("entry-seen")).singleElement().asString().contains("\"entry\":" + report);
        assertThat(handover.maybe("tick.entry." + report)).isEmpty();
        handover.png("handover-read-one")
                .assertFit()
                .press("glance")
                .press("count.entries")
                .png("handover-entries");
    }

    @Test
    void allIsReadInOneTouch() {
        away();
        mixedDays();
        book.tell("{\"deed\":\"away-ended\",\"by\":\"Ines\"}");
        Painted handover = handover(TextSize.NORMAL);
        assertThat(text(handover))
                .contains(
                        "Away from 12 Apr to 13 Apr; planned until 20 Apr, so back 7 days early. Tomas looked after the birds.");

        handover.press("count.different")
                .press("all-read")
                .png("handover-all-read")
                .assertFit();

        assertThat(book.desk().room().unread()).isEmpty();
        assertThat(handover.maybe("all-read")).isEmpty();
        assertThat(book.lines("task-done"))
                .hasSize(5)
                .anyMatch(line -> line.contains("2026-04-14/A1/back"))
                .anyMatch(line -> line.contains("2026-04-12/A1/read-missed-tasks"))
                .anyMatch(line -> line.contains("2026-04-13/A1/read-missed-cages"));
        assertThat(handover.names()).noneMatch(name -> name.startsWith("tick."));
    }

    @Test
    void theStripShowsEachCageAndDayAndLeadsToWhatHappenedThere() {
        away();
        mixedDays();
        Painted handover = handover(TextSize.NORMAL)
                .press("tab.what-happened")
                .png("handover-glance")
                .assertFit();
        assertThat(text(handover))
                .contains(
                        "A3: 1 by scan, 1 by hand; something different on 12 Apr",
                        "B2: 0 by scan, 0 by hand; nobody looked on 12 Apr, 13 Apr",
                        "left alone by plan");

        handover.press("strip.A3").png("handover-one-cage").assertFit();
        assertThat(text(handover)).contains("A3, 12 Apr to 14 Apr", "puffed up").doesNotContain("The seed bin");
        long report = book.desk().room().unread().get(0).entry();

        handover.press("tick.entry." + report);

        assertThat(book.desk().room().unread()).isEmpty();
        assertThat(text(handover)).contains("A3, 12 Apr to 14 Apr");
        handover.press("glance");
        assertThat(handover.maybe("strip.A3")).isPresent();
    }

    @Test
    void aFortnightOfTwentySevenCagesIsSeenAtOnce() {
        StringBuilder lines = new StringBuilder("""
                {"deed":"wall-added","wall":"East wall","rows":3,"columns":7,"by":"Ines"}
                """);
        for (int place = 0; place < 21; place++) {
            lines.append(String.format(
                    "{\"deed\":\"cage-added\",\"cage\":\"%s%d\",\"wall\":\"East wall\",\"row\":%d,\"column\":%d,\"use\":\"stock\",\"by\":\"Ines\"}%n",
                    "CDE".charAt(place / 7), place % 7 + 1, place / 7 + 1, place % 7 + 1));
        }
        lines.append("""
                {"deed":"away-planned","from":"2026-04-14","to":"2026-04-27","sitter":"Tomas","leave-alone":["B3"],"by":"Ines"}
                """);
        book.tell(lines.toString());
        book = book.on(LocalDate.of(2026, 4, 28));
        book.tell(aFortnight());

        Painted handover = handover(TextSize.NORMAL).png("handover-fortnight").assertFit();

        assertThat(handover.maybe("glance.down")).as("nothing to scroll").isEmpty();
        assertThat(handover.names())
                .filteredOn(name -> name.startsWith("strip."))
                .hasSize(27);
        handover.press("read").png("handover-fortnight-lines").assertFit();
        assertThat(text(handover)).contains("Feed them and look (A1, A2, A3); Old food out (A2)");
    }

    @Test
    void aLongAbsenceIsTurnedInParts() {
        book.tell("""
                {"deed":"away-planned","from":"2026-04-14","to":"2026-08-10","sitter":"Tomas","by":"Ines"}
                """);
        book = book.on(LocalDate.of(2026, 8, 11));
        Painted handover = handover(TextSize.NORMAL).png("handover-long").assertFit();
        assertThat(text(handover)).contains("14 Apr to ", " to 10 Aug");

        handover.press("strip-part.3").png("handover-long-turned").assertFit();

        assertThat(handover.find("strip-part.3", AbstractButton.class).isSelected())
                .isTrue();
    }

    private static String aFortnight() {
        StringBuilder lines = new StringBuilder();
        for (int day = 14; day <= 27; day++) {
            for (int place = 0; place < 21; place++) {
                if ((day * 7 + place) % 3 > 0 && day != 19) {
                    lines.append(String.format(
                            "{\"deed\":\"check\",\"cage\":\"%s%d\",\"answer\":\"%s\",\"how\":\"scan\",\"when\":\"morning\",\"on\":\"2026-04-%d\",\"at\":\"07:%02d\",\"by\":\"Tomas\"}%n",
                            "CDE".charAt(place / 7),
                            place % 7 + 1,
                            day == 21 && place == 10 ? "different\",\"note\":\"puffed up" : "well",
                            day,
                            20 + place));
                }
            }
            for (int row = 1; row <= 3 && day % 5 != 0; row++) {
                lines.append(String.format(
                        "{\"deed\":\"row-checked\",\"wall\":\"East wall\",\"row\":%d,\"when\":\"evening\",\"on\":\"2026-04-%d\",\"at\":\"18:30\",\"by\":\"Tomas\"}%n",
                        row, day));
            }
            lines.append(String.format(
                    "{\"deed\":\"row-checked\",\"wall\":\"North wall\",\"row\":1,\"when\":\"morning\",\"on\":\"2026-04-%d\",\"at\":\"07:15\",\"by\":\"Tomas\"}%n",
                    day));
        }
        return lines.toString();
    }

    @Test
    void theLastLineThatIsTickedMakesTheDaysAwayRead() {
        away();
        book.tell("""
                {"deed":"row-checked","wall":"North wall","row":1,"when":"morning","on":"2026-04-13","at":"08:05","by":"Tomas"}
                {"deed":"away-ended","by":"Ines"}
                """);
        Painted handover = handover(TextSize.NORMAL).press("read");

        while (handover.names().stream().anyMatch(name -> name.startsWith("tick."))) {
            assertThat(book.lines("/back")).isEmpty();
            handover.press(handover.names().stream()
                    .filter(name -> name.startsWith("tick."))
                    .findFirst()
                    .orElseThrow());
        }

        assertThat(book.lines("/back")).hasSize(1);
        assertThat(text(handover)).contains("All is read");
        assertThat(text(handover(TextSize.NORMAL))).contains("No days away are planned");
    }

    @Test
    void whatWaitsNowLeadsToItsCage() {
        book.tell("""
                {"deed":"card-printed","cage":"A2","by":"Ines"}
                {"deed":"paired-up","cage":"A2","cock":"HB 24-006","hen":"HB 25-118","on":"2026-03-01","by":"Ines"}
                {"deed":"eggs-found","cage":"A2","count":2,"first":"2026-03-12","on":"2026-03-31","by":"Ines"}
                {"deed":"chick-hatched","cage":"A2","mark":"1","on":"2026-04-01","by":"Ines"}
                """);
        away();
        Painted handover = handover(TextSize.NORMAL).press("tab.what-happened").press("count.waiting");
        handover.png("handover-waiting").assertFit();
        assertThat(text(handover)).contains("Too late for a closed ring: chick 1", "1 card out of date");

        handover.press("go.waits.0");

        assertThat(handover.maybe("go.waits.0")).isEmpty();
    }

    @Test
    void anotherSitterAndALaterReturnAreEntriesThatSayWhatChanged() {
        away();
        Painted handover =
                handover(TextSize.NORMAL).press("change").press("sitter.Joan").press("save");

        assertThat(book.lines("away-changed"))
                .singleElement()
                .asString()
                .contains("\"sitter\":\"Joan\"")
                .doesNotContain("\"from\"", "\"to\"", "\"vet\"", "leave-alone");

        handover.press("change").press("last-day").press("days.2026-04-22").press("save");

        assertThat(book.lines("away-changed").get(0))
                .contains("\"to\":\"2026-04-22\"")
                .doesNotContain("sitter");
        assertThat(text(handover.press("tab.what-happened")))
                .contains(
                        "Away since 12 Apr, until 22 Apr; planned until 20 Apr.",
                        "Tomas from 12 Apr to 13 Apr, Joan from 14 Apr to 22 Apr");
    }

    @Test
    void anOwnerWhoIsHeldUpIsAwayForLonger() {
        away();
        book = book.on(LocalDate.of(2026, 4, 22));
        Painted handover = handover(TextSize.NORMAL)
                .press("tab.going-away")
                .png("handover-longer")
                .assertFit();
        assertThat(text(handover)).contains("You were to be away until Monday 20 April");

        handover.press("longer").press("days.2026-04-24").press("save");

        assertThat(book.desk().room().absences())
                .singleElement()
                .extracting(Absence::to)
                .isEqualTo(LocalDate.of(2026, 4, 24));
        assertThat(text(handover)).contains("I am back");
    }

    @Test
    void whatIsToBeReadyTurnsDoneByTouch() {
        ahead();
        Painted handover = handover(TextSize.NORMAL).png("handover-ready").assertFit();
        assertThat(text(handover)).contains("Ready to leave: 11 of 17 to see to", "Tomas will be at it about");

        handover.press("ready.keys").png("handover-ready-ticked").assertFit();
        assertThat(book.lines("ready-keys")).singleElement().asString().contains("task-done", "2026-04-20/A1");
        assertThat(text(handover)).contains("Keys, Tomas has a key", "Done", "10 of 17");

        handover.press("ready.keys").png("handover-ready-anew").press("answer.not-needed");
        assertThat(book.lines("ready-keys")).hasSize(2).first().asString().contains("task-not-done");
        assertThat(text(handover)).contains("Not needed");
    }

    @Test
    void aLineOfWhatIsToBeReadyLeadsWhereItIsSeenTo() {
        ahead();
        Painted handover = handover(TextSize.NORMAL);

        handover.press("ready.vet");

        assertThat(handover.maybe("save")).isPresent();
    }

    @Test
    void aSittersDayIsRehearsedAndNothingIsRecorded() {
        ahead();
        long head = book.desk().room().head();
        Painted handover = handover(TextSize.NORMAL).press("rehearse");
        handover.png("handover-rehearsal").assertFit();
        assertThat(text(handover))
                .contains(
                        "Rehearsal: nothing here is recorded",
                        "What Tomas will see on Monday 20 April",
                        "You should see: 1 or 2 birds, box shut",
                        "Walk past A1 to A3");

        handover.press("day-after").press("day-after");
        assertThat(text(handover)).contains("Wednesday 22 April");
        handover.press("back");

        assertThat(handover.maybe("rehearse")).isPresent();
        assertThat(book.desk().room().head()).isEqualTo(head);
    }

    @Test
    void thePackIsPutIntoAFile() throws java.io.IOException {
        ahead();
        Painted handover =
                handover(TextSize.NORMAL).press("pack").png("handover-pack").assertFit();
        assertThat(text(handover)).contains("The pack for Tomas, on paper", "9 days, a page each, to tick");

        handover.press("save-pack").png("handover-pack-saved").assertFit();

        Path file = book.desk().folder().path().resolve("pack-2026-04-14.pdf");
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(19);
        }
        assertThat(handover.find("saved", JLabel.class).getText()).contains("pack-2026-04-14.pdf");
        handover.press("save-pack").press("back");
        assertThat(file.resolveSibling("pack-2026-04-14-2.pdf")).isRegularFile();
        assertThat(handover.maybe("rehearse")).isPresent();
    }

    @Test
    void aSitterPrintsNoPack() {
        away();
        Painted handover = Sat.at(
                book,
                TextSize.NORMAL,
                "Tomas",
                new Destination.Handover(),
                (pen, stage) -> new HandoverScreen(book.desk(), pen, stage, stage, stage, WORDS));

        handover.press("pack").press("save-pack");

        assertThat(book.desk().folder().path().resolve("pack-2026-04-14.pdf")).doesNotExist();
        assertThat(text(handover)).contains("The pack is the owner's");
    }

    private void ahead() {
        book.tell("""
                {"deed":"away-planned","from":"2026-04-20","to":"2026-04-28","sitter":"Tomas","by":"Ines"}
                """);
    }

    @Test
    void aSitterPlansNothing() {
        Painted handover = Sat.at(
                book,
                TextSize.NORMAL,
                "Tomas",
                new Destination.Handover(),
                (pen, stage) -> new HandoverScreen(book.desk(), pen, stage, stage, stage, WORDS));

        handover.press("plan").press("save").png("handover-sitter");

        assertThat(book.desk().room().absences()).isEmpty();
        assertThat(text(handover)).contains("That was not recorded");
    }

    private static final java.util.Set<String> SECTIONS = java.util.Set.of(
            "Reported different",
            "Not done",
            "Cages nobody looked at",
            "Hatched",
            "Died",
            "Calls",
            "Notes",
            "All else",
            "What waits now");

    private void away() {
        book.tell("""
                {"deed":"away-planned","from":"2026-04-12","to":"2026-04-20","sitter":"Tomas","second":"Joan","vet":"Bird vet 0555 0190","leave-alone":["B3"],"by":"Ines"}
                """);
    }

    private void mixedDays() {
        book.tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"scan","when":"morning","on":"2026-04-12","at":"07:40","by":"Tomas"}
                {"deed":"check","cage":"A2","answer":"well","how":"hand","when":"morning","on":"2026-04-12","at":"07:44","by":"Tomas"}
                {"deed":"check","cage":"A3","answer":"different","how":"scan","when":"morning","signs":["puffed-up"],"note":"sits low","on":"2026-04-12","at":"07:50","by":"Tomas"}
                {"deed":"phoned","who":"Ines","about":"a sick bird","agreed":"keep it warm","on":"2026-04-12","at":"07:55","by":"Tomas"}
                {"deed":"row-checked","wall":"North wall","row":1,"when":"evening","on":"2026-04-12","at":"18:30","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-12/B1/morning","why":"I had no time","on":"2026-04-12","by":"Tomas"}
                {"deed":"row-checked","wall":"North wall","row":1,"when":"morning","on":"2026-04-13","at":"08:05","by":"Tomas"}
                {"deed":"noted","note":"The seed bin is half empty.","on":"2026-04-13","by":"Tomas"}
                {"deed":"check","cage":"B1","answer":"different","how":"hand","signs":["fighting"],"on":"2026-04-13","by":"Tomas"}
                """);
        long wrong = book.desk().room().head();
        book.tell("{\"deed\":\"struck-out\",\"entry\":" + wrong + ",\"why\":\"the wrong cage\",\"by\":\"Tomas\"}");
    }

    private Painted handover(TextSize size) {
        return Sat.at(
                book,
                size,
                "Ines",
                new Destination.Handover(),
                (pen, stage) -> new HandoverScreen(book.desk(), pen, stage, stage, stage, WORDS));
    }

    private static String text(Painted painted) {
        return painted.all().stream()
                .map(part -> part instanceof JLabel label
                        ? label.getText()
                        : part instanceof AbstractButton button
                                ? button.getAccessibleContext().getAccessibleName()
                                : "")
                .collect(Collectors.joining("\n"));
    }
}
