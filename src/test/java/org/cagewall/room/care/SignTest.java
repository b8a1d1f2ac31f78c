package org.cagewall.room.care;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What was seen goes by names in the record and by words on the screen. */
class SignTest {

    private static final Words WORDS = Words.english();

    @ParameterizedTest
    @EnumSource
    void everySignHasANameOfItsOwnAndAWord(Sign sign) {
        assertThat(Sign.of(sign.id())).contains(sign);
        assertThat(sign.id()).matches("[a-z]+(-[a-z]+)*");
        assertThat(WORDS.knows("word.sign." + sign.id())).isTrue();
    }

    @Test
    void aSignIsToldInTheReadersWordsAndTheWordsOfAnEarlyCheckAsTheyWereSaid() {
        assertThat(Sign.of("puffed up")).isEmpty();
        assertThat(Sign.told(List.of("dish-empty", "puffed up", "hen {0} isn't herself")).stream()
                        .map(WORDS::say))
                .containsExactly("dish was empty", "puffed up", "hen {0} isn't herself");
    }
}
