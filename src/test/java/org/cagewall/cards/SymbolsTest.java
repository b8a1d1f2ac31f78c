package org.cagewall.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.common.BitMatrix;
import com.google.zxing.common.DecoderResult;
import com.google.zxing.qrcode.decoder.Decoder;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class SymbolsTest {

    /** ISO/IEC 18004: a side has 17 + 4 x version modules. */
    @ParameterizedTest
    @MethodSource("texts")
    void aCardsSymbolIsOfVersionOne(String text) {
        assertThat(Symbols.matrix(text).side()).isEqualTo(17 + 4 * 1);
    }

    /** The eight formats of level H, masks 0 to 7: ISO/IEC 18004, the table of format information, from memory. */
    @ParameterizedTest
    @MethodSource("texts")
    void aCardsSymbolIsOfLevelH(String text) {
        assertThat(formatBits(Symbols.matrix(text)))
                .isIn(
                        "001011010001001",
                        "001001110111110",
                        "001110011100111",
                        "001100111010000",
                        "000011101100010",
                        "000001001010101",
                        "000110100001100",
                        "000100000111011");
    }

    /** ISO/IEC 18004: version 1 at level H holds ten alphanumeric characters, in mode 0010 with a count of nine bits. */
    @Test
    void tenCharactersFitAndElevenAreRefused() {
        assertThat(Symbols.matrix("CB7K01QFSC").side()).isEqualTo(Symbols.SIDE);
        assertThatThrownBy(() -> Symbols.matrix("CB7K01QFSC1")).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "cb7k01qfsc", "CB7K 1QFSC", "CB7K\u00C91"})
    void whatWouldNeedAnotherModeIsRefused(String text) {
        assertThatThrownBy(() -> Symbols.matrix(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @ParameterizedTest
    @MethodSource("texts")
    void theSymbolSaysItsText(String text) throws Exception {
        Symbol symbol = Symbols.matrix(text);
        BitMatrix bits = new BitMatrix(symbol.side());
        each(symbol, (column, row) -> bits.set(column, row));
        DecoderResult read = new Decoder().decode(bits);
        assertThat(read.getText()).isEqualTo(text);
        assertThat(read.getECLevel()).isEqualTo("H");
        assertThat(read.getRawBytes()[0] >> 4 & 0xF).as("alphanumeric mode").isEqualTo(0b0010);
    }

    /** ISO/IEC 18004: seven by seven modules, dark, light, dark, at three corners and not at the fourth. */
    @Test
    void threeCornersHoldAFinderPattern() {
        Symbol symbol = Symbols.matrix("CB7K01QFSC");
        assertThat(List.of(finderAt(symbol, 0, 0), finderAt(symbol, 14, 0), finderAt(symbol, 0, 14)))
                .containsOnly(true);
        assertThat(finderAt(symbol, 14, 14)).isFalse();
    }

    @ParameterizedTest
    @MethodSource("texts")
    void theBarsCoverEveryDarkModuleOnceAndNoOther(String text) {
        Symbol symbol = Symbols.matrix(text);
        int[][] covered = new int[symbol.side()][symbol.side()];
        for (Symbol.Bar bar : symbol.bars()) {
            for (int row = bar.row(); row < bar.row() + bar.height(); row++) {
                for (int column = bar.column(); column < bar.column() + bar.width(); column++) {
                    covered[row][column]++;
                }
            }
        }
        int[][] dark = new int[symbol.side()][symbol.side()];
        each(symbol, (column, row) -> dark[row][column] = 1);
        assertThat(covered).isDeepEqualTo(dark);
        assertThat(symbol.bars()).hasSizeLessThan(130);
    }

    /** ISO/IEC 18004: version 12 holds 287 bytes at level M; version 13, with 69 modules a side, would be next. */
    @Test
    void aLinkOfAnyLengthUpTo287IsReadFromASymbolOfAtMostVersion12() throws Exception {
        for (int length : List.of(4, 100, 213, 214, 286, 287)) {
            String link = "sms:" + "a".repeat(length - 4);
            Symbol symbol = Symbols.link(link);
            BitMatrix bits = new BitMatrix(symbol.side());
            each(symbol, (column, row) -> bits.set(column, row));

            DecoderResult read = new Decoder().decode(bits);

            assertThat(read.getText()).isEqualTo(link);
            assertThat(read.getECLevel()).isEqualTo("M");
            assertThat(symbol.side()).isLessThanOrEqualTo(17 + 4 * 12);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "sms:05 55", "sms:\u00e9", "sms:\n"})
    void whatIsNoLinkMakesNoSymbol(String text) {
        assertThat(Symbols.holds(text)).isFalse();
        assertThatThrownBy(() -> Symbols.link(text)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void aLinkOf288CharactersMakesNoSymbol() {
        assertThat(Symbols.holds("a".repeat(287))).isTrue();
        assertThat(Symbols.holds("a".repeat(288))).isFalse();
    }

    @Test
    void thereIsNoModuleOutside() {
        Symbol symbol = Symbols.matrix("C");
        assertThatThrownBy(() -> symbol.isDark(21, 0)).isInstanceOf(IndexOutOfBoundsException.class);
        assertThatThrownBy(() -> symbol.isDark(0, -1)).isInstanceOf(IndexOutOfBoundsException.class);
    }

    private static Stream<String> texts() {
        return Stream.concat(
                Stream.of("C", "C000000000", "ZZZZZZZZZZ"),
                SampleCards.pairs(24).stream().map(card -> card.code().text()));
    }

    /** ISO/IEC 18004: beside the upper left finder, bit 14 first: along row 8, then up column 8, without the timing. */
    private static String formatBits(Symbol symbol) {
        List<Integer> along = List.of(0, 1, 2, 3, 4, 5, 7, 8);
        List<Integer> up = List.of(7, 5, 4, 3, 2, 1, 0);
        StringBuilder bits = new StringBuilder();
        along.forEach(column -> bits.append(symbol.isDark(column, 8) ? '1' : '0'));
        up.forEach(row -> bits.append(symbol.isDark(8, row) ? '1' : '0'));
        return bits.toString();
    }

    private static boolean finderAt(Symbol symbol, int left, int top) {
        List<Boolean> agrees = new ArrayList<>();
        for (int row = 0; row < 7; row++) {
            for (int column = 0; column < 7; column++) {
                int ring = Math.max(Math.abs(row - 3), Math.abs(column - 3));
                agrees.add(symbol.isDark(left + column, top + row) == (ring != 2));
            }
        }
        return !agrees.contains(false);
    }

    private static void each(Symbol symbol, Module darkModule) {
        for (int row = 0; row < symbol.side(); row++) {
            for (int column = 0; column < symbol.side(); column++) {
                if (symbol.isDark(column, row)) {
                    darkModule.at(column, row);
                }
            }
        }
    }

    private interface Module {

        void at(int column, int row);
    }
}
