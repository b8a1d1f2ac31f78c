package org.cagewall.kiosk.theme;

import java.awt.Color;

/** How well a text stands out, by WCAG 2.2's formula (1.4.3, 1.4.6). Thread-safe. */
public final class Contrast {

    private Contrast() {}

    /** (L1 + 0.05) / (L2 + 0.05), from 1 to 21; never rounded up. */
    public static double between(Color one, Color other) {
        double lighter = Math.max(luminance(one), luminance(other));
        double darker = Math.min(luminance(one), luminance(other));
        return (lighter + 0.05) / (darker + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int eightBits) {
        double share = eightBits / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
