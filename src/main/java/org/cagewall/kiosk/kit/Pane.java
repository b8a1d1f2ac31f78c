package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.LayoutManager2;
import javax.swing.JPanel;

/**
 * A clear panel that is as high as its wrapped words need at its width, however deep they lie in it: screens are built
 * of these rather than of bare panels. Used on the event thread.
 */
public class Pane extends JPanel implements Tall {

    private static final long serialVersionUID = 1L;

    private int knownWidth = -1;
    private int knownHeight;
    private Measuring measuring = Measuring.NO;

    private enum Measuring {
        YES,
        NO
    }

    public Pane(LayoutManager layout) {
        super(layout);
        setOpaque(false);
        putClientProperty("migLayout.dynamicAspectRatio", Boolean.TRUE);
    }

    @Override
    public Dimension getPreferredSize() {
        Dimension natural = super.getPreferredSize();
        if (isPreferredSizeSet() || getWidth() <= 0) {
            return natural;
        }
        return new Dimension(natural.width, heightFor(getWidth()));
    }

    @Override
    public Dimension getMinimumSize() {
        Dimension least = super.getMinimumSize();
        return isMinimumSizeSet() || getWidth() <= 0
                ? least
                : new Dimension(least.width, Math.min(least.height, heightFor(getWidth())));
    }

    /** Lays out twice: the heights that parts ask for are right only once they have their widths. */
    @Override
    public void doLayout() {
        super.doLayout();
        if (getLayout() instanceof LayoutManager2 layout) {
            layout.invalidateLayout(this);
            super.doLayout();
        }
    }

    @Override
    public int heightFor(int width) {
        if (measuring == Measuring.YES) {
            return getLayout().preferredLayoutSize(this).height;
        }
        if (width != knownWidth) {
            int height = measured(width);
            knownWidth = width;
            knownHeight = height;
        }
        return knownHeight;
    }

    @Override
    public void invalidate() {
        if (measuring == Measuring.NO) {
            knownWidth = -1;
        }
        super.invalidate();
    }

    private int measured(int width) {
        Dimension before = getSize();
        measuring = Measuring.YES;
        try {
            setSize(width, Math.max(1, before.height));
            settle(this);
            return getLayout().preferredLayoutSize(this).height;
        } finally {
            setSize(before);
            measuring = Measuring.NO;
        }
    }

    private static void settle(Container container) {
        container.invalidate();
        container.doLayout();
        for (Component child : container.getComponents()) {
            if (child instanceof Container inner && inner.getComponentCount() > 0) {
                settle(inner);
            }
        }
        container.invalidate();
    }
}
