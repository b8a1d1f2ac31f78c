package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Properties;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.cagewall.desk.Daybook;
import org.cagewall.room.care.Sign;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the owner is told of a day, made of a real record. */
class DayNoteTest {

    private static final LocalDate DAY = LocalDate.of(2026, 4, 14);
    private static final Words WORDS = Words.english();

    @TempDir
    Path folder;

    private Daybook book;

    @BeforeEach
    void open() {
        book = Daybook.furnished(folder.resolve("room"), DAY);
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** 3GPP TS 23.038, 6.2.1, the default alphabet without its way to another; from memory. */
    private static final String ALPHABET =
            "@\u00a3$\u00a5\u00e8\u00e9\u00f9\u00ec\u00f2\u00c7\n\u00d8\u00f8\r\u00c5\u00e5"
                    + "\u0394_\u03a6\u0393\u039b\u03a9\u03a0\u03a8\u03a3\u0398\u039e\u00c6\u00e6\u00df\u00c9"
                    + " !\"#\u00a4%&'()*+,-./0123456789:;<=>?"
                    + "\u00a1ABCDEFGHIJKLMNOPQRSTUVWXYZ\u00c4\u00d6\u00d1\u00dc\u00a7"
                    + "\u00bfabcdefghijklmnopqrstuvwxyz\u00e4\u00f6\u00f1\u00fc\u00e0";

    /** One letter outside the alphabet, and a message holds 70 characters instead of 160 (3GPP TS 23.038, 6.2.3). */
    @Test
    void theSentencesOfANoteAreWrittenInTheAlphabetOfTextMessages() throws IOException {
        assertThat(ALPHABET).hasSize(127);
        Properties sentences = new Properties();
        try (Reader in = Files.newBufferedReader(
                Path.of("src/main/resources/org/cagewall/text/en/daynote.properties"), StandardCharsets.UTF_8)) {
            sentences.load(in);
        }

        assertThat(sentences.values()).isNotEmpty().allSatisfy(sentence -> assertThat(
                        sentence.toString().replaceAll("\\{[^}]*}", ""))
                .matches(words -> words.chars().allMatch(letter -> ALPHABET.indexOf(letter) >= 0)));
        assertThat(Stream.of(Sign.values()).map(sign -> WORDS.say(sign.words())))
                .allMatch(words -> words.chars().allMatch(letter -> ALPHABET.indexOf(letter) >= 0));
    }

    /** 3GPP TS 23.040, 9.2.3.16: a text message holds 160 characters of that alphabet. */
    @Test
    void aDayOnWhichNothingHappenedIsOneTextMessage() {
        tellOfAWholeDay();

        assertThat(note())
                .isEqualTo("14 April 2026: 6 of 6 cages with birds seen. All well.")
                .hasSizeLessThan(160);
    }

    @Test
    void anAlarmOfTheRoomAndABirdLooseFromNobodyKnowsWhereAreTold() {
        tellOfAWholeDay();
        book.tell("""
                {"deed":"alarm-raised","alarm":"power","by":"Tomas"}
                {"deed":"bird-loose","count":1,"by":"Tomas"}
                """);

        assertThat(note())
                .contains("alarm: power that is off.", "1 bird loose.")
                .doesNotContain("All well");
    }

    @Test
    void whatWasDifferentIsToldWithItsCageAndItsSigns() {
        tellOfAWholeDay();
        book.tell("""
                {"deed":"check","cage":"A1","answer":"different","how":"hand","signs":["puffed-up","on-floor"],"note":"low on the\\nperch","by":"Tomas"}
                {"deed":"check","cage":"B1","answer":"different","how":"hand","signs":["fighting"],"by":"Tomas"}
                {"deed":"check","cage":"B2","answer":"different","how":"hand","signs":["other"],"by":"Tomas"}
                """);

        assertThat(note())
                .isEqualTo("14 April 2026: 6 of 6 cages with birds seen."
                        + " A1 different: puffed up, on the floor. \"low on the perch\""
                        + " B1 different: fighting. B2 different: something else.");
    }

    @Test
    void whatWasNotDoneIsToldOnceForEachReasonAndWhatIsOpenAsOpen() {
        book.tell("""
                {"deed":"check","cage":"A1","answer":"well","how":"hand","when":"morning","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/A2/morning","why":"I had no time","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/B1/morning","why":"I had no time","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/A2/evening-food","why":"No food was left","by":"Tomas"}
                """);

        assertThat(note())
                .startsWith("14 April 2026: 1 of 6 cages with birds seen.")
                .contains(
                        "A2, B1: not fed, I had no time.",
                        "A2: not done: Old food out, No food was left.",
                        "Still open: Feed them and look (A3, B2, B3), Walk past A1 to A3, Walk past B1 to B3.")
                .doesNotContain("All well");
    }

    @Test
    void aReasonIsKeptAsItsNameAndSaidInWordsWithWhatWasAdded() {
        book.tell("""
                {"deed":"task-not-done","task":"2026-04-14/A2/morning","why":"no-food","note":"only millet","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/B1/morning","why":"no-time","by":"Tomas"}
                """);

        assertThat(note()).contains("A2: not fed, no food was left: only millet.", "B1: not fed, no time.");
    }

    @Test
    void whatWasNoticedAtANestIsToldInWordsThoughTheRecordHoldsAName() {
        book.tell("""
                {"deed":"noted","cage":"A1","noticed":"hen-off-eggs","by":"Tomas"}
                """);

        assertThat(note()).contains("A1", "the hen was off the eggs");
    }

    @Test
    void cagesThatFollowOneAnotherAreNamedByTheFirstAndTheLast() {
        for (String cage : new String[] {"A1", "A2", "A3", "B1", "B3"}) {
            book.tell("{\"deed\":\"task-not-done\",\"task\":\"2026-04-14/" + cage
                    + "/morning\",\"why\":\"I had no time\",\"by\":\"Tomas\"}");
        }

        assertThat(note()).contains("A1 to B1, B3: not fed, I had no time.");
    }

    @Test
    void aWholeDayThatWasNotDoneIsOneTextMessageWithItsReasonAndWhatWasSaidOfFood() {
        for (String cage : List.of("A1", "A2", "A3", "B1", "B2", "B3")) {
            book.tell("{\"deed\":\"task-not-done\",\"task\":\"2026-04-14/" + cage
                    + "/morning\",\"why\":\"no-time\",\"dishes\":\"unseen\",\"by\":\"Tomas\"}");
        }
        book.tell("""
                {"deed":"task-not-done","task":"2026-04-14/A2/evening-food","why":"no-time","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/A1/evening-row","why":"no-time","by":"Tomas"}
                {"deed":"task-not-done","task":"2026-04-14/B1/evening-row","why":"no-time","by":"Tomas"}
                """);

        assertThat(note())
                .contains(
                        "A1 to B3: not fed, no time, food and water: nobody could see.",
                        "A1 to B3: not seen in the evening, no time.");
    }

    @Test
    void anEmptyCageThatNobodyAnsweredForIsNoNews() {
        tellOfAWholeDay();
        book.tell("""
                {"deed":"wall-added","wall":"South wall","rows":1,"columns":1,"by":"Ines"}
                {"deed":"cage-added","cage":"C1","wall":"South wall","row":1,"column":1,"use":"breeding","by":"Ines"}
                """);

        assertThat(note()).isEqualTo("14 April 2026: 6 of 6 cages with birds seen. All well.");
    }

    @Test
    void birthsDeathsCallsAndAWordToTheOwnerAreToldAndWhatWasStruckOutIsNot() {
        tellOfAWholeDay();
        book.tell("""
                {"deed":"egg-laid","cage":"A1","on":"2026-04-02","sure":true,"by":"Ines"}
                {"deed":"chick-hatched","cage":"A1","sure":true,"by":"Tomas"}
                {"deed":"bird-left","bird":"HB 24-006","how":"died","by":"Tomas"}
                {"deed":"phoned","who":"Joan","about":"a dead bird","by":"Tomas"}
                {"deed":"noted","note":"The bin is half empty.","by":"Tomas"}
                {"deed":"noted","note":"wrong room","by":"Tomas"}
                """);
        book.tell(
                "{\"deed\":\"struck-out\",\"entry\":" + book.desk().room().head() + ",\"why\":\"x\",\"by\":\"Tomas\"}");

        assertThat(note())
                .contains("HB 24-006 left, died.", "A1: egg 1 hatched.", "phoned Joan about a dead bird.")
                .contains("Tomas: \"The bin is half empty.\"")
                .doesNotContain("wrong room", "All well");
    }

    @Test
    void aLongNoteIsQuotedInPart() {
        book.tell("{\"deed\":\"noted\",\"note\":\"" + "long ".repeat(100) + "\",\"by\":\"Tomas\"}");

        assertThat(note()).contains("long long...\"").hasSizeLessThan(400);
    }

    private void tellOfAWholeDay() {
        for (String cage : List.of("A1", "A2", "A3", "B1", "B2", "B3")) {
            book.tell("{\"deed\":\"check\",\"cage\":\"" + cage
                    + "\",\"answer\":\"well\",\"how\":\"hand\",\"when\":\"morning\",\"by\":\"Tomas\"}");
        }
        book.tell("""
                {"deed":"task-done","task":"2026-04-14/A2/evening-food","by":"Tomas"}
                {"deed":"row-checked","wall":"North wall","row":1,"when":"evening","by":"Tomas"}
                {"deed":"row-checked","wall":"North wall","row":2,"when":"evening","by":"Tomas"}
                """);
    }

    private String note() {
        return DayNote.of(book.desk().room(), book.log(), DAY).sentences().stream()
                .map(WORDS::say)
                .collect(Collectors.joining(" "));
    }
}
