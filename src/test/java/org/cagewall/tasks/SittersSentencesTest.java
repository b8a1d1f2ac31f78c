package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Properties;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Every sentence that a sitter may meet, on a screen or in the pack. */
class SittersSentencesTest {

    private static final Path BUNDLES = Path.of("src/main/resources/org/cagewall/text/en");
    private static final int LONGEST_SENTENCE = 15;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "today",
                "alarm",
                "phone",
                "closing",
                "tasks",
                "danger",
                "safety",
                "scanscreen",
                "wall",
                "shell",
                "pack",
                "daynote"
            })
    void noSentenceHasMoreThanFifteenWords(String bundle) throws IOException {
        Properties lines = new Properties();
        try (Reader in = Files.newBufferedReader(BUNDLES.resolve(bundle + ".properties"), StandardCharsets.UTF_8)) {
            lines.load(in);
        }

        assertThat(lines).isNotEmpty().allSatisfy((key, sentence) -> assertThat(
                        filled(sentence.toString()).split("(?<=[.?!])\\s+|\\n| \u00b7 "))
                .as("%s.%s", bundle, key)
                .allSatisfy(part ->
                        assertThat(ReadingGrade.words(part)).as(part).hasSizeLessThanOrEqualTo(LONGEST_SENTENCE)));
    }

    private static String filled(String sentence) {
        return new MessageFormat(sentence, Locale.UK).format(new Object[] {7, 7, 7, 7, 7, 7});
    }
}
