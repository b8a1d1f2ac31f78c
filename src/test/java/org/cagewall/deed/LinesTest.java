package org.cagewall.deed;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.DynamicTest.dynamicTest;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.cagewall.room.care.Answer;
import org.cagewall.room.care.How;
import org.cagewall.text.Words;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The language of the record: what is understood, what is not, and what is written. */
class LinesTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);
    private static final Words WORDS = Words.english();
    private static final Lines.Seal SEAL = new Lines.Seal(7, "2026-04-14T09:14:00Z", "ab".repeat(32));

    /** The deeds of the language (the tables of docs/record.md). */
    private static final List<String> LANGUAGE =
            """
            room-set rings-set timetable-set wall-added cage-added cage-placed cage-use-changed cage-retired cages-joined cages-split
            person-added person-changed routine-set room-read cage-cleaned counted
            bird-added birds-added bird-moved bird-sexed bird-named parents-set ring-corrected ring-removed split-ring-put
            bird-looked-over bird-treated bird-trimmed bird-marked bird-out bird-back bird-loose bird-found bird-left
            pair-planned paired-up box-on box-turned box-off box-cleaned round-begun round-ended egg-laid eggs-found eggs-put-back
            sitting egg-candled egg-pipped egg-removed egg-moved chick-moved dummies chick-hatched nest-looked-at
            chick-ringed ring-checked chick-left-box chick-put-back chick-missing chick-died chick-marked chick-weaned
            stage-skipped parting-begun check row-checked task-done task-not-done noted phoned agreement-ended alarm-raised
            away-planned away-changed away-ended entry-seen card-printed card-pencilled rings-bought ring-spoilt
            struck-out""".lines().flatMap(line -> Stream.of(line.split(" "))).toList();

    @Test
    void everyDeedOfTheLanguageIsKnownAndNoOther() {
        assertThat(Lines.deeds()).containsExactlyInAnyOrderElementsOf(LANGUAGE);
    }

    @ParameterizedTest
    @CsvSource({"hen-tired, hen-worn", "disaster, brood-lost", "quality, chicks-poor"})
    void aReasonForPartingOfAnEarlierVersionIsReadUnderTheNameItHasNow(String formerly, String now) {
        Line line = read("{\"deed\":\"parting-begun\",\"cage\":\"A1\",\"reason\":\"" + formerly + "\"}");

        assertThat(Lines.write(line)).contains("\"reason\":\"" + now + "\"");
    }

    @Test
    void aLineOfAnEarlierVersionLeavesABackupAsItWasRecordedThoughItIsReadUnderNewNames() {
        String text =
                "{\"deed\":\"parting-begun\",\"on\":\"2026-04-01\",\"by\":\"Ines\",\"cage\":\"A1\",\"reason\":\"disaster\"}";

        assertThat(Lines.recorded(Lines.export(text, SEAL))).isEqualTo(text);
    }

    @TestFactory
    Stream<DynamicTest> aDeedWrittenWithAllItsFieldsIsReadAsItWas() {
        return everyKind(true);
    }

    @TestFactory
    Stream<DynamicTest> aDeedWrittenWithOnlyWhatItMustHaveIsReadAsItWas() {
        return everyKind(false);
    }

    private static Stream<DynamicTest> everyKind(boolean full) {
        RandomDeeds deeds = new RandomDeeds(1, TODAY);
        return Lines.kinds().entrySet().stream()
                .map(kind -> dynamicTest(kind.getKey(), () -> {
                    for (int i = 0; i < 20; i++) {
                        Line line = line(deeds.of(kind.getValue(), full), full);
                        String text = Lines.write(line);
                        assertThat(read(text)).as(text).isEqualTo(line);
                        assertThat(Lines.write(read(text))).isEqualTo(text);
                        assertThat(Lines.recorded(Lines.export(text, SEAL))).isEqualTo(text);
                    }
                }));
    }

    private static Line line(Deed deed, boolean full) {
        if (!full) {
            return new Line(deed, Circumstances.on(TODAY, "Ines"));
        }
        Set<String> own = new LinkedHashSet<>(fields(deed));
        return new Line(
                deed,
                new Circumstances(
                        LocalDate.of(1999, 12, 31),
                        Optional.of(LocalTime.of(23, 59, 58)),
                        !own.contains("about"),
                        Optional.of("Ines"),
                        own.contains("cage") ? Optional.empty() : Optional.of("A1"),
                        Optional.of("First line.\nSecond \"line\"."),
                        true));
    }

    private static List<String> fields(Deed deed) {
        return Stream.of(deed.getClass().getRecordComponents())
                .map(component -> Names.hyphened(component.getName()))
                .toList();
    }

    @TestFactory
    Stream<DynamicTest> aFieldThatADeedMustHaveIsMissedByName() {
        RandomDeeds deeds = new RandomDeeds(2, TODAY);
        return Lines.kinds().entrySet().stream()
                .filter(kind -> !fields(deeds.of(kind.getValue(), false)).isEmpty())
                .map(kind -> dynamicTest(kind.getKey(), () -> Stream.of(
                                kind.getValue().getRecordComponents())
                        .filter(component -> component.getType() != Optional.class)
                        .map(component -> Names.hyphened(component.getName()))
                        .forEach(field -> {
                            String text = Lines.write(line(deeds.of(kind.getValue(), false), false));
                            String without = text.replaceFirst(
                                    ",\"" + field + "\":(\"(\\\\.|[^\"])*\"|\\[.*?\\]|[^,}\"\\[]+)(?=[,}])", "");
                            assertThat(why(without))
                                    .as(without)
                                    .contains("\"" + field + "\"")
                                    .contains("missing");
                        })));
    }

    @Test
    void aLineWithoutADateIsOfToday() {
        assertThat(read("{\"deed\":\"box-on\",\"cage\":\"A1\"}").told().on()).isEqualTo(TODAY);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "{\"deed\":\"room-set\",\"on\":\"2026-04-14\",\"quiet\":null,\"rules\":null}",
                "{\"deed\":\"person-changed\",\"on\":\"2026-04-14\",\"person\":\"Tomas\",\"phone\":null}",
                "{\"deed\":\"away-changed\",\"on\":\"2026-04-14\",\"second\":null,\"vet\":null}"
            })
    void whatIsTakenAwayIsWrittenAsNullAndWhatStaysIsLeftOut(String text) {
        assertThat(Lines.write(read(text))).isEqualTo(text);
    }

    @Test
    void theLineIsWrittenInTheOrderOfTheLanguage() {
        Line line = new Line(
                new VisitDeed.Check(
                        "B3", Answer.DIFFERENT, How.SCAN, Optional.empty(), Optional.of(List.of("puffed-up"))),
                Circumstances.on(TODAY, "Tomas").at(LocalTime.of(7, 40)).noting("low on the perch"));

        assertThat(Lines.write(line))
                .isEqualTo("{\"deed\":\"check\",\"on\":\"2026-04-14\",\"at\":\"07:40\","
                        + "\"by\":\"Tomas\",\"cage\":\"B3\",\"answer\":\"different\",\"how\":\"scan\","
                        + "\"signs\":[\"puffed-up\"],\"note\":\"low on the perch\"}");
    }

    /** What strict JSON (RFC 8259) and the language refuse: each line is wrong in one thing only. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"cage\":\"A2\"} | stands twice",
                "{\"deed\":\"box-on\",\"cage\":\"A1\"} {} | after the closing bracket",
                "{\"deed\":\"box-on\",\"cage\":\"A1\"} x | not well-formed",
                "{\"deed\":\"box-on\",\"cage\":\"A1\" | not well-formed",
                "{'deed':'box-on','cage':'A1'} | not well-formed",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",} | not well-formed",
                "[{\"deed\":\"box-on\"}] | no JSON object",
                "3 | no JSON object",
                "{\"cage\":\"A1\"} | \"deed\" is missing",
                "{\"deed\":3} | \"deed\" must be text",
                "{\"deed\":\"box-one\",\"cage\":\"A1\"} | Did you mean \"box-on\"",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"colour\":\"red\"} | \"colour\" is not known",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"notes\":\"x\"} | Did you mean \"note\"",
                "{\"deed\":\"box-on\",\"cage\":null} | \"cage\" is null",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"note\":null} | \"note\" is null",
                "{\"deed\":\"box-on\",\"cage\":3} | \"cage\" must be text",
                "{\"deed\":\"box-on\",\"cage\":[\"A1\"]} | \"cage\" must be text",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"sure\":\"true\"} | true or false",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"sure\":1} | true or false",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":\"3\"} | whole number",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":3.0} | whole number",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":3e0} | whole number",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":99999999999} | whole number",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":true} | whole number",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":0} | between 1 and 500",
                "{\"deed\":\"birds-added\",\"cage\":\"A1\",\"count\":501} | between 1 and 500",
                "{\"deed\":\"room-read\",\"high\":\"21.5\"} | one decimal place",
                "{\"deed\":\"room-read\",\"high\":21.55} | one decimal place",
                "{\"deed\":\"room-read\",\"high\":1e9} | one decimal place",
                "{\"deed\":\"room-read\",\"high\":1e999999999} | one decimal place",
                "{\"deed\":\"room-read\",\"high\":-1e999999999} | one decimal place",
                "{\"deed\":\"room-read\",\"high\":60.1} | between -30 and 60",
                "{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"WELL\",\"how\":\"scan\"} | one of: well, different",
                "{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"well\",\"how\":\"scan\",\"signs\":\"x\"} | list",
                "{\"deed\":\"check\",\"cage\":\"A1\",\"answer\":\"well\",\"how\":\"scan\",\"signs\":[3]} | must be text",
                "{\"deed\":\"routine-set\",\"cage\":\"A1\",\"feed\":[{\"what\":\"seed\",\"amount\":\"1\"}]} | \"when\" is missing",
                "{\"deed\":\"routine-set\",\"cage\":\"A1\",\"feed\":[\"seed\"]} | objects with the fields what, amount, when, kind",
                "{\"deed\":\"noted\",\"note\":\"\"} | \"note\" must be a text of 1 to",
                "{\"deed\":\"noted\",\"note\":\"a\\u0007b\"} | printable",
                "{\"deed\":\"noted\",\"note\":\"a\\u202Eb\"} | printable",
                "{\"deed\":\"noted\",\"note\":\"a\\uD83Db\"} | printable",
                "{\"deed\":\"noted\",\"cage\":\"A\\n1\",\"note\":\"x\"} | printable",
                "{\"deed\":\"noted\",\"cage\":\"  \",\"note\":\"x\"} | 1 to 40",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"on\":\"2026-02-30\"} | a date such as",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"on\":\"2026-2-3\"} | a date such as",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"on\":\"+12026-01-01\"} | a date such as",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"on\":\"0000-01-01\"} | a date such as",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"on\":\"2026-04-14T07:40\"} | a date such as",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"on\":20260414} | must be text",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"at\":\"24:00\"} | a time such as",
                "{\"deed\":\"box-on\",\"cage\":\"A1\",\"at\":\"7:40\"} | a time such as",
                "{\"deed\":\"bird-added\",\"bird\":\"x\",\"sex\":\"hen\",\"hatched\":\"2025-02-29\"} | a date such as",
                "{\"deed\":\"bird-added\",\"bird\":\"x\",\"sex\":\"hen\",\"hatched\":\"25\"} | a date such as",
                "{\"deed\":\"bird-added\",\"bird\":\"x\",\"sex\":\"hen\",\"hatched\":2025} | must be text",
                "{\"deed\":\"room-set\",\"rings-issued\":\"13-01\"} | a month and a day",
                "{\"deed\":\"room-set\",\"zone\":\"Mars/Base\"} | a time zone",
                "{\"deed\":\"room-set\",\"quiet\":\"21:30\"} | hours such as",
                "{\"deed\":\"room-set\",\"quiet\":\"\"} | hours such as",
                "{\"deed\":\"room-set\",\"name\":null} | \"name\" is null"
            })
    void whatIsWrongInALineIsSaid(String text, String said) {
        assertThat(why(text)).contains(said);
    }

    @Test
    void aHatchingYearIsKeptAsAYear() {
        Line line = read("{\"deed\":\"bird-added\",\"bird\":\"HB 25-117\",\"sex\":\"hen\",\"hatched\":\"2025\"}");

        assertThat(((BirdDeed.BirdAdded) line.deed()).hatched().map(DateOrYear::text))
                .contains("2025");
    }

    @Test
    void aNameIsNormalisedAndTrimmed() {
        Line line = read("{\"deed\":\"bird-added\",\"bird\":\"  A\\u0308gnes \",\"sex\":\"hen\"}");

        assertThat(((BirdDeed.BirdAdded) line.deed()).bird()).isEqualTo("\u00C4gnes");
    }

    @ParameterizedTest
    @ValueSource(strings = {"x", "\u00C4", "\uD83D\uDC26"})
    void aNameHasAtMostFortyCharactersHoweverManyPlacesTheyTake(String letter) {
        String text = "{\"deed\":\"bird-added\",\"sex\":\"hen\",\"bird\":\"%s\"}";

        assertThat(Lines.read(text.formatted(letter.repeat(40)), TODAY)).isInstanceOf(Lines.Understood.class);
        assertThat(why(text.formatted(letter.repeat(41)))).contains("1 to 40");
    }

    @Test
    void aNoteHasAtMostTwoThousandCharacters() {
        String text = "{\"deed\":\"noted\",\"note\":\"%s\"}";

        assertThat(Lines.read(text.formatted("x".repeat(2_000)), TODAY)).isInstanceOf(Lines.Understood.class);
        assertThat(why(text.formatted("x".repeat(2_001)))).contains("1 to 2000");
    }

    @Test
    void aNoteMayRunOverSeveralLines() {
        assertThat(read("{\"deed\":\"noted\",\"note\":\"one\\ntwo\\tthree\"}")
                        .told()
                        .note())
                .contains("one\ntwo\tthree");
    }

    @Test
    void aLineThatIsTooLongIsNotRead() {
        assertThat(why("{\"deed\":\"noted\",\"note\":\"" + "x".repeat(Lines.LONGEST) + "\"}"))
                .contains("too long");
    }

    @Test
    void aTemperatureIsKeptToATenth() {
        Line line = read("{\"deed\":\"room-read\",\"high\":21,\"low\":17.50}");

        RoomDeed.RoomRead reading = (RoomDeed.RoomRead) line.deed();
        assertThat(reading.high()).contains(new BigDecimal("21.0"));
        assertThat(reading.low()).contains(new BigDecimal("17.5"));
    }

    @Test
    void aTimeIsKeptToTheSecond() {
        assertThat(read("{\"deed\":\"noted\",\"note\":\"x\",\"at\":\"07:40:12.987\"}")
                        .told()
                        .at())
                .contains(LocalTime.of(7, 40, 12));
    }

    @Test
    void anExportedLineCarriesItsSealAndIsReadBackAsItWasRecorded() {
        Lines.Seal seal = new Lines.Seal(7, "2026-04-14T08:00:00.120Z", "0".repeat(64));
        String line = Lines.write(new Line(new CardDeed.StruckOut(5, "typo"), Circumstances.on(TODAY, "Ines")));

        String exported = Lines.export(line, seal);

        assertThat(exported).contains("\"of\":5").contains("\"entry\":7");
        Lines.Understood back = (Lines.Understood) Lines.read(exported, TODAY);
        assertThat(Lines.write(back.line())).isEqualTo(line);
        assertThat(back.seal()).contains(seal);
    }

    @Test
    void anExportedLineWithABrokenSealIsNotRead() {
        String line = "{\"deed\":\"box-on\",\"cage\":\"A1\",\"entry\":%s,\"recorded\":\"%s\",\"digest\":\"0\"}";

        assertThat(why(line.formatted("\"7\"", "2026-04-14T08:00:00Z"))).contains("number of an entry");
        assertThat(why(line.formatted("7", "yesterday"))).contains("instant");
    }

    private static Line read(String text) {
        Lines.Read read = Lines.read(text, TODAY);
        assertThat(read)
                .as("%s: %s", text, read instanceof Lines.NotUnderstood not ? WORDS.say(not.why()) : "")
                .isInstanceOf(Lines.Understood.class);
        return ((Lines.Understood) read).line();
    }

    private static String why(String text) {
        Lines.Read read = Lines.read(text, TODAY);
        assertThat(read).as(text).isInstanceOf(Lines.NotUnderstood.class);
        String said = WORDS.say(((Lines.NotUnderstood) read).why());
        assertThat(said).doesNotContain("[").doesNotContainIgnoringCase("refused");
        return said;
    }
}
