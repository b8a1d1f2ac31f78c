package org.cagewall.kiosk.shell;

import org.cagewall.kiosk.theme.Sizes;

/** How much width a screen has: all of it, or what is left beside something that stays. Used on the event thread. */
public enum Breadth {
    WHOLE(1280),
    BESIDE(880);

    private final int good;

    /** @param good for how many pixels of a whole screen it is good */
    Breadth(int good) {
        this.good = good;
    }

    /** Whether the letters leave room for parts side by side. */
    public boolean isRoomy() {
        return this == WHOLE && Sizes.isRoomy();
    }

    /** Of n parts side by side in a whole screen of the normal text size, how many fit. */
    public int columns(int most) {
        return Math.max(1, most * good / WHOLE.good * 100 / Sizes.px(100));
    }
}
