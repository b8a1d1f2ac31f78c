package org.cagewall.kiosk.kit;

import java.awt.Color;
import java.awt.Graphics2D;
import javax.swing.JComponent;
import javax.swing.JRootPane;
import javax.swing.SwingUtilities;
import org.cagewall.kiosk.theme.Sizes;

/**
 * Shows where the keyboard is: a ring inside the part, in the part's own ink so that it stands out on any ground. Hidden
 * while the room is worked by touch. Used on the event thread.
 */
public final class FocusRing {

    private static final String BY_KEYBOARD = "kiosk.byKeyboard";

    private FocusRing() {}

    /** From now on the ring is shown: a key moved the focus. */
    public static void show(JRootPane root) {
        change(root, Boolean.TRUE);
    }

    /** From now on the ring is hidden: a finger touched the screen. */
    public static void hide(JRootPane root) {
        change(root, Boolean.FALSE);
    }

    private static void change(JRootPane root, Boolean shown) {
        if (!shown.equals(root.getClientProperty(BY_KEYBOARD))) {
            root.putClientProperty(BY_KEYBOARD, shown);
            root.repaint();
        }
    }

    public static void paint(Graphics2D brush, JComponent part, Color ink, Brush.Box box, float radius) {
        if (part.isFocusOwner() && isShown(part)) {
            draw(brush, ink, box, radius);
        }
    }

    static void draw(Graphics2D brush, Color ink, Brush.Box box, float radius) {
        float inset = Sizes.px(5f);
        Brush.outline(brush, ink, Sizes.px(3f), box.inset(inset), Math.max(Sizes.px(3f), radius - inset));
    }

    /** Whether the room that holds this part is worked by keys. */
    public static boolean isShown(JComponent part) {
        JRootPane root = SwingUtilities.getRootPane(part);
        return root == null || !Boolean.FALSE.equals(root.getClientProperty(BY_KEYBOARD));
    }
}
