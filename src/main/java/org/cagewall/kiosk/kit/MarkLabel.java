package org.cagewall.kiosk.kit;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JLabel;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

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
        int text = (int) Math.ceil(Flow.length(getText(), Type.SECOND.font()));
        return new Dimension(Measure.px(34) + text + Measure.px(4), Measure.px(38));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        DayMarks.paint(brush, mark, new Brush.Box(0, 0, Measure.px(26), getHeight()));
        brush.setColor(Tone.INK.color());
        Flow words = Flow.of(getText(), Type.SECOND.font(), getWidth() - Measure.px(34), 1);
        words.paint(brush, Measure.px(34), (getHeight() - words.height()) / 2f);
        brush.dispose();
    }
}
