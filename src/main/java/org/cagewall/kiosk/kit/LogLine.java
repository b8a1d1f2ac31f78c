package org.cagewall.kiosk.kit;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import javax.swing.JButton;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

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
        return Math.max(Measure.target(), what(width).height() + Measure.px(16));
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Measure.px(560);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Measure.px(240), Measure.target());
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
            Brush.fill(brush, Tone.TILE_PRESSED.color(), box, Measure.radius());
        }
        Flow what = what(getWidth());
        float top = (getHeight() - what.height()) / 2f;
        brush.setColor(Tone.SOFT.color());
        Flow.of(face.when(), Type.SECOND.font(), left() - Measure.px(16), 1).paint(brush, Measure.px(12f), top);
        brush.setColor((face.struck() ? Tone.SOFT : Tone.INK).color());
        what.paint(brush, left(), top);
        if (face.struck()) {
            what.strike(brush, left(), top);
        }
        FocusRing.paint(brush, this, Tone.INK.color(), box, Measure.radius());
        brush.dispose();
    }

    private Flow what(int width) {
        return Flow.of(face.what(), Type.SECOND.font(), Math.max(Measure.px(120), width - left() - Measure.px(12)), 0);
    }

    private static int left() {
        return Measure.px(152);
    }
}
