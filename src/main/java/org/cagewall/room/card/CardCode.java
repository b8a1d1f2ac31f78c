package org.cagewall.room.card;

import java.util.Objects;
import java.util.Optional;

/**
 * What the symbol on a cage card says, so that a scan finds the birdroom, the cage and the very card that was printed.
 * Immutable; any thread.
 *
 * <p>As text it is ten characters of 0-9 and A-Z: the prefix C, the room in three, the cage number in two, the face
 * digest in two, and two check characters by ISO/IEC 7064 MOD 1271-36. Ten is what a version 1 symbol holds at level H
 * (ISO/IEC 18004).
 *
 * @param room the birdroom's own mark, three characters of 0-9 and A-Z
 * @param number the cage's number in its room, 1 to 1295: what two characters can count
 * @param digest the first characters of {@link CardFace#digest()} when the card was printed, two of 0-9 and A-Z
 */
public record CardCode(String room, int number, String digest) {

    /** The number of characters of {@link #text()}. */
    public static final int LENGTH = 10;

    /** The highest cage number that two characters hold. */
    public static final int HIGHEST_NUMBER = 1295;

    static final String ALPHABET = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    static final int RADIX = ALPHABET.length();

    private static final char PREFIX = 'C';

    /** ISO/IEC 7064, system MOD 1271-36: the modulus of two check characters over 36 characters. */
    private static final int MODULUS = 1271;

    public CardCode {
        requireCharacters("room", room, 3);
        requireCharacters("digest", digest, 2);
        if (number < 1 || number > HIGHEST_NUMBER) {
            throw new IllegalArgumentException("a cage number is 1 to " + HIGHEST_NUMBER + ", not " + number);
        }
    }

    /** The code of a card that shows this face. */
    public static CardCode of(String room, int number, CardFace face) {
        return new CardCode(room, number, face.digest());
    }

    /** The code that these ten characters are, or nothing: no case is mended, no space is trimmed. */
    public static Optional<CardCode> parse(String text) {
        return read(text).code();
    }

    /** What was scanned: a card, a card whose code does not hold together, or something else. */
    public static Reading read(String text) {
        Objects.requireNonNull(text, "text");
        if (text.length() != LENGTH || text.charAt(0) != PREFIX || !isOfAlphabet(text)) {
            return new Foreign(text);
        }
        String body = text.substring(0, LENGTH - 2);
        int number = Integer.parseInt(text.substring(4, 6), RADIX);
        if (number == 0 || !checkCharacters(body).equals(text.substring(LENGTH - 2))) {
            return new Damaged(text);
        }
        return new Valid(new CardCode(text.substring(1, 4), number, text.substring(6, 8)));
    }

    /** The ten characters that are printed in the symbol. */
    public String text() {
        String body = PREFIX + room + twoCharacters(number) + digest;
        return body + checkCharacters(body);
    }

    /**
     * The two check characters of ISO/IEC 7064 MOD 1271-36 (the pure system, by its recursive method): the whole string
     * with them, read as weighted by powers of 36, leaves 1 when divided by 1271.
     */
    static String checkCharacters(String body) {
        int sum = 0;
        for (int i = 0; i < body.length(); i++) {
            sum = (sum + ALPHABET.indexOf(body.charAt(i))) * RADIX % MODULUS;
        }
        return twoCharacters((MODULUS + 1 - sum * RADIX % MODULUS) % MODULUS);
    }

    /** A number from 0 to 1295 as two characters. */
    static String twoCharacters(int number) {
        return "" + ALPHABET.charAt(number / RADIX) + ALPHABET.charAt(number % RADIX);
    }

    private static boolean isOfAlphabet(String text) {
        return text.chars().allMatch(c -> ALPHABET.indexOf(c) >= 0);
    }

    private static void requireCharacters(String name, String value, int length) {
        Objects.requireNonNull(value, name);
        if (value.length() != length || !isOfAlphabet(value)) {
            throw new IllegalArgumentException(name + " is " + length + " characters of 0-9 and A-Z, not " + value);
        }
    }

    /** What a scanned text turned out to be. Immutable; any thread. */
    public sealed interface Reading permits Valid, Damaged, Foreign {

        /** The code, when there is one. */
        default Optional<CardCode> code() {
            return Optional.empty();
        }

        /** What was scanned, as it came. */
        String text();
    }

    /** A cage card's code; of which birdroom is for the reader to compare. */
    public record Valid(CardCode card) implements Reading {

        @Override
        public Optional<CardCode> code() {
            return Optional.of(card);
        }

        @Override
        public String text() {
            return card.text();
        }
    }

    /** Of a card code's shape, but the check characters do not fit: to be scanned again or printed anew. */
    public record Damaged(String text) implements Reading {}

    /** Anything else that a symbol can say. */
    public record Foreign(String text) implements Reading {}
}
