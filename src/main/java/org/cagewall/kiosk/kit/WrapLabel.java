package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import javax.swing.JLabel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/**
 * Words on the screen: any text that is only read. It wraps to the width that it is given, on as many lines as allowed,
 * and can have a line through it. Used on the event thread.
 */
public final class WrapLabel extends JLabel implements Legible, Tall {

    private static final long serialVersionUID = 1L;

    private TextStyle type;
    private Tone tone;
    private int most;
    private Line line = Line.NONE;
    private Side side = Side.LEFT;
    private Breaking breaking = Breaking.FULL;
    private final transient Map<Integer, Flow> flows = new HashMap<>();
    private int natural = -1;
    private Parts parts = Parts.TOGETHER;
    private List<TextStyle> smaller = List.of();

    private enum Parts {
        TOGETHER,
        LEFT_OUT
    }

    private enum Line {
        NONE,
        THROUGH
    }

    private enum Breaking {
        FULL,
        BALANCED
    }

    private enum Side {
        LEFT,
        MIDDLE,
        RIGHT
    }

    public WrapLabel(String text, TextStyle type, Tone tone) {
        this.type = type;
        this.tone = tone;
        putClientProperty("html.disable", Boolean.TRUE);
        putClientProperty("migLayout.dynamicAspectRatio", Boolean.TRUE);
        setText(text);
    }

    /** At most n lines; more text ends in an ellipsis, and tests find it. */
    public WrapLabel lines(int atMost) {
        most = atMost;
        revalidate();
        return this;
    }

    /** In the first of these smaller letters at which no word is broken, where its own are too large for that. */
    public WrapLabel orSmaller(TextStyle... others) {
        smaller = List.of(others);
        revalidate();
        return this;
    }

    /** Of one line whose parts stand between middle dots: where there is no room for all, the last are left out whole. */
    public WrapLabel parted() {
        most = 1;
        parts = Parts.LEFT_OUT;
        revalidate();
        return this;
    }

    public WrapLabel tone(Tone other) {
        tone = other;
        repaint();
        return this;
    }

    public WrapLabel type(TextStyle other) {
        type = other;
        revalidate();
        repaint();
        return this;
    }

    /** Lines of about the same length, so that no word is left alone on the last one. */
    public WrapLabel balanced() {
        breaking = Breaking.BALANCED;
        revalidate();
        return this;
    }

    /** A line through the text: it was struck out and stays readable. */
    public WrapLabel struckOut() {
        line = Line.THROUGH;
        repaint();
        return this;
    }

    public WrapLabel centred() {
        side = Side.MIDDLE;
        return this;
    }

    public WrapLabel toTheRight() {
        side = Side.RIGHT;
        return this;
    }

    @Override
    public void updateUI() {
        super.updateUI();
        forget();
    }

    @Override
    public void revalidate() {
        forget();
        Pane.forgetFrom(this);
        super.revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        if (type == null) {
            return new Dimension();
        }
        if (natural < 0) {
            natural = flow(Integer.MAX_VALUE).longest() + 1;
        }
        int width = getWidth() > 0 ? Math.min(natural, getWidth()) : natural;
        return new Dimension(natural, heightFor(Math.max(1, width)));
    }

    @Override
    public Dimension getMinimumSize() {
        Dimension preferred = getPreferredSize();
        return new Dimension(most == 1 ? Math.min(preferred.width, Sizes.px(40)) : longestWord(), preferred.height);
    }

    @Override
    public int heightFor(int width) {
        return flow(width).height();
    }

    @Override
    public boolean isWhole() {
        return getText().isEmpty() || flow().whole() && flow().height() <= getHeight();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        if (getText().isEmpty()) {
            return;
        }
        Graphics2D brush = Brush.on(graphics);
        brush.setColor(tone.color());
        Flow flow = flow();
        float y = Math.max(0, (getHeight() - flow.height()) / 2f);
        for (int i = 0; i < flow.lines().size(); i++) {
            Flow one = new Flow(flow.lines().subList(i, i + 1), flow.font(), flow.width(), true);
            float length = Flow.length(one.lines().get(0), flow.font());
            float x = left(length);
            one.paint(brush, x, y);
            if (line == Line.THROUGH) {
                paintStrike(brush, x, y + one.firstBaseline() - flow.font().getSize2D() * 0.3f, length);
            }
            y += Flow.pitch(flow.font());
        }
        brush.dispose();
    }

    private void paintStrike(Graphics2D brush, float x, float y, float length) {
        brush.setStroke(new BasicStroke(Sizes.px(2f)));
        brush.draw(new Line2D.Float(x, y, x + length, y));
    }

    private float left(float length) {
        return switch (side) {
            case LEFT -> 0;
            case MIDDLE -> (getWidth() - length) / 2;
            case RIGHT -> getWidth() - length;
        };
    }

    private Flow flow() {
        return flow(Math.max(1, getWidth()));
    }

    private Flow flow(int width) {
        return flows.computeIfAbsent(width, this::broken);
    }

    private Flow broken(int width) {
        if (parts == Parts.LEFT_OUT) {
            return Flow.parted(getText(), List.of(type.font()), width);
        }
        Flow full = Flow.fitting(getText(), fonts(), width, most);
        if (breaking == Breaking.FULL || full.lines().size() < 2 || full.lines().size() > 4 || !full.whole()) {
            return full;
        }
        int narrow = width / 2;
        int wide = width;
        Flow best = full;
        while (wide - narrow > 4) {
            int middle = (narrow + wide) / 2;
            Flow tried = Flow.of(getText(), full.font(), middle, most);
            if (tried.whole() && tried.lines().size() == full.lines().size()) {
                best = tried;
                wide = middle;
            } else {
                narrow = middle;
            }
        }
        return best;
    }

    private List<Font> fonts() {
        return Stream.concat(Stream.of(type), smaller.stream())
                .map(TextStyle::font)
                .toList();
    }

    private void forget() {
        if (flows != null) {
            flows.clear();
            natural = -1;
        }
    }

    private int longestWord() {
        return Math.min(Flow.longestWord(getText(), fonts().get(smaller.size())) + 1, Sizes.px(200));
    }
}
