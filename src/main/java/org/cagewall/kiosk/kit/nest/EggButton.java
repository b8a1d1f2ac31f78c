package org.cagewall.kiosk.kit.nest;

import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
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

/** An egg or chick in its row: its picture, its mark, and one or two short lines below. It can be touched. Used on the event thread. */
public final class EggButton extends JButton implements Legible {

    private static final long serialVersionUID = 1L;

    private final EggLook look;
    private final String mark;
    private final String line;
    private String second = "";

    /** An egg; {@code said} is its state in words, for those who cannot see the picture. */
    public EggButton(String name, EggLook look, String mark, String line, String said, Runnable onPress) {
        this.look = look;
        this.mark = mark;
        this.line = line;
        setName(name);
        getAccessibleContext().setAccessibleName(said);
        addActionListener(event -> onPress.run());
    }

    /** Another short line below. */
    public EggButton second(String text) {
        second = text;
        revalidate();
        return this;
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Sizes.px(92), tall());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(64), tall());
    }

    private int tall() {
        return Sizes.px(second.isEmpty() ? 154 : 184);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        if (getModel().isPressed() && getModel().isArmed()) {
            Brush.fill(brush, Tone.TILE_PRESSED.color(), box, Sizes.radius());
        }
        if (isSelected()) {
            Brush.fill(brush, Tone.LIKELY.color(), box, Sizes.radius());
            Brush.outline(brush, Tone.LIKELY_EDGE.color(), Sizes.px(2.5f), box, Sizes.radius());
        }
        float width = Sizes.px(54f);
        EggIcon.paint(brush, look, new Brush.Box((getWidth() - width) / 2, Sizes.px(8f), width, Sizes.px(67f)));
        brush.setColor(Tone.INK.color());
        Flow.of(mark, TextStyle.LEAD.font(), getWidth(), 1).paintCentred(brush, 0, Sizes.px(82f), getWidth());
        brush.setColor((isSelected() || getModel().isPressed() ? Tone.INK : Tone.SOFT).color());
        flow(line).paintCentred(brush, 0, Sizes.px(118f), getWidth());
        if (!second.isEmpty()) {
            secondFlow().paintCentred(brush, 0, Sizes.px(144f), getWidth());
        }
        FocusRing.paint(brush, this, Tone.INK.color(), box, Sizes.radius());
        brush.dispose();
    }

    @Override
    public boolean isWhole() {
        return flow(line).whole() && (second.isEmpty() || secondFlow().whole());
    }

    /** On one line where that is wide enough, else on two small ones. */
    private Flow secondFlow() {
        Flow one = flow(second);
        return one.whole() ? one : Flow.of(second, TextStyle.MARK.font(), getWidth() - Sizes.px(4), 2);
    }

    private Flow flow(String text) {
        return Flow.fitting(text, List.of(TextStyle.SECOND.font(), TextStyle.MARK.font()), getWidth() - Sizes.px(4), 1);
    }
}
