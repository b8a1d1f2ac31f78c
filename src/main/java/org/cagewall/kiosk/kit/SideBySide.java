package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.function.Consumer;
import org.cagewall.kiosk.theme.Sizes;

/** Parts beside one another at their own size, going on in a next line where the width ends. Event thread. */
public final class SideBySide extends Pane {

    private static final long serialVersionUID = 1L;

    /** A row with 12 between its parts. */
    public SideBySide() {
        super(new Beside(Sizes.gap()));
    }

    @Override
    public int heightFor(int width) {
        return ((Beside) getLayout()).place(this, width, placed -> {});
    }

    private record Placed(Component part, int x, int y, int width, int height) {}

    private static final class Beside implements LayoutManager {

        private final int gap;

        Beside(int gap) {
            this.gap = gap;
        }

        int place(Container row, int width, Consumer<Placed> each) {
            int x = 0;
            int y = 0;
            int tallest = 0;
            for (Component part : row.getComponents()) {
                if (!part.isVisible()) {
                    continue;
                }
                Dimension size = part.getPreferredSize();
                int across = Math.min(size.width, Math.max(1, width));
                if (x > 0 && x + across > width) {
                    x = 0;
                    y += tallest + gap;
                    tallest = 0;
                }
                each.accept(new Placed(part, x, y, across, size.height));
                x += across + gap;
                tallest = Math.max(tallest, size.height);
            }
            return y + tallest;
        }

        @Override
        public void layoutContainer(Container row) {
            place(row, row.getWidth(), placed -> placed.part()
                    .setBounds(placed.x(), placed.y(), placed.width(), placed.height()));
        }

        @Override
        public Dimension preferredLayoutSize(Container row) {
            int natural = 0;
            for (Component part : row.getComponents()) {
                natural += part.getPreferredSize().width + (natural > 0 ? gap : 0);
            }
            return new Dimension(natural, place(row, row.getWidth() > 0 ? row.getWidth() : natural, placed -> {}));
        }

        @Override
        public Dimension minimumLayoutSize(Container row) {
            int widest = 0;
            for (Component part : row.getComponents()) {
                widest = Math.max(widest, part.getMinimumSize().width);
            }
            return new Dimension(widest, preferredLayoutSize(row).height);
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
