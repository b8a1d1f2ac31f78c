package org.cagewall.kiosk.kit;

import javax.swing.JComponent;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** A few words over a part that has none of its own, so that chips and steppers read like fields. Event thread. */
public final class Labelled {

    private Labelled() {}

    /** The part with its words above it. */
    public static Stack of(String label, JComponent part) {
        Stack both = new Stack(6);
        both.add(new WrapLabel(label, TextStyle.TAG, Tone.SOFT));
        both.add(part);
        return both;
    }
}
