package org.cagewall.handover;

import static org.cagewall.handover.PackLeafPdf.LEFT;
import static org.cagewall.handover.PackLeafPdf.WIDTH;

import java.util.List;
import org.cagewall.paper.Area;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Page;
import org.cagewall.paper.Type;
import org.cagewall.text.Words;

/** A wall as it hangs, with what should be seen in each cage. One thread, while the document is being drawn. */
record PackMapPdf(PackLeafPdf leaf, Words words) {

    /** More cages beside each other are too narrow to read: they go on on the next leaf. */
    private static final int MOST_COLUMNS = 6;

    private static final int MOST_ROWS = 8;
    private static final double GAP = 2;
    private static final double HIGHEST = 42;
    private static final double SMALLEST_NAME = 2;
    private static final double IN_NO_ROW = 26;

    /** From one line to the next, in heights of capitals. */
    private static final double LINE = 1.8;

    void draw(Pack.WallMap wall) {
        for (int row = 1; row <= wall.rows(); row += MOST_ROWS) {
            for (int column = 1; column <= wall.columns(); column += MOST_COLUMNS) {
                int lastRow = Math.min(wall.rows(), row + MOST_ROWS - 1);
                int lastColumn = Math.min(wall.columns(), column + MOST_COLUMNS - 1);
                if (holdsCages(wall, row, column, lastRow, lastColumn)) {
                    part(wall, row, column, lastRow, lastColumn);
                }
            }
        }
    }

    private static boolean holdsCages(Pack.WallMap wall, int row, int column, int lastRow, int lastColumn) {
        return wall.cages().stream()
                .anyMatch(cage -> cage.row() >= row
                        && cage.row() <= lastRow
                        && cage.column() >= column
                        && cage.column() <= lastColumn);
    }

    private void part(Pack.WallMap wall, int row, int column, int lastRow, int lastColumn) {
        leaf.begin(words.say("pack.map", wall.name()), "");
        leaf.text(words.say("pack.map-text"), PackLeafPdf.TEXT, Ink.BLACK, LEFT, WIDTH);
        leaf.down(3);
        int columns = lastColumn - column + 1;
        int rows = lastRow - row + 1;
        double width = (WIDTH - GAP * (columns - 1)) / columns;
        double height = Math.min(HIGHEST, (leaf.room() - GAP * (rows - 1)) / rows);
        for (int r = 0; r < rows; r++) {
            for (int c = 0; c < columns; c++) {
                Area place = new Area(LEFT + c * (width + GAP), leaf.y() + r * (height + GAP), width, height);
                int atRow = row + r;
                int atColumn = column + c;
                wall.cages().stream()
                        .filter(cage -> cage.row() == atRow && cage.column() == atColumn)
                        .findFirst()
                        .ifPresentOrElse(cage -> cage(cage, place), () -> empty(place));
            }
        }
        leaf.down(rows * (height + GAP));
    }

    private void empty(Area place) {
        leaf.page().frameRounded(place, 1.5, 0.15, PackLeafPdf.SHADE);
    }

    private void cage(Pack.Spot cage, Area place) {
        Page page = leaf.page();
        if (cage.note().isPresent()) {
            page.fillRounded(place, 1.5, PackLeafPdf.SHADE);
        }
        page.frameRounded(place, 1.5, 0.4, Ink.BLACK);
        double left = place.left() + 2.5;
        double width = place.width() - 5;
        Type name = page.shrunk(cage.cage(), Type.bold(4.2), width, SMALLEST_NAME);
        double y = place.top() + 3 + Math.max(0, 4.2 - name.capitals());
        for (String line : leaf.lines(cage.cage(), name, width)) {
            page.text(line, name, Ink.BLACK, left, y + name.capitals());
            y += name.capitals() * LINE;
        }
        y += 1.2;
        String text = cage.note()
                .map(note -> words.say("pack.line", words.say(cage.see())) + " " + words.say(note))
                .orElseGet(() -> words.say(cage.see()));
        Type type = fitting(text, width, place.bottom() - 2 - y);
        for (String line : leaf.lines(text, type, width)) {
            page.text(line, type, Ink.BLACK, left, y + type.capitals());
            y += type.capitals() * LINE;
        }
    }

    /** The largest letters in which the text has room. */
    private Type fitting(String text, double width, double height) {
        Type type = Type.regular(3);
        while (type.capitals() > 1.6 && !fits(text, type, width, height)) {
            type = type.sized(type.capitals() - 0.1);
        }
        return type;
    }

    private boolean fits(String text, Type type, double width, double height) {
        List<String> lines = leaf.page().wrapped(text, type, width);
        return lines.size() * type.capitals() * LINE <= height
                && lines.stream().allMatch(line -> leaf.page().width(line, type) <= width);
    }

    /** Cages and flights that hang on no wall. */
    void drawElsewhere(List<Pack.Spot> cages) {
        if (cages.isEmpty()) {
            return;
        }
        leaf.begin(words.say("pack.map-elsewhere"), "");
        double width = (WIDTH - GAP * 2) / 3;
        for (int first = 0; first < cages.size(); first += 3) {
            leaf.need(IN_NO_ROW);
            for (int i = first; i < Math.min(cages.size(), first + 3); i++) {
                cage(cages.get(i), new Area(LEFT + (i - first) * (width + GAP), leaf.y(), width, IN_NO_ROW));
            }
            leaf.down(IN_NO_ROW + GAP);
        }
    }
}
