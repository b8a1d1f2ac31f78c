package org.cagewall.kiosk.kit;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.LayoutManager;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.Tone;

/** A white panel with round corners and a fine line that holds what belongs together. Used on the event thread. */
public class Card extends Pane {

    private static final long serialVersionUID = 1L;

    private Edge edge = Edge.FINE;
    private Tone ground = Tone.TILE;

    private enum Edge {
        NONE(Tone.LINE, 0),
        FINE(Tone.LINE, 1.5f),
        STRONG(Tone.INK, 2.5f),
        LEADING(Tone.LIKELY_EDGE, 3f);

        private final Tone tone;
        private final float width;

        Edge(Tone tone, float width) {
            this.tone = tone;
            this.width = width;
        }
    }

    /** A card with the usual insets of 20 and rows below one another. */
    public Card() {
        this(new MigLayout("insets 16 20, wrap 1, fillx, gap 8"));
    }

    public Card(LayoutManager layout) {
        super(layout);
    }

    /** A strong line: this card is to be found first. */
    public final Card strong() {
        edge = Edge.STRONG;
        repaint();
        return this;
    }

    /** A line in the colour of the main action: it is this card's turn. */
    public final Card leading() {
        edge = Edge.LEADING;
        repaint();
        return this;
    }

    /** The usual fine line again. */
    public final Card plain() {
        edge = Edge.FINE;
        ground = Tone.TILE;
        repaint();
        return this;
    }

    /** The ground of what needs attention, without a line. */
    public final Card attention() {
        edge = Edge.NONE;
        ground = Tone.ATTENTION;
        repaint();
        return this;
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        Brush.fill(brush, ground.color(), box, Sizes.radius());
        if (edge.width > 0) {
            Brush.outline(brush, edge.tone.color(), Sizes.px(edge.width), box, Sizes.radius());
        }
        brush.dispose();
    }
}
