package org.cagewall.kiosk.kit.strip;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JLabel;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** What a mark of a strip means. Used on the event thread. */
public final class MarkLabel extends JLabel {

    private static final long serialVersionUID = 1L;

    private final transient DayMark mark;

    public MarkLabel(DayMark mark, String text) {
        this.mark = mark;
        putClientProperty("html.disable", Boolean.TRUE);
        setText(text);
    }

    @Override
    public Dimension getPreferredSize() {
        int text = (int) Math.ceil(Flow.length(getText(), TextStyle.SECOND.font()));
        return new Dimension(Sizes.px(34) + text + Sizes.px(4), Sizes.px(38));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        DayMarks.paint(brush, mark, new Brush.Box(0, 0, Sizes.px(26), getHeight()));
        brush.setColor(Tone.INK.color());
        Flow words = Flow.of(getText(), TextStyle.SECOND.font(), getWidth() - Sizes.px(34), 1);
        words.paint(brush, Sizes.px(34), (getHeight() - words.height()) / 2f);
        brush.dispose();
    }
}
