package org.cagewall.kiosk.kit.strip;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import javax.accessibility.AccessibleContext;
import javax.swing.JComponent;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/**
 * A bar for each day from the low number to the high one, with a dot for the mean; days that are marked stand on a darker
 * ground. Only looked at. Used on the event thread.
 */
public final class RangeChart extends JComponent {

    private static final long serialVersionUID = 1L;

    private static final float BAR = 0.56f;

    /**
     * One day.
     *
     * @param word what stands below it; mostly empty
     * @param marked whether it stands on a darker ground
     */
    public record Bar(String word, double mean, int low, int high, boolean marked) {}

    private final transient List<Bar> bars;

    /** With all that it shows said in words. */
    public RangeChart(String name, String said, List<Bar> bars) {
        this.bars = List.copyOf(bars);
        setName(name);
        getAccessibleContext().setAccessibleName(said);
        setPreferredSize(new Dimension(Sizes.px(420), Sizes.px(180)));
        setMinimumSize(new Dimension(Sizes.px(200), Sizes.px(120)));
    }

    @Override
    public AccessibleContext getAccessibleContext() {
        if (accessibleContext == null) {
            accessibleContext = new AccessibleJComponent() {
                private static final long serialVersionUID = 1L;
            };
        }
        return accessibleContext;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        float left = Sizes.px(40);
        float foot = Sizes.px(30);
        float top = Sizes.px(12);
        float height = getHeight() - foot - top;
        float step = (getWidth() - left) / Math.max(1, bars.size());
        int most = Math.max(1, bars.stream().mapToInt(Bar::high).max().orElse(1));
        for (int i = 0; i < bars.size(); i++) {
            if (bars.get(i).marked()) {
                brush.setColor(Tone.GROUND.color());
                brush.fill(new Rectangle2D.Float(left + i * step, top, step + 1, height));
            }
        }
        brush.setColor(Tone.LINE.color());
        brush.fill(new Rectangle2D.Float(left, top + height, getWidth() - left, Sizes.px(1.5f)));
        brush.setColor(Tone.SOFT.color());
        brush.setFont(TextStyle.MARK.font());
        write(brush, Integer.toString(most), 0, top + brush.getFontMetrics().getAscent());
        write(brush, "0", 0, top + height);
        for (int i = 0; i < bars.size(); i++) {
            bar(brush, bars.get(i), new Brush.Box(left + i * step, top, step, height), most);
        }
        brush.dispose();
    }

    private void bar(Graphics2D brush, Bar bar, Brush.Box box, int most) {
        float width = box.width() * BAR;
        float x = box.x() + (box.width() - width) / 2;
        float high = y(bar.high(), box, most);
        float low = y(bar.low(), box, most);
        if (bar.high() > 0) {
            Brush.fill(
                    brush,
                    Tone.LIKELY_EDGE.color(),
                    new Brush.Box(x, high, width, Math.max(low - high, Sizes.px(3))),
                    width / 4);
        }
        float dot = Math.min(width * 0.8f, Sizes.px(9));
        brush.setColor((bar.high() > 0 ? Tone.TILE : Tone.INK).color());
        brush.fill(new Ellipse2D.Double(x + (width - dot) / 2, y(bar.mean(), box, most) - dot / 2, dot, dot));
        brush.setColor(Tone.SOFT.color());
        write(brush, bar.word(), box.x(), getHeight() - Sizes.px(6));
    }

    private static float y(double value, Brush.Box box, int most) {
        return (float) (box.y() + box.height() * (1 - value / most));
    }

    private void write(Graphics2D brush, String text, float x, float y) {
        float most = getWidth() - brush.getFontMetrics().stringWidth(text);
        brush.drawString(text, Math.min(x, most), y);
    }
}
