package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** A day's list and what happened on some days, from the command line. */
class DaysTest {

    @TempDir
    Path folder;

    private Cli cli;

    @BeforeEach
    void goAway() {
        cli = Cli.furnished(folder.resolve("birds"));
        cli.record("""
                {"deed":"away-planned","from":"2026-04-12","to":"2026-04-20","sitter":"Tom","on":"2026-04-11","by":"Ines"}
                {"deed":"check","cage":"A1","answer":"different","how":"scan","signs":["puffed-up"],"on":"2026-04-12","by":"Tom"}
                {"deed":"check","cage":"F1","answer":"well","how":"hand","when":"morning","on":"2026-04-12","by":"Tom"}
                {"deed":"check","cage":"A1","answer":"well","how":"hand","when":"morning","by":"Tom"}
                """);
    }

    @Test
    void aTaskIsNamedByItsDayCageAndKindAndSaysWhatBecameOfIt() {
        JsonNode tasks = json(cli.run("tasks", "--for", "sitter", "--json"));

        assertThat(tasks).isNotEmpty().allSatisfy(task -> {
            assertThat(task.get("task").stringValue()).matches("2026-04-14/[^/]+/[a-z-]+(/\\d+)?");
            assertThat(task.get("how").isArray()).isTrue();
        });
        assertThat(tasks.get(0).get("cage").stringValue()).isEqualTo("A1");
        assertThat(tasks.get(0).get("state").stringValue()).isEqualTo("done");
        assertThat(cli.run("tasks", "--for", "sitter").lines().get(0)).startsWith("done     A1: ");
        assertThat(cli.run("tasks").out()).contains("Reported different");
    }

    @Test
    void theListOfADayGoneByStillKnowsWhatWasDone() {
        JsonNode tasks = json(cli.run("tasks", "--for", "sitter", "--on", "2026-04-12", "--json"));

        assertThat(tasks.get(1).get("task").stringValue()).startsWith("2026-04-12/F1/");
        assertThat(tasks.get(1).get("state").stringValue()).isEqualTo("done");
    }

    @Test
    void whatHappenedIsToldForTheDaysAwayTheMostUrgentFirst() {
        JsonNode review = json(cli.run("review", "--json"));

        assertThat(review.get("from").stringValue()).isEqualTo("2026-04-12");
        assertThat(review.get("to").stringValue()).isEqualTo("2026-04-14");
        assertThat(review.get("different")).hasSize(1);
        assertThat(review.at("/different/0/cages/0").stringValue()).isEqualTo("A1");
        assertThat(review.get("unvisited").toString())
                .contains("{\"cage\":\"A1\",\"on\":\"2026-04-13\",\"read\":false}");
        assertThat(cli.run("review").lines())
                .startsWith(
                        "From 12 April 2026 to 14 April 2026",
                        "Reported different (1):",
                        "  15  12 April 2026  Tom, by scan: A1: something different: puffed up");
    }

    @Test
    void whoLookedAtWhatAndWhoWasInChargeStandInTheReview() {
        JsonNode review = json(cli.run("review", "--json"));

        assertThat(review.at("/away/sitters/0").toString())
                .isEqualTo("{\"sitter\":\"Tom\",\"from\":\"2026-04-12\",\"to\":\"2026-04-20\"}");
        assertThat(review.get("visits").toString())
                .contains(
                        "{\"cage\":\"A1\",\"on\":\"2026-04-12\",\"how\":\"scan\",\"answer\":\"different\",\"missed\":false}",
                        "{\"cage\":\"F1\",\"on\":\"2026-04-12\",\"how\":\"hand\",\"answer\":\"well\",\"missed\":false}",
                        "{\"cage\":\"A1\",\"on\":\"2026-04-13\",\"how\":\"none\",\"answer\":null,\"missed\":true}");
        assertThat(review.get("waiting").isArray()).isTrue();
        assertThat(cli.run("review").out())
                .contains("Away from 12 April 2026 to 20 April 2026. Tom from 12 April 2026 to 20 April 2026.");
    }

    @Test
    void daysInTheWrongOrderAreSaid() {
        Ran ran = cli.run("review", "--from", "2026-04-14", "--to", "2026-04-12");

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.err())
                .isEqualTo(
                        "cagewall: the last day, 12 April 2026, comes before the first, 14 April 2026. Swap them.\n");
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isZero();
        return JsonMapper.shared().readTree(ran.out());
    }
}
