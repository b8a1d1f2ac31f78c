package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.cagewall.command.Cli.Ran;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** docs/record.md names the fields of an answer as they are, in their order. */
class AnswersDocumentTest {

    private static final Pattern CODE = Pattern.compile("`([A-Za-z]+)`");

    @TempDir
    Path folder;

    @Test
    void everyFieldOfAnAnswerStandsInTheDocumentAndNoOther() {
        Cli cli = new Cli(folder.resolve("birds"));
        cli.run("demo");
        Map<String, Collection<String>> fields = new TreeMap<>();
        for (String name : List.of("A1", "A2", "A4", "B6")) {
            collect("show", json(cli.run("show", name, "--json")), fields);
        }
        collect("tasks", json(cli.run("tasks", "--json")), fields);
        collect("ahead", json(cli.run("ahead", "--json", "--clear-by", "2026-06-14", "--policy", "apart")), fields);
        collect("review", json(cli.run("review", "--json")), fields);
        collect("scan", json(cli.run("scan", "--json", "none.png")), fields);
        collect("verify", json(cli.run("verify", "--json")), fields);
        collect("cards", json(cli.run("cards", "--json", "--out", pdf(), "A1")), fields);
        collect("check", json(cli.run("check", "--json", "A1", "--by", "Ines", "--answer", "well")), fields);
        collect(
                "report",
                json(cli.run("report", "--json", folder.resolve("report").toString())),
                fields);

        Map<String, List<String>> told = told();

        assertThat(told)
                .containsKeys("show", "show/eggs", "tasks/closed", "ahead/nests/waysOut", "review/unvisited", "scan");
        told.forEach((path, names) -> assertThat(fields.get(path)).as(path).containsExactlyElementsOf(names));
        fields.keySet().removeIf(path -> told.containsKey(path) || isAlike(path, fields.get(path), told));
        assertThat(fields).as("what the document does not tell").isEmpty();
    }

    /** Whether a row of the same answer, which says what else is alike, names the same fields. */
    private static boolean isAlike(String path, Collection<String> names, Map<String, List<String>> told) {
        String answer = path.substring(0, path.indexOf('/') + 1);
        return path.contains("/")
                && alike().stream().filter(row -> row.startsWith(answer)).anyMatch(row -> told.get(row)
                        .equals(List.copyOf(names)));
    }

    private String pdf() {
        return folder.resolve("cards.pdf").toString();
    }

    private static JsonNode json(Ran ran) {
        assertThat(ran.code()).as(ran.err()).isIn(Main.DONE, Main.REFUSED);
        return JsonMapper.shared().readTree(ran.out());
    }

    private static void collect(String path, JsonNode node, Map<String, Collection<String>> fields) {
        if (node.isArray()) {
            node.forEach(each -> collect(path, each, fields));
        } else if (node.isObject()) {
            fields.put(path, node.propertyNames());
            node.properties().forEach(each -> collect(path + "/" + each.getKey(), each.getValue(), fields));
        }
    }

    /** The rows of the document's last table that speak of one answer. */
    private static Map<String, List<String>> told() {
        Map<String, List<String>> told = new TreeMap<>();
        rows().forEach(cells -> told.put(path(cells), words(cells[1].split("[;:]")[0])));
        return told;
    }

    /** Those of them that stand for others as well. */
    private static List<String> alike() {
        return rows().filter(cells -> cells[1].contains("alike"))
                .map(AnswersDocumentTest::path)
                .toList();
    }

    private static Stream<String[]> rows() {
        try {
            String document = Files.readString(Path.of("docs/record.md"));
            return document.substring(document.indexOf("## JSON answers"))
                    .lines()
                    .filter(line -> line.startsWith("| `") && !line.split(" \\| ")[0].contains(", "))
                    .map(line -> line.split(" \\| ", 2));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String path(String[] cells) {
        return String.join("/", words(cells[0]));
    }

    private static List<String> words(String cell) {
        return new ArrayList<>(CODE.matcher(cell)
                .results()
                .map((MatchResult match) -> match.group(1))
                .toList());
    }
}
