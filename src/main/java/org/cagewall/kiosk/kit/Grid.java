package org.cagewall.kiosk.kit;

import java.awt.Component;
import java.awt.Container;
import java.awt.Dimension;
import java.awt.LayoutManager;
import java.util.HashMap;
import java.util.Map;
import org.cagewall.kiosk.theme.Sizes;

/**
 * Parts in rows and columns of one size that fill their place to the pixel; places may stay empty, as on a wall. Used on
 * the event thread.
 */
public final class Grid extends Pane {

    private static final long serialVersionUID = 1L;

    private final int rows;
    private final int columns;
    private final transient Map<Component, Place> places = new HashMap<>();

    private record Place(int row, int column) {}

    /** So many rows and columns with 12 between them. */
    public Grid(int rows, int columns) {
        super(new Cells());
        this.rows = Math.max(1, rows);
        this.columns = Math.max(1, columns);
    }

    /** Puts the part into this row and column, counted from 0. */
    public Grid put(Component part, int row, int column) {
        places.put(part, new Place(row, column));
        add(part);
        return this;
    }

    @Override
    public void remove(int index) {
        places.remove(getComponent(index));
        super.remove(index);
    }

    @Override
    public void removeAll() {
        places.clear();
        super.removeAll();
    }

    @Override
    public int heightFor(int width) {
        return getLayout().preferredLayoutSize(this).height;
    }

    private static final class Cells implements LayoutManager {

        @Override
        public void layoutContainer(Container parent) {
            Grid grid = (Grid) parent;
            int gap = Sizes.gap();
            grid.places.forEach((part, place) -> {
                int x = edge(grid.getWidth() + gap, place.column(), grid.columns);
                int y = edge(grid.getHeight() + gap, place.row(), grid.rows);
                int right = edge(grid.getWidth() + gap, place.column() + 1, grid.columns) - gap;
                int bottom = edge(grid.getHeight() + gap, place.row() + 1, grid.rows) - gap;
                part.setBounds(x, y, right - x, bottom - y);
            });
        }

        private static int edge(int length, int index, int parts) {
            return Math.round((float) length * index / parts);
        }

        @Override
        public Dimension preferredLayoutSize(Container parent) {
            Dimension cell = new Dimension(Sizes.target(), Sizes.target());
            for (Component part : parent.getComponents()) {
                Dimension size = part.getPreferredSize();
                cell.setSize(Math.max(cell.width, size.width), Math.max(cell.height, size.height));
            }
            return all((Grid) parent, cell);
        }

        @Override
        public Dimension minimumLayoutSize(Container parent) {
            Dimension cell = new Dimension(Sizes.target(), Sizes.target());
            for (Component part : parent.getComponents()) {
                Dimension size = part.getMinimumSize();
                cell.setSize(Math.max(cell.width, size.width), Math.max(cell.height, size.height));
            }
            return all((Grid) parent, cell);
        }

        private static Dimension all(Grid grid, Dimension cell) {
            int gap = Sizes.gap();
            return new Dimension(grid.columns * (cell.width + gap) - gap, grid.rows * (cell.height + gap) - gap);
        }

        @Override
        public void addLayoutComponent(String name, Component part) {
            // Every part has a place of its own.
        }

        @Override
        public void removeLayoutComponent(Component part) {
            // Every part has a place of its own.
        }
    }
}
