package org.cagewall.kiosk.today;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.cagewall.kiosk.WithDemo;
import org.cagewall.tasks.ReadingGrade;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The cautions beside the sitter's list of the demo against a vet's list of emergencies, line by line. */
class EmergencySignsTest extends WithDemo {

    private static final int LONGEST_SENTENCE = 15;

    /** In a feathered bird the skin is out of sight, and the cere above a cock's beak is blue when he is well. */
    private static final String OUT_OF_SIGHT = "skin that has turned blue";

    @ParameterizedTest
    @MethodSource("signs")
    void everyEmergencyOfTheVetsListIsOneToPhoneAbout(Emergency emergency) {
        assertThat(cautions())
                .as(emergency.sign())
                .filteredOn(caution -> caution.toLowerCase(Locale.ROOT).contains(emergency.said()))
                .isNotEmpty()
                .anyMatch(caution -> caution.toLowerCase(Locale.ROOT).contains("phone"));
    }

    @Test
    void onlyWhatNobodyCanSeeIsLeftOut() throws IOException {
        assertThat(all().filter(emergency -> emergency.said().isEmpty()).map(Emergency::sign))
                .containsExactly(OUT_OF_SIGHT);
    }

    @Test
    void theMoreSignsAreToldInShortPlainSentences() {
        assertThat(ReadingGrade.sentences(WORDS.say("safety.signs-text"))).allSatisfy(sentence -> {
            assertThat(sentence.split(" ")).as(sentence).hasSizeLessThanOrEqualTo(LONGEST_SENTENCE);
            assertThat(ReadingGrade.ofSentence(sentence)).as(sentence).isLessThanOrEqualTo(6);
        });
    }

    private List<String> cautions() {
        return new TodaysWords(desk.room(), desk.today(), WORDS)
                .safety().cautions().stream()
                        .map(caution -> caution.title() + ": " + caution.text())
                        .toList();
    }

    /** What the vet names, and the words by which the sitter is told of it. */
    record Emergency(String sign, String said) {}

    static Stream<Emergency> signs() throws IOException {
        return all().filter(emergency -> !emergency.said().isEmpty());
    }

    private static Stream<Emergency> all() throws IOException {
        try (InputStream in = EmergencySignsTest.class.getResourceAsStream("emergency-signs.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split("\\|", 2))
                    .map(line -> new Emergency(line[0].strip(), line[1].strip()));
        }
    }
}
