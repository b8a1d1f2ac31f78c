package org.cagewall.paper;

import java.io.IOException;
import java.io.InputStream;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.OS2WindowsMetricsTable;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/**
 * One weight of the font inside one document, so that texts can be measured and letters that the font does not have are
 * replaced before they stop a print. Joined letters are left out: looking for them took most of a print. One thread.
 */
final class Typeface {

    private static final int REPLACEMENT = '?';

    private final PDType0Font font;
    private final CmapLookup letters;
    private final double capitalsOfEm;

    private Typeface(PDType0Font font, CmapLookup letters, double capitalsOfEm) {
        this.font = font;
        this.letters = letters;
        this.capitalsOfEm = capitalsOfEm;
    }

    static Typeface load(PDDocument document, Weight weight) throws IOException {
        try (InputStream in = Typeface.class.getResourceAsStream(weight.resource())) {
            if (in == null) {
                throw new IOException("the font is missing: " + weight.resource());
            }
            TrueTypeFont file = new TTFParser().parse(new RandomAccessReadBuffer(in));
            file.setEnableGsub(false);
            OS2WindowsMetricsTable metrics = file.getOS2Windows();
            return new Typeface(
                    PDType0Font.load(document, file, true),
                    file.getUnicodeCmapLookup(),
                    (double) metrics.getCapHeight() / file.getUnitsPerEm());
        }
    }

    PDType0Font font() {
        return font;
    }

    /** The font size, in the unit of the capitals' height. */
    double size(double capitals) {
        return capitals / capitalsOfEm;
    }

    double width(String printable, Type type) throws IOException {
        return font.getStringWidth(printable) / 1000 * size(type.capitals()) * type.stretch();
    }

    /** The text with what cannot be printed replaced: line ends by a space, letters not in the font by a mark. */
    String printable(String text) {
        StringBuilder printable = new StringBuilder();
        text.codePoints()
                .map(c -> Character.isISOControl(c) || Character.isWhitespace(c) ? ' ' : c)
                .map(c -> letters.getGlyphId(c) == 0 ? REPLACEMENT : c)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }
}
