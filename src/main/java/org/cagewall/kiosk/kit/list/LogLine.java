package org.cagewall.kiosk.kit.list;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JButton;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.FingerUI;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.kit.Tall;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** An entry of the log in one touchable line: when, what, and a line through it if it was struck out. Event thread. */
public final class LogLine extends JButton implements Legible, Tall {

    private static final long serialVersionUID = 1L;

    private final LogFace face;

    public LogLine(String name, LogFace face, Runnable onPress) {
        this.face = face;
        setName(name);
        putClientProperty("migLayout.dynamicAspectRatio", Boolean.TRUE);
        getAccessibleContext().setAccessibleName(face.inOneSentence());
        addActionListener(event -> onPress.run());
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public int heightFor(int width) {
        return Math.max(Sizes.target(), what(width).height() + Sizes.px(16));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Sizes.px(560);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(240), Sizes.target());
    }

    @Override
    public boolean isWhole() {
        return what(getWidth()).whole() && heightFor(getWidth()) <= getHeight();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        if (getModel().isPressed() && getModel().isArmed()) {
            Brush.fill(brush, Tone.TILE_PRESSED.color(), box, Sizes.radius());
        }
        Flow what = what(getWidth());
        float top = (getHeight() - what.height()) / 2f;
        brush.setColor(Tone.SOFT.color());
        Flow.of(face.when(), TextStyle.SECOND.font(), left() - Sizes.px(16), 1).paint(brush, Sizes.px(12f), top);
        brush.setColor((face.struck() ? Tone.SOFT : Tone.INK).color());
        what.paint(brush, left(), top);
        if (face.struck()) {
            what.strike(brush, left(), top);
        }
        FocusRing.paint(brush, this, Tone.INK.color(), box, Sizes.radius());
        brush.dispose();
    }

    private Flow what(int width) {
        return Flow.of(face.what(), TextStyle.SECOND.font(), Math.max(Sizes.px(120), width - left() - Sizes.px(12)), 0);
    }

    private static int left() {
        return Sizes.px(152);
    }
}
