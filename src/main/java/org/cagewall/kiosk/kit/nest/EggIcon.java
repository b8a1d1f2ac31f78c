package org.cagewall.kiosk.kit.nest;

import java.awt.BasicStroke;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/**
 * Paints an egg so that its state shows by line and shape: dashed when not candled, a stroke when clear, veins when
 * full, a zigzag when pipped, grey for a dummy, dots and an arrow when moved away; and the chick it becomes. Used on the event thread.
 */
final class EggIcon {

    private EggIcon() {}

    static void paint(Graphics2D brush, EggLook look, Brush.Box box) {
        float line = box.width() / 18f;
        if (look == EggLook.HATCHLING) {
            ChickIcon.paintInShell(brush, box, line);
            return;
        }
        if (look == EggLook.CHICK) {
            ChickIcon.paintInHollow(brush, box, line);
            return;
        }
        if (look == EggLook.FLEDGED) {
            ChickIcon.paintOnPerch(brush, box, line);
            return;
        }
        Path2D.Float egg = outline(box.inset(line / 2));
        ground(look).ifPresent(tone -> {
            brush.setColor(tone.color());
            brush.fill(egg);
        });
        brush.setColor(Tone.INK.color());
        brush.setStroke(
                switch (look) {
                    case NOT_CANDLED, UNSURE -> dashed(line);
                    case MOVED_AWAY -> dotted(line);
                    default -> solid(line);
                });
        brush.draw(egg);
        paintInside(brush, look, box, line);
    }

    private static java.util.Optional<Tone> ground(EggLook look) {
        return switch (look) {
            case FULL, PIPPED -> java.util.Optional.of(Tone.EGG_SHELL);
            case DUMMY -> java.util.Optional.of(Tone.EGG_DUMMY);
            default -> java.util.Optional.empty();
        };
    }

    private static void paintInside(Graphics2D brush, EggLook look, Brush.Box box, float line) {
        brush.setStroke(solid(line));
        switch (look) {
            case CLEAR -> brush.draw(at(box, 0.24f, 0.80f, 0.74f, 0.19f));
            case ADDLED -> {
                brush.draw(at(box, 0.26f, 0.76f, 0.74f, 0.28f));
                brush.draw(at(box, 0.26f, 0.28f, 0.74f, 0.76f));
            }
            case FULL -> paintVeins(brush, box, line);
            case PIPPED -> paintCrack(brush, box);
            case UNSURE -> {
                Flow mark = Flow.of("?", TextStyle.LEAD.font(), (int) box.width(), 1);
                mark.paintCentred(brush, box.x(), box.y() + (box.height() - mark.height()) / 2, box.width());
            }
            case MOVED_AWAY -> {
                brush.draw(at(box, 0.26f, 0.58f, 0.72f, 0.58f));
                brush.draw(at(box, 0.56f, 0.46f, 0.72f, 0.58f));
                brush.draw(at(box, 0.56f, 0.70f, 0.72f, 0.58f));
            }
            case NOT_CANDLED, DUMMY, HATCHLING, CHICK, FLEDGED -> {
                // Nothing to be seen inside.
            }
        }
    }

    private static void paintVeins(Graphics2D brush, Brush.Box box, float line) {
        Path2D.Float veins = new Path2D.Float();
        float x = box.x() + box.width() / 2;
        float y = box.y() + box.height() * 0.72f;
        float w = box.width();
        float h = box.height();
        veins.moveTo(x, y);
        veins.lineTo(x, y - h * 0.30f);
        veins.moveTo(x, y);
        veins.curveTo(x - w * 0.13f, y - h * 0.08f, x - w * 0.17f, y - h * 0.22f, x - w * 0.09f, y - h * 0.36f);
        veins.moveTo(x, y);
        veins.curveTo(x + w * 0.13f, y - h * 0.08f, x + w * 0.17f, y - h * 0.22f, x + w * 0.09f, y - h * 0.36f);
        brush.setColor(Tone.EGG_VEIN.color());
        brush.setStroke(solid(line * 0.9f));
        brush.draw(veins);
    }

    private static void paintCrack(Graphics2D brush, Brush.Box box) {
        Path2D.Float crack = new Path2D.Float();
        float[] ups = {0.46f, 0.37f, 0.50f, 0.37f, 0.50f, 0.37f, 0.46f};
        for (int i = 0; i < ups.length; i++) {
            float x = box.x() + box.width() * (0.07f + 0.86f * i / (ups.length - 1));
            float y = box.y() + box.height() * ups[i];
            if (i == 0) {
                crack.moveTo(x, y);
            } else {
                crack.lineTo(x, y);
            }
        }
        brush.draw(crack);
    }

    private static Line2D.Float at(Brush.Box box, float x1, float y1, float x2, float y2) {
        return new Line2D.Float(
                box.x() + box.width() * x1,
                box.y() + box.height() * y1,
                box.x() + box.width() * x2,
                box.y() + box.height() * y2);
    }

    private static Path2D.Float outline(Brush.Box box) {
        float w = box.width();
        float h = box.height();
        Path2D.Float egg = new Path2D.Float();
        egg.moveTo(box.x() + w / 2, box.y());
        egg.curveTo(box.x() + w * 0.78f, box.y(), box.x() + w, box.y() + h * 0.36f, box.x() + w, box.y() + h * 0.60f);
        egg.curveTo(box.x() + w, box.y() + h * 0.84f, box.x() + w * 0.78f, box.y() + h, box.x() + w / 2, box.y() + h);
        egg.curveTo(box.x() + w * 0.22f, box.y() + h, box.x(), box.y() + h * 0.84f, box.x(), box.y() + h * 0.60f);
        egg.curveTo(box.x(), box.y() + h * 0.36f, box.x() + w * 0.22f, box.y(), box.x() + w / 2, box.y());
        egg.closePath();
        return egg;
    }

    private static BasicStroke dotted(float width) {
        return new BasicStroke(
                width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND, 1, new float[] {0.1f, width * 2.4f}, 0);
    }

    static BasicStroke solid(float width) {
        return new BasicStroke(width, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND);
    }

    private static BasicStroke dashed(float width) {
        float dash = Sizes.px(5f);
        return new BasicStroke(
                width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1, new float[] {dash, dash * 0.8f}, 0);
    }
}
