package org.cagewall.kiosk.kit;

import java.awt.AWTEvent;
import java.awt.BorderLayout;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Point;
import java.awt.Rectangle;
import java.awt.event.MouseEvent;
import javax.swing.AbstractButton;
import javax.swing.JComponent;
import javax.swing.JLayer;
import javax.swing.JPanel;
import javax.swing.JScrollPane;
import javax.swing.JViewport;
import javax.swing.ScrollPaneConstants;
import javax.swing.Scrollable;
import javax.swing.SwingUtilities;
import javax.swing.plaf.LayerUI;
import javax.swing.text.JTextComponent;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.text.Words;

/**
 * Shows what is higher than its place: dragged with a finger, or turned by two large buttons at the side, which are
 * there only where there is more to see. Used on the event thread.
 */
public final class TouchScroll extends JPanel implements Tall {

    private static final long serialVersionUID = 1L;

    private final JScrollPane pane;
    private final JPanel turns = new JPanel(null);
    private final TouchButton up;
    private final TouchButton down;

    /** Scrolls this part up and down; it is as wide as the place. */
    public TouchScroll(Words words, String name, JComponent part) {
        super(null);
        setOpaque(false);
        putClientProperty("migLayout.dynamicAspectRatio", Boolean.TRUE);
        setName(name);
        pane = new JScrollPane(
                new Held(part),
                ScrollPaneConstants.VERTICAL_SCROLLBAR_NEVER,
                ScrollPaneConstants.HORIZONTAL_SCROLLBAR_NEVER);
        pane.setBorder(null);
        pane.setOpaque(false);
        pane.getViewport().setOpaque(false);
        pane.getViewport().setScrollMode(JViewport.SIMPLE_SCROLL_MODE);
        pane.getViewport().addChangeListener(event -> tellWhere());
        up = TouchButton.arrow(TouchButton.Arrow.UP, name + ".up", words.say("kit.up"), () -> turn(-1));
        down = TouchButton.arrow(TouchButton.Arrow.DOWN, name + ".down", words.say("kit.down"), () -> turn(1));
        turns.setOpaque(false);
        turns.add(up);
        turns.add(down);
        add(new JLayer<>(pane, new Drag()));
        add(turns);
    }

    /**
     * Of a part that is rows of one height: as many whole rows are shown as have this height or more, and it is turned
     * by whole rows, so that none is ever cut.
     *
     * @param least the least height of a row with the gap below it, in pixels
     */
    public TouchScroll inRows(int rows, int least) {
        held().rows = rows;
        held().least = Math.max(1, least);
        return this;
    }

    /** Back to the top. */
    public void toTop() {
        pane.getViewport().setViewPosition(new Point(0, 0));
    }

    /** Begins the view with this part of the content, as far as there is more below it. */
    public void startAt(JComponent part) {
        JComponent held = held();
        int y = SwingUtilities.convertPoint(part, 0, 0, held).y;
        pane.getViewport().setViewPosition(new Point(0, 0));
        moveBy(y);
    }

    /** Brings this part of the content into view. */
    public void show(JComponent part) {
        JComponent held = held();
        held.scrollRectToVisible(SwingUtilities.convertRectangle(part.getParent(), part.getBounds(), held));
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        Dimension natural = held().part.getPreferredSize();
        return new Dimension(natural.width, getWidth() > 0 ? heightFor(getWidth()) : natural.height);
    }

    /** The height at which there would be nothing to scroll. */
    @Override
    public int heightFor(int width) {
        return held().heightFor(width);
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(240), Sizes.px(120));
    }

    @Override
    public void doLayout() {
        JComponent layer = (JComponent) getComponent(0);
        held().place = getHeight();
        boolean more = held().heightFor(getWidth()) > getHeight();
        int side = more ? Sizes.px(64) : 0;
        int gap = more ? Sizes.gap() : 0;
        turns.setVisible(more);
        layer.setBounds(0, 0, getWidth() - side - gap, getHeight());
        turns.setBounds(getWidth() - side, 0, side, getHeight());
        int each = Math.min(Sizes.px(160), (getHeight() - Sizes.gap()) / 2);
        up.setBounds(0, 0, side, each);
        down.setBounds(0, getHeight() - each, side, each);
        tellWhere();
    }

    private Held held() {
        return (Held) pane.getViewport().getView();
    }

    private void turn(int way) {
        int step = held().rows > 0 ? getHeight() + Sizes.gap() : Math.max(Sizes.target(), getHeight() - Sizes.px(64));
        moveBy(way * step);
    }

    private void toAWholeRow() {
        if (held().rows > 0) {
            int y = pane.getViewport().getViewPosition().y;
            moveBy(Math.round(Math.round(y / held().pitch()) * held().pitch()) - y);
        }
    }

    private int moveBy(int pixels) {
        JViewport port = pane.getViewport();
        int most = Math.max(0, port.getView().getHeight() - port.getHeight());
        int y = Math.max(0, Math.min(most, port.getViewPosition().y + pixels));
        port.setViewPosition(new Point(0, y));
        return y;
    }

    private void tellWhere() {
        JViewport port = pane.getViewport();
        int y = port.getViewPosition().y;
        up.setEnabled(y > 0);
        down.setEnabled(y + port.getHeight() < port.getView().getHeight());
    }

    private static final class Held extends JPanel implements Scrollable {

        private static final long serialVersionUID = 1L;

        private final JComponent part;
        private int rows;
        private int least = 1;
        private int place;

        Held(JComponent part) {
            super(new BorderLayout());
            this.part = part;
            setOpaque(false);
            add(part);
        }

        int heightFor(int width) {
            return rows > 0 ? Math.round(rows * pitch()) - Sizes.gap() : Tall.of(part, width);
        }

        /** From one row to the next: so that whole rows fill the place. */
        float pitch() {
            int room = place + Sizes.gap();
            int shown = room / least;
            return shown == 0 || rows <= shown ? least : (float) room / shown;
        }

        @Override
        public Dimension getPreferredSize() {
            Container port = getParent();
            Dimension preferred = part.getPreferredSize();
            int width = port != null && port.getWidth() > 0 ? port.getWidth() : preferred.width;
            return new Dimension(width, heightFor(width));
        }

        @Override
        public Dimension getPreferredScrollableViewportSize() {
            return getPreferredSize();
        }

        @Override
        public int getScrollableUnitIncrement(Rectangle visible, int orientation, int direction) {
            return Sizes.target();
        }

        @Override
        public int getScrollableBlockIncrement(Rectangle visible, int orientation, int direction) {
            return visible.height;
        }

        @Override
        public boolean getScrollableTracksViewportWidth() {
            return true;
        }

        @Override
        public boolean getScrollableTracksViewportHeight() {
            return getParent() != null && getParent().getHeight() > getPreferredSize().height;
        }
    }

    private final class Drag extends LayerUI<JScrollPane> {

        private static final long serialVersionUID = 1L;

        private int startY;
        private int lastY;
        private State state = State.IDLE;

        private enum State {
            IDLE,
            PRESSED,
            DRAGGING
        }

        @Override
        public void installUI(JComponent layer) {
            super.installUI(layer);
            ((JLayer<?>) layer).setLayerEventMask(AWTEvent.MOUSE_EVENT_MASK | AWTEvent.MOUSE_MOTION_EVENT_MASK);
        }

        @Override
        public void uninstallUI(JComponent layer) {
            ((JLayer<?>) layer).setLayerEventMask(0);
            super.uninstallUI(layer);
        }

        @Override
        protected void processMouseEvent(MouseEvent event, JLayer<? extends JScrollPane> layer) {
            if (event.getID() == MouseEvent.MOUSE_PRESSED) {
                startY = y(event, layer);
                lastY = startY;
                boolean still = event.getComponent() instanceof JTextComponent || !turns.isVisible();
                state = still ? State.IDLE : State.PRESSED;
            } else if (event.getID() == MouseEvent.MOUSE_RELEASED) {
                if (state == State.DRAGGING) {
                    toAWholeRow();
                    takeBack(event);
                    event.consume();
                }
                state = State.IDLE;
            }
        }

        @Override
        protected void processMouseMotionEvent(MouseEvent event, JLayer<? extends JScrollPane> layer) {
            if (event.getID() != MouseEvent.MOUSE_DRAGGED || state == State.IDLE) {
                return;
            }
            int y = y(event, layer);
            if (state == State.PRESSED && Math.abs(y - startY) > Sizes.slip()) {
                state = State.DRAGGING;
            }
            if (state == State.DRAGGING) {
                moveBy(lastY - y);
                lastY = y;
                takeBack(event);
                event.consume();
            }
        }

        private void takeBack(MouseEvent event) {
            if (event.getComponent() instanceof AbstractButton button) {
                button.getModel().setArmed(false);
            }
        }

        private int y(MouseEvent event, JLayer<? extends JScrollPane> layer) {
            return SwingUtilities.convertPoint(event.getComponent(), event.getPoint(), layer).y;
        }
    }
}
