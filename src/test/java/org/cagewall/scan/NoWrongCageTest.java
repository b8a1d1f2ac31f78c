package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import java.util.SplittableRandom;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.room.card.CardCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** A card may stay unread; another cage it must never open. 100,000 symbols, and some pictures. */
@Tag("slow")
class NoWrongCageTest {

    private static final int CHANCE = 30_000;
    private static final int DAMAGED = 40_000;
    private static final int FOREIGN = 10_000;
    private static final int HALVES = 10_000;
    private static final int TEXTS = 10_000;
    private static final KnownModules MODULES = CardSymbol.MODULES;

    private final SplittableRandom chance = new SplittableRandom(100_000);

    @Test
    void chanceIsNoCard() {
        double[] darkness = new double[MODULES.count()];
        for (int i = 0; i < CHANCE; i++) {
            boolean clear = i % 2 == 0;
            Arrays.setAll(darkness, module -> clear ? sign() : 2 * chance.nextDouble() - 1);
            assertThat(CardSymbol.read(darkness)).isEmpty();
        }
    }

    @Test
    void aDamagedCardIsReadRightlyOrNotAtAll() {
        int read = 0;
        for (int i = 0; i < DAMAGED; i++) {
            CardCode code = WornCards.code(chance);
            double[] darkness = CardSymbolTest.darkness(code);
            spoil(darkness, i % 3);
            Optional<CardCode> said = CardSymbol.read(darkness);
            assertThat(said.filter(it -> !it.equals(code))).isEmpty();
            read += said.isPresent() ? 1 : 0;
        }
        assertThat(read).isBetween(DAMAGED / 10, DAMAGED);
    }

    @Test
    void twoHalvesOfTwoCardsAreNoThirdCard() {
        for (int i = 0; i < HALVES; i++) {
            CardCode one = WornCards.code(chance);
            CardCode other = WornCards.code(chance);
            double[] darkness = CardSymbolTest.darkness(one);
            int tear = chance.nextInt(darkness.length);
            System.arraycopy(CardSymbolTest.darkness(other), 0, darkness, 0, tear);
            assertThat(CardSymbol.read(darkness).filter(it -> !it.equals(one) && !it.equals(other)))
                    .isEmpty();
        }
    }

    /** Ten letters that are no card's, also such as begin like one, and damaged on top. */
    @Test
    void aForeignSymbolIsNoCard() {
        for (int i = 0; i < FOREIGN; i++) {
            String text =
                    (i % 2 == 0 ? "C" : "D") + WornCards.code(chance).text().substring(1, 9) + "A";
            if (CardCode.parse(text).isEmpty()) {
                double[] darkness = CardSymbolTest.darkness(Symbols.matrix(text));
                spoil(darkness, i % 3);
                assertThat(CardSymbol.read(darkness)).isEmpty();
            }
        }
    }

    /** ISO/IEC 7064: every single wrong letter and every swap of neighbours is found, of the rest all but one in 1271. */
    @Test
    void aTextWithOneLetterWrongOpensNothing() {
        for (int i = 0; i < TEXTS; i++) {
            char[] letters = WornCards.code(chance).text().toCharArray();
            int place = chance.nextInt(letters.length);
            char right = letters[place];
            letters[place] = Character.toUpperCase(Character.forDigit(chance.nextInt(36), 36));
            if (letters[place] != right) {
                assertThat(CardCode.parse(new String(letters))).isEmpty();
            }
        }
    }

    @Test
    void aSpoiltPictureShowsItsOwnCardOrNone() {
        Decoder decoder = new Decoder();
        for (int i = 0; i < 24; i++) {
            WornCards.Worn worn = WornCards.of(99).card(i % 2 == 0 ? Wear.FILTHY : Wear.HARD, i);
            assertThat(decoder.decode(worn.picture()).text().filter(text -> !text.equals(worn.text())))
                    .isEmpty();
        }
    }

    /** A printed card with a wrong letter is seen, and said not to hold together. */
    @Test
    void aPictureOfACardWithOneLetterWrongIsSaidToBeDamaged() {
        WornCards cards = WornCards.of(7064);
        int seen = 0;
        for (int i = 0; i < 12; i++) {
            String text = WornCards.code(chance).text();
            String wrong = text.substring(0, 5) + (text.charAt(5) == '7' ? '8' : '7') + text.substring(6);
            Symbol symbol = Symbols.matrix(wrong);
            Optional<String> said =
                    new Decoder().decode(cards.picture(symbol, Wear.ROLL, i)).text();
            said.ifPresent(it -> assertThat(CardCode.read(it)).isEqualTo(new CardCode.Damaged(wrong)));
            seen += said.isPresent() ? 1 : 0;
        }
        assertThat(seen).isGreaterThan(9);
    }

    /** Modules that are wrong, that are faint, or a stain. */
    private void spoil(double[] darkness, int how) {
        double share = chance.nextDouble();
        int stain = chance.nextInt(MODULES.side());
        for (int row = 0; row < MODULES.side(); row++) {
            for (int column = 0; column < MODULES.side(); column++) {
                int module = MODULES.number(column, row);
                boolean hit = chance.nextDouble() < share;
                switch (how) {
                    case 0 -> darkness[module] = hit ? sign() : darkness[module];
                    case 1 -> darkness[module] = 0.3 * darkness[module] + share * chance.nextGaussian();
                    case 2 ->
                        darkness[module] = Math.hypot(row - stain, column - 10) < 12 * share ? 1 : darkness[module];
                }
            }
        }
    }

    private double sign() {
        return chance.nextBoolean() ? 1 : -1;
    }
}
