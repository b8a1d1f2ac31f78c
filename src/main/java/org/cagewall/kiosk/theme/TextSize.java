package org.cagewall.kiosk.theme;

import java.util.Locale;

/** The keeper's choice of text size: every size on the screen is multiplied by it. Immutable; any thread. */
public enum TextSize {
    NORMAL(1f),
    LARGE(1.25f),
    LARGER(1.5f),
    LARGEST(2f);

    private final float factor;

    TextSize(float factor) {
        this.factor = factor;
    }

    public float factor() {
        return factor;
    }

    /** The size of this name, whatever its case; the normal one for any other word. */
    public static TextSize named(String word) {
        for (TextSize size : values()) {
            if (size.name().equals(word.strip().toUpperCase(Locale.ROOT))) {
                return size;
            }
        }
        return NORMAL;
    }
}
