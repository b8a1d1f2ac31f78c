package org.cagewall.kiosk.kit;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JComponent;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;

/** The triangle beside words that tell of something different; the words stand without it. Used on the event thread. */
public final class WarningSign extends JComponent {

    private static final long serialVersionUID = 1L;

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Sizes.px(38), Sizes.px(34));
    }

    @Override
    public Dimension getMinimumSize() {
        return getPreferredSize();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Dimension size = getPreferredSize();
        Signs.warning(
                brush,
                Tone.ATTENTION_INK.color(),
                new Brush.Box(0, (getHeight() - size.height) / 2f, size.width, size.height));
        brush.dispose();
    }
}
