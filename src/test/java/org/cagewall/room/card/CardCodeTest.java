package org.cagewall.room.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CardCodeTest {

    private static final String LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";

    /** The worked example of ISO/IEC 7064:2003 for MOD 1271-36, from memory and worked again by hand. */
    @Test
    void theStandardsWorkedExampleTakesItsTwoCharacters() {
        assertThat(CardCode.checkCharacters("ISO79")).isEqualTo("3W");
    }

    /** A second opinion on ISO/IEC 7064:2003: another library's check characters; the file names it. */
    @Test
    void threeHundredCodesOfAnotherLibraryHaveTheSameTwoCharacters() throws IOException {
        try (InputStream in = CardCodeTest.class.getResourceAsStream("iso-7064-codes.txt")) {
            assertThat(new String(in.readAllBytes(), StandardCharsets.US_ASCII)
                            .lines()
                            .filter(line -> !line.startsWith("#")))
                    .hasSize(300)
                    .allSatisfy(code ->
                            assertThat(CardCode.parse(code).map(CardCode::text)).contains(code));
        }
    }

    /** ISO/IEC 7064: a string with its check characters, weighted by powers of the radix, is 1 modulo 1271. */
    @ParameterizedTest
    @MethodSource("cards")
    void aCodeIsOneModuloTheStandardsModulus(CardCode card) {
        long sum = 0;
        for (char c : card.text().toCharArray()) {
            sum = (sum * 36 + Character.digit(c, 36)) % 1271;
        }
        assertThat(sum).isEqualTo(1);
    }

    @ParameterizedTest
    @MethodSource("cards")
    void aCardReadsBackAsPrinted(CardCode card) {
        assertThat(card.text()).hasSize(CardCode.LENGTH).startsWith("C").matches("[0-9A-Z]{10}");
        assertThat(CardCode.parse(card.text())).contains(card);
        assertThat(CardCode.read(card.text())).isEqualTo(new CardCode.Valid(card));
    }

    /** ISO/IEC 7064: a system with two check characters finds every single substitution. */
    @ParameterizedTest
    @MethodSource("cards")
    void everySingleErrorIsFound(CardCode card) {
        String text = card.text();
        for (int place = 0; place < text.length(); place++) {
            for (char wrong : LETTERS.toCharArray()) {
                if (wrong != text.charAt(place)) {
                    String misread = text.substring(0, place) + wrong + text.substring(place + 1);
                    assertThat(CardCode.parse(misread)).as(misread).isEmpty();
                }
            }
        }
    }

    /** ISO/IEC 7064: a system with two check characters finds every swap of neighbours. */
    @ParameterizedTest
    @MethodSource("cards")
    void everySwapOfNeighboursIsFound(CardCode card) {
        for (int place = 0; place + 1 < CardCode.LENGTH; place++) {
            char[] swapped = card.text().toCharArray();
            char first = swapped[place];
            swapped[place] = swapped[place + 1];
            swapped[place + 1] = first;
            if (swapped[place] != swapped[place + 1]) {
                assertThat(CardCode.parse(new String(swapped)))
                        .as(new String(swapped))
                        .isEmpty();
            }
        }
    }

    @Test
    void aDamagedCardIsToldFromAForeignCode() {
        String good = new CardCode("B7K", 14, "Q2").text();
        String bad = good.substring(0, 9) + (good.charAt(9) == '0' ? '1' : '0');
        assertThat(CardCode.read(bad)).isEqualTo(new CardCode.Damaged(bad));
        assertThat(CardCode.read(good).code()).isPresent();
        assertThat(CardCode.read(bad).code()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "C",
                "https://example.org",
                "D123456789",
                "C12345678",
                "C1234567890",
                "c123456789",
                "C12345678 ",
                "C1234567É9",
                "C١٢٣٤٥٦٧٨٩"
            })
    void whatHasNotTheShapeOfACardIsForeign(String text) {
        assertThat(CardCode.read(text)).isEqualTo(new CardCode.Foreign(text));
    }

    @Test
    void noCageHasTheNumberNought() {
        String body = "CB7K00Q2";
        assertThat(CardCode.read(body + CardCode.checkCharacters(body))).isInstanceOf(CardCode.Damaged.class);
        assertThatThrownBy(() -> new CardCode("B7K", 0, "Q2")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new CardCode("B7K", 1296, "Q2")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void theHighestCageNumberFitsInTwoCharacters() {
        assertThat(new CardCode("000", CardCode.HIGHEST_NUMBER, "00").text()).startsWith("C000ZZ00");
    }

    private static Stream<CardCode> cards() {
        Random seeded = new Random(7064);
        return Stream.generate(() -> new CardCode(
                        letters(seeded, 3), 1 + seeded.nextInt(CardCode.HIGHEST_NUMBER), letters(seeded, 2)))
                .limit(300);
    }

    private static String letters(Random seeded, int count) {
        StringBuilder letters = new StringBuilder();
        for (int i = 0; i < count; i++) {
            letters.append(LETTERS.charAt(seeded.nextInt(LETTERS.length())));
        }
        return letters.toString();
    }
}
