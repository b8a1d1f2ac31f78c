package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import javax.swing.JToggleButton;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Type;

/** A choice that is on or off, told by a tick and a filled ground. Used on the event thread. */
final class TouchToggle extends JToggleButton implements Legible {

    private static final long serialVersionUID = 1L;

    private final Ends ends;

    /** How its ends are shaped, and whether a tick tells that it is chosen. */
    enum Ends {
        CHIP,
        LARGE_CHIP,
        SEGMENT;

        private boolean isChip() {
            return this != SEGMENT;
        }

        private Type type() {
            return this == LARGE_CHIP ? Type.ACTION : Type.BUTTON;
        }

        private int tall() {
            return switch (this) {
                case CHIP -> Measure.px(56);
                case LARGE_CHIP -> Measure.px(72);
                case SEGMENT -> Measure.target();
            };
        }
    }

    TouchToggle(String name, String text, Ends ends) {
        super(text);
        setName(name);
        this.ends = ends;
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public void revalidate() {
        Pane.forgetFrom(this);
        super.revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        int text = (int) Math.ceil(Flow.length(getText(), ends.type().font()));
        int tick = ends.isChip() ? tick() : 0;
        return new Dimension(
                Math.max(
                        Measure.target(),
                        text + tick + 2 * Measure.px(!ends.isChip() ? 15 : ends == Ends.CHIP ? 20 : 32)),
                ends.tall());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Measure.target(), Measure.target());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        ButtonLook look = ButtonLook.of(ends.isChip() ? ButtonKind.PLAIN : ButtonKind.QUIET, getModel());
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        float radius = ends.isChip() ? Measure.radius() : getHeight() / 2f;
        if (ends.isChip() || isSelected() || getModel().isPressed()) {
            Brush.fill(brush, look.ground().color(), box, radius);
            Brush.outline(brush, look.line().color(), Measure.px(look.lineWidth()), box, radius);
        }
        brush.setColor(look.ink().color());
        Flow flow = flow();
        float left = ends.isChip() && isSelected() ? tick() : 0;
        flow.paintCentred(brush, left, (getHeight() - flow.height()) / 2f, getWidth() - left);
        if (left > 0) {
            paintTick(brush, (getWidth() - left - flow.longest()) / 2f + Measure.px(2));
        }
        FocusRing.paint(brush, this, look.ink().color(), box, radius);
        brush.dispose();
    }

    @Override
    public boolean isWhole() {
        return flow().whole() && flow().height() <= getHeight();
    }

    private Flow flow() {
        int room = getWidth() - (ends.isChip() ? tick() + Measure.px(12) : Measure.px(12));
        return Flow.fitting(
                getText(),
                java.util.List.of(ends.type().font(), Type.BUTTON.font(), Type.TAG.font()),
                room,
                getHeight() >= Measure.px(52) ? 2 : 1);
    }

    private int tick() {
        return Measure.px(26);
    }

    private void paintTick(Graphics2D brush, float x) {
        float unit = Measure.px(1f);
        float y = getHeight() / 2f;
        Path2D.Float tick = new Path2D.Float();
        tick.moveTo(x, y);
        tick.lineTo(x + 6 * unit, y + 6 * unit);
        tick.lineTo(x + 17 * unit, y - 6 * unit);
        brush.setStroke(new BasicStroke(3 * unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.draw(tick);
    }
}
