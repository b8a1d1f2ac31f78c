package org.cagewall.kiosk.kit;

import java.awt.Font;
import java.awt.Shape;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * The letters of a text with their kerning, placed to a fraction of a pixel. Laying them out is what takes the time when
 * a screen is measured and painted, so what was laid out last is remembered; a text in a font always looks the same.
 * Event thread.
 */
record Letters(float width, Shape outline) {

    static final FontRenderContext FRACTIONAL = new FontRenderContext(null, true, true);

    /** More words and lines than a few screens hold. */
    private static final int REMEMBERED = 4_000;

    private static final Map<Key, Letters> KNOWN = new LinkedHashMap<>(REMEMBERED, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Key, Letters> eldest) {
            return size() > REMEMBERED;
        }
    };

    private record Key(String text, Font font) {}

    static Letters of(String text, Font font) {
        Key key = new Key(text, font);
        synchronized (KNOWN) {
            Letters known = KNOWN.get(key);
            if (known == null) {
                known = laidOut(text, font);
                KNOWN.put(key, known);
            }
            return known;
        }
    }

    private static Letters laidOut(String text, Font font) {
        GlyphVector glyphs =
                font.layoutGlyphVector(FRACTIONAL, text.toCharArray(), 0, text.length(), Font.LAYOUT_LEFT_TO_RIGHT);
        return new Letters((float) glyphs.getLogicalBounds().getWidth(), glyphs.getOutline());
    }
}
