package org.cagewall.kiosk.kit.strip;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import javax.swing.JComponent;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** The days above the rows of a strip, as many as there is room for. Used on the event thread. */
public final class StripHead extends JComponent {

    private static final long serialVersionUID = 1L;

    private final transient List<String> days;

    public StripHead(List<String> days) {
        this.days = List.copyOf(days);
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Sizes.px(360), Sizes.px(24));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        float pitch = DayMarks.pitch(getWidth(), days.size());
        double widest = days.stream()
                .mapToDouble(day -> Flow.length(day, TextStyle.MARK.font()))
                .max()
                .orElse(0);
        int each = (int) Math.ceil((widest + Sizes.px(2f)) / pitch);
        brush.setColor(Tone.SOFT.color());
        for (int i = 0; i < days.size(); i += Math.max(1, each)) {
            Flow day = Flow.of(days.get(i), TextStyle.MARK.font(), Sizes.px(80), 1);
            day.paintCentred(brush, DayMarks.left() + i * pitch, getHeight() - day.height(), Math.round(pitch));
        }
        brush.dispose();
    }
}
