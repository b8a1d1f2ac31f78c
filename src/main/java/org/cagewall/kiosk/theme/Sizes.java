package org.cagewall.kiosk.theme;

import com.formdev.flatlaf.util.UIScale;

/** The sizes that all screens share, in pixels of the present text size. Used on the event thread. */
public final class Sizes {

    private Sizes() {}

    /** So many pixels at the normal text size. */
    public static int px(int normal) {
        return UIScale.scale(normal);
    }

    public static float px(float normal) {
        return UIScale.scale(normal);
    }

    /** Between tiles: 12. */
    public static int gap() {
        return px(12);
    }

    /** From the edge of the screen: 24. */
    public static int margin() {
        return px(24);
    }

    /** The least side of what can be touched: 48 (WCAG 2.2, 2.5.5 asks for 44, 2.5.8 for 24). */
    public static int target() {
        return px(48);
    }

    /** How far a finger may slip and still mean the same place: 12. */
    public static int slip() {
        return px(12);
    }

    /** Whether the letters are no larger than normal, so that a side part has room for a table. */
    public static boolean isNormal() {
        return px(100) <= 100;
    }

    /** Whether the letters leave room for parts side by side: at the normal and the large text size. */
    public static boolean isRoomy() {
        return px(100) <= 130;
    }

    /** Whether the letters are so large that there is room for one thing at a time only. */
    public static boolean isLargest() {
        return px(100) > 170;
    }

    public static float radius() {
        return px(12f);
    }
}
