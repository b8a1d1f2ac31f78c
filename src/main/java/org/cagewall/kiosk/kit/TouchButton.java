package org.cagewall.kiosk.kit;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;

/**
 * The button that everything is done with: large, forgiving of a slip, its words on one or two lines. A second
 * touch that follows at once is passed over unless it is a quick one. Used on the event thread.
 */
public final class TouchButton extends JButton implements Legible {

    private static final long serialVersionUID = 1L;
    private static final int WIDEST_LINE = 320;

    private ButtonKind kind;
    private TextStyle type = TextStyle.BUTTON;
    private String second = "";
    private Shape shape = Shape.ROUNDED;
    private Arrow arrow = Arrow.NONE;
    private int tall = 56;

    private enum Shape {
        ROUNDED,
        PILL
    }

    /** Where an arrow points that stands in place of words. */
    public enum Arrow {
        NONE(0, 0),
        UP(0, -1),
        DOWN(0, 1),
        BACK(-1, 0),
        ON(1, 0);

        private final int dx;
        private final int dy;

        Arrow(int dx, int dy) {
            this.dx = dx;
            this.dy = dy;
        }
    }

    private TouchButton(ButtonKind kind, String text) {
        super(text);
        this.kind = kind;
        if (kind == ButtonKind.MAIN) {
            setBig();
        }
    }

    private void setBig() {
        type = TextStyle.LEAD;
    }

    /** A button that is found by this name in tests and shows this text. */
    public static TouchButton of(ButtonKind kind, String name, String text, Runnable onPress) {
        TouchButton button = new TouchButton(kind, text);
        button.setName(name);
        button.addActionListener(event -> onPress.run());
        return button;
    }

    /** A button with an arrow in place of words; {@code said} is its accessible name. */
    public static TouchButton arrow(Arrow arrow, String name, String said, Runnable onPress) {
        TouchButton button = of(ButtonKind.PLAIN, name, "", onPress).quick();
        button.arrow = arrow;
        button.getAccessibleContext().setAccessibleName(said);
        return button;
    }

    /** The letters' size; a text that has no room takes the next smaller ones down to 17 px. */
    public TouchButton type(TextStyle size) {
        type = size;
        revalidate();
        return this;
    }

    /** The least height at the normal text size, 48 or more; 56 if not said. */
    public TouchButton tall(int pixels) {
        tall = Math.max(48, pixels);
        revalidate();
        return this;
    }

    /** A small line below the text. */
    public TouchButton second(String line) {
        second = line;
        describe();
        revalidate();
        repaint();
        return this;
    }

    /** Round ends instead of round corners. */
    public TouchButton pill() {
        shape = Shape.PILL;
        return this;
    }

    /** It counts, turns or writes: it may be touched again at once. */
    public TouchButton quick() {
        DoubleTouch.allow(this);
        return this;
    }

    public TouchButton kind(ButtonKind other) {
        kind = other;
        repaint();
        return this;
    }

    public ButtonKind kind() {
        return kind;
    }

    @Override
    public void setText(String text) {
        super.setText(text);
        describe();
    }

    private void describe() {
        if (second != null) {
            getAccessibleContext().setAccessibleName(second.isEmpty() ? getText() : getText() + ", " + second);
        }
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
        if (isPreferredSizeSet()) {
            return super.getPreferredSize();
        }
        int widest = Math.min(Sizes.px(WIDEST_LINE), (int) Math.ceil(Flow.length(getText(), type.font())));
        Flow flow = Flow.of(getText(), type.font(), widest, 2);
        int words = flow.height() + secondHeight();
        int line = (int) Math.ceil(Flow.length(second, TextStyle.SECOND.font()));
        return new Dimension(
                Math.max(Sizes.target(), Math.max(flow.longest(), line) + 2 * padding() + Sizes.px(16)),
                Math.max(Sizes.px(tall), words + Sizes.px(20)));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.target(), Math.min(getPreferredSize().height, Sizes.px(tall)));
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        ButtonLook look = ButtonLook.of(kind, getModel());
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        float radius = shape == Shape.PILL ? getHeight() / 2f : Sizes.radius();
        Brush.fill(brush, look.ground().color(), box, radius);
        if (look.lineWidth() > 0) {
            Brush.outline(brush, look.line().color(), Sizes.px(look.lineWidth()), box, radius);
        }
        brush.setColor(look.ink().color());
        if (arrow == Arrow.NONE) {
            paintWords(brush);
        } else {
            float size = Sizes.px(24f);
            Signs.arrow(
                    brush,
                    look.ink().color(),
                    new Brush.Box((getWidth() - size) / 2, (getHeight() - size) / 2, size, size),
                    arrow.dx,
                    arrow.dy);
        }
        FocusRing.paint(brush, this, look.ink().color(), box, radius);
        brush.dispose();
    }

    private void paintWords(Graphics2D brush) {
        Flow flow = flow();
        float top = (getHeight() - flow.height() - secondHeight()) / 2f;
        flow.paintCentred(brush, 0, top, getWidth());
        if (!second.isEmpty()) {
            secondFlow().paintCentred(brush, 0, top + flow.height(), getWidth());
        }
    }

    @Override
    public boolean isWhole() {
        return flow().whole()
                && flow().height() + secondHeight() <= getHeight()
                && (second.isEmpty() || secondFlow().whole());
    }

    private Flow flow() {
        int most = getHeight() - secondHeight() >= 2 * Flow.pitch(TextStyle.TAG.font()) ? 2 : 1;
        return Flow.fitting(getText(), sizes(), getWidth() - 2 * padding(), most);
    }

    private Flow secondFlow() {
        return Flow.of(second, TextStyle.SECOND.font(), getWidth() - 2 * padding(), 1);
    }

    private List<Font> sizes() {
        int room = getHeight() - secondHeight() - Sizes.px(4);
        List<Font> sizes = Stream.of(TextStyle.MAIN, TextStyle.ACTION, TextStyle.LEAD, TextStyle.BUTTON, TextStyle.TAG)
                .filter(smaller -> smaller.ordinal() >= type.ordinal())
                .map(TextStyle::font)
                .toList();
        List<Font> fitting = sizes.stream()
                .filter(font ->
                        Flow.of(getText(), font, getWidth() - 2 * padding(), 0).height() <= room)
                .toList();
        return fitting.isEmpty() ? List.of(TextStyle.TAG.font()) : fitting;
    }

    private int secondHeight() {
        return second.isEmpty() ? 0 : Flow.pitch(TextStyle.SECOND.font());
    }

    private int padding() {
        return Sizes.px(12);
    }
}
