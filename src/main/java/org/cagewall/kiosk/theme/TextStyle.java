package org.cagewall.kiosk.theme;

import java.awt.Font;
import java.awt.font.TextAttribute;
import java.util.Locale;
import java.util.Map;
import javax.swing.UIManager;

/**
 * A font by what it is for, already scaled by the text size; sizes are at the normal one. Used on the event thread.
 */
public enum TextStyle {
    /** The next cage: 44 px. */
    NEXT,
    /** The one big word of a tile: 36 px, capitals 26 px high. */
    BIG,
    /** A title or a cage's name: 30 px, bold. */
    TITLE,
    /** The largest button: 30 px. */
    MAIN,
    /** A button of what happened: 26 px. */
    ACTION,
    /** The line that leads a card or a row: 22 px. */
    LEAD,
    /** A common button: 20 px, half bold. */
    BUTTON,
    /** A line to read: 20 px. */
    LINE,
    /** A second line: 17 px. */
    SECOND,
    /** A tag, or a second line that matters: 17 px, half bold. */
    TAG,
    /** A mark in a sign: 15 px, the least there is. */
    MARK;

    private static final Map<TextAttribute, Integer> KERNED = Map.of(TextAttribute.KERNING, TextAttribute.KERNING_ON);

    public Font font() {
        return UIManager.getFont("Kiosk.type." + name().toLowerCase(Locale.ROOT) + ".font")
                .deriveFont(KERNED);
    }
}
