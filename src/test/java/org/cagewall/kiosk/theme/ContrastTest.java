package org.cagewall.kiosk.theme;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.kiosk.Painted;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every word can be read by weak eyes, by day and in quiet hours. */
class ContrastTest {

    private record Pair(Tone ink, Tone ground) {}

    private static final List<Pair> WORDS_ON_GROUNDS = List.of(
            new Pair(Tone.INK, Tone.GROUND),
            new Pair(Tone.SOFT, Tone.GROUND),
            new Pair(Tone.ATTENTION_INK, Tone.GROUND),
            new Pair(Tone.INK, Tone.TILE),
            new Pair(Tone.SOFT, Tone.TILE),
            new Pair(Tone.INK, Tone.TILE_PRESSED),
            new Pair(Tone.TILE_PRESSED_SOFT, Tone.TILE_PRESSED),
            new Pair(Tone.INK, Tone.EMPTY),
            new Pair(Tone.EMPTY_SOFT, Tone.EMPTY),
            new Pair(Tone.MAIN_INK, Tone.MAIN),
            new Pair(Tone.MAIN_INK, Tone.MAIN_PRESSED),
            new Pair(Tone.INK, Tone.LIKELY),
            new Pair(Tone.INK, Tone.LIKELY_PRESSED),
            new Pair(Tone.INK, Tone.ATTENTION),
            new Pair(Tone.ATTENTION_INK, Tone.ATTENTION),
            new Pair(Tone.INK, Tone.ATTENTION_PRESSED),
            new Pair(Tone.ATTENTION_INK, Tone.ATTENTION_PRESSED),
            new Pair(Tone.URGENT_INK, Tone.URGENT),
            new Pair(Tone.URGENT_INK, Tone.URGENT_PRESSED),
            new Pair(Tone.SOLID_INK, Tone.SOLID),
            new Pair(Tone.SOLID_INK, Tone.SOLID_PRESSED),
            new Pair(Tone.SYMBOL, Tone.SYMBOL_GROUND));

    static Stream<Arguments> wordsInEveryLight() {
        return Stream.of(Light.values()).flatMap(light -> WORDS_ON_GROUNDS.stream()
                .map(pair -> Arguments.of(light, pair.ink(), pair.ground())));
    }

    /** WCAG 2.2, 1.4.6 (AAA): 7 : 1 for words of any size. */
    @ParameterizedTest
    @MethodSource("wordsInEveryLight")
    void wordsStandOutSevenfoldFromTheirGround(Light light, Tone ink, Tone ground) {
        Painted.in(light, () -> assertThat(Contrast.between(ink.color(), ground.color()))
                .isGreaterThanOrEqualTo(7.0));
    }

    /** WCAG 2.2, 1.4.11 (AA): 3 : 1 for the lines that tell a state. */
    @ParameterizedTest
    @CsvSource({"DAY", "QUIET"})
    void linesThatTellAStateStandOutThreefold(Light light) {
        Painted.in(light, () -> {
            assertThat(Contrast.between(Tone.LIKELY_EDGE.color(), Tone.GROUND.color()))
                    .isGreaterThanOrEqualTo(3);
            assertThat(Contrast.between(Tone.LIKELY_EDGE.color(), Tone.TILE.color()))
                    .isGreaterThanOrEqualTo(3);
            assertThat(Contrast.between(Tone.INK.color(), Tone.EGG_SHELL.color()))
                    .isGreaterThanOrEqualTo(3);
            assertThat(Contrast.between(Tone.INK.color(), Tone.EGG_DUMMY.color()))
                    .isGreaterThanOrEqualTo(3);
            assertThat(Contrast.between(Tone.EGG_VEIN.color(), Tone.EGG_SHELL.color()))
                    .isGreaterThanOrEqualTo(3);
            assertThat(Contrast.between(Tone.ATTENTION_INK.color(), Tone.ATTENTION.color()))
                    .isGreaterThanOrEqualTo(3);
        });
    }

    /** Words of what cannot be touched now are exempt (WCAG 2.2, 1.4.3, inactive parts), yet stay readable. */
    @ParameterizedTest
    @CsvSource({"DAY", "QUIET"})
    void wordsOfWhatIsOffCanStillBeRead(Light light) {
        Painted.in(light, () -> assertThat(Contrast.between(Tone.OFF.color(), Tone.EMPTY.color()))
                .isGreaterThanOrEqualTo(4.5));
    }

    /** Pairs on white, computed from the formula of WCAG 2.2 and known from its texts: #767676 is the last to pass AA. */
    @ParameterizedTest
    @CsvSource({
        "000000, 21.00",
        "767676, 4.5422",
        "777777, 4.4781",
        "595959, 7.0047",
        "5A5A5A, 6.8969",
        "949494, 3.0335",
        "959595, 2.9953",
        "FF0000, 3.9985",
        "0000FF, 8.5925",
        "008000, 5.1374",
        "FFFF00, 1.0738"
    })
    void theFormulaAgreesWithReferencePairs(String onWhite, double ratio) {
        assertThat(Contrast.between(new Color(Integer.parseInt(onWhite, 16)), Color.WHITE))
                .isCloseTo(ratio, within(0.0001));
    }

    @Test
    void yellowStandsOutFromBlack() {
        assertThat(Contrast.between(Color.YELLOW, Color.BLACK)).isCloseTo(19.556, within(0.001));
    }
}
