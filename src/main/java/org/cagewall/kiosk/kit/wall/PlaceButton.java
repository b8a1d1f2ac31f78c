package org.cagewall.kiosk.kit.wall;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.RoundRectangle2D;
import java.util.List;
import javax.swing.JButton;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.FingerUI;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** One place of a small wall: a cage, or a free place with a dashed line. Used on the event thread. */
final class PlaceButton extends JButton implements Legible {

    private static final long serialVersionUID = 1L;

    private final transient WallPlan.Spot spot;

    PlaceButton(String name, WallPlan.Spot spot, Runnable onPress) {
        this.spot = spot;
        setName(name);
        addActionListener(event -> onPress.run());
        getAccessibleContext().setAccessibleName(spot.said());
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : new Dimension(Sizes.px(84), Sizes.px(76));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.target(), Sizes.px(64));
    }

    @Override
    public boolean isWhole() {
        Flow title = title();
        return title.whole() && line().whole() && title.height() + line().height() <= getHeight();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        boolean pressed = getModel().isPressed() && getModel().isArmed();
        boolean cage = spot.look() == WallPlan.Look.CAGE;
        Tone ground = isSelected() ? Tone.LIKELY : cage ? Tone.TILE : Tone.GROUND;
        Brush.fill(brush, (pressed ? Tone.TILE_PRESSED : ground).color(), box, Sizes.radius());
        if (isSelected()) {
            Brush.outline(brush, Tone.LIKELY_EDGE.color(), Sizes.px(4f), box, Sizes.radius());
        } else if (cage) {
            Brush.outline(brush, (pressed ? Tone.INK : Tone.LINE).color(), Sizes.px(1.5f), box, Sizes.radius());
        } else {
            paintDashes(brush);
        }
        Flow title = title();
        Flow line = line();
        float top = (getHeight() - title.height() - line.height()) / 2f;
        brush.setColor((cage || isSelected() ? Tone.INK : Tone.SOFT).color());
        title.paintCentred(brush, 0, top, getWidth());
        brush.setColor((isSelected() ? Tone.INK : Tone.SOFT).color());
        line.paintCentred(brush, 0, top + title.height(), getWidth());
        FocusRing.paint(brush, this, Tone.INK.color(), box, Sizes.radius());
        brush.dispose();
    }

    private void paintDashes(Graphics2D brush) {
        float width = Sizes.px(1.5f);
        float dash = Sizes.px(6f);
        brush.setColor(Tone.SOFT.color());
        brush.setStroke(
                new BasicStroke(width, BasicStroke.CAP_BUTT, BasicStroke.JOIN_ROUND, 1f, new float[] {dash, dash}, 0));
        brush.draw(new RoundRectangle2D.Float(
                width, width, getWidth() - 2 * width, getHeight() - 2 * width, 2 * Sizes.radius(), 2 * Sizes.radius()));
    }

    private Flow title() {
        Font large = TextStyle.LEAD.font();
        int room = getHeight() - line().height() - Sizes.px(8);
        for (TextStyle type : List.of(TextStyle.LEAD, TextStyle.BUTTON, TextStyle.TAG, TextStyle.MARK)) {
            Font font = type.font();
            Flow flow = Flow.of(spot.title(), font, inner(), Math.max(1, room / Flow.pitch(font)));
            if (flow.whole()) {
                return flow;
            }
            large = font;
        }
        return Flow.of(spot.title(), large, inner(), Math.max(1, room / Flow.pitch(large)));
    }

    private Flow line() {
        return spot.line().isEmpty()
                ? new Flow(List.of(), TextStyle.MARK.font(), inner(), true)
                : Flow.fitting(spot.line(), List.of(TextStyle.SECOND.font(), TextStyle.MARK.font()), inner(), 1);
    }

    private int inner() {
        return Math.max(1, getWidth() - 2 * Sizes.px(6));
    }
}
