package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Path2D;
import javax.swing.JToggleButton;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;

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

        private TextStyle type() {
            return this == LARGE_CHIP ? TextStyle.ACTION : TextStyle.BUTTON;
        }

        private int tall() {
            return switch (this) {
                case CHIP -> Sizes.px(56);
                case LARGE_CHIP -> Sizes.px(72);
                case SEGMENT -> Sizes.target();
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
                Math.max(Sizes.target(), text + tick + 2 * Sizes.px(!ends.isChip() ? 15 : ends == Ends.CHIP ? 20 : 32)),
                ends.tall());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.target(), Sizes.target());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        ButtonLook look = ButtonLook.of(ends.isChip() ? ButtonKind.PLAIN : ButtonKind.QUIET, getModel());
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        float radius = ends.isChip() ? Sizes.radius() : getHeight() / 2f;
        if (ends.isChip() || isSelected() || getModel().isPressed()) {
            Brush.fill(brush, look.ground().color(), box, radius);
            Brush.outline(brush, look.line().color(), Sizes.px(look.lineWidth()), box, radius);
        }
        brush.setColor(look.ink().color());
        Flow flow = flow();
        float left = ends.isChip() && isSelected() ? tick() : 0;
        flow.paintCentred(brush, left, (getHeight() - flow.height()) / 2f, getWidth() - left);
        if (left > 0) {
            paintTick(brush, (getWidth() - left - flow.longest()) / 2f + Sizes.px(2));
        }
        FocusRing.paint(brush, this, look.ink().color(), box, radius);
        brush.dispose();
    }

    @Override
    public boolean isWhole() {
        return flow().whole() && flow().height() <= getHeight();
    }

    private Flow flow() {
        int room = getWidth() - (ends.isChip() ? tick() + Sizes.px(12) : Sizes.px(12));
        return Flow.fitting(
                getText(),
                java.util.List.of(ends.type().font(), TextStyle.BUTTON.font(), TextStyle.TAG.font()),
                room,
                getHeight() >= Sizes.px(52) ? 2 : 1);
    }

    private int tick() {
        return Sizes.px(26);
    }

    private void paintTick(Graphics2D brush, float x) {
        float unit = Sizes.px(1f);
        float y = getHeight() / 2f;
        Path2D.Float tick = new Path2D.Float();
        tick.moveTo(x, y);
        tick.lineTo(x + 6 * unit, y + 6 * unit);
        tick.lineTo(x + 17 * unit, y - 6 * unit);
        brush.setStroke(new BasicStroke(3 * unit, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
        brush.draw(tick);
    }
}
