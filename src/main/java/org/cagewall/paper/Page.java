package org.cagewall.paper;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDPageContentStream;

/**
 * One printed page on which things are drawn in millimetres from the upper left corner, or from where its document has
 * put that, so that what is drawn is where a ruler finds it. One thread, and only while its document is being drawn.
 */
public final class Page {

    private static final double POINTS_PER_MM = 72 / 25.4;

    /** How far the handles of a curve lie from its ends to draw a quarter of a circle: 4/3 (sqrt(2) - 1). */
    private static final double ROUND = 0.5522847498;

    private static final String ELLIPSIS = "\u2026";

    private final Size size;
    private final double right;
    private final double down;
    private final PDPageContentStream out;
    private final Typefaces typefaces;

    Page(Size size, double right, double down, PDPageContentStream out, Typefaces typefaces) {
        this.size = size;
        this.right = right;
        this.down = down;
        this.out = out;
        this.typefaces = typefaces;
    }

    /** Fills rectangles as one shape, so that neighbours leave no seam. */
    public void fill(List<Area> boxes, Ink ink) {
        drawing(() -> {
            fillWith(ink);
            for (Area box : boxes) {
                out.addRect(x(box.left()), y(box.bottom()), length(box.width()), length(box.height()));
            }
            out.fill();
        });
    }

    public void fill(Area box, Ink ink) {
        fill(List.of(box), ink);
    }

    /** Fills a rectangle with rounded corners; the radius in millimetres. */
    public void fillRounded(Area box, double radius, Ink ink) {
        drawing(() -> {
            fillWith(ink);
            addRounded(box, radius);
            out.fill();
        });
    }

    /** Draws the outline of a rectangle with rounded corners; radius and line width in millimetres. */
    public void frameRounded(Area box, double radius, double lineWidth, Ink ink) {
        drawing(() -> {
            strokeWith(lineWidth, ink);
            addRounded(box, radius);
            out.stroke();
        });
    }

    /** Draws a straight line; all lengths in millimetres. */
    public void line(double fromX, double fromY, double toX, double toY, double lineWidth, Ink ink) {
        drawing(() -> {
            strokeWith(lineWidth, ink);
            out.moveTo(x(fromX), y(fromY));
            out.lineTo(x(toX), y(toY));
            out.stroke();
        });
    }

    /** Sets one line of text whose letters stand on the baseline; both places in millimetres. */
    public void text(String text, Type type, Ink ink, double atX, double baseline, Align align) {
        drawing(() -> {
            Typeface typeface = typefaces.of(type.weight());
            String printable = typeface.printable(text);
            double start = align.start(atX, typeface.width(printable, type));
            fillWith(ink);
            out.beginText();
            out.setFont(typeface.font(), length(typeface.size(type.capitals())));
            out.setHorizontalScaling((float) (type.stretch() * 100));
            out.newLineAtOffset(x(start), y(baseline));
            out.showText(printable);
            out.endText();
        });
    }

    public void text(String text, Type type, Ink ink, double left, double baseline) {
        text(text, type, ink, left, baseline, Align.LEFT);
    }

    /** The width of a text in millimetres. */
    public double width(String text, Type type) {
        try {
            Typeface typeface = typefaces.of(type.weight());
            return typeface.width(typeface.printable(text), type);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The type with its capitals made smaller, though not below the smallest, until the text is as narrow as this. */
    public Type shrunk(String text, Type type, double width, double smallestCapitals) {
        double natural = width(text, type);
        if (natural <= width) {
            return type;
        }
        return type.sized(Math.max(smallestCapitals, type.capitals() * width / natural));
    }

    /** The type with its letters narrowed, though not below the narrowest, until the text is as narrow as this. */
    public Type narrowed(String text, Type type, double width, double narrowest) {
        double natural = width(text, type);
        if (natural <= width) {
            return type;
        }
        return type.stretched(Math.max(narrowest, type.stretch() * width / natural));
    }

    /** The text, or as much of its beginning as fits into the width, with three points after it. */
    public String cut(String text, Type type, double width) {
        if (width(text, type) <= width) {
            return text;
        }
        int[] letters = text.codePoints().toArray();
        for (int count = letters.length - 1; count > 0; count--) {
            String shorter = new String(letters, 0, count).stripTrailing() + ELLIPSIS;
            if (width(shorter, type) <= width) {
                return shorter;
            }
        }
        return ELLIPSIS;
    }

    /** The text in lines that fit into the width, broken at spaces; a word that is wider stands on its own line. */
    public List<String> wrapped(String text, Type type, double width) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String word : text.strip().split("\\s+")) {
            String longer = line.isEmpty() ? word : line + " " + word;
            if (line.isEmpty() || width(longer, type) <= width) {
                line = longer;
            } else {
                lines.add(line);
                line = word;
            }
        }
        lines.add(line);
        return lines;
    }

    private void addRounded(Area box, double radius) throws IOException {
        double handle = radius * (1 - ROUND);
        double left = box.left();
        double right = box.right();
        double top = box.top();
        double bottom = box.bottom();
        out.moveTo(x(left + radius), y(top));
        out.lineTo(x(right - radius), y(top));
        curve(right - handle, top, right, top + handle, right, top + radius);
        out.lineTo(x(right), y(bottom - radius));
        curve(right, bottom - handle, right - handle, bottom, right - radius, bottom);
        out.lineTo(x(left + radius), y(bottom));
        curve(left + handle, bottom, left, bottom - handle, left, bottom - radius);
        out.lineTo(x(left), y(top + radius));
        curve(left, top + handle, left + handle, top, left + radius, top);
        out.closePath();
    }

    private void curve(double x1, double y1, double x2, double y2, double toX, double toY) throws IOException {
        out.curveTo(x(x1), y(y1), x(x2), y(y2), x(toX), y(toY));
    }

    private void fillWith(Ink ink) throws IOException {
        if (ink.isGrey()) {
            out.setNonStrokingColor(ink.red() / 255f);
        } else {
            out.setNonStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
        }
    }

    private void strokeWith(double lineWidth, Ink ink) throws IOException {
        out.setLineWidth(length(lineWidth));
        if (ink.isGrey()) {
            out.setStrokingColor(ink.red() / 255f);
        } else {
            out.setStrokingColor(ink.red() / 255f, ink.green() / 255f, ink.blue() / 255f);
        }
    }

    private float x(double mm) {
        return length(right + mm);
    }

    private float y(double mm) {
        return length(size.height() - down - mm);
    }

    private static float length(double mm) {
        return (float) (mm * POINTS_PER_MM);
    }

    private static void drawing(Strokes strokes) {
        try {
            strokes.draw();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The weights of the font that the document has so far. */
    interface Typefaces {

        Typeface of(Weight weight) throws IOException;
    }

    private interface Strokes {

        void draw() throws IOException;
    }
}
