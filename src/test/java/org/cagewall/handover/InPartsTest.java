package org.cagewall.handover;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** A text cut into messages. */
class InPartsTest {

    @Test
    void whatFitsStaysWhole() {
        assertThat(InParts.of(List.of("All well."), part -> part.length() <= 16))
                .containsExactly("All well.");
    }

    @Test
    void aLongTextIsCutBetweenWordsAndNumbered() {
        assertThat(InParts.of(List.of("one two three four five six seven"), part -> part.length() <= 28))
                .containsExactly("1/2 one two three four", "2/2 five six seven");
    }

    @Test
    void aMessageEndsBetweenTwoItemsWhereItCan() {
        assertThat(InParts.of(
                        List.of("A1: puffed up.", "B6: on the floor.", "All else well."), part -> part.length() <= 32))
                .containsExactly("1/3 A1: puffed up.", "2/3 B6: on the floor.", "3/3 All else well.");
    }

    @Test
    void whatDoesNotGoIntoFourPartsIsLeftOutAndSaidSo() {
        String text = "word ".repeat(100).strip();

        List<String> parts = InParts.of(List.of(text), part -> part.length() <= 30);

        assertThat(parts).hasSize(4).allMatch(part -> part.length() <= 30);
        assertThat(parts.get(3)).startsWith("4/4 word").endsWith(" ...");
    }

    @Test
    void anyTextThatGoesIntoFourPartsIsWholeInThem() {
        Random random = new Random(42);
        for (int i = 0; i < 500; i++) {
            String text = words(random);
            int most = 24 + random.nextInt(60);

            List<String> parts = InParts.of(List.of(text), part -> bytes(part) <= most);

            assertThat(parts).allMatch(part -> bytes(part) <= most);
            String together = parts.stream()
                    .map(part -> part.replaceFirst("^\\d/\\d ", ""))
                    .collect(Collectors.joining());
            if (!together.endsWith(" ...")) {
                assertThat(together.replace(" ", "")).isEqualTo(text.replace(" ", ""));
            }
        }
    }

    private static int bytes(String text) {
        return Percent.encoded(text, " ").length();
    }

    /** Words of letters that take one, two, three and four bytes, some of them very long. */
    private static String words(Random random) {
        List<String> letters = List.of("a", "b", "\u00e9", "\u7d0d", "\ud83d\udc26");
        return IntStream.range(0, 1 + random.nextInt(8))
                .mapToObj(n -> IntStream.range(0, 1 + random.nextInt(12))
                        .mapToObj(at -> letters.get(random.nextInt(letters.size())))
                        .collect(Collectors.joining()))
                .collect(Collectors.joining(" "));
    }
}
