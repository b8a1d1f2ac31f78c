package org.cagewall.kiosk.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.util.List;
import java.util.stream.Collectors;
import javax.swing.AbstractButton;
import javax.swing.JLabel;
import javax.swing.SwingUtilities;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.Sat;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.shell.Breadth;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.shell.Screens;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Room;
import org.cagewall.tasks.Audience;
import org.cagewall.tasks.ReadingGrade;
import org.cagewall.text.Words;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The day's list, touched by a sitter and by an owner, and read back from the record. */
class TodayScreenTest extends WithDaybook {

    private final Halfway<TodayDraft> halfway = new Halfway<>();

    @BeforeEach
    void away() {
        inesIsAway();
    }

    @Test
    void allWellIsRecordedByHandAndTheNextCageTakesItsPlace() {
        Painted today = sitter(TextSize.NORMAL).png("today-sitter").assertFit();

        today.press("act.all-well");

        assertThat(book.lines("\"check\""))
                .first()
                .asString()
                .contains("\"cage\":\"A1\"", "\"well\"", "\"hand\"", "\"morning\"", "\"by\":\"Tomas\"");
        assertThat(today.names()).contains("row.2026-04-14/A1/morning").doesNotContain("row.2026-04-14/A2/morning");
        today.press("act.all-well").png("today-sitter-2").assertFit();
        assertThat(book.lines("\"check\"")).hasSize(2);
    }

    @ParameterizedTest
    @EnumSource
    void theListIsWholeAtEveryTextSize(TextSize size) {
        Painted list = sitter(size).png("today-" + size).assertFit();
        at(size, "Ines").png("today-owner-" + size).assertFit();

        list.press("safety").png("today-safety-" + size).assertFit();
    }

    @Test
    void inTheQuietHoursTheListIsTheSameAndDim() {
        Sat.at(
                        book,
                        Light.QUIET,
                        TextSize.NORMAL,
                        "Tomas",
                        new Destination.Today(),
                        (pen, stage) -> new TodayScreen(
                                book.desk(),
                                pen,
                                stage,
                                stage,
                                WORDS,
                                Breadth.WHOLE,
                                new Halfway<>(),
                                new Destination.Today()))
                .png("today-quiet")
                .assertFit();
    }

    @Test
    void somethingDifferentIsToldByTouchAndShowsWhomToPhone() {
        Painted today = sitter(TextSize.NORMAL).press("act.different");
        today.png("today-different").assertFit();

        today.press("signs.puffed-up").press("signs.on-floor").press("to-questions");
        today.png("today-questions")
                .assertFit()
                .press("eating.yes")
                .press("hurt.no")
                .press("record");

        assertThat(book.lines("\"check\""))
                .first()
                .asString()
                .contains("\"different\"", "\"on-floor\",\"puffed-up\",\"eating\",\"not-hurt\"", "\"by\":\"Tomas\"");
        today.png("today-phone-now").assertFit();
        assertThat(text(today)).contains("Stop. Phone now.", "0555 0142");
        today.press("go-on").png("today-after-different").assertFit();
        assertThat(text(today)).contains("You told of this cage. Does it have food and water now?");
        assertThat(text(today.press("act.done"))).contains("Different");
    }

    @ParameterizedTest
    @ValueSource(strings = {"bleeding", "gasping", "straining"})
    void aBirdThatBleedsGaspsOrStrainsIsPhonedAboutAtOnceAndTheQuestionsComeAfter(String sign) {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs." + sign)
                .press("to-questions");

        assertThat(text(today)).contains("Stop. Phone now.", "0555 0142");
        assertThat(book.lines("\"check\"")).first().asString().contains("\"" + sign + "\"");
        today.png("today-" + sign).assertFit();

        today.press("say-more").press("eating.yes").press("record");

        assertThat(book.lines("\"check\"").stream()).anyMatch(line -> line.contains("\"" + sign + "\",\"eating\""));
        assertThat(text(today.press("go-on")))
                .contains("Fill seed and water, but only if you can reach them with ease.")
                .doesNotContain("Tip the husks");
    }

    @ParameterizedTest
    @EnumSource
    void theThreeQuestionsAreWholeAtEveryTextSize(TextSize size) {
        Painted today =
                sitter(size).press("act.different").press("signs.puffed-up").press("to-questions");
        today.png("today-questions-" + size).assertFit().press("upright.no").press("record");
        today.png("today-phone-now-" + size).assertFit();
    }

    @Test
    void anAnswerThatCannotWaitPutsFirstWhomTheOwnerNamedForAnIllBird() {
        book.tell("{\"deed\":\"room-set\",\"ill-first\":\"vet\",\"by\":\"Ines\"}");
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.other")
                .press("to-questions");

        today.press("eating.yes").press("upright.yes").press("hurt.yes").press("record");

        assertThat(book.lines("\"check\"")).first().asString().contains("\"hurt\"");
        String said = text(today.png("today-vet-first").assertFit());
        assertThat(said).contains("Stop. Phone now.").containsSubsequence("0555 0190", "0555 0142");
        today.press("phoned");
    }

    @ParameterizedTest
    @EnumSource
    void goOnRecordItAndIPhonedNeverLieOnOneAnothersPlace(TextSize size) {
        Painted today = sitter(size).press("act.different").press("signs.on-floor");
        Rectangle goOn = place(today, "to-questions");
        today.press("to-questions");
        Rectangle record = place(today, "record");
        today.press("record").png("today-steps-" + size).assertFit();
        Rectangle phoned = place(today, "phoned");
        Rectangle toTheList = place(today, "go-on");

        List<Rectangle> all = List.of(goOn, record, phoned, toTheList);
        assertThat(all).allSatisfy(one -> assertThat(all.stream().filter(other -> other != one))
                .noneMatch(one::intersects));
    }

    private static Rectangle place(Painted today, String name) {
        AbstractButton part = today.find(name, AbstractButton.class);
        Component top = part;
        while (top.getParent() != null) {
            top = top.getParent();
        }
        return SwingUtilities.convertRectangle(part, part.getVisibleRect(), top);
    }

    @Test
    void whatWasAnsweredHalfWayIsThereAgainWhenTheSitterComesBackFromThePhones() {
        sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.puffed-up")
                .press("to-questions")
                .press("eating.yes")
                .press("hurt.no");

        Painted back = sitter(TextSize.NORMAL);

        assertThat(List.of("eating.yes", "hurt.no"))
                .allMatch(answer -> back.find(answer, AbstractButton.class).isSelected());
        assertThat(List.of("eating.no", "upright.yes", "upright.no", "hurt.yes"))
                .noneMatch(answer -> back.find(answer, AbstractButton.class).isSelected());
        back.press("upright.yes").press("record");
        assertThat(book.lines("\"check\"")).first().asString().contains("\"eating\"", "\"upright\"", "\"not-hurt\"");
    }

    @ParameterizedTest
    @EnumSource
    void theAnswersStayUnderTheFingerFromLineToLine(TextSize size) {
        Painted today = sitter(size);
        Rectangle first = place(today, "act.all-well");

        for (int line = 0; line < 3; line++) {
            today.press("act.all-well");
            assertThat(place(today, "act.all-well")).isEqualTo(first);
        }
        today.png("today-fourth-" + size).assertFit();
    }

    @Test
    void noAnswerIsTickedBeforehandAndWhatASignHasSaidIsNotAsked() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.on-floor")
                .press("signs.bleeding")
                .press("to-questions")
                .press("say-more");

        assertThat(List.of("eating.yes", "eating.no", "upright.yes", "upright.no"))
                .noneMatch(answer -> today.find(answer, AbstractButton.class).isSelected());
        assertThat(today.names()).doesNotContain("hurt.yes", "hurt.no");
    }

    @Test
    void aBrightYoungBirdOnTheFloorOfAWeaningCageIsNoAlarm() {
        Painted today = sitter(TextSize.NORMAL)
                .press("row.2026-04-14/A3/morning")
                .press("act.different")
                .press("signs.on-floor")
                .press("to-questions")
                .press("eating.yes")
                .press("upright.yes")
                .press("hurt.no")
                .press("record");

        assertThat(text(today)).contains("It is in the book").doesNotContain("Stop. Phone now.");
    }

    @Test
    void anEggOnTheFloorIsLeftThereAndIsNotAskedWhetherItEats() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.egg-on-floor")
                .press("to-questions");

        assertThat(book.lines("\"check\"")).hasSize(1);
        assertThat(text(today.png("today-egg").assertFit()))
                .contains("It is in the book", "Leave the egg where it is.");
    }

    @Test
    void nothingIsAskedOfABirdThatIsNotThere() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.missing")
                .press("to-questions");

        assertThat(book.lines("\"check\"")).hasSize(1);
        assertThat(text(today)).contains("Stop. Phone now.");
    }

    @Test
    void theOwnerIsNotAskedWhatAnOwnerSees() {
        at(TextSize.NORMAL, "Ines")
                .press("act.different")
                .press("signs.puffed-up")
                .press("record");

        assertThat(book.lines("\"check\"")).hasSize(1);
    }

    @Test
    void nothingIsRecordedWhereNothingIsTold() {
        Painted today = sitter(TextSize.NORMAL).press("act.different");

        today.press("to-questions").png("today-nothing-told");

        assertThat(book.lines("\"check\"")).isEmpty();
    }

    @Test
    void somethingElseIsKeptOnlyWithWordsOrAnAnswer() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.other")
                .press("to-questions")
                .press("record");

        assertThat(book.lines("\"check\"")).isEmpty();
        assertThat(text(today)).contains("Answer one question. Or go back, and write a few words.");
        today.press("answer.ok").press("hurt.no").press("record");
        assertThat(book.lines("\"check\"")).singleElement().asString().contains("other", "not-hurt");
    }

    @Test
    void aSmallThingIsKeptAndCanWait() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.dish-empty")
                .press("to-questions")
                .press("eating.yes")
                .press("record");

        today.png("today-recorded").assertFit();
        assertThat(text(today)).contains("It is in the book");
    }

    @Test
    void theSitterEntersTheDegreesAndIsToldWhatToDoInTheHeatAndToPhoneInMore() {
        Painted today = sitter(TextSize.NORMAL).press("degrees");
        today.png("today-degrees")
                .assertFit()
                .press("degrees.3")
                .press("degrees.0")
                .press("record");

        assertThat(book.lines("room-read")).singleElement().asString().contains("\"high\":30", "\"by\":\"Tomas\"");
        assertThat(text(today.png("today-heat").assertFit()))
                .contains("The room is too hot", "Give fresh, cool water at each cage.")
                .doesNotContain("Stop. Phone now.");
        today.press("go-on")
                .press("degrees")
                .press("degrees.3")
                .press("degrees.2")
                .press("record");
        assertThat(text(today)).contains("Stop. Phone now.", "0555 0142");
    }

    @Test
    void frostIsACallAndAMildRoomIsWrittenDown() {
        Painted today =
                sitter(TextSize.NORMAL).press("degrees").press("degrees.2").press("frost.below-zero");

        today.press("record").png("today-cold").assertFit();

        assertThat(book.lines("room-read")).first().asString().contains("\"low\":-2");
        assertThat(text(today)).contains("Stop. Phone now.", "Look at the water. Is it frozen?");
        today.press("go-on")
                .press("degrees")
                .press("degrees.2")
                .press("degrees.1")
                .press("record");
        assertThat(book.lines("room-read")).hasSize(2);
        assertThat(today.names()).contains("act.all-well");
    }

    @ParameterizedTest
    @EnumSource
    void theDegreesAreTouchedAtEveryTextSize(TextSize size) {
        sitter(size).press("degrees").png("today-degrees-" + size).assertFit();
    }

    @Test
    void whatWasNotDoneIsToldWithAReason() {
        Painted today = sitter(TextSize.NORMAL).press("act.not-done").png("today-not-done");
        today.assertFit();

        today.press("why.no-time").press("dishes.filled").press("record");

        assertThat(book.lines("task-not-done"))
                .singleElement()
                .asString()
                .contains("2026-04-14/A1/morning", "\"why\":\"no-time\"", "\"dishes\":\"filled\"");
        assertThat(today.names()).contains("row.2026-04-14/A1/morning");
    }

    @Test
    void whatWasNotDoneNeverCountsAsDone() {
        Painted today = sitter(TextSize.NORMAL).press("act.all-well").press("act.not-done");

        today.press("why.could-not-open").press("dishes.filled").press("record");

        assertThat(text(today)).contains("1 of 6 done", "1 not done", "the cage could not be opened");
    }

    @Test
    void foodAndWaterAreAskedAfterWhereAFeedingWasNotDone() {
        Painted today = sitter(TextSize.NORMAL).press("act.not-done").press("why.could-not-open");

        today.press("record");
        assertThat(book.lines("task-not-done")).isEmpty();
        today.press("answer.ok").press("dishes.unseen").press("record");

        assertThat(text(today.png("today-dishes-unseen").assertFit()))
                .contains("Stop. Phone now.", "A1: nobody has seen their food and water.", "0555 0142");
    }

    @Test
    void dishesThatAreLowAreReportedAndTheFeedingStaysUndone() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.not-done")
                .press("why.no-food")
                .press("dishes.low")
                .press("record");

        assertThat(book.lines("\"check\"")).singleElement().asString().contains("\"A1\"", "food-low");
        assertThat(text(today)).contains("Stop. Phone now.");
        assertThat(text(today.press("go-on"))).contains("0 of 6 done", "1 not done");
    }

    @Test
    void aMorningInWhichBirdsWereNotFedIsNotDoneAndLeadsToThePhones() {
        for (String cage : List.of("A1", "A2", "A3", "B1", "B2", "B3")) {
            book.tell("{\"deed\":\"task-not-done\",\"task\":\"2026-04-14/" + cage
                    + "/morning\",\"why\":\"no-time\",\"by\":\"Tomas\"}");
        }

        Painted today = sitter(TextSize.NORMAL).png("today-unfed").assertFit();

        assertThat(text(today))
                .contains("6 cages were not fed", "Nobody has phoned about it.")
                .doesNotContain("The morning is done");
        today.find("act.phone", AbstractButton.class);
        book.tell("""
                {"deed":"phoned","who":"Ines","about":"food","by":"Tomas"}
                """);
        assertThat(text(sitter(TextSize.NORMAL))).contains("You have phoned about it. It is kept for Ines to read.");
    }

    @Test
    void aLineOfACageThatWasReportedTodayShowsWhatWasSaid() {
        book.tell("""
                {"deed":"check","cage":"A2","answer":"different","how":"hand","signs":["bleeding"],"at":"07:20","by":"Tomas"}
                {"deed":"check","cage":"A3","answer":"different","how":"hand","signs":["fighting"],"at":"07:21","by":"Tomas"}
                {"deed":"task-done","task":"2026-04-14/A3/morning","at":"07:22","by":"Tomas"}
                """);

        Painted today = sitter(TextSize.NORMAL).png("today-reported").assertFit();

        assertThat(row(today, "A2/morning")).contains("different: bleeding");
        assertThat(row(today, "A3/morning")).contains("fighting", "Different").doesNotContain("all well");
        assertThat(row(today.press("part.evening").png("today-reported-evening").assertFit(), "A1/evening-row"))
                .contains("A2 different: bleeding, A3 different: fighting");
    }

    private static String row(Painted today, String task) {
        return today.find("row.2026-04-14/" + task, AbstractButton.class)
                .getAccessibleContext()
                .getAccessibleName();
    }

    @Test
    void theDegreesThatWereReadStandInPlaceOfTheQuestion() {
        book.tell("""
                {"deed":"room-read","high":31,"low":31,"at":"07:40","by":"Tomas"}
                """);

        Painted today = sitter(TextSize.NORMAL).png("today-degrees-read").assertFit();

        assertThat(degrees(today)).contains("31 \u00b0C at 7:40").doesNotContain("How warm");
        book = book.inTheEvening();
        assertThat(degrees(sitter(TextSize.NORMAL))).contains("31 \u00b0C at 7:40", "Read it once more tonight.");
    }

    private static String degrees(Painted today) {
        return today.find("degrees", AbstractButton.class)
                .getAccessibleContext()
                .getAccessibleName();
    }

    @Test
    void aRowWalkedNamesThoseOfItsCagesThatWereReportedBeforeItIsAnswered() {
        book.tell("{\"deed\":\"check\",\"cage\":\"A3\",\"answer\":\"different\",\"how\":\"hand\","
                + "\"signs\":[\"puffed-up\"],\"by\":\"Tomas\"}");
        Painted today =
                sitter(TextSize.NORMAL).press("part.evening").press("act.done").press("act.row-well");

        assertThat(book.lines("row-checked")).isEmpty();
        assertThat(text(today.png("today-row-reported"))).contains("A3: puffed up.");
        today.press("answer.same");
        assertThat(book.lines("row-checked")).hasSize(1);
    }

    @Test
    void aLineAnsweredTodayIsTakenBackFromTheListAfterUndoHasGone() {
        Painted today =
                sitter(TextSize.NORMAL).press("part.evening").press("act.done").press("act.row-well");

        today.press("row.2026-04-14/A1/evening-row").press("answer.take-back");
        assertThat(text(today.png("today-take-back"))).contains("This speaks of 3 cages. Take all back?");
        today.press("answer.yes");

        assertThat(book.lines("struck-out")).hasSize(1);
        assertThat(text(today)).contains("Walked this row, all well", "1 of");
    }

    @Test
    void whatWasTouchedHalfWayIsThereAgainWhenTheSitterComesBack() {
        sitter(TextSize.NORMAL).press("act.different").press("signs.puffed-up").press("alarm.smoke");

        Painted back = sitter(TextSize.NORMAL);
        back.press("to-questions").press("hurt.no").press("record");

        assertThat(book.lines("\"check\"")).singleElement().asString().contains("puffed-up", "not-hurt");
    }

    @Test
    void whatWasAgreedByPhoneShowsBesideTheListUntilItEnds() {
        book.tell("""
                {"deed":"phoned","cage":"A2","who":"Ines","about":"ill","agreed":"leave","until":"2026-04-14","by":"Tomas"}
                """);

        assertThat(text(sitter(TextSize.NORMAL).png("today-agreed").assertFit()))
                .contains("A2: Agreed with Ines: leave it in peace, until 14 April");
        book = book.on(DAY.plusDays(1));
        assertThat(text(sitter(TextSize.NORMAL))).doesNotContain("Agreed with");
    }

    @Test
    void afterUndoNoPageStillSaysThatItIsInTheBook() {
        Painted today = sitter(TextSize.NORMAL)
                .press("act.different")
                .press("signs.dish-empty")
                .press("to-questions")
                .press("eating.yes")
                .press("record");
        assertThat(text(today)).contains("It is in the book");

        today.press("notice.undo");

        assertThat(text(today)).doesNotContain("in the book");
    }

    @Test
    void theEveningThatIsDoneLeadsToTheLinesOfTheMorningThatAreOpen() {
        Painted today = sitter(TextSize.NORMAL).press("part.evening");
        for (int i = 0; i < 3; i++) {
            today.press(i == 0 ? "act.done" : "act.row-well");
        }

        assertThat(text(today.png("today-morning-open").assertFit())).contains("6 lines of the morning are open");
        today.press("act.morning").find("act.all-well", AbstractButton.class);
    }

    @Test
    void inTheEveningARowIsWalkedAtOnceAndOldSoftFoodComesOut() {
        Painted today = sitter(TextSize.NORMAL)
                .press("part.evening")
                .png("today-evening")
                .assertFit();

        today.press("act.done");
        assertThat(book.lines("task-done")).singleElement().asString().contains("2026-04-14/A2/evening-food");
        today.png("today-evening-row").assertFit().press("act.row-well");

        assertThat(book.lines("row-checked"))
                .singleElement()
                .asString()
                .contains("\"North wall\"", "\"row\":1", "\"evening\"");
        today.press("act.different").png("today-which").assertFit();
        today.press("which.B2").press("signs.loose").press("to-questions");
        assertThat(book.lines("\"check\"")).first().asString().contains("\"B2\"", "\"evening\"", "\"loose\"");
    }

    @Test
    void anyOtherLineCanBeTakenFirst() {
        Painted today = sitter(TextSize.NORMAL).press("row.2026-04-14/B1/morning");

        today.press("act.all-well");

        assertThat(book.lines("\"check\"")).first().asString().contains("\"B1\"");
    }

    @Test
    void aLineThatIsDoneCanBeAnsweredAnew() {
        Painted today = sitter(TextSize.NORMAL).press("act.all-well").press("row.2026-04-14/A1/morning");
        today.png("today-again");

        today.press("answer.different")
                .press("signs.fighting")
                .press("to-questions")
                .press("record");

        assertThat(book.lines("\"check\"")).hasSize(2).first().asString().contains("fighting");
    }

    @Test
    void theCautionsAreOneTouchAwayWithTheHouseRulesFirst() {
        book.tell("{\"deed\":\"room-set\",\"rules\":\"Lock the outer door first.\",\"by\":\"Ines\"}");
        Painted today =
                sitter(TextSize.NORMAL).press("safety").png("today-safety").assertFit();

        assertThat(text(today)).contains("Lock the outer door first.", "Wear a mask");
        today.press("back").find("act.all-well", AbstractButton.class);
    }

    @Test
    void whenAllIsDoneTheListSaysSo() {
        Painted today = sitter(TextSize.NORMAL);
        for (int i = 0; i < 6; i++) {
            today.press("act.all-well");
        }

        today.png("today-morning-done").assertFit();
        assertThat(text(today)).contains("The morning is done. Thank you, Tomas.");
        today.press("act.evening").find("act.done", AbstractButton.class);
    }

    @Test
    void theOwnerReadsAReportAndLooksAtTheSittersList() {
        book.tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"hand","signs":["puffed-up"],"note":"low on the perch","by":"Tomas"}
                """);
        Painted today = at(TextSize.NORMAL, "Ines").png("today-report").assertFit();

        today.press("act.read");

        assertThat(book.lines("entry-seen")).singleElement().asString().contains("\"by\":\"Ines\"");
        assertThat(book.desk().room().unread()).isEmpty();
        today.png("today-owner").assertFit().press("whose.sitter").press("act.done");
        assertThat(book.lines("task-done")).first().asString().contains("/A1/morning", "\"by\":\"Ines\"");
    }

    @Test
    void whoLooksAfterTheBirdsWhileTheOwnerIsAwayFollowsTheSittersList() {
        Room room = book.desk().room();

        assertThat(List.of("Tomas", "Ines", "Joan"))
                .extracting(name -> Audience.of(room, DAY, room.person(name).orElseThrow()))
                .containsExactly(Audience.SITTER, Audience.OWNER, Audience.OWNER);
    }

    @Test
    void everySentenceTheSitterReadsHereIsPlain() {
        Words words = Words.english();
        for (String key : List.of(
                "today.then",
                "today.morning-done",
                "today.morning-done-text",
                "today.evening-done",
                "today.evening-done-text",
                "today.again-text",
                "today.own-words",
                "today.how-is-it",
                "shell.questions-how",
                "tasks.ask-eating",
                "tasks.ask-upright",
                "tasks.ask-hurt",
                "word.sign.not-eating",
                "word.sign.upright",
                "word.sign.not-upright",
                "word.sign.hurt",
                "word.sign.not-hurt",
                "today.nothing-told",
                "today.nothing-told-text",
                "today.phone-now",
                "today.phone-now-text",
                "today.in-the-book",
                "today.in-the-book-text",
                "today.go-on",
                "today.why-not",
                "today.no-reason-text",
                "today.why.no-time",
                "today.why.no-food",
                "today.why.not-sure",
                "today.why.bird-in-the-way",
                "today.why.not-needed",
                "danger.next",
                "today.no-phones",
                "today.how-warm",
                "today.how-warm-when",
                "today.how-warm-text",
                "today.below-zero",
                "today.no-degrees",
                "today.no-degrees-text",
                "today.stop",
                "today.safety-title",
                "safety.rules",
                "safety.rules-text",
                "safety.dust",
                "safety.dust-text",
                "safety.hands-text",
                "safety.lungs",
                "safety.lungs-text",
                "safety.hide",
                "safety.hide-text",
                "safety.fumes",
                "safety.fumes-text",
                "safety.sprays",
                "safety.sprays-text",
                "safety.dish",
                "safety.dish-text",
                "safety.medicine-text",
                "safety.night-text")) {
            assertThat(words.knows(key)).as(key).isTrue();
            ReadingGrade.sentences(words.say(key, "B3", "dead bird"))
                    .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                            .as("the grade of: %s", sentence)
                            .isLessThanOrEqualTo(6));
        }
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

    private Painted sitter(TextSize size) {
        return at(size, "Tomas");
    }

    private Painted at(TextSize size, String person) {
        return Sat.among(book, Light.DAY, size, person, new Destination.Today(), (pen, stage) -> Screens.none()
                .with(
                        Destination.Today.class,
                        here -> new TodayScreen(book.desk(), pen, stage, stage, WORDS, Breadth.WHOLE, halfway, here))
                .with(
                        Destination.Different.class,
                        at -> new TodayScreen(book.desk(), pen, stage, stage, WORDS, Breadth.WHOLE, halfway, at)));
    }
}
