package org.cagewall.kiosk.kit;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.JLabel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** A few words in a pill, whose shape says how pressing they are before its colour does. Used on the event thread. */
public final class Tag extends JLabel implements Legible {

    private static final long serialVersionUID = 1L;

    private final TagKind kind;

    public Tag(TagKind kind, String text) {
        this.kind = kind;
        putClientProperty("html.disable", Boolean.TRUE);
        setText(text);
    }

    @Override
    public void revalidate() {
        Pane.forgetFrom(this);
        super.revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        int text = (int) Math.ceil(Flow.length(getText(), TextStyle.TAG.font()));
        return new Dimension(text + Sizes.px(28) + sign(kind), Sizes.px(36));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(60), Sizes.px(36));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        paint(brush, kind, getText(), new Brush.Box(0, 0, getWidth(), getHeight()));
        brush.dispose();
    }

    @Override
    public boolean isWhole() {
        return flow(kind, getText(), getWidth()).whole();
    }

    public static void paint(Graphics2D brush, TagKind kind, String text, Brush.Box box) {
        float round = box.height() / 2;
        switch (kind) {
            case DUE -> {
                Brush.fill(brush, Tone.TILE.color(), box, round);
                Brush.outline(brush, Tone.INK.color(), Sizes.px(2f), box, round);
                brush.setColor(Tone.INK.color());
            }
            case LATE -> {
                Brush.fill(brush, Tone.SOLID.color(), box, round);
                brush.setColor(Tone.SOLID_INK.color());
            }
            case DIFFERENT -> {
                Brush.fill(brush, Tone.ATTENTION.color(), box, round);
                Brush.outline(brush, Tone.ATTENTION_INK.color(), Sizes.px(2f), box, round);
                brush.setColor(Tone.ATTENTION_INK.color());
            }
            case PLAIN -> {
                Brush.outline(brush, Tone.LINE.color(), Sizes.px(1.5f), box, round);
                brush.setColor(Tone.INK.color());
            }
        }
        Flow flow = flow(kind, text, (int) box.width());
        float left = sign(kind);
        float start = box.x() + (box.width() - left - flow.longest()) / 2;
        if (left > 0) {
            float height = Sizes.px(20f);
            Signs.warning(
                    brush,
                    Tone.ATTENTION_INK.color(),
                    new Brush.Box(start, box.y() + (box.height() - height) / 2 - Sizes.px(1f), Sizes.px(22f), height));
        }
        flow.paint(brush, start + left, box.y() + (box.height() - flow.height()) / 2);
    }

    public static boolean holds(TagKind kind, String text, int width) {
        return flow(kind, text, width).whole();
    }

    private static Flow flow(TagKind kind, String text, int width) {
        return Flow.fitting(
                text, List.of(TextStyle.TAG.font(), TextStyle.MARK.font()), width - Sizes.px(16) - sign(kind), 1);
    }

    private static int sign(TagKind kind) {
        return kind == TagKind.DIFFERENT ? Sizes.px(30) : 0;
    }
}
