package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.awt.LayoutManager2;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import javax.swing.JPanel;

/**
 * A clear panel that is as high as its wrapped words need at its width, however deep they lie in it: screens are built
 * of these rather than of bare panels. What it has measured it remembers until something in it changes. Used on the
 * event thread.
 */
public class Pane extends JPanel implements Tall {

    private static final long serialVersionUID = 1L;

    private final transient Map<Integer, Integer> heights = new HashMap<>();
    private transient Optional<Dimension> natural = Optional.empty();
    private transient Optional<Dimension> least = Optional.empty();
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
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        if (natural.isEmpty()) {
            natural = Optional.of(fresh().preferredLayoutSize(this));
        }
        Dimension size = natural.get();
        return getWidth() <= 0 ? new Dimension(size) : new Dimension(size.width, heightFor(getWidth()));
    }

    @Override
    public Dimension getMinimumSize() {
        if (isMinimumSizeSet()) {
            return super.getMinimumSize();
        }
        if (least.isEmpty()) {
            least = Optional.of(fresh().minimumLayoutSize(this));
        }
        Dimension size = least.get();
        return getWidth() <= 0
                ? new Dimension(size)
                : new Dimension(size.width, Math.min(size.height, heightFor(getWidth())));
    }

    @Override
    public int heightFor(int width) {
        Integer known = heights.get(width);
        if (known == null) {
            known = measured(width);
            heights.put(width, known);
        }
        return known;
    }

    /** Lays out twice: the heights that parts ask for are right only once they have their widths. */
    @Override
    public void doLayout() {
        fresh().layoutContainer(this);
        if (getLayout() instanceof LayoutManager2) {
            fresh().layoutContainer(this);
        }
    }

    @Override
    public void revalidate() {
        forgetFrom(this);
        super.revalidate();
    }

    @Override
    public void invalidate() {
        if (measuring == Measuring.NO && isValid()) {
            forgetFrom(this);
        }
        super.invalidate();
    }

    @Override
    protected void addImpl(Component part, Object constraints, int index) {
        forgetFrom(this);
        super.addImpl(part, constraints, index);
    }

    @Override
    public void remove(int index) {
        forgetFrom(this);
        super.remove(index);
    }

    @Override
    public void removeAll() {
        forgetFrom(this);
        super.removeAll();
    }

    @Override
    public void setBounds(int x, int y, int width, int height) {
        Measuring before = measuring;
        measuring = Measuring.YES;
        super.setBounds(x, y, width, height);
        measuring = before;
    }

    /** Something in this part has changed: whatever holds it must measure anew. */
    public static void forgetFrom(Component part) {
        for (Component each = part; each != null; each = each.getParent()) {
            if (each instanceof Pane pane) {
                pane.forget();
            }
        }
    }

    private void forget() {
        if (heights != null) {
            heights.clear();
            natural = Optional.empty();
            least = Optional.empty();
        }
    }

    private int measured(int width) {
        if (width == getWidth() && measuring == Measuring.YES) {
            return fresh().preferredLayoutSize(this).height;
        }
        Dimension before = getSize();
        measuring = Measuring.YES;
        try {
            setSize(width, Math.max(1, before.height));
            doLayout();
            return fresh().preferredLayoutSize(this).height;
        } finally {
            setSize(before);
            measuring = Measuring.NO;
        }
    }

    private LayoutManager fresh() {
        if (getLayout() instanceof LayoutManager2 layout) {
            layout.invalidateLayout(this);
        }
        return getLayout();
    }
}
