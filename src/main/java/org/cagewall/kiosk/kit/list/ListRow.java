package org.cagewall.kiosk.kit.list;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import javax.swing.JButton;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.FingerUI;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Tag;
import org.cagewall.kiosk.kit.Tall;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** One line of a list, touched anywhere: a large word, what to read, a second line, a tag. Used on the event thread. */
public final class ListRow extends JButton implements Legible, Tall {

    private static final long serialVersionUID = 1L;

    private transient RowFace face;

    public ListRow(String name, RowFace face, Runnable onPress) {
        setName(name);
        putClientProperty("migLayout.dynamicAspectRatio", Boolean.TRUE);
        addActionListener(event -> onPress.run());
        show(face);
    }

    public void show(RowFace other) {
        face = other;
        getAccessibleContext().setAccessibleName(face.inOneSentence());
        revalidate();
        repaint();
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public int heightFor(int width) {
        int words = first(width).height()
                + (face.second().isEmpty() ? 0 : second(width).height() + Sizes.px(4));
        return Math.max(Sizes.px(face.second().isEmpty() ? 64 : 88), words + Sizes.px(28));
    }

    @Override
    public void revalidate() {
        Pane.forgetFrom(this);
        super.revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Sizes.px(600);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(240), getPreferredSize().height);
    }

    @Override
    public boolean isWhole() {
        return isLeadWhole()
                && first(getWidth()).whole()
                && second(getWidth()).whole()
                && heightFor(getWidth()) <= getHeight();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        boolean pressed = getModel().isPressed() && getModel().isArmed();
        boolean different = face.state() == RowFace.State.DIFFERENT;
        Tone calm = different ? Tone.ATTENTION : Tone.TILE;
        Tone down = different ? Tone.ATTENTION_PRESSED : Tone.TILE_PRESSED;
        Brush.fill(brush, (pressed ? down : calm).color(), box, Sizes.radius());
        Brush.outline(
                brush,
                (pressed || isSelected() ? Tone.INK : different ? Tone.ATTENTION_INK : Tone.LINE).color(),
                Sizes.px(isSelected() ? 3f : 1.5f),
                box,
                Sizes.radius());
        paintWords(brush);
        face.tag().ifPresent(tag -> Tag.paint(brush, tag.kind(), tag.text(), tagBox(tag)));
        FocusRing.paint(brush, this, Tone.INK.color(), box, Sizes.radius());
        brush.dispose();
    }

    private void paintWords(Graphics2D brush) {
        brush.setColor(Tone.INK.color());
        if (!face.lead().isEmpty()) {
            Flow lead = lead();
            lead.paint(brush, Sizes.px(24f), (getHeight() - lead.height()) / 2f);
        }
        Flow first = first(getWidth());
        Flow second = second(getWidth());
        boolean one = face.second().isEmpty();
        int words = first.height() + (one ? 0 : second.height() + Sizes.px(4));
        float top = (getHeight() - words) / 2f;
        boolean down = getModel().isPressed() && getModel().isArmed();
        boolean struck = face.state() == RowFace.State.STRUCK;
        Tone ink = face.state() != RowFace.State.DONE && !struck ? Tone.INK : down ? Tone.TILE_PRESSED_SOFT : Tone.SOFT;
        brush.setColor(ink.color());
        first.paint(brush, left(), top);
        if (struck) {
            strike(brush, first, top);
        }
        if (!one) {
            brush.setColor((face.state() == RowFace.State.DIFFERENT ? Tone.ATTENTION_INK : ink).color());
            second.paint(brush, left(), top + first.height() + Sizes.px(4));
        }
    }

    private void strike(Graphics2D brush, Flow flow, float top) {
        brush.setStroke(new BasicStroke(Sizes.px(2f)));
        float pitch = flow.height() / (float) flow.lines().size();
        for (int i = 0; i < flow.lines().size(); i++) {
            float y = top + (i + 0.55f) * pitch;
            brush.draw(new Line2D.Float(
                    left(), y, left() + Flow.length(flow.lines().get(i), flow.font()), y));
        }
    }

    private Flow lead() {
        return Flow.fitting(
                face.lead(),
                List.of(
                        TextStyle.TITLE.font(),
                        TextStyle.LEAD.font(),
                        TextStyle.TAG.font(),
                        TextStyle.SECOND.font(),
                        TextStyle.MARK.font()),
                leadWidth() - Sizes.px(16),
                2);
    }

    private boolean isLeadWhole() {
        Flow lead = lead();
        return lead.whole() && Flow.longestWord(face.lead(), lead.font()) <= lead.width();
    }

    private Flow first(int width) {
        return Flow.of(face.first(), TextStyle.BUTTON.font(), room(width), 0);
    }

    private Flow second(int width) {
        return Flow.of(face.second(), TextStyle.LINE.font(), room(width), 0);
    }

    private int room(int width) {
        int tag = face.tag().map(each -> tagWidth(each) + Sizes.px(16)).orElse(0);
        return Math.max(Sizes.px(120), width - left() - Sizes.px(20) - tag);
    }

    private int left() {
        return face.lead().isEmpty() ? Sizes.px(24) : Sizes.px(24) + leadWidth();
    }

    private int leadWidth() {
        return Sizes.px(112);
    }

    private int tagWidth(RowFace.TagFace tag) {
        return new Tag(tag.kind(), tag.text()).getPreferredSize().width;
    }

    private Brush.Box tagBox(RowFace.TagFace tag) {
        float width = tagWidth(tag);
        float height = Sizes.px(36f);
        return new Brush.Box(getWidth() - width - Sizes.px(20), (getHeight() - height) / 2, width, height);
    }
}
