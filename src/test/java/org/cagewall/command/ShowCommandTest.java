package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What is told of one cage. */
class ShowCommandTest {

    @TempDir
    Path folder;

    @Test
    void everyFieldOfACageIsThereAndNullWhereNothingIsKnown() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        JsonNode shown = json(cli.run("show", "a1", "--json"));

        assertThat(shown.propertyNames())
                .contains("cage", "use", "pair", "sittingFrom", "eggs", "chicks", "parting", "card");
        assertThat(shown.at("/pair").toString())
                .startsWith("{\"label\":\"1\",\"cock\":\"HB 26-041\",\"hen\":\"HB 25-117\",\"since\":\"2026-03-20\"");
        assertThat(shown.get("eggs")).hasSize(2);
        assertThat(shown.at("/eggs/1").propertyNames())
                .contains("round", "mark", "letter", "from", "laid", "satFrom", "state", "look", "hatch");
        assertThat(shown.at("/eggs/1/mark").stringValue()).isEqualTo("2");
        assertThat(shown.get("sittingFrom").stringValue()).isEqualTo("2026-04-04");
        assertThat(shown.at("/eggs/1/state").stringValue()).isEqualTo("not-candled");
        // Sat from 4 April: 17, 18, 21 days to hatching, and 4, 5, 7 to the first look.
        assertThat(shown.at("/eggs/0/hatch").toString())
                .isEqualTo("{\"earliest\":\"2026-04-21\",\"expected\":\"2026-04-22\",\"latest\":\"2026-04-25\","
                        + "\"about\":false}");
        assertThat(shown.at("/eggs/1/look").toString())
                .isEqualTo("{\"earliest\":\"2026-04-08\",\"expected\":\"2026-04-09\",\"latest\":\"2026-04-11\","
                        + "\"about\":false}");
        // Hatched 21 to 25 April, 28, 32, 38 days in the box.
        assertThat(shown.at("/parting/boxTurned").toString())
                .isEqualTo("{\"happened\":null,\"earliest\":\"2026-05-19\",\"expected\":\"2026-05-24\","
                        + "\"latest\":\"2026-06-02\",\"about\":false,\"skipped\":false}");
        assertThat(shown.get("parting").propertyNames()).contains("begun", "boxTurned", "boxOff", "cockOut", "henOut");
        assertThat(shown.at("/card/code").stringValue()).matches("C[0-9A-Z]{9}");
        assertThat(shown.at("/card/printed").isNull()).isTrue();
        assertThat(shown.at("/card/outOfDate").booleanValue()).isFalse();

        JsonNode empty = json(cli.run("show", "F1", "--json"));

        assertThat(empty.propertyNames()).containsExactlyElementsOf(shown.propertyNames());
        assertThat(empty.get("pair").isNull()).isTrue();
        assertThat(empty.get("unnamed").intValue()).isEqualTo(5);
    }

    @Test
    void aCageIsToldInSentencesWithItsLastEntries() {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        cli.run("check", "A1", "--by", "Tom", "--answer", "different", "--note", "hen quiet");

        Ran ran = cli.run("show", "A1");

        assertThat(ran.lines())
                .startsWith(
                        "A1: breeding, North wall, row 1, column 1",
                        "Pair 1: HB 26-041 and HB 25-117, since 20 March 2026",
                        "2 birds: HB 26-041 (cock), HB 25-117 (hen)",
                        "Nest box on since 20 March 2026",
                        "Round 1, sat on from 4 April 2026",
                        "Egg 1, laid 2 April 2026: not candled, to hatch between 21 and 25 April 2026",
                        "Egg 2, laid 4 April 2026: not candled, to hatch between 21 and 25 April 2026",
                        "Not candled: egg 1, 2; that was due between 8 and 11 April 2026",
                        "Next round expected between 17 May 2026 and 1 June 2026",
                        "No card printed yet",
                        "Last check 14 April 2026 by Tom, by hand: something different. Note: hen quiet")
                .contains("  14  14 April 2026  Tom: something different. Note: hen quiet");
    }

    @Test
    void anEggThatWasMovedStandsInBothNestsWithItsLetter() {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        String lines = """
                {"deed":"bird-added","bird":"HB 25-001","sex":"cock","cage":"F1","by":"Ines"}
                {"deed":"bird-added","bird":"HB 25-002","sex":"hen","cage":"F1","by":"Ines"}
                {"deed":"paired-up","cage":"A2","cock":"HB 25-001","hen":"HB 25-002","on":"2026-03-20","by":"Ines","sure":true}
                {"deed":"box-on","cage":"A2","on":"2026-03-20","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-03","by":"Ines"}
                {"deed":"egg-laid","cage":"A2","on":"2026-04-05","by":"Ines"}
                {"deed":"egg-moved","cage":"A1","mark":"2","to":"A2","on":"2026-04-06","by":"Ines"}
                """;
        Ran ran = cli.record(lines);
        assertThat(ran.out()).as(ran.out()).doesNotContain("refused");

        JsonNode home = json(cli.run("show", "A1", "--json"));
        JsonNode host = json(cli.run("show", "A2", "--json"));

        assertThat(home.at("/eggs/1/state").stringValue()).isEqualTo("moved-away");
        assertThat(home.at("/eggs/1/lies").stringValue()).isEqualTo("A2");
        assertThat(home.at("/eggs/1/from").isNull()).isTrue();
        assertThat(host.get("eggs").findValuesAsString("from")).containsOnlyOnce("A1");
        assertThat(host.get("eggs").findValuesAsString("letter")).containsOnlyOnce("A");
        assertThat(cli.run("show", "A2").lines())
                .contains("Egg A, laid 4 April 2026, from A1 where it was egg 2: not candled,"
                        + " to hatch between 21 and 25 April 2026");
        assertThat(cli.run("show", "A1").lines())
                .contains("Egg 2, laid 4 April 2026: moved to A2 as A, to hatch between 21 and 25 April 2026");
    }

    @Test
    void aCageThatIsNotThereIsRefusedWithTheNearest() {
        Ran ran = Cli.furnished(folder.resolve("birds")).run("show", "A7");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err()).isEqualTo("cagewall: there is no cage A7. Did you mean A1?\n");
    }

    @Test
    void aCheckIsRecordedByASitterButNotByAStranger() {
        Cli cli = Cli.furnished(folder.resolve("birds"));

        assertThat(cli.run("check", "A2", "--by", "Tom", "--answer", "well").out())
                .isEqualTo("ok 14\n");
        assertThat(cli.run("check", "A2", "--by", "Tim", "--answer", "well", "--json")
                        .err())
                .isEqualTo("cagewall: there is nobody called Tim here. Did you mean Tom?\n");
        assertThat(cli.run("check", "A2", "--by", "Tom", "--answer", "well", "--note", "")
                        .err())
                .contains("the field \"note\" must be a text");
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isZero();
        return JsonMapper.shared().readTree(ran.out());
    }
}
