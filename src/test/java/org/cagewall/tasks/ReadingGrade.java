package org.cagewall.tasks;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * The Flesch-Kincaid grade of a text: 0.39 words a sentence + 11.8 syllables a word - 15.59 (Kincaid, Fishburne, Rogers
 * and Chissom 1975, Research Branch Report 8-75). Syllables are those of the CMU Pronouncing Dictionary; of a word that it
 * does not have they are guessed from its letters. Any thread.
 */
public final class ReadingGrade {

    private static final String VOWELS = "aeiouy";

    /** By word, without apostrophes; the file names its source. */
    static final Map<String, Integer> CMU = read();

    private ReadingGrade() {}

    public static double of(int words, int sentences, int syllables) {
        return ofRates((double) words / sentences, (double) syllables / words);
    }

    static double ofRates(double wordsASentence, double syllablesAWord) {
        return 0.39 * wordsASentence + 11.8 * syllablesAWord - 15.59;
    }

    /** The grade of one sentence. Hyphenated words, contractions and numbers count as one word each. */
    public static double ofSentence(String sentence) {
        List<String> words = words(sentence);
        return of(
                words.size(),
                1,
                words.stream().mapToInt(ReadingGrade::syllables).sum());
    }

    /** The sentences of a text; a line without a full stop is one as well. */
    public static List<String> sentences(String text) {
        return Arrays.stream(text.split("(?<=[.?!])\\s+|\\n"))
                .filter(sentence -> !words(sentence).isEmpty())
                .toList();
    }

    static List<String> words(String sentence) {
        return Arrays.stream(sentence.split("\\s+"))
                .map(word -> word.replaceAll("[^\\p{L}\\p{N}'-]", ""))
                .filter(word -> word.matches(".*[\\p{L}\\p{N}].*"))
                .toList();
    }

    private static Map<String, Integer> read() {
        try (InputStream in = ReadingGrade.class.getResourceAsStream("cmu-syllables.txt")) {
            return new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                    .lines()
                    .filter(line -> !line.startsWith("#"))
                    .map(line -> line.split(" "))
                    .collect(Collectors.toUnmodifiableMap(line -> line[0], line -> Integer.valueOf(line[1])));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** As the dictionary has it, each part of a hyphenated word by itself. */
    static int syllables(String word) {
        return Arrays.stream(word.split("-"))
                .map(part -> part.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]", ""))
                .mapToInt(part -> CMU.containsKey(part) ? CMU.get(part) : guessed(part))
                .sum();
    }

    /** Groups of vowels, silent endings left out; a digit counts as one. */
    static int guessed(String letters) {
        int digits = letters.replaceAll("[^0-9]", "").length();
        String spoken = letters.replaceAll("[0-9]", "");
        return digits + (spoken.isEmpty() ? 0 : ofLetters(spoken));
    }

    private static int ofLetters(String letters) {
        int groups = 0;
        for (int i = 0; i < letters.length(); i++) {
            boolean begins = isVowel(letters, i) && (i == 0 || !isVowel(letters, i - 1));
            groups += begins ? 1 : 0;
        }
        return Math.max(1, groups - silentEnding(letters));
    }

    private static boolean isVowel(String word, int at) {
        return VOWELS.indexOf(word.charAt(at)) >= 0;
    }

    private static int silentEnding(String word) {
        boolean silentE = word.matches(".*[^aeiouy]e") && !word.matches(".*[^aeiouyl]le");
        boolean silentEd = word.matches(".*[^aeioutdy]ed") && !word.matches(".*[^aeiouyl]led");
        boolean silentEs = word.matches(".*[^aeiouycgsxzh]es") && !word.matches(".*[^aeiouyl]les");
        return silentE || silentEd || silentEs ? 1 : 0;
    }
}
