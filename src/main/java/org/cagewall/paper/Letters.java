package org.cagewall.paper;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/**
 * Which letters paper cannot show, so that whoever enters one is told before a card has a mark in its place. Stateless
 * but for the fonts, which are read when a letter beyond ASCII first comes; any thread.
 */
public final class Letters {

    private static final int ASCII = 0x80;

    private Letters() {}

    /** The letters of the text that the paper's font lacks, as they can be shown on a screen, each once. */
    public static List<String> missing(String text) {
        return text.codePoints()
                .filter(letter -> letter >= ASCII && !Character.isISOControl(letter) && !Character.isWhitespace(letter))
                .distinct()
                .filter(letter -> Fonts.ALL.stream().anyMatch(font -> font.getGlyphId(letter) == 0))
                .mapToObj(Letters::shown)
                .toList();
    }

    /** One that cannot be seen is shown by its number. */
    private static String shown(int letter) {
        boolean isSeen = Character.isLetterOrDigit(letter)
                || Character.isIdeographic(letter)
                || Character.getType(letter) == Character.OTHER_SYMBOL;
        return isSeen ? Character.toString(letter) : String.format("U+%04X", letter);
    }

    /** What each weight has; read once. */
    private static final class Fonts {

        private static final Collection<CmapLookup> ALL =
                Stream.of(Weight.values()).map(Fonts::read).collect(Collectors.toUnmodifiableList());

        private static CmapLookup read(Weight weight) {
            try (InputStream in = Letters.class.getResourceAsStream(weight.resource());
                    TrueTypeFont font = new TTFParser().parse(new RandomAccessReadBuffer(in))) {
                font.setEnableGsub(false);
                return font.getUnicodeCmapLookup();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
        }
    }
}
