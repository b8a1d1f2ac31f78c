package org.cagewall.kiosk.kit;

import java.awt.Graphics;
import java.awt.Rectangle;
import java.awt.event.FocusEvent;
import java.awt.event.KeyEvent;
import java.awt.event.MouseEvent;
import javax.swing.AbstractButton;
import javax.swing.ButtonModel;
import javax.swing.JComponent;
import javax.swing.KeyStroke;
import javax.swing.SwingUtilities;
import javax.swing.plaf.basic.BasicButtonListener;
import javax.swing.plaf.basic.BasicButtonUI;
import org.cagewall.kiosk.theme.Sizes;

/**
 * Makes any button fit for a wet finger: it is pressed where the finger goes down and lifts within a slip of it, never
 * by a click; a drag that scrolls takes the press back. A finger leaves no focus behind, which a scanner's keys would
 * press. The part paints itself. Used on the event thread.
 */
public final class FingerUI extends BasicButtonUI {

    @Override
    protected void installDefaults(AbstractButton button) {
        button.setOpaque(false);
        button.setBorder(null);
        button.setRolloverEnabled(false);
        button.putClientProperty("html.disable", Boolean.TRUE);
    }

    @Override
    protected void uninstallDefaults(AbstractButton button) {
        // Nothing was put in that a next look would have to find gone.
    }

    @Override
    protected void installKeyboardActions(AbstractButton button) {
        super.installKeyboardActions(button);
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, false), "pressed");
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_SPACE, 0, true), "released");
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, false), "pressed");
        button.getInputMap().put(KeyStroke.getKeyStroke(KeyEvent.VK_ENTER, 0, true), "released");
    }

    @Override
    protected BasicButtonListener createButtonListener(AbstractButton button) {
        return new Finger(button);
    }

    @Override
    public void paint(Graphics graphics, JComponent part) {
        // The part paints itself.
    }

    private static final class Finger extends BasicButtonListener {

        private final AbstractButton button;

        Finger(AbstractButton button) {
            super(button);
            this.button = button;
        }

        @Override
        public void mousePressed(MouseEvent event) {
            if (!SwingUtilities.isLeftMouseButton(event)
                    || !button.isEnabled()
                    || DoubleTouch.isSecond(button, event)) {
                return;
            }
            button.getModel().setArmed(true);
            button.getModel().setPressed(true);
        }

        @Override
        public void mouseDragged(MouseEvent event) {
            ButtonModel model = button.getModel();
            if (model.isPressed()) {
                model.setArmed(!event.isConsumed() && isNear(event));
            }
        }

        @Override
        public void mouseReleased(MouseEvent event) {
            if (!SwingUtilities.isLeftMouseButton(event)) {
                return;
            }
            ButtonModel model = button.getModel();
            if (event.isConsumed() || !isNear(event)) {
                model.setArmed(false);
            }
            if (model.isPressed() && model.isArmed()) {
                DoubleTouch.remember(button, event);
            }
            model.setPressed(false);
            model.setArmed(false);
        }

        /** A key brought the focus here: what has it is brought into view. */
        @Override
        public void focusGained(FocusEvent event) {
            super.focusGained(event);
            if (FocusRing.isShown(button)) {
                button.scrollRectToVisible(new Rectangle(button.getSize()));
            }
        }

        @Override
        public void mouseEntered(MouseEvent event) {
            // A finger does not hover.
        }

        @Override
        public void mouseExited(MouseEvent event) {
            // A slip over the edge is forgiven until the finger lifts.
        }

        private boolean isNear(MouseEvent event) {
            int slip = Sizes.slip();
            return event.getX() >= -slip
                    && event.getY() >= -slip
                    && event.getX() < button.getWidth() + slip
                    && event.getY() < button.getHeight() + slip;
        }
    }
}
