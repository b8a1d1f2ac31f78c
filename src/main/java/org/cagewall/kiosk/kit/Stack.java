package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.Insets;
import java.awt.LayoutManager;
import org.cagewall.kiosk.theme.Sizes;

/** Parts below one another, each as wide as the whole and as high as its wrapped words need. Event thread. */
public final class Stack extends Pane {

    private static final long serialVersionUID = 1L;

    /** A stack with 12 between its parts. */
    public Stack() {
        this(12);
    }

    /** A stack with n pixels, at the normal text size, between its parts. */
    public Stack(int gap) {
        super(new Below(Sizes.px(gap)));
    }

    @Override
    public int heightFor(int width) {
        return ((Below) getLayout()).height(this, width);
    }

    private static final class Below implements LayoutManager {

        private final int gap;

        Below(int gap) {
            this.gap = gap;
        }

        int height(Container stack, int width) {
            Insets insets = stack.getInsets();
            int height = insets.top + insets.bottom;
            int shown = 0;
            for (Component part : stack.getComponents()) {
                if (part.isVisible()) {
                    height += Tall.of(part, width - insets.left - insets.right);
                    shown++;
                }
            }
            return height + Math.max(0, shown - 1) * gap;
        }

        @Override
        public void layoutContainer(Container stack) {
            Insets insets = stack.getInsets();
            int width = stack.getWidth() - insets.left - insets.right;
            int y = insets.top;
            for (Component part : stack.getComponents()) {
                if (part.isVisible()) {
                    int height = Tall.of(part, width);
                    part.setBounds(insets.left, y, width, height);
                    y += height + gap;
                }
            }
        }

        @Override
        public Dimension preferredLayoutSize(Container stack) {
            int width = stack.getWidth();
            if (width <= 0) {
                for (Component part : stack.getComponents()) {
                    width = Math.max(width, part.getPreferredSize().width);
                }
            }
            return new Dimension(width, height(stack, width));
        }

        @Override
        public Dimension minimumLayoutSize(Container stack) {
            int width = 0;
            for (Component part : stack.getComponents()) {
                width = Math.max(width, part.getMinimumSize().width);
            }
            return new Dimension(width, Sizes.target());
        }

        @Override
        public void addLayoutComponent(String name, Component part) {
            // Parts are laid out in their order.
        }

        @Override
        public void removeLayoutComponent(Component part) {
            // Parts are laid out in their order.
        }
    }
}
