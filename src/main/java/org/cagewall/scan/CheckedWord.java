package org.cagewall.scan;

/** A number with the checks behind it by which a symbol tells its format and its version (ISO/IEC 18004, annexes C, D). */
final class CheckedWord {

    private CheckedWord() {}

    /**
     * The number, then the rest that is left of it.
     *
     * @param generator a polynomial of zeros and ones, the highest power first; there are as many checks as its degree
     */
    static int of(int number, int generator) {
        int checks = highest(generator);
        int word = number << checks;
        int rest = word;
        while (rest >> checks != 0) {
            rest ^= generator << (highest(rest) - checks);
        }
        return word | rest;
    }

    private static int highest(int bits) {
        return Integer.SIZE - 1 - Integer.numberOfLeadingZeros(bits);
    }
}
