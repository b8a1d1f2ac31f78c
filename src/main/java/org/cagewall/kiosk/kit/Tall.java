package org.cagewall.kiosk.kit;

import java.awt.Component;

/** A part whose height depends on its width, as wrapped text does. Used on the event thread. */
public interface Tall {

    /** The height that it needs at this width, in pixels. */
    int heightFor(int width);

    /** The height that any part needs at this width. */
    static int of(Component part, int width) {
        if (part instanceof Tall tall) {
            return tall.heightFor(width);
        }
        return part.getPreferredSize().height;
    }
}
