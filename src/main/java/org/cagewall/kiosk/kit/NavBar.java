package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javax.swing.JPanel;
import javax.swing.JToggleButton;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** The bar at the bottom that leads to the main screens; where one is has a filled pill. Used on the event thread. */
public final class NavBar<T> extends JPanel {

    private static final long serialVersionUID = 1L;

    private final transient Consumer<T> onGo;
    private final transient List<Entry<T>> entries = new ArrayList<>();

    /** One place to go: its name in tests, its word, and what it leads to. */
    public record Entry<T>(String name, String word, T target) {}

    public NavBar(Consumer<T> onGo) {
        super(null);
        this.onGo = onGo;
        setOpaque(false);
        setName("nav");
    }

    /** Replaces the places to go. */
    public void entries(List<Entry<T>> places) {
        removeAll();
        entries.clear();
        entries.addAll(places);
        for (Entry<T> place : places) {
            Place button = new Place(place.name(), place.word());
            button.addActionListener(event -> onGo.accept(place.target()));
            add(button);
        }
        revalidate();
        repaint();
    }

    /** Shows where one is; nowhere, if no entry leads there. */
    public void at(T target) {
        for (int i = 0; i < entries.size(); i++) {
            ((Place) getComponent(i)).here(entries.get(i).target().equals(target) ? Here.YES : Here.NO);
        }
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(words(), Sizes.px(72));
    }

    /** All places are equally wide, or, where a long word has no room so, as wide as their words. */
    @Override
    public void doLayout() {
        int count = getComponentCount();
        int widest = 0;
        for (Component place : getComponents()) {
            widest = Math.max(widest, place.getPreferredSize().width);
        }
        boolean equal = widest * count <= getWidth();
        float spare = (getWidth() - words()) / (float) Math.max(1, count);
        float left = 0;
        for (Component place : getComponents()) {
            float width = equal ? getWidth() / (float) count : place.getPreferredSize().width + spare;
            place.setBounds(Math.round(left), 0, Math.round(left + width) - Math.round(left), getHeight());
            left += width;
        }
    }

    private int words() {
        int all = 0;
        for (Component place : getComponents()) {
            all += place.getPreferredSize().width;
        }
        return all;
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(0, Sizes.px(72));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        brush.setColor(Tone.TILE.color());
        brush.fillRect(0, 0, getWidth(), getHeight());
        brush.setColor(Tone.LINE.color());
        brush.fillRect(0, 0, getWidth(), Math.max(1, Sizes.px(2)));
        brush.dispose();
    }

    private enum Here {
        YES,
        NO
    }

    private static final class Place extends JToggleButton implements Legible {

        private static final long serialVersionUID = 1L;

        private Here here = Here.NO;

        Place(String name, String word) {
            super(word);
            setName("nav." + name);
        }

        void here(Here now) {
            here = now;
            super.setSelected(now == Here.YES);
            repaint();
        }

        @Override
        public void updateUI() {
            setUI(new FingerUI());
        }

        @Override
        public Dimension getPreferredSize() {
            int word = (int) Math.ceil(Flow.length(getText(), TextStyle.BUTTON.font()));
            return new Dimension(Math.max(Sizes.px(96), word + Sizes.px(48)), Sizes.px(72));
        }

        @Override
        public Dimension getMinimumSize() {
            return new Dimension(Sizes.target(), Sizes.px(72));
        }

        @Override
        protected void paintComponent(Graphics graphics) {
            Graphics2D brush = Brush.on(graphics);
            boolean pressed = getModel().isPressed() && getModel().isArmed();
            float inset = Sizes.px(12f);
            float height = Sizes.px(52f);
            Brush.Box pill =
                    new Brush.Box(inset, (getHeight() - height) / 2 + Sizes.px(0.5f), getWidth() - 2 * inset, height);
            Tone ink = here == Here.YES ? Tone.MAIN_INK : Tone.INK;
            if (here == Here.YES) {
                Brush.fill(brush, (pressed ? Tone.MAIN_PRESSED : Tone.MAIN).color(), pill, height / 2);
                Brush.outline(brush, Tone.LIKELY_EDGE.color(), Sizes.px(1.5f), pill, height / 2);
            } else if (pressed) {
                Brush.fill(brush, Tone.TILE_PRESSED.color(), pill, height / 2);
            }
            brush.setColor(ink.color());
            Flow flow = flow();
            flow.paintCentred(brush, 0, (getHeight() - flow.height()) / 2f, getWidth());
            FocusRing.paint(brush, this, ink.color(), pill, height / 2);
            brush.dispose();
        }

        @Override
        public boolean isWhole() {
            return flow().whole();
        }

        private Flow flow() {
            return Flow.fitting(
                    getText(), List.of(TextStyle.BUTTON.font(), TextStyle.TAG.font()), getWidth() - Sizes.px(32), 1);
        }
    }
}
