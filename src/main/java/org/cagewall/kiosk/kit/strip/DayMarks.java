package org.cagewall.kiosk.kit.strip;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.Signs;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;

/** Paints the cells of strips of days, and says where they stand. Used on the event thread. */
final class DayMarks {

    private static final int NAME = 98;
    private static final int WIDEST = 40;
    private static final float SIZE = 16;

    private DayMarks() {}

    /** Where the first cell begins. */
    static int left() {
        return Sizes.px(NAME);
    }

    /** How wide each cell is in a strip of that width. */
    static float pitch(int width, int days) {
        return Math.min(Sizes.px((float) WIDEST), (width - left() - Sizes.px(8f)) / Math.max(1, days));
    }

    /** The mark in the middle of its cell. */
    static void paint(Graphics2D brush, DayMark mark, Brush.Box cell) {
        boolean different = mark.ground() == DayMark.Ground.DIFFERENT;
        float size = Sizes.px(different ? SIZE - 3 : SIZE);
        float x = cell.x() + (cell.width() - size) / 2;
        float y = cell.y() + (cell.height() - size) / 2;
        if (different) {
            Brush.Box ground = cell.inset(Sizes.px(1f));
            Brush.fill(brush, Tone.ATTENTION.color(), ground, Sizes.px(5f));
            Brush.outline(brush, Tone.ATTENTION_INK.color(), Sizes.px(2f), ground, Sizes.px(5f));
            float sign = Sizes.px(15f);
            Signs.warning(
                    brush,
                    Tone.ATTENTION_INK.color(),
                    new Brush.Box(
                            cell.x() + (cell.width() - sign * 1.1f) / 2,
                            cell.y() + cell.height() / 2 - sign - Sizes.px(1f),
                            sign * 1.1f,
                            sign));
            y = cell.y() + cell.height() / 2 + Sizes.px(3f);
        }
        paint(brush, mark.shape(), new Brush.Box(x, y, size, size));
    }

    private static void paint(Graphics2D brush, DayMark.Shape shape, Brush.Box box) {
        float line = Sizes.px(3f);
        brush.setColor(Tone.INK.color());
        brush.setStroke(new BasicStroke(line, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        float right = box.x() + box.width();
        float bottom = box.y() + box.height();
        float middle = box.y() + box.height() / 2;
        switch (shape) {
            case SQUARE -> Brush.fill(brush, Tone.INK.color(), box, Sizes.px(2f));
            case RING -> {
                Brush.Box inner = box.inset(line / 2);
                brush.draw(new Ellipse2D.Float(inner.x(), inner.y(), inner.width(), inner.height()));
            }
            case CROSS -> {
                brush.setStroke(new BasicStroke(Sizes.px(4f), BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
                brush.draw(new Line2D.Float(box.x(), box.y(), right, bottom));
                brush.draw(new Line2D.Float(box.x(), bottom, right, box.y()));
            }
            case LINE -> {
                brush.setColor(Tone.SOFT.color());
                brush.draw(new Line2D.Float(box.x() + line / 2, middle, right - line / 2, middle));
            }
            case DOTS -> {
                float apart = Sizes.px(6f);
                for (float centre : new float[] {-apart, 0, apart}) {
                    dot(brush, box.x() + box.width() / 2 + centre, middle, Sizes.px(4f));
                }
            }
            case DOT -> dot(brush, box.x() + box.width() / 2, middle, Sizes.px(5f));
        }
    }

    private static void dot(Graphics2D brush, float centre, float middle, float size) {
        brush.setColor(Tone.SOFT.color());
        brush.fill(new Ellipse2D.Float(centre - size / 2, middle - size / 2, size, size));
    }
}
