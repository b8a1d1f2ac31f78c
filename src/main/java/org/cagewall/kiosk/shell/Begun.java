package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.Container;
import java.util.stream.Stream;
import javax.swing.AbstractButton;
import javax.swing.text.JTextComponent;

/** Finds whether something was written or chosen on a form. Used on the event thread. */
public final class Begun {

    private Begun() {}

    public static boolean in(Component part) {
        return part instanceof JTextComponent field && !field.getText().isBlank()
                || part instanceof AbstractButton button && button.isSelected()
                || part instanceof Container whole
                        && Stream.of(whole.getComponents()).anyMatch(Begun::in);
    }
}
