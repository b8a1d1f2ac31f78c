package org.cagewall.cards;

import org.cagewall.text.Words;

/** A small number as a word, so that on a card it is not taken for a ring or a day. Pure; any thread. */
final class CountWord {

    private static final int TWENTY = 20;
    private static final int MOST = 99;

    private CountWord() {}

    /** The word for 0 to 99; greater numbers stay figures. */
    static String of(int number, Words words) {
        if (number < 0 || number > MOST) {
            return Integer.toString(number);
        }
        if (number < TWENTY || number % 10 == 0) {
            return words.say("cards.count." + number);
        }
        return words.say(
                "cards.count.joined",
                words.say("cards.count." + number / 10 * 10),
                words.say("cards.count." + number % 10));
    }
}
