package org.cagewall.room.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigInteger;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CardFaceTest {

    private static final CardFace PAIR_THREE = CardFace.of("B3", "breeding")
            .withPair("3")
            .withCock("HB 26-041")
            .withHen("HB 25-117")
            .withSince(LocalDate.of(2026, 4, 1))
            .withRound(2);

    private final Words words = Words.english();

    @Test
    void theCanonicalTextIsOneLineWithTheFactsInAFixedOrder() {
        assertThat(PAIR_THREE.canonical())
                .isEqualTo("cage=B3|use=breeding|pair=3|cock=HB 26-041|hen=HB 25-117|since=2026-04-01|round=2");
    }

    @Test
    void aFaceReadsBackAsWritten() {
        assertThat(CardFace.parse(PAIR_THREE.canonical())).isEqualTo(PAIR_THREE);
        CardFace flight = CardFace.of("Flight | 1", "flight").withLines(List.of("a\\n=b", "two\nlines", "", "|\\|"));
        assertThat(CardFace.parse(flight.canonical())).isEqualTo(flight);
        assertThat(flight.canonical()).doesNotContain("\n");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "cage=B3",
                "use=flight|cage=B3",
                "cage=B3|use=flight|since=soon",
                "cage=B3|use=flight|round=two",
                "cage=B3|use=flight|colour=red",
                "cage=|use=flight"
            })
    void whatIsNoFaceIsRefused(String text) {
        assertThatThrownBy(() -> CardFace.parse(text)).isInstanceOf(IllegalArgumentException.class);
    }

    /** The digest against the platform's own SHA-256 and arbitrary-precision arithmetic. */
    @Test
    void theDigestIsTheHeadOfTheHashInTwoCharacters() throws Exception {
        byte[] hash = MessageDigest.getInstance("SHA-256")
                .digest(PAIR_THREE.canonical().getBytes(StandardCharsets.UTF_8));
        String expected = new BigInteger(1, Arrays.copyOf(hash, 8))
                .mod(BigInteger.valueOf(1296))
                .toString(36)
                .toUpperCase(Locale.ROOT);
        assertThat(PAIR_THREE.digest()).hasSize(2).endsWith(expected);
    }

    @Test
    void aCardWithAnotherHenHasAnotherCode() {
        CardFace now = PAIR_THREE.withHen("HB 25-119");
        assertThat(CardCode.of("B7K", 9, now)).isNotEqualTo(CardCode.of("B7K", 9, PAIR_THREE));
    }

    @Test
    void aHenThatWasChangedIsNamedWithTheOneBefore() {
        assertThat(said(PAIR_THREE, PAIR_THREE.withHen("HB 25-119")))
                .containsExactly("hen was HB 25-117, is now HB 25-119");
    }

    @Test
    void everyChangeHasItsSentence() {
        CardFace empty = CardFace.of("B4", "stock").withLines(List.of("Pip", "Dot"));
        assertThat(said(PAIR_THREE, empty))
                .hasSize(9)
                .contains("cage was B3, is now B4", "use was Breeding, is now Stock", "new: Dot")
                .noneMatch(sentence -> sentence.contains("["));
        assertThat(said(empty, PAIR_THREE))
                .hasSize(9)
                .contains("hen is now HB 25-117, the card has none", "no longer: Pip")
                .noneMatch(sentence -> sentence.contains("["));
        CardFace later = PAIR_THREE
                .withPair("4")
                .withCock("Rowan")
                .withSince(LocalDate.of(2026, 6, 9))
                .withRound(3);
        assertThat(said(PAIR_THREE, later))
                .containsExactly(
                        "pair was 3, is now 4",
                        "cock was HB 26-041, is now Rowan",
                        "in this cage since 9 June 2026, the card says 1 April 2026",
                        "round was 2, is now 3");
    }

    @Test
    void nothingIsSaidOfAFaceThatHolds() {
        assertThat(said(PAIR_THREE, CardFace.parse(PAIR_THREE.canonical()))).isEmpty();
    }

    @Test
    void aChangeOfOrderAloneIsSaidToo() {
        CardFace flight = CardFace.of("F1", "flight").withLines(List.of("Pip", "Dot"));
        assertThat(said(flight, flight.withLines(List.of("Dot", "Pip")))).hasSize(1);
    }

    private List<String> said(CardFace printed, CardFace now) {
        return printed.differences(now).stream().map(words::say).toList();
    }
}
