package org.cagewall.tasks;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Checks the measure of plain words against examples that were published with their grades. */
class ReadingGradeTest {

    /**
     * The least grade and the platypus sentence: wikisum.wiki, Flesch-Kincaid readability tests. The story: 432 words, 34
     * sentences, 607 syllables: storytreasury.wordpress.com, which rounds down.
     */
    @ParameterizedTest(name = "{0} words, {1} sentences, {2} syllables: {3}")
    @CsvSource({"1, 1, 1, -3.40, 0.005", "13, 1, 24, 11.3, 0.05", "432, 34, 607, 5.90, 0.05"})
    void theFormulaGivesThePublishedGrades(int words, int sentences, int syllables, double grade, double slack) {
        assertThat(ReadingGrade.of(words, sentences, syllables)).isCloseTo(grade, within(slack));
    }

    /**
     * A book for beginners, 5.7 words a sentence and 1.02 syllables a word, and a long translation, 26.0 and 1.70
     * (fixmydocuments.com): both published with rounded rates.
     */
    @ParameterizedTest(name = "{0} words a sentence, {1} syllables a word: {2}")
    @CsvSource({"5.7, 1.02, -1.3, 0.05", "26.0, 1.70, 14.60, 0.015"})
    void theFormulaGivesThePublishedGradesOfWholeBooks(double words, double syllables, double grade, double slack) {
        assertThat(ReadingGrade.ofRates(words, syllables)).isCloseTo(grade, within(slack));
    }

    @Test
    void thePlatypusSentenceIsCountedAsPublished() {
        assertThat(ReadingGrade.ofSentence(
                        "The Australian platypus is seemingly a hybrid of a mammal and reptilian creature."))
                .isCloseTo(11.3, within(0.05));
    }

    /** Syllables as a dictionary divides them; from memory. */
    @ParameterizedTest
    @CsvSource({
        "bird, 1", "puffed, 1", "gasping, 2", "bleeding, 2", "missing, 2", "water, 2", "little, 2", "cage, 1",
        "cages, 2", "different, 3", "needed, 2", "whole, 1", "inside, 2", "dishes, 2", "medicine, 3", "bottle, 2",
        "closed, 1", "hurried, 2", "32, 2", "window, 2", "emergency, 4", "you, 1", "B3, 2"
    })
    void aWordHasItsSyllables(String word, int syllables) {
        assertThat(ReadingGrade.syllables(word)).isEqualTo(syllables);
    }
}
