package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;

/** The few signs that are painted rather than written. Used on the event thread. */
public final class Signs {

    private Signs() {}

    /** The triangle that says: this was reported different. */
    public static void warning(Graphics2D brush, Color ink, Brush.Box box) {
        float line = box.height() / 13f;
        float middle = box.x() + box.width() / 2;
        float bottom = box.y() + box.height();
        Path2D.Float triangle = new Path2D.Float();
        triangle.moveTo(middle, box.y() + line);
        triangle.lineTo(box.x() + box.width() - line, bottom - line);
        triangle.lineTo(box.x() + line, bottom - line);
        triangle.closePath();
        brush.setColor(ink);
        brush.setStroke(new BasicStroke(line, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.draw(triangle);
        brush.setStroke(new BasicStroke(line * 1.2f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.draw(new Line2D.Float(middle, box.y() + box.height() * 0.42f, middle, box.y() + box.height() * 0.64f));
        float dot = line * 1.7f;
        brush.fill(new Ellipse2D.Float(middle - dot / 2, box.y() + box.height() * 0.75f, dot, dot));
    }

    /** An arrow head that points along (dx, dy), which are -1, 0 or 1. */
    static void arrow(Graphics2D brush, Color ink, Brush.Box box, int dx, int dy) {
        float x = box.x() + box.width() / 2;
        float y = box.y() + box.height() / 2;
        float size = Math.min(box.width(), box.height()) / 2;
        Path2D.Float head = new Path2D.Float();
        head.moveTo(x - dx * size / 2 - dy * size, y - dy * size / 2 - dx * size);
        head.lineTo(x + dx * size / 2, y + dy * size / 2);
        head.lineTo(x - dx * size / 2 + dy * size, y - dy * size / 2 + dx * size);
        brush.setColor(ink);
        brush.setStroke(new BasicStroke(size / 3, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.draw(head);
    }
}
