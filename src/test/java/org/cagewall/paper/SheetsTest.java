package org.cagewall.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.cagewall.text.Message;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SheetsTest {

    /** Whoever draws may refuse a card for reasons of its own. */
    private static final Demand DEMAND = card -> card.width() < 58
            ? Optional.of(Message.of("cards.sheet.too-small", card.width(), card.height(), 0.5, 1.02, 58, 35))
            : Optional.empty();

    private static final String GOOD = """
            title = Kitchen table
            paper = 210 x 297   # a ruler says so
            cards = 2 x 5
            card  = 85 x 54
            first = 15 x 13.5
            pitch = 95 x 54
            """;

    private final Words words = Words.english();

    @TempDir
    private Path folder;

    /** Paper: ISO 216 for A4, ANSI/ASME Y14.1 for size A, 8.5 by 11 inches. */
    @ParameterizedTest
    @CsvSource({
        "a4-85x54, 210, 297, 10",
        "letter-4x2in, 215.9, 279.4, 10",
        "a4-99x68, 210, 297, 8",
        "a4-64x38, 210, 297, 21",
        "a6-105x148, 105, 148, 1",
        "roll-100x60, 100, 60, 1"
    })
    void edgesCardsAndGapsOfASheetSumToThePaper(String name, double width, double height, int cards) {
        Sheet sheet = Sheets.builtIn(DEMAND).find(name).sheet().orElseThrow();
        assertThat(sheet.paper()).isEqualTo(new Size(width, height));
        assertThat(2 * sheet.left()
                        + (sheet.columns() - 1) * sheet.pitch().width()
                        + sheet.card().width())
                .isEqualTo(width, within(0.001));
        assertThat(2 * sheet.top()
                        + (sheet.rows() - 1) * sheet.pitch().height()
                        + sheet.card().height())
                .isEqualTo(height, within(0.001));
        assertThat(sheet.cards()).isEqualTo(cards);
    }

    /** An inch is 25.4 mm by the international agreement of 1959. */
    @Test
    void theLetterSheetsCardsAreFourByTwoInches() {
        Sheet sheet = Sheets.builtIn(DEMAND).find("letter-4x2in").sheet().orElseThrow();
        assertThat(sheet.card()).isEqualTo(new Size(4 * 25.4, 2 * 25.4));
    }

    @Test
    void everyFileInTheLabelsFolderComesWithTheProgram() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("labels"))) {
            assertThat(files.map(file -> file.getFileName().toString().replace(".txt", "")))
                    .containsExactlyInAnyOrderElementsOf(Sheets.BUILT_IN);
        }
    }

    @Test
    void placesRunRowByRow() {
        Sheet sheet = Sheets.builtIn(DEMAND).find("a4-85x54").sheet().orElseThrow();
        assertThat(sheet.place(0)).isEqualTo(new Area(15, 13.5, 85, 54));
        assertThat(sheet.place(1)).isEqualTo(new Area(110, 13.5, 85, 54));
        assertThat(sheet.place(9)).isEqualTo(new Area(110, 229.5, 85, 54));
    }

    @Test
    void aSheetOfTheKeepersOwnIsListedAndRead() {
        write("table", GOOD + "shift = 0.5 x -1\n");
        Sheets sheets = Sheets.with(folder, DEMAND);
        assertThat(sheets.names())
                .containsExactly(
                        "a4-85x54", "letter-4x2in", "a4-99x68", "a4-64x38", "a6-105x148", "roll-100x60", "table");
        Sheet sheet = sheets.find("table").sheet().orElseThrow();
        assertThat(sheet.title()).isEqualTo("Kitchen table");
        assertThat(sheet.place(0)).isEqualTo(new Area(15.5, 12.5, 85, 54));
    }

    @Test
    void aFileOfTheSameNameInTheKeepersFolderWins() {
        write("a4-85x54", GOOD.replace("2 x 5", "1 x 3"));
        assertThat(Sheets.with(folder, DEMAND).find("a4-85x54").sheet())
                .map(Sheet::cards)
                .contains(3);
    }

    @Test
    void aFolderThatIsNotThereLeavesTheProgramsOwnSheets() {
        Sheets sheets = Sheets.with(folder.resolve("nowhere"), DEMAND);
        assertThat(sheets.names()).isEqualTo(Sheets.BUILT_IN);
        assertThat(sheets.find("a4-85x54").sheet()).isPresent();
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "a5", "../a4-85x54", "A4-85X54"})
    void anUnknownSheetIsRefusedWithTheNamesThereAre(String name) {
        assertThat(reason(Sheets.with(folder, DEMAND).find(name))).contains("a4-85x54, letter-4x2in");
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void aMistakeIsNamedWithFileAndLine(String wrong, String right, int line, String said) {
        write("mine", GOOD.replace(right, wrong));
        assertThat(reason(Sheets.with(folder, DEMAND).find("mine")))
                .contains("mine.txt, line " + line + ": ")
                .contains(said)
                .doesNotContain("[");
    }

    private static List<Arguments> mistakes() {
        return List.of(
                mistake("first = 31 x 13.5", "first = 15 x 13.5", 5, "1 mm over the edge"),
                mistake("first = -1 x 13.5", "first = 15 x 13.5", 5, "1 mm over the edge"),
                mistake("first = 15 x 28", "first = 15 x 13.5", 5, "1 mm over the edge"),
                mistake("pitch = 80 x 54", "pitch = 95 x 54", 6, "over one another by 5 mm"),
                mistake("pitch = 95 x 50", "pitch = 95 x 54", 6, "over one another by 4 mm"),
                mistake("card  = 40 x 30", "card  = 85 x 54", 4, "at least 58 x 35 mm"),
                mistake("card  = 85 x nought", "card  = 85 x 54", 4, "two numbers"),
                mistake("card  = 85", "card  = 85 x 54", 4, "two numbers"),
                mistake("card  = 85 x 0", "card  = 85 x 54", 4, "more than nought"),
                mistake("card  = 85 x NaN", "card  = 85 x 54", 4, "two numbers"),
                mistake("card  = 1e9 x 54", "card  = 85 x 54", 4, "two numbers"),
                mistake("cards = 2.5 x 5", "cards = 2 x 5", 3, "whole numbers"),
                mistake("cards = 0 x 5", "cards = 2 x 5", 3, "whole numbers"),
                mistake("cards = 999 x 999", "cards = 2 x 5", 3, "whole numbers"),
                mistake("card  is 85 x 54", "card  = 85 x 54", 4, "name = value"),
                mistake("colour = red", "title = Kitchen table", 1, "not known"),
                mistake("paper = 210 x 297\ncard  = 85 x 54", "paper = 210 x 297", 5, "second time"),
                mistake("", "first = 15 x 13.5\n", 6, "without \"first\""));
    }

    @Test
    void aShiftOverTheEdgeIsNamedByItsOwnLine() {
        write("shifted", GOOD + "shift = 16 x 0\n");
        assertThat(reason(Sheets.with(folder, DEMAND).find("shifted")))
                .contains("shifted.txt, line 7: \"shift\" would move the cards 1 mm over the edge");
    }

    @Test
    void withoutAPitchTheCardsTouch() {
        write("touching", GOOD.replace("pitch = 95 x 54\n", ""));
        assertThat(Sheets.with(folder, DEMAND).find("touching").sheet())
                .map(sheet -> sheet.place(1))
                .contains(new Area(100, 13.5, 85, 54));
    }

    private static Arguments mistake(String wrong, String right, int line, String said) {
        return Arguments.of(wrong, right, line, said);
    }

    @Test
    void whatIsNoTextIsRefused() throws IOException {
        Files.write(folder.resolve("latin.txt"), "title = B\u00F6rse\n".getBytes(StandardCharsets.ISO_8859_1));
        Files.write(folder.resolve("long.txt"), new byte[70_000]);
        Files.createDirectory(folder.resolve("folder.txt"));
        Sheets sheets = Sheets.with(folder, DEMAND);
        assertThat(reason(sheets.find("latin"))).contains("not plain text");
        assertThat(reason(sheets.find("long"))).contains("cannot be read");
        assertThat(reason(sheets.find("folder"))).contains("cannot be read");
    }

    private void write(String name, String text) {
        try {
            Files.writeString(folder.resolve(name + ".txt"), text);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private String reason(Sheets.Found found) {
        return words.say(found.reason().orElseThrow());
    }
}
