package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.RoundRectangle2D;

/** The few strokes that all parts are painted with, so that lines and corners are alike. Used on the event thread. */
public final class Brush {

    private Brush() {}

    /** A copy of this graphics with smooth edges; whoever asks for it disposes of it. */
    public static Graphics2D on(Graphics graphics) {
        Graphics2D brush = (Graphics2D) graphics.create();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
        brush.setRenderingHint(RenderingHints.KEY_TEXT_ANTIALIASING, RenderingHints.VALUE_TEXT_ANTIALIAS_ON);
        brush.setRenderingHint(RenderingHints.KEY_FRACTIONALMETRICS, RenderingHints.VALUE_FRACTIONALMETRICS_ON);
        return brush;
    }

    public static void fill(Graphics2D brush, Color color, Box box, float radius) {
        brush.setColor(color);
        brush.fill(box.rounded(radius));
    }

    /** A line of this width along the inside of the box. */
    public static void outline(Graphics2D brush, Color color, float width, Box box, float radius) {
        brush.setColor(color);
        brush.setStroke(new BasicStroke(width));
        brush.draw(box.inset(width / 2).rounded(Math.max(0, radius - width / 2)));
    }

    /** Where something is painted, in pixels of its part. */
    public record Box(float x, float y, float width, float height) {

        public Box inset(float by) {
            return new Box(x + by, y + by, width - 2 * by, height - 2 * by);
        }

        public RoundRectangle2D.Float rounded(float radius) {
            return new RoundRectangle2D.Float(x, y, width, height, 2 * radius, 2 * radius);
        }
    }
}
