package org.cagewall.scan;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.IntStream;
import org.cagewall.room.card.CardCode;

/**
 * Reads the one kind of symbol that hangs on a cage, version 1 at level H with a card's code (ISO/IEC 18004), from how dark
 * each module looks. Since version, level, length and prefix are known, whatever looks least sure is left to the
 * correction, and the code's check characters judge what comes of it. Stateless; any thread.
 */
final class CardSymbol {

    static final KnownModules MODULES = KnownModules.of(1);

    private static final int SIDE = 21;
    private static final int BITS = 8 * ReedSolomon.WORDS;

    /** How many of the masks are tried that the format information tells of most clearly; measured. */
    private static final int LIKELY_MASKS = 3;

    /** Three checks are kept back, so that no chance word passes with its check characters too. */
    private static final int MOST_UNSURE = ReedSolomon.CHECKS - 3;

    /**
     * The alphanumeric mode, ten characters, the first of them C: 0010 0000 0101 0010 00..; a pair of letters that begins
     * with C is 540 to 575, of which the first five bits are the same.
     */
    private static final int[] KNOWN_WORDS = {0b0010_0000, 0b0101_0010};

    private static final String LETTERS = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ $%*+-./:";

    /** How fast doubt falls with how clearly a module is dark or light; measured. */
    private static final double SHARPNESS = 4;

    /** How much a module is doubted that lies in a patch of like ones, which a mask leaves few of; measured. */
    private static final double PATCH = 1;

    private static final int[] DATA = dataModules();

    private CardSymbol() {}

    /**
     * The card's code.
     *
     * @param darkness of each module, numbered as {@link KnownModules}: 1 as dark as ink, -1 as light as paper, 0 unsure
     */
    static Optional<CardCode> read(double[] darkness) {
        return Format.likeliest(darkness, MODULES).stream()
                .filter(format -> format.level() == Format.LEVEL_H)
                .limit(LIKELY_MASKS)
                .map(format -> read(darkness, format.mask()))
                .flatMap(Optional::stream)
                .findFirst();
    }

    private static Optional<CardCode> read(double[] darkness, int mask) {
        int[] words = new int[ReedSolomon.WORDS];
        double[] faint = new double[ReedSolomon.WORDS];
        double[] patchy = new double[ReedSolomon.WORDS];
        for (int i = 0; i < BITS; i++) {
            double value = darkness[DATA[i]];
            boolean one = value > 0 ^ isMasked(mask, DATA[i]);
            words[i / 8] = words[i / 8] << 1 | (one ? 1 : 0);
            double doubt = Math.exp(-SHARPNESS * Math.abs(value));
            faint[i / 8] += doubt;
            patchy[i / 8] += doubt + PATCH * sameAround(darkness, DATA[i]);
        }
        for (int i = 0; i < KNOWN_WORDS.length; i++) {
            words[i] = KNOWN_WORDS[i];
            faint[i] = 0;
            patchy[i] = 0;
        }
        ReedSolomon received = new ReedSolomon(words);
        return mended(received, faint).or(() -> mended(received, patchy));
    }

    /** The code, when the most doubtful words are left to the correction: none at first, then more and more. */
    private static Optional<CardCode> mended(ReedSolomon received, double[] doubt) {
        int[] unsure = IntStream.range(0, ReedSolomon.WORDS)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> -doubt[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        for (int count = 0; count <= MOST_UNSURE; count += 2) {
            Optional<CardCode> code = received.mended(unsure, count).flatMap(CardSymbol::code);
            if (code.isPresent()) {
                return code;
            }
        }
        return Optional.empty();
    }

    /** How far the eight neighbours are all as dark or light as a module, as under a stain: 1 all, 0 five or fewer. */
    private static double sameAround(double[] darkness, int module) {
        int same = 0;
        boolean dark = darkness[module] > 0;
        for (int down = -1; down <= 1; down++) {
            for (int across = -1; across <= 1; across++) {
                same += darkness[module + down * MODULES.stride() + across] > 0 == dark ? 1 : 0;
            }
        }
        return Math.max(0, (same - 6) / 3.0);
    }

    private static Optional<CardCode> code(int[] words) {
        StringBuilder text = new StringBuilder();
        if (bits(words, 0, 4) != 0b0010 || bits(words, 4, 9) != CardCode.LENGTH) {
            return Optional.empty();
        }
        for (int from = 13; text.length() < CardCode.LENGTH; from += 11) {
            int pair = bits(words, from, 11);
            if (pair >= LETTERS.length() * LETTERS.length()) {
                return Optional.empty();
            }
            text.append(LETTERS.charAt(pair / LETTERS.length())).append(LETTERS.charAt(pair % LETTERS.length()));
        }
        return CardCode.parse(text.toString());
    }

    private static int bits(int[] words, int from, int count) {
        int value = 0;
        for (int i = from; i < from + count; i++) {
            value = value << 1 | words[i / 8] >> (7 - i % 8) & 1;
        }
        return value;
    }

    /** ISO/IEC 18004, table 10. */
    private static boolean isMasked(int mask, int module) {
        int row = MODULES.row(module);
        int column = MODULES.column(module);
        return switch (mask) {
            case 0 -> (row + column) % 2 == 0;
            case 1 -> row % 2 == 0;
            case 2 -> column % 3 == 0;
            case 3 -> (row + column) % 3 == 0;
            case 4 -> (row / 2 + column / 3) % 2 == 0;
            case 5 -> row * column % 2 + row * column % 3 == 0;
            case 6 -> (row * column % 2 + row * column % 3) % 2 == 0;
            default -> ((row + column) % 2 + row * column % 3) % 2 == 0;
        };
    }

    /** The modules of the words, bit by bit: up and down in columns of two, from the right. */
    private static int[] dataModules() {
        boolean[] format = new boolean[MODULES.count()];
        Arrays.stream(Format.modules(MODULES)).forEach(module -> format[module] = true);
        int[] modules = new int[BITS];
        int count = 0;
        boolean up = true;
        for (int right = SIDE - 1; right > 0; right -= 2) {
            if (right == 6) {
                right--;
            }
            for (int i = 0; i < SIDE; i++) {
                int row = up ? SIDE - 1 - i : i;
                for (int column = right; column > right - 2; column--) {
                    int module = MODULES.number(column, row);
                    if (MODULES.kind(module) == KnownModules.DATA && !format[module]) {
                        modules[count++] = module;
                    }
                }
            }
            up = !up;
        }
        return modules;
    }
}
