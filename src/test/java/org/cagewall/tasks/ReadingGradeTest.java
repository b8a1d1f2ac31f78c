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

    /** Words that the dictionary lacks: names of cages, numbers, and forms that it does not list; counted by ear. */
    @ParameterizedTest
    @CsvSource({"birdroom, 2", "bobs, 1", "splayed, 1", "pencilled, 2", "napes, 1", "32, 2", "B3, 2", "non-stick, 2"})
    void aWordThatTheDictionaryLacksHasTheSyllablesOfItsLetters(String word, int syllables) {
        assertThat(ReadingGrade.syllables(word)).isEqualTo(syllables);
    }

    /** So that words which are not in the dictionary's file yet are not far off either. */
    @Test
    void ofAHundredWordsTheLettersTellTheSyllablesOfNinetyFive() {
        long right = ReadingGrade.CMU.entrySet().stream()
                .filter(word -> ReadingGrade.guessed(word.getKey()) == word.getValue())
                .count();

        assertThat(ReadingGrade.CMU).hasSizeGreaterThan(600);
        assertThat(right / (double) ReadingGrade.CMU.size()).isGreaterThan(0.95);
    }
}
