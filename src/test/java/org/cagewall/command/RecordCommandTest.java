package org.cagewall.command;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The language of the record from the command line: an answer for every line, and a reason that helps. */
class RecordCommandTest {

    @TempDir
    Path folder;

    @Test
    void aLetterThatPaperCannotShowIsSaidOnceARunAndRecordedAllTheSame() {
        Cli cli = Cli.furnished(folder.resolve("letters"));
        String wall = "{\"deed\":\"wall-added\",\"wall\":\"%s\",\"rows\":1,\"columns\":1,\"by\":\"Ines\"}\n";

        Ran ran = cli.record(wall.formatted("鳥") + wall.formatted("鳥 2"));

        assertThat(ran.out()).isEqualTo("ok 14\nok 15\n");
        assertThat(ran.err())
                .isEqualTo("cagewall: Printed cards and pages cannot show 鳥. A ? stands there in its place.\n");
    }

    @Test
    void everyLineIsAnsweredWithTheNumberOfItsEntry() {
        Ran ran = new Cli(folder.resolve("birds")).record(Cli.ROOM);

        assertThat(ran.code()).as(ran.out()).isZero();
        assertThat(ran.lines()).hasSize(13).first().isEqualTo("ok 1");
        assertThat(ran.lines()).last().isEqualTo("ok 13");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aRefusedLineIsNamedByItsPlaceAndTheRestGoesOn() {
        Ran ran = new Cli(folder.resolve("birds")).record("""

                {"deed":"person-added","person":"Ines","role":"owner"}
                  \t
                {"deed":"check","cage":"A1","answer":"well","how":"hand","by":"Ines"}
                {"deed":"noted","note":"cold night","by":"Ines"}""");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.lines())
                .containsExactly(
                        "ok 1",
                        "refused 4: there is no cage A1; this birdroom has no cages yet. Add one first.",
                        "ok 2");
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aNumberThatNoMemoryHoldsIsRefusedAndTheRestGoesOn() {
        Ran ran = furnished().record("""
                {"deed":"room-read","high":1E+2147483647,"by":"Ines"}
                {"deed":"room-read","high":1E-2147483647,"by":"Ines"}
                {"deed":"room-read","high":1E+99999999999999,"by":"Ines"}
                {"deed":"room-read","high":10E+2147483647,"by":"Ines"}
                {"deed":"room-read","high":0E+2147483647,"by":"Ines"}
                {"deed":"room-read","high":0E-2147483648,"by":"Ines"}
                {"deed":"room-read","high":20,"humidity":1E+2147483647,"by":"Ines"}
                {"deed":"struck-out","entry":1E+2147483647,"why":"typo","by":"Ines"}
                {"deed":"struck-out","entry":99999999999999999999999,"why":"typo","by":"Ines"}
                {"deed":"noted","note":"cold","entry":99999999999999999999999,"recorded":"2026-04-14T07:40:00Z","digest":"00","by":"Ines"}
                {"deed":"room-read","high":2.15E+1,"by":"Ines"}
                """);

        assertThat(ran.lines()).hasSize(11);
        for (int line = 1; line <= 10; line++) {
            assertThat(ran.lines().get(line - 1))
                    .startsWith("refused " + line + ": ")
                    .doesNotContain("broke");
        }
        assertThat(ran.lines()).last().isEqualTo("ok 14");
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).isEmpty();
    }

    @Test
    void aFileIsRecordedAsWellAsStandardInput() throws IOException {
        Cli cli = furnished();
        Path file = Files.writeString(
                folder.resolve("more.jsonl"), "{\"deed\":\"noted\",\"note\":\"cold\",\"by\":\"Ines\"}");

        assertThat(cli.run("record", file.toString()).out()).isEqualTo("ok 14\n");
        assertThat(cli.fed("{\"deed\":\"noted\",\"note\":\"warm\",\"by\":\"Ines\"}", "record", "-")
                        .out())
                .isEqualTo("ok 15\n");
    }

    @Test
    void aFileThatIsNotThereIsSaidAndNoRoomIsMade() {
        Ran ran = new Cli(folder.resolve("birds")).run("record", "nowhere.jsonl");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).contains("nowhere.jsonl cannot be read");
        assertThat(folder.resolve("birds")).doesNotExist();
    }

    @Test
    void whatIsOddIsRecordedOnlyWhereTheLineIsSure() {
        Ran ran = furnished().record("""
                {"deed":"egg-laid","cage":"A2","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","by":"Ines","sure":true}
                """);

        assertThat(ran.lines())
                .containsExactly(
                        "refused 1: cage A2 has no pair. Record an egg there all the same?"
                                + " If so, add \"sure\":true to the line.",
                        "ok 14");
    }

    @Test
    void accentsGoInAndOutWhole() {
        Ran ran = furnished().record("""
                {"deed":"check","cage":"Küche 1","answer":"well","how":"hand","by":"Zoë"}
                {"deed":"person-added","person":"Zoë","role":"keeper","by":"Ines"}
                {"deed":"check","cage":"Küche 1","answer":"well","how":"hand","by":"Zoë"}
                """);

        assertThat(ran.lines())
                .containsExactly(
                        "refused 1: there is nobody called Zoë here. Did you mean Tom?",
                        "ok 14",
                        "refused 3: there is no cage Küche 1. Did you mean A1?");
    }

    @Test
    void aByteOrderMarkAtTheBeginningIsNoMistake() {
        assertThat(furnished()
                        .record("\uFEFF{\"deed\":\"noted\",\"note\":\"x\",\"by\":\"Ines\"}\r\n")
                        .out())
                .isEqualTo("ok 14\n");
    }

    @Test
    void aReasonHasNeitherALineBreakNorTheWordThatBeginsIt() {
        Ran ran = furnished().record("""
                {"deed":"check","cage":"Refused","answer":"well","how":"hand","by":"Ines"}
                {"deed":"task-done","task":"refused\\nand more","by":"Ines"}
                """);

        assertThat(ran.lines()).hasSize(2);
        assertThat(ran.lines()).allSatisfy(line -> assertThat(line.substring("refused".length()))
                .doesNotContainIgnoringCase("refused"));
    }

    private Cli furnished() {
        return Cli.furnished(folder.resolve("birds"));
    }

    @Test
    void aLineThatCannotBeIsAnsweredWithWhatIsWrongAndWhatToDo() {
        Map<String, String> reasons = linesThatCannotBe();

        Ran ran = furnished().record(String.join("\n", reasons.keySet()));

        List<String> expected = new ArrayList<>();
        reasons.values().forEach(reason -> expected.add("refused " + (expected.size() + 1) + ": " + reason));
        assertThat(ran.lines()).containsExactlyElementsOf(expected);
        assertThat(ran.code()).isEqualTo(1);
    }

    /** Each line with its reason. */
    private static Map<String, String> linesThatCannotBe() {
        Map<String, String> lines = new LinkedHashMap<>();
        lines.put(
                "{\"deed\":\"check\",\"cage\":\"A3\",\"answer\":\"well\",\"how\":\"hand\",\"by\":\"Ines\"}",
                "there is no cage A3. Did you mean A1?");
        lines.put(
                "{\"deed\":\"bird-moved\",\"bird\":\"HB 26-041\",\"to\":\"A2\",\"from\":\"A2\",\"by\":\"Ines\"}",
                "HB 26-041 is not in A2 but in A1. Check the ring or the cage.");
        lines.put(
                "{\"deed\":\"bird-added\",\"bird\":\"HB 25-117\",\"sex\":\"hen\",\"cage\":\"A2\",\"by\":\"Ines\"}",
                "there is already a bird HB 25-117, in cage A1. Check the ring, or choose another name.");
        lines.put(
                "{\"deed\":\"cage-added\",\"cage\":\"A9\",\"wall\":\"North wall\",\"row\":1,\"column\":1,"
                        + "\"use\":\"stock\",\"by\":\"Ines\"}",
                "cage A1 already has that place on North wall: row 1, column 1. Choose a free place.");
        lines.put(
                "{\"deed\":\"egg-laid\",\"cage\":\"A1\",\"mark\":\"2\",\"by\":\"Ines\"}",
                "egg 2 is already in A1, laid on 4 April 2026. The next free mark is 3.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"on\":\"2026-04-15\",\"by\":\"Ines\"}",
                "15 April 2026 has not come yet; today is 14 April 2026. Give the day on which it happened.");
        lines.put(
                "{\"deed\":\"struck-out\",\"entry\":10,\"why\":\"typo\",\"by\":\"Ines\"}",
                "entry 12 leans on entry 10. Strike out entry 12 first.");
        lines.put(
                "{\"deed\":\"struck-out\",\"entry\":99,\"why\":\"typo\",\"by\":\"Ines\"}",
                "there is no entry 99; the last one is 13.");
        lines.put(
                "{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"fine\",\"how\":\"hand\",\"by\":\"Ines\"}",
                "the field \"answer\" must be one of: well, different. It says \"fine\".");
        lines.put(
                "{\"deed\":\"counted\",\"cage\":\"F1\",\"birds\":\"5\",\"by\":\"Ines\"}",
                "the field \"birds\" must be a whole number, without quotes.");
        lines.put(
                "{\"deed\":\"counted\",\"cage\":\"F1\",\"birds\":5.0,\"by\":\"Ines\"}",
                "the field \"birds\" must be a whole number, without quotes.");
        lines.put("{\"deed\":\"noted\",\"note\":7,\"by\":\"Ines\"}", "the field \"note\" must be text in quotes.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"by\":null}",
                "the field \"by\" is null. Leave it out where there is nothing to say.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"about\":\"true\",\"by\":\"Ines\"}",
                "the field \"about\" must be true or false, without quotes.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"on\":\"14.4.2026\",\"by\":\"Ines\"}",
                "the field \"on\" must be a date such as 2026-04-14, not \"14.4.2026\".");
        lines.put(
                "{\"deed\":\"check\",\"cage\":\"A1\",\"cage\":\"A2\",\"answer\":\"well\",\"by\":\"Ines\"}",
                "a field stands twice in the line. Leave one of them out.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"by\":\"Ines\"} {}",
                "something stands after the closing bracket. Write one deed a line and nothing after it.");
        lines.put(
                "{\"deed\":\"check\",\"kage\":\"A1\",\"cage\":\"A1\",\"answer\":\"well\",\"how\":\"hand\",\"by\":\"Ines\"}",
                "the field \"kage\" is not known for \"check\". Did you mean \"cage\"?");
        lines.put("{\"deed\":\"chek\",\"cage\":\"A1\"}", "there is no deed \"chek\". Did you mean \"check\"?");
        lines.put("{\"cage\":\"A1\"}", "the field \"deed\" is missing. It says what happened, for example \"check\".");
        lines.put("[1,2]", "the line is no JSON object. Write one deed a line, in curly brackets.");
        lines.put(
                "check A1 well",
                "the line is not well-formed JSON near character 1. Check its quotes, commas and brackets.");
        lines.put(
                "{\"deed\":\"egg-candled\",\"cage\":\"A1\",\"mark\":\"9\",\"finding\":\"full\",\"by\":\"Ines\"}",
                "There is no egg or chick 9 in A1. In that nest: 1, 2.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"by\":\"Ida\"}",
                "there is nobody called Ida here. Did you mean Ines?");
        lines.put("{\"deed\":\"noted\",\"note\":\"x\"}", "nobody is named as recording this. Say who in \"by\".");
        lines.put(
                "{\"deed\":\"struck-out\",\"entry\":2,\"why\":\"x\",\"by\":\"Ines\",\"digest\":\"00\","
                        + "\"recorded\":\"2026-04-14T07:40:00Z\",\"of\":1}",
                "entry 1 of that export was not recorded here, so nothing can be said about it."
                        + " Record the whole export.");
        lines.put(
                "{\"deed\":\"noted\",\"note\":\"x\",\"by\":\"Ines\",\"digest\":\"00\",\"entry\":1,"
                        + "\"recorded\":\"noon\"}",
                "the field \"recorded\" must be an instant such as 2026-04-14T07:40:00Z, not \"noon\".");
        return lines;
    }

    @Test
    void bytesThatAreNoTextSpoilOnlyTheirOwnLine() throws IOException {
        Cli cli = furnished();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.write("{\"deed\":\"noted\",\"note\":\"caf".getBytes(UTF_8));
        bytes.write(0xE9);
        bytes.write("\",\"by\":\"Ines\"}\n".getBytes(UTF_8));
        bytes.write("{\"deed\":\"noted\",\"note\":\"café\",\"by\":\"Ines\"}\n".getBytes(UTF_8));

        Ran ran = cli.fed(bytes.toByteArray(), "record");

        assertThat(ran.lines())
                .containsExactly("refused 1: the line is not UTF-8 text. Save the file as UTF-8.", "ok 14");
    }

    @Test
    void aLineOfOver64KiBIsTooLongHoweverLongItIs() {
        Cli cli = furnished();
        String padded = "{\"deed\":\"noted\",\"note\":\"x\",\"by\":\"Ines\"}" + " ".repeat(1_000_000);

        Ran ran = cli.record(padded + "\n{\"deed\":\"noted\",\"note\":\"y\",\"by\":\"Ines\"}\n");

        assertThat(ran.lines())
                .containsExactly(
                        "refused 1: the line is longer than 64 KiB. Write one deed a line, and shorten its note.",
                        "ok 14");
    }
}
