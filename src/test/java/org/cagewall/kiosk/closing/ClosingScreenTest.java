package org.cagewall.kiosk.closing;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLDecoder;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javax.swing.JComponent;
import javax.swing.text.JTextComponent;
import org.cagewall.cards.OutsidePrograms;
import org.cagewall.cards.Symbols;
import org.cagewall.handover.InParts;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.Sat;
import org.cagewall.kiosk.WithDaybook;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.tasks.ReadingGrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** The end of a sitter's day. */
class ClosingScreenTest extends WithDaybook {

    private static final String FOOD_CALL = """
            {"deed":"phoned","who":"Ines","about":"food","by":"Tomas"}
            """;

    private ClosingScreen screen;

    @ParameterizedTest
    @EnumSource
    void whatIsLeftIsSaidAtEveryTextSize(TextSize size) {
        closing(size).png("closing-" + size).assertFit();
    }

    @Test
    void whyTheRestWasNotDoneIsToldOnceForAll() {
        book = book.inTheEvening();
        Painted closing = closing(TextSize.NORMAL).press("say-why");
        closing.png("closing-why")
                .assertFit()
                .press("why.no-time")
                .press("dishes.filled")
                .press("record");

        assertThat(book.lines("task-not-done")).hasSize(9).allMatch(line -> line.contains("\"why\":\"no-time\""));
        assertThat(book.lines("\"dishes\":\"filled\"")).hasSize(6);
    }

    @Test
    void nobodyWritesOffTheFeedingOfAllCagesWithoutBeingAskedAfterFoodAndWater() {
        Painted closing = closing(TextSize.NORMAL).press("say-why").press("why.no-time");

        assertThat(said(closing)).contains("Have they food and water?");
        closing.press("record").png("closing-why-dishes").assertFit();
        assertThat(book.lines("task-not-done")).isEmpty();
        closing.press("answer.ok").press("dishes.unseen").press("record");

        assertThat(said(closing.png("closing-hungry").assertFit()))
                .contains("Stop. Phone now.", "Nobody has seen their food and water.");
        closing.press("answer.leave");
        assertThat(said(closing)).contains("6 cages were not fed", "Nobody has phoned about A1 to B3.");
    }

    @Test
    void theEveningIsNotWrittenOffBeforeItHasBegun() {
        Painted closing = closing(TextSize.NORMAL);

        closing.press("say-why").press("why.no-time").press("dishes.filled").press("record");

        assertThat(book.lines("task-not-done")).hasSize(6).allMatch(line -> line.contains("/morning"));
        book.tell(FOOD_CALL);
        assertThat(said(closing(TextSize.NORMAL).png("closing-evening-to-come").assertFit()))
                .contains("The evening is still to come");
        assertThat(said(closing(TextSize.NORMAL).press("say-why"))).contains("There is nothing to explain now");
    }

    @Test
    void aDayWithoutFeedingIsNeverDoneAndSaysHowManyCagesWereNotFed() {
        book = book.inTheEvening();
        Painted closing = closing(TextSize.NORMAL)
                .press("say-why")
                .press("why.no-time")
                .press("dishes.filled")
                .press("record")
                .press("answer.leave");

        assertThat(said(closing.png("closing-unfed").assertFit()))
                .contains("6 cages were not fed", "Nobody has phoned about A1 to B3. Phone now.")
                .doesNotContain("The day is done");
        book.tell(FOOD_CALL);
        assertThat(said(closing(TextSize.NORMAL).png("closing-unfed-phoned").assertFit()))
                .contains("6 cages were not fed", "You have phoned about it. Why is kept for Ines to read.")
                .doesNotContain("The day is done");
    }

    @Test
    void aCageThatCouldNotBeOpenedAndHasLittleFoodStaysOpenUntilSomebodyIsPhoned() {
        book.tell("""
                {"deed":"check","cage":"A2","answer":"different","how":"hand","when":"morning","signs":["food-low"],"by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/A2/morning","why":"could-not-open","dishes":"low","by":"Tomas"}
                """);

        assertThat(said(closing(TextSize.NORMAL).png("closing-food-low").assertFit()))
                .contains("Nobody has phoned about A2.");
        book.tell("""
                {"deed":"phoned","cage":"A2","who":"Ines","about":"food","by":"Tomas"}
                """);
        assertThat(said(closing(TextSize.NORMAL))).doesNotContain("Nobody has phoned");
    }

    @Test
    void aCountThatIsOffStaysOpenUntilSomebodyIsPhoned() {
        book.tell("""
                {"deed":"check","cage":"B2","answer":"different","how":"hand","signs":["more-birds"],"by":"Tomas"}
                """);

        assertThat(said(closing(TextSize.NORMAL))).contains("Nobody has phoned about B2.");
    }

    @Test
    void whereOnlyACallIsLeftSayWhyNotSaysSo() {
        book.tell("{\"deed\":\"check\",\"cage\":\"A2\",\"answer\":\"different\",\"how\":\"hand\",\"signs\":[\"dead\"],"
                + "\"by\":\"Tomas\"}");
        for (String cage : List.of("A1", "A2", "A3", "B1", "B2", "B3")) {
            book.tell("{\"deed\":\"task-done\",\"task\":\"2026-04-14/" + cage + "/morning\",\"by\":\"Tomas\"}");
        }

        Painted closing = closing(TextSize.NORMAL).press("say-why");

        assertThat(said(closing)).contains("There is nothing to explain now", "What is left is a call. Phone now.");
    }

    @Test
    void aCageReportedDeadWithoutACallIsNamedAndLeadsToThePhones() {
        book.tell("{\"deed\":\"check\",\"cage\":\"A2\",\"answer\":\"different\",\"how\":\"hand\",\"signs\":[\"dead\"],"
                + "\"by\":\"Tomas\"}");
        Painted closing = closing(TextSize.NORMAL).png("closing-unphoned").assertFit();
        assertThat(said(closing)).contains("Nobody has phoned about A2. Phone now.");

        book.tell("""
                {"deed":"phoned","cage":"A2","who":"Ines","about":"dead","reached":"no-answer","by":"Tomas"}
                """);
        assertThat(said(closing(TextSize.NORMAL))).contains("Nobody has phoned about A2");
        book.tell("""
                {"deed":"phoned","cage":"A2","who":"Ines","about":"dead","by":"Tomas"}
                """);
        assertThat(said(closing(TextSize.NORMAL))).doesNotContain("Nobody has phoned");
    }

    @Test
    void anAlarmOfTheRoomAndALooseBirdOfNoCageAreNamedUntilSomebodyIsSpokenTo() {
        book.tell("""
                {"deed":"alarm-raised","alarm":"power","by":"Tomas"}
                {"deed":"bird-loose","count":1,"by":"Tomas"}
                """);
        Painted closing = closing(TextSize.NORMAL).png("closing-alarm-unphoned").assertFit();
        assertThat(said(closing)).contains("Nobody has phoned about power that is off, a loose bird. Phone now.");

        book.tell("""
                {"deed":"phoned","who":"Ines","about":"power","by":"Tomas"}
                {"deed":"phoned","who":"Ines","about":"loose","by":"Tomas"}
                """);
        assertThat(said(closing(TextSize.NORMAL))).doesNotContain("Nobody has phoned");
    }

    @Test
    void aCardThatIsScannedOverAHalfWrittenNoteAsksFirst() {
        Painted closing = closing(TextSize.NORMAL);
        assertThat(screen.isBegun()).isFalse();

        closing.after(() -> closing.find("note", JTextComponent.class).setText("A1 sits low"));

        assertThat(screen.isBegun()).isTrue();
        closing.press("keep-note");
        assertThat(screen.isBegun()).isFalse();
    }

    @Test
    void whatWasNotDoneIsNoPartOfWhatIsDone() {
        book = book.inTheEvening();
        Painted closing = closing(TextSize.NORMAL)
                .press("say-why")
                .press("why.could-not-open")
                .press("dishes.filled")
                .press("record");

        assertThat(said(closing)).contains("0 of 9 done", "9 not done");
    }

    private static String said(Painted painted) {
        return painted.all().stream()
                .map(part -> part instanceof javax.swing.JLabel label ? label.getText() : "")
                .collect(Collectors.joining("\n"));
    }

    @Test
    void aNoteToTheOwnerIsAnEntry() {
        Painted closing = closing(TextSize.NORMAL);
        closing.after(() -> closing.find("note", JTextComponent.class).setText("The bin is half empty."));

        closing.press("keep-note");

        assertThat(book.lines("\"noted\""))
                .singleElement()
                .asString()
                .contains("The bin is half empty.", "\"by\":\"Tomas\"");
    }

    @ParameterizedTest
    @EnumSource
    void theNoteOfTheDayIsASymbolBesideItsWordsAtEveryTextSize(TextSize size) throws Exception {
        Painted sent = closing(size).press("send").png("closing-send-" + size).assertFit();

        String link = read(sent, "closing-send-" + size);
        assertThat(link).startsWith("sms:05550142?body=");
        assertThat(body(link)).startsWith("14 April 2026: 0 of 6 cages with birds seen.");
        assertThat(sent.press("way.e-mail")
                        .png("closing-mail-" + size)
                        .assertFit()
                        .names())
                .contains("qr");
        assertThat(read(sent, "closing-mail-" + size)).startsWith("mailto:?subject=The%20birds,%2014%20April");
    }

    @Test
    void inTheQuietHoursTheSymbolIsDarkOnLightAndIsRead() throws Exception {
        Painted quiet = closing(Light.QUIET, TextSize.NORMAL).press("send").png("closing-send-quiet");

        assertThat(read(quiet, "closing-send-quiet")).startsWith("sms:05550142?body=");
    }

    /** The least that an ordinary phone reads with ease is four pixels a module; common practice, no source. */
    @Test
    void aLongNoteIsSeveralSymbolsOneAfterTheOtherAndNoneIsDense() throws Exception {
        for (String cage : List.of("A1", "A2", "A3", "B1", "B2", "B3")) {
            book.tell("{\"deed\":\"check\",\"cage\":\"" + cage + "\",\"answer\":\"different\",\"how\":\"hand\","
                    + "\"signs\":[\"puffed-up\"],\"note\":\"sits low & won\u2019t eat\",\"by\":\"Tomas\"}");
        }
        Painted sent = closing(TextSize.NORMAL).press("send");

        Set<String> links = new LinkedHashSet<>();
        sent.png("closing-part-1");
        String link = read(sent, "closing-part-1");
        while (links.add(link)) {
            int modules = Symbols.link(link).side() + 2 * Symbols.QUIET_ZONE;
            assertThat(sent.find("qr", JComponent.class).getWidth() / modules).isGreaterThanOrEqualTo(6);
            String name = "closing-part-" + (links.size() + 1);
            sent.press("next-message").png(name).assertFit();
            link = read(sent, name);
        }

        assertThat(links).hasSizeBetween(2, InParts.MOST).allMatch(each -> each.length() <= Symbols.MOST_LINK_BYTES);
        assertThat(links.stream().map(ClosingScreenTest::body).collect(Collectors.joining(" ")))
                .contains("A1 different: puffed up.", "sits low & won\u2019t eat", "1/" + links.size() + " ");
    }

    @Test
    void whereTheOwnersNumberIsNotKnownOnlyAnEMailIsOffered() throws Exception {
        book.tell("{\"deed\":\"person-changed\",\"person\":\"Ines\",\"phone\":null,\"by\":\"Ines\"}");

        Painted sent =
                closing(TextSize.NORMAL).press("send").png("closing-no-number").assertFit();

        assertThat(read(sent, "closing-no-number")).startsWith("mailto:?");
        assertThat(sent.press("back").names()).contains("send");
    }

    /** The symbol on the painted screen as ZBar reads it. */
    private String read(Painted painted, String picture) throws Exception {
        return String.join(
                "\n", OutsidePrograms.symbols(folder, List.of(Path.of("target/pictures", picture + ".png"))));
    }

    private static String body(String link) {
        return URLDecoder.decode(link.substring(link.indexOf("body=") + 5), StandardCharsets.UTF_8);
    }

    @Test
    void everySentenceHereIsPlain() {
        for (String key : List.of(
                "left-text",
                "hungry",
                "hungry-low",
                "hungry-unseen",
                "evening-to-come",
                "nothing-to-say",
                "only-phone",
                "done-text",
                "why",
                "why-title",
                "why-text",
                "last-look",
                "look.doors",
                "look.water",
                "look.bin",
                "look.lights",
                "note",
                "note-text",
                "noted",
                "send",
                "send-how",
                "send-part",
                "send-next",
                "send-again",
                "sent",
                "to-anybody",
                "to-anybody-since",
                "no-note",
                "no-note-text")) {
            ReadingGrade.sentences(WORDS.say("closing." + key))
                    .forEach(sentence -> assertThat(ReadingGrade.ofSentence(sentence))
                            .as("the grade of: %s", sentence)
                            .isLessThanOrEqualTo(6));
        }
    }

    private Painted closing(TextSize size) {
        return closing(Light.DAY, size);
    }

    private Painted closing(Light light, TextSize size) {
        return Sat.at(book, light, size, "Tomas", new Destination.CloseTheDay(), (pen, stage) -> {
            screen = new ClosingScreen(book.desk(), pen, stage, stage, WORDS);
            return screen;
        });
    }
}
