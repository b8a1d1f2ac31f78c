package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.component.VEvent;
import java.io.IOException;
import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.FaceChoice;
import org.cagewall.cards.OutsidePrograms;
import org.cagewall.cards.ReadCards;
import org.cagewall.desk.Clocks;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What the demo's birdroom hands out is read by programs and libraries that know nothing of this one, and agrees. */
class OutsideReadersTest {

    private static final int DPI = 300;
    private static final Pattern HATCHES = Pattern.compile("(.+): egg (\\w+) hatches");

    /** Three letters at least, and the mark of what was left out. */
    private static final Pattern CUT = Pattern.compile("(?m)(?:^|\\s)(\\S{3,})\u2026");

    /** Made once: nothing here records anything in it. */
    @TempDir
    static Path once;

    private static Cli demo;

    /** What {@code show} says of each cage. */
    private static Map<String, JsonNode> pages;

    @TempDir
    Path folder;

    @BeforeAll
    static void aDemoRoomWhoseCardsArePrintedAnewAndThatIsExported() throws IOException {
        demo = new Cli(once.resolve("demo"));
        assertThat(demo.run("demo").code()).isZero();
        assertThat(demo.run(
                                "cards",
                                "--by",
                                "Ines",
                                "--out",
                                once.resolve("cards.pdf").toString())
                        .code())
                .isZero();
        assertThat(demo.run("export", once.resolve("out").toString()).code()).isZero();
        pages = table(once.resolve("out"), "cages").stream()
                .map(row -> row.get("cage"))
                .collect(Collectors.toMap(Function.identity(), cage -> json("show", cage, "--json")));
    }

    @Test
    void theNameThatIsPrintedTheCodeAndTheCageThatAScanOpensAgree() throws Exception {
        agree(Sheets.BUILT_IN.get(0), FaceChoice.BY_USE.word());
    }

    @Tag("slow")
    @ParameterizedTest
    @MethodSource("sheetsAndFaces")
    void onEverySheetAndFaceTheNameThatIsPrintedTheCodeAndTheCageThatAScanOpensAgree(String sheet, String face)
            throws Exception {
        agree(sheet, face);
    }

    private static Stream<Arguments> sheetsAndFaces() {
        return Sheets.BUILT_IN.stream()
                .flatMap(sheet -> Stream.of(FaceChoice.values()).map(face -> Arguments.of(sheet, face.word())));
    }

    private void agree(String sheet, String face) throws Exception {
        Path pdf = folder.resolve("drawn.pdf");
        JsonNode drawn = json("cards", "--sheet", sheet, "--face", face, "--out", pdf.toString(), "--json");
        List<String> cages =
                drawn.get("cages").values().stream().map(JsonNode::asString).toList();
        List<String> codes = cages.stream()
                .map(cage -> pages.get(cage).at("/card/code").asString())
                .toList();
        assertThat(cages).hasSizeGreaterThan(20);

        OutsidePrograms.requireSound(folder, pdf);
        ReadCards read = ReadCards.rendered(folder, Files.readAllBytes(pdf), sheet(sheet), DPI);
        List<Path> pictures = new ArrayList<>();
        for (int place = 0; place < cages.size(); place++) {
            pictures.add(read.card(place));
            assertThat(namesOn(read.words(place), cages))
                    .as("the name on the card of %s", cages.get(place))
                    .contains(cages.get(place));
        }

        assertThat(read.texts(cages.size())).isEqualTo(codes);
        Map<String, List<String>> byFile = OutsidePrograms.symbolsByFile(folder, pictures).stream()
                .map(line -> line.split(" "))
                .collect(Collectors.groupingBy(
                        line -> line[0], Collectors.mapping(line -> line[1], Collectors.toList())));
        for (int place = 0; place < cages.size(); place++) {
            assertThat(byFile.get(pictures.get(place).getFileName().toString()))
                    .as("every symbol on the card of %s", cages.get(place))
                    .isNotEmpty()
                    .containsOnly(codes.get(place));
        }
        List<String> scan = new ArrayList<>(List.of("scan"));
        pictures.forEach(picture -> scan.add(picture.toString()));
        assertThat(demo.run(scan.toArray(String[]::new)).lines()).isEqualTo(cages);
    }

    /** Which cages a card names: by the whole name or, where the smallest cards cut it, by a beginning of that name alone. */
    private static List<String> namesOn(String words, List<String> cages) {
        return cages.stream()
                .filter(cage -> Pattern.compile("(?m)(^|\\s)" + Pattern.quote(cage) + "(\\s|$)")
                                .matcher(words)
                                .find()
                        || CUT.matcher(words).results().map(cut -> cut.group(1)).anyMatch(start -> cages.stream()
                                .filter(other -> other.startsWith(start))
                                .toList()
                                .equals(List.of(cage))))
                .toList();
    }

    /** The command line draws the sheets of the data folder beside the program's own; the demo has none. */
    private static Sheet sheet(String name) {
        return CardsPdf.sheets().find(name).sheet().orElseThrow();
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void theTrialPageOfEverySheetIsASoundFile(String sheet) throws Exception {
        Path pdf = folder.resolve("trial.pdf");
        demo.run("cards", "--trial", "--sheet", sheet, "--out", pdf.toString());

        OutsidePrograms.requireSound(folder, pdf);
    }

    private static List<String> sheets() {
        return Sheets.BUILT_IN;
    }

    /** {@code docs/cards.md}: the first eight bytes of the SHA-256 of the face's canonical text, modulo 1296. */
    @Test
    void theDigestInTheCodeOfEveryCardIsThatOfSha256sum() throws Exception {
        Map<String, String> canonical = canonicalFaces();

        assertThat(canonical).hasSizeGreaterThan(20);
        for (Map.Entry<String, String> face : canonical.entrySet()) {
            String code = pages.get(face.getKey()).at("/card/code").asString();
            String digest = new BigInteger(sha256sum(face.getValue()).substring(0, 16), 16)
                    .mod(BigInteger.valueOf(1296))
                    .toString(36)
                    .toUpperCase(Locale.ROOT);
            assertThat(code.substring(6, 8)).as(face.getValue()).isEqualTo("0".repeat(2 - digest.length()) + digest);
        }
    }

    private static Map<String, String> canonicalFaces() {
        try (Desk desk = Desk.open(
                DataFolder.open(demo.data()), Lanes.inline(), Clocks.system().withToday(LocalDate.parse(Cli.TODAY)))) {
            return desk.room().walk().collect(Collectors.toMap(Cage::name, cage -> CardFaces.of(desk.room(), cage)
                    .canonical()));
        }
    }

    private String sha256sum(String text) throws Exception {
        OutsidePrograms.need("sha256sum");
        Files.writeString(folder.resolve("text"), text);
        return OutsidePrograms.run(folder, List.of("sha256sum", "text")).get(0).substring(0, 64);
    }

    /** {@code docs/record.md}: SHA-256 over the digest before and the recorded line; before the first stand 64 zeros. */
    @Test
    void theDigestOfEveryEntryIsThatOfSha256sumOverTheOneBeforeAndTheLine() throws Exception {
        OutsidePrograms.need("bash", "sha256sum");
        List<String> lines = Files.readAllLines(once.resolve("out/record.jsonl"));
        List<String> digests = lines.stream()
                .map(line -> JsonMapper.shared().readTree(line).get("digest").asString())
                .toList();
        Files.write(
                folder.resolve("recorded"),
                lines.stream()
                        .map(line ->
                                line.replaceFirst(",\"entry\":\\d+,\"recorded\":\"[^\"]+\",\"digest\":\"\\w+\"}$", "}"))
                        .map(line -> line.replaceFirst(",\"of\":(\\d+)", ",\"entry\":$1"))
                        .toList());
        Files.writeString(folder.resolve("chain.sh"), """
                last=$(printf '0%.0s' {1..64})
                while IFS= read -r line; do
                    last=$(printf '%s%s' "$last" "$line" | sha256sum)
                    last=${last:0:64}
                    echo "$last"
                done <recorded
                """);

        assertThat(OutsidePrograms.run(folder, List.of("bash", "chain.sh")))
                .hasSizeGreaterThan(500)
                .isEqualTo(digests);
        assertThat(json("verify", "--json").get("digest").asString()).isEqualTo(digests.get(digests.size() - 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"birds", "cages", "pairs", "eggs", "chicks", "checks", "entries"})
    void everyTableIsReadByAnotherLibraryWithAFieldForEachHeading(String name) throws Exception {
        assertThat(table(once.resolve("out"), name)).isNotEmpty().allMatch(CSVRecord::isConsistent);
    }

    @Test
    void theTablesSayOfEveryCageBirdAndEggWhatItsPageSays() throws Exception {
        Map<String, CSVRecord> cages = by("cage", table(once.resolve("out"), "cages"));
        Map<String, CSVRecord> birds = by("bird", table(once.resolve("out"), "birds"));
        List<String> eggs = table(once.resolve("out"), "eggs").stream()
                .map(egg ->
                        Stream.of("pair", "round", "mark", "laid").map(egg::get).collect(Collectors.joining(" ")))
                .toList();
        int compared = 0;
        for (String cage : cages.keySet()) {
            JsonNode shown = pages.get(cage);
            assertThat(cages.get(cage).get("use")).isEqualTo(shown.get("use").asString());
            for (JsonNode bird : shown.get("birds")) {
                CSVRecord row = birds.get(bird.get("bird").asString());
                assertThat(row.get("cage")).isEqualTo(cage);
                assertThat(row.get("sex")).isEqualTo(bird.get("sex").asString());
                compared++;
            }
            for (JsonNode egg : shown.get("eggs")) {
                if (egg.get("from").isNull()) {
                    assertThat(eggs)
                            .contains(shown.at("/pair/label").asString() + " "
                                    + egg.get("round").asInt() + " "
                                    + egg.get("mark").asString() + " "
                                    + egg.get("laid").asString());
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(60);
    }

    @Test
    void quotesLinesCommasAccentsAndSpacesComeBackFromTheTablesAsTheyWereWritten() throws Exception {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        List<String> notes = List.of(
                "\"quoted\"", "two\nlines", "a, b, and c", " spaces around ", "Zo\u00eb \u9e1f \uD83D\uDC26", "\"");
        for (String note : notes) {
            assertThat(cli.run("check", "A1", "--by", "Ines", "--answer", "well", "--note", note)
                            .code())
                    .isZero();
        }
        cli.run("export", folder.resolve("out").toString());

        List<String> recorded = Files.readAllLines(folder.resolve("out/record.jsonl")).stream()
                .map(line -> JsonMapper.shared().readTree(line))
                .filter(line -> line.get("deed").asString().equals("check"))
                .map(line -> line.get("note").asString())
                .toList();
        assertThat(recorded).hasSameSizeAs(notes).contains("two\nlines", "a, b, and c");
        for (String name : List.of("checks", "entries")) {
            assertThat(table(folder.resolve("out"), name).stream().map(row -> row.get("note")))
                    .containsSubsequence(recorded);
        }
    }

    /** As RFC 4180 says, with the headings in the first record. */
    private static List<CSVRecord> table(Path out, String name) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .build();
        try (CSVParser parser = CSVParser.parse(out.resolve(name + ".csv"), StandardCharsets.UTF_8, format)) {
            return parser.getRecords();
        }
    }

    private static Map<String, CSVRecord> by(String heading, List<CSVRecord> rows) {
        return rows.stream().collect(Collectors.toMap(row -> row.get(heading), Function.identity()));
    }

    @Test
    void theCalendarHasTheHatchingOfEachEggOnTheDayThatItsCageExpects() throws Exception {
        Map<String, LocalDate> inThePhone = new HashMap<>();
        for (VEvent event : Biweekly.parse(once.resolve("out/calendar.ics").toFile())
                .first()
                .getEvents()) {
            Matcher hatches = HATCHES.matcher(event.getSummary().getValue());
            if (hatches.matches()) {
                inThePhone.put(
                        hatches.group(1) + " " + hatches.group(2),
                        LocalDate.ofInstant(event.getDateStart().getValue().toInstant(), ZoneId.systemDefault()));
            }
        }
        Map<String, LocalDate> onThePages = new HashMap<>();
        for (String cage : pages.keySet()) {
            for (JsonNode egg : pages.get(cage).get("eggs")) {
                if (!egg.get("hatch").isNull()
                        && !egg.get("state").asString().equals("hatched")
                        && egg.get("lies").asString().equals(cage)) {
                    String mark = egg.get("letter").isNull() ? "mark" : "letter";
                    onThePages.put(
                            cage + " " + egg.get(mark).asString(),
                            LocalDate.parse(egg.at("/hatch/expected").asString()));
                }
            }
        }

        assertThat(inThePhone).hasSizeGreaterThan(15).containsExactlyInAnyOrderEntriesOf(onThePages);
    }

    private static JsonNode json(String... arguments) {
        return JsonMapper.shared().readTree(demo.run(arguments).out());
    }
}
