package org.cagewall.paper;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Test;

/** Which letters paper cannot show, held against what is printed. */
class LettersTest {

    @Test
    void whatEuropeWritesCanBePrinted() {
        assertThat(Letters.missing("Zoë Łukasz Šárka Ærø Ωμέγα Борис Ğül ½ – °C €"))
                .isEmpty();
    }

    @Test
    void aLetterThatTheFontLacksIsNamedOnce() {
        assertThat(Letters.missing("鳥 and 鳥 and 🐤")).containsExactly("鳥", "🐤");
        assertThat(Letters.missing("a\u200Bb\u2060c")).containsExactly("U+2060");
    }

    @Test
    void aLetterIsMissingExactlyWhereAMarkIsPrinted() throws IOException {
        try (PDDocument document = new PDDocument()) {
            Typeface regular = Typeface.load(document, Weight.REGULAR);
            for (int letter = 0xA1; letter < 0x3000; letter++) {
                String text = Character.toString(letter);
                if (regular.printable(text).equals("?")) {
                    assertThat(Letters.missing(text)).as("U+%04X", letter).hasSize(1);
                }
            }
        }
    }
}
