package org.cagewall.cards;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

/**
 * The dark and light squares of a scan symbol, without the quiet zone around them, so that paper and screen draw the
 * same one. Immutable; any thread.
 */
public final class Symbol {

    private final int side;
    private final BitSet dark;

    Symbol(int side, BitSet dark) {
        this.side = side;
        this.dark = (BitSet) dark.clone();
    }

    /** How many modules a side has. */
    public int side() {
        return side;
    }

    /** Whether the module is dark; both counted from 0 at the upper left. */
    public boolean isDark(int column, int row) {
        if (Math.min(column, row) < 0 || Math.max(column, row) >= side) {
            throw new IndexOutOfBoundsException("no module " + column + ", " + row + " in a side of " + side);
        }
        return dark.get(row * side + column);
    }

    /** The dark modules as few upright rectangles that do not overlap: each run of a row, joined with equal runs below. */
    public List<Bar> bars() {
        List<Bar> finished = new ArrayList<>();
        List<Bar> growing = new ArrayList<>();
        for (int row = 0; row < side; row++) {
            List<Bar> next = new ArrayList<>();
            for (Bar run : runs(row)) {
                next.add(growing.stream()
                        .filter(bar -> bar.column() == run.column() && bar.width() == run.width())
                        .findFirst()
                        .map(bar -> new Bar(bar.column(), bar.row(), bar.width(), bar.height() + 1))
                        .orElse(run));
            }
            growing.stream()
                    .filter(bar -> next.stream().noneMatch(bar::growsInto))
                    .forEach(finished::add);
            growing = next;
        }
        finished.addAll(growing);
        return List.copyOf(finished);
    }

    private List<Bar> runs(int row) {
        List<Bar> runs = new ArrayList<>();
        int column = 0;
        while (column < side) {
            int start = column;
            while (column < side && isDark(column, row)) {
                column++;
            }
            if (column > start) {
                runs.add(new Bar(start, row, column - start, 1));
            }
            column++;
        }
        return runs;
    }

    /**
     * A rectangle of dark modules, in modules.
     *
     * @param column its left edge
     * @param row its upper edge
     * @param width across
     * @param height down
     */
    public record Bar(int column, int row, int width, int height) {

        private boolean growsInto(Bar other) {
            return column == other.column && row == other.row && width == other.width;
        }
    }
}
