package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.SplittableRandom;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.room.card.CardCode;
import org.junit.jupiter.api.Test;

class CardSymbolTest {

    private static final KnownModules MODULES = CardSymbol.MODULES;

    private final SplittableRandom chance = new SplittableRandom(18004);

    @Test
    void everyCardShowsWhatEverySymbolShows() {
        for (int i = 0; i < 200; i++) {
            Symbol symbol = Symbols.matrix(WornCards.code(chance).text());
            for (int row = 0; row < MODULES.side(); row++) {
                for (int column = 0; column < MODULES.side(); column++) {
                    int kind = MODULES.kind(MODULES.number(column, row));
                    assertThat(kind == KnownModules.DATA || symbol.isDark(column, row) == (kind == KnownModules.DARK))
                            .isTrue();
                }
            }
        }
    }

    @Test
    void aCleanCardIsRead() {
        for (int i = 0; i < 500; i++) {
            CardCode code = WornCards.code(chance);
            assertThat(CardSymbol.read(darkness(code))).contains(code);
        }
    }

    /** Level H by itself mends 8 wrong words of 26 (ISO/IEC 18004); here 12 cannot be told. */
    @Test
    void aCardOfWhichTheLowerThirdCannotBeToldIsRead() {
        for (int i = 0; i < 200; i++) {
            CardCode code = WornCards.code(chance);
            double[] darkness = darkness(code);
            for (int row = 13; row < MODULES.side(); row++) {
                for (int column = 0; column < MODULES.side(); column++) {
                    darkness[MODULES.number(column, row)] = 0.05 * chance.nextGaussian();
                }
            }
            assertThat(CardSymbol.read(darkness)).contains(code);
        }
    }

    @Test
    void aSymbolWithAnotherTextIsNoCard() {
        assertThat(CardSymbol.read(darkness(Symbols.matrix("ABCDEFGHIJ")))).isEmpty();
        assertThat(CardSymbol.read(darkness(Symbols.matrix("C123")))).isEmpty();
        assertThat(CardSymbol.read(darkness(Symbols.matrix("1234567890")))).isEmpty();
    }

    @Test
    void aCardWithOneLetterWrongIsNone() {
        for (int i = 0; i < 200; i++) {
            String text = WornCards.code(chance).text();
            int place = chance.nextInt(text.length());
            char other = (char) ('A' + (text.charAt(place) - 'A' + 1 + chance.nextInt(24) + 26) % 26);
            String wrong = text.substring(0, place) + other + text.substring(place + 1);
            if (!wrong.equals(text)) {
                assertThat(CardSymbol.read(darkness(Symbols.matrix(wrong)))).isEmpty();
            }
        }
    }

    static double[] darkness(CardCode code) {
        return darkness(Symbols.matrix(code.text()));
    }

    static double[] darkness(Symbol symbol) {
        double[] darkness = new double[MODULES.count()];
        for (int row = 0; row < MODULES.side(); row++) {
            for (int column = 0; column < MODULES.side(); column++) {
                darkness[MODULES.number(column, row)] = symbol.isDark(column, row) ? 1 : -1;
            }
        }
        return darkness;
    }
}
