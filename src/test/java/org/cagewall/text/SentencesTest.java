package org.cagewall.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All sentences of all bundles, and all places in the code that ask for one by name. */
class SentencesTest {

    private static final Path BUNDLES = Path.of("src/main/resources/org/cagewall/text/en");
    private static final Path CODE = Path.of("src/main/java");

    /** A whole key as the code writes it; one that is put together from parts ends in a dot and is left out. */
    private static final Pattern ASKED = Pattern.compile(
            "(?:Message\\.of|words\\.say|[rR]efuses|refusesIf|asksIf|say)\\(\\s*\"([a-z-]+\\.[a-z0-9.-]*[a-z0-9])\"");

    private static final Pattern ASKED_LATER =
            Pattern.compile("(?:refusesIf|asksIf)\\([^;]*?\"([a-z-]+\\.[a-z0-9.-]*[a-z0-9])\"", Pattern.DOTALL);

    private static final Pattern KEY = Pattern.compile("[A-Za-z0-9_.-]+=");

    @Test
    void everySentenceCanBeFilledIn() {
        sentences().forEach((key, sentence) -> {
            assertThatCode(() -> new MessageFormat(sentence, Locale.UK).format(new Object[] {1L, 2L, 3L, 4L, 5L}))
                    .as("%s=%s", key, sentence)
                    .doesNotThrowAnyException();
            assertThat(sentence.replace("''", ""))
                    .as("an apostrophe is written twice in %s", key)
                    .doesNotContain("'");
        });
    }

    @Test
    void everySentenceThatTheCodeAsksForIsThere() {
        Map<String, String> sentences = sentences();
        TreeSet<String> missing = new TreeSet<>();
        javaFiles().forEach(file -> Stream.of(ASKED, ASKED_LATER)
                .flatMap(pattern -> pattern.matcher(read(file)).results())
                .map(match -> match.group(1))
                .filter(key -> !sentences.containsKey(key))
                .forEach(key -> missing.add(key + " in " + file.getFileName())));
        assertThat(missing).isEmpty();
    }

    @Test
    void noSentenceIsToldTwiceInItsBundleWhereTheLaterWouldSilentlyTakeItsPlace() {
        list(BUNDLES, ".properties").forEach(file -> assertThat(read(file)
                        .lines()
                        .filter(line -> KEY.matcher(line).lookingAt())
                        .map(line -> line.substring(0, line.indexOf('='))))
                .as("the keys of %s", file.getFileName())
                .isNotEmpty()
                .doesNotHaveDuplicates());
    }

    private static Map<String, String> sentences() {
        Map<String, String> sentences = new TreeMap<>();
        list(BUNDLES, ".properties").forEach(file -> {
            String area = file.getFileName().toString().replace(".properties", "");
            Properties lines = new Properties();
            try (Reader in = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
                lines.load(in);
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            lines.forEach((key, sentence) -> sentences.put(area + "." + key, sentence.toString()));
        });
        return sentences;
    }

    private static List<Path> javaFiles() {
        return list(CODE, ".java");
    }

    private static List<Path> list(Path folder, String ending) {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(file -> file.toString().endsWith(ending)).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
