package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The question that rules the year, asked at the command line. */
class AheadCommandTest {

    @TempDir
    Path folder;

    @Test
    void theThreeColumnsStandBesideOneAnother() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        Ran ran = cli.run("ahead", "--clear-by", "2026-06-14");

        assertThat(ran.code()).isEqualTo(Main.DONE);
        assertThat(ran.lines())
                .startsWith(
                        "To be done by 14 June 2026: every chick feeds itself",
                        "                        At a push               Usual                   Safe",
                        "Box on                  5 April 2026            28 March 2026           28 February 2026");
        assertThat(ran.out()).contains("Chances from 10000 draws, seed 1.");
    }

    @Test
    void ofTwoRoundsBothStandInTheColumns() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        assertThat(cli.run("ahead", "--clear-by", "2026-06-14", "--rounds", "2").out())
                .contains("Round 1: first egg              26 February 2026        16 February 2026")
                .contains(
                        "Round 2: first egg              12 April 2026           7 April 2026            21 March 2026")
                .contains("45 / 50 / 60 days after round 1: first egg");
        JsonNode usual = json(cli.run("ahead", "--clear-by", "2026-06-14", "--rounds", "2", "--json"))
                .get("usual");
        assertThat(usual.at("/eachRound/0/firstEgg").stringValue()).isEqualTo("2026-02-16");
        assertThat(usual.at("/eachRound/1/firstEgg").stringValue())
                .isEqualTo(usual.get("firstEgg").stringValue());
    }

    @Test
    void aPairThatHasLaidIsHeldAgainstTheDay() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        JsonNode ahead = json(cli.run("ahead", "--clear-by", "2026-06-14", "--json"));

        assertThat(ahead.at("/usual/lastHatch").stringValue()).isEqualTo("2026-05-03");
        assertThat(ahead.at("/ringYear/boxOn/latest").isNull()).isTrue();
        JsonNode nest = ahead.at("/nests/0");
        assertThat(nest.get("cage").stringValue()).isEqualTo("A1");
        assertThat(nest.get("chance").doubleValue()).isBetween(0.0, 1.0);
        assertThat(ahead.get("days")).hasSize(14);
        assertThat(ahead.at("/days/0/date").stringValue()).isEqualTo("2026-06-14");
    }

    @Test
    void aDayThatNoCalendarHasIsSentBackWithADayAsItIsWritten() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        Ran ran = cli.run("ahead", "--clear-by", "2026-02-29");

        assertThat(ran.code()).isEqualTo(Main.WRONG_USAGE);
        assertThat(ran.err())
                .contains("'--clear-by': say a day that there is, such as 2026-04-14, not '2026-02-29'")
                .doesNotContain("java");
    }

    @Test
    void daysAwayAreAskedAboutWhereNoDayIsSaid() {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        assertThat(cli.run("ahead").err()).contains("no days away are planned").contains("--clear-by");
        cli.record("{\"deed\":\"away-planned\",\"from\":\"2026-07-04\",\"to\":\"2026-07-10\",\"sitter\":\"Tom\","
                + "\"by\":\"Ines\"}\n");

        JsonNode ahead = json(cli.run("ahead", "--json"));

        assertThat(ahead.get("clearBy").stringValue()).isEqualTo("2026-07-04");
        assertThat(ahead.get("days")).hasSize(7);
    }

    @Test
    void aDayThatHasGoneByAndOneThatIsFarAwayAreRefusedWithASentence() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        assertThat(cli.run("ahead", "--clear-by", "2025-06-14").code()).isEqualTo(Main.REFUSED);
        assertThat(cli.run("ahead", "--clear-by", "2025-06-14").err()).contains("14 June 2025, has gone by");
        assertThat(cli.run("ahead", "--clear-by", "2400-06-14").err()).contains("more than 20 years away");
        assertThat(cli.run("ahead", "--clear-by", "2026-06-14", "--rounds", "0").err())
                .contains("between 1 and 9");
        assertThat(cli.run("ahead", "--clear-by", "2026-06-14", "--policy", "soon")
                        .code())
                .isEqualTo(2);
        assertThat(cli.run("ahead", "--clear-by", "14.6.2026").code()).isEqualTo(2);
    }

    @Test
    void aFolderWithNoBirdroomIsRefusedAndLeftAlone() {
        Ran ran = new Cli(folder.resolve("none")).run("ahead", "--clear-by", "2026-06-14");

        assertThat(ran.code()).isEqualTo(Main.REFUSED);
        assertThat(Files.exists(folder.resolve("none"))).isFalse();
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isEqualTo(Main.DONE);
        return JsonMapper.shared().readTree(ran.out());
    }
}
