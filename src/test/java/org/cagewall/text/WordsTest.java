package org.cagewall.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How what is said is filled in. */
class WordsTest {

    private static final Words WORDS = Words.english();

    @Test
    void theNumberOfAnEntryIsWrittenAsItIsTyped() {
        assertThat(WORDS.say("deed.entry-unknown", 12_345L, 1_000))
                .isEqualTo("there is no entry 12345; the last one is 1000.");
        assertThat(WORDS.say("deed.did.birds-added", 1_200)).isEqualTo("1200 birds added");
        assertThat(WORDS.say("deed.did.birds-added", 1)).isEqualTo("1 bird added");
    }

    @Test
    void aReasonThatStandsAloneBeginsWithACapitalButACagesNameStaysAsItIsWritten() {
        Words words = Words.english();

        assertThat(words.sentence(Message.of("deed.empty-note"))).isEqualTo("The note is empty. Write a few words.");
        assertThat(words.sentence(Message.of("deed.not-loose", "pip"))).isEqualTo("pip is not known to be loose.");
    }
}
