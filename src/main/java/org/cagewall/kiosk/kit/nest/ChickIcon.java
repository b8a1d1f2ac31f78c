package org.cagewall.kiosk.kit.nest;

import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Path2D;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.theme.Tone;

/** Paints a chick in its half shell, one in the hollow of the box, and a young bird on a perch. Used on the event thread. */
final class ChickIcon {

    private ChickIcon() {}

    static void paintInShell(Graphics2D brush, Brush.Box box, float line) {
        Pen pen = new Pen(brush, box, line);
        pen.round(0.50f, 0.33f, 0.28f);
        pen.face(0.50f, 0.33f);
        Path2D.Float shell = new Path2D.Float();
        float[] ups = {0.56f, 0.66f, 0.54f, 0.66f, 0.54f, 0.66f, 0.56f};
        for (int i = 0; i < ups.length; i++) {
            pen.to(shell, 0.04f + 0.92f * i / (ups.length - 1), ups[i]);
        }
        pen.curve(shell, 0.96f, 0.84f, 0.78f, 0.98f, 0.50f, 0.98f);
        pen.curve(shell, 0.22f, 0.98f, 0.04f, 0.84f, 0.04f, 0.56f);
        shell.closePath();
        pen.filled(shell);
    }

    /** A sitting body with a stub of a wing and of a tail, low in a shallow hollow. */
    static void paintInHollow(Graphics2D brush, Brush.Box box, float line) {
        Pen pen = new Pen(brush, box, line);
        Path2D.Float body = new Path2D.Float();
        pen.to(body, 0.66f, 0.38f);
        pen.curve(body, 0.84f, 0.56f, 0.86f, 0.86f, 0.62f, 0.90f);
        pen.to(body, 0.32f, 0.90f);
        pen.curve(body, 0.22f, 0.88f, 0.16f, 0.84f, 0.12f, 0.76f);
        pen.curve(body, 0.20f, 0.62f, 0.30f, 0.46f, 0.42f, 0.36f);
        body.closePath();
        pen.filled(body);
        Path2D.Float wing = new Path2D.Float();
        pen.to(wing, 0.50f, 0.54f);
        pen.curve(wing, 0.58f, 0.66f, 0.54f, 0.78f, 0.38f, 0.78f);
        pen.drawn(wing);
        pen.round(0.54f, 0.26f, 0.21f);
        pen.face(0.56f, 0.26f);
        Path2D.Float hollow = new Path2D.Float();
        pen.to(hollow, 0.02f, 0.78f);
        pen.curve(hollow, 0.14f, 1.00f, 0.86f, 1.00f, 0.98f, 0.78f);
        pen.drawn(hollow);
    }

    static void paintOnPerch(Graphics2D brush, Brush.Box box, float line) {
        Pen pen = new Pen(brush, box, line);
        Path2D.Float body = new Path2D.Float();
        pen.to(body, 0.66f, 0.40f);
        pen.curve(body, 0.86f, 0.62f, 0.68f, 0.84f, 0.46f, 0.80f);
        pen.to(body, 0.10f, 0.98f);
        pen.curve(body, 0.16f, 0.70f, 0.24f, 0.44f, 0.42f, 0.36f);
        body.closePath();
        pen.filled(body);
        pen.round(0.56f, 0.24f, 0.22f);
        pen.face(0.58f, 0.24f);
        Path2D.Float perch = new Path2D.Float();
        pen.to(perch, 0.30f, 0.90f);
        pen.to(perch, 0.98f, 0.90f);
        pen.drawn(perch);
    }

    /** Draws in parts of the box's width and height. */
    private record Pen(Graphics2D brush, Brush.Box box, float line) {

        float x(float part) {
            return box.x() + box.width() * part;
        }

        float y(float part) {
            return box.y() + box.height() * part;
        }

        void to(Path2D.Float path, float x, float y) {
            if (path.getCurrentPoint() == null) {
                path.moveTo(x(x), y(y));
            } else {
                path.lineTo(x(x), y(y));
            }
        }

        void curve(Path2D.Float path, float x1, float y1, float x2, float y2, float x3, float y3) {
            path.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
        }

        void round(float x, float y, float radius) {
            float r = box.width() * radius;
            filled(new Ellipse2D.Float(x(x) - r, y(y) - r, 2 * r, 2 * r));
        }

        /** An eye, and a beak to the right. */
        void face(float x, float y) {
            float eye = line * 1.3f;
            brush.setColor(Tone.INK.color());
            brush.fill(new Ellipse2D.Float(x(x + 0.08f) - eye / 2, y(y - 0.04f) - eye / 2, eye, eye));
            Path2D.Float beak = new Path2D.Float();
            to(beak, x + 0.20f, y - 0.02f);
            to(beak, x + 0.34f, y + 0.05f);
            to(beak, x + 0.18f, y + 0.10f);
            beak.closePath();
            brush.fill(beak);
        }

        void filled(java.awt.Shape shape) {
            brush.setColor(Tone.EGG_SHELL.color());
            brush.fill(shape);
            drawn(shape);
        }

        void drawn(java.awt.Shape shape) {
            brush.setColor(Tone.INK.color());
            brush.setStroke(EggIcon.solid(line));
            brush.draw(shape);
        }
    }
}
