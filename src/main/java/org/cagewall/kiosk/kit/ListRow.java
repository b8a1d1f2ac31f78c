package org.cagewall.kiosk.kit;

import java.awt.BasicStroke;
import java.awt.Dimension;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.geom.Line2D;
import java.util.List;
import javax.swing.JButton;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

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
                + (face.second().isEmpty() ? 0 : second(width).height() + Measure.px(4));
        return Math.max(Measure.px(face.second().isEmpty() ? 64 : 88), words + Measure.px(28));
    }

    @Override
    public void revalidate() {
        Pane.forgetFrom(this);
        super.revalidate();
    }

    @Override
    public Dimension getPreferredSize() {
        int width = getWidth() > 0 ? getWidth() : Measure.px(600);
        return new Dimension(width, heightFor(width));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Measure.px(240), getPreferredSize().height);
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
        Brush.fill(brush, (pressed ? down : calm).color(), box, Measure.radius());
        Brush.outline(
                brush,
                (pressed || isSelected() ? Tone.INK : different ? Tone.ATTENTION_INK : Tone.LINE).color(),
                Measure.px(isSelected() ? 3f : 1.5f),
                box,
                Measure.radius());
        paintWords(brush);
        face.tag().ifPresent(tag -> Tag.paint(brush, tag.kind(), tag.text(), tagBox(tag)));
        FocusRing.paint(brush, this, Tone.INK.color(), box, Measure.radius());
        brush.dispose();
    }

    private void paintWords(Graphics2D brush) {
        brush.setColor(Tone.INK.color());
        if (!face.lead().isEmpty()) {
            Flow lead = lead();
            lead.paint(brush, Measure.px(24f), (getHeight() - lead.height()) / 2f);
        }
        Flow first = first(getWidth());
        Flow second = second(getWidth());
        boolean one = face.second().isEmpty();
        int words = first.height() + (one ? 0 : second.height() + Measure.px(4));
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
            second.paint(brush, left(), top + first.height() + Measure.px(4));
        }
    }

    private void strike(Graphics2D brush, Flow flow, float top) {
        brush.setStroke(new BasicStroke(Measure.px(2f)));
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
                List.of(Type.TITLE.font(), Type.LEAD.font(), Type.TAG.font(), Type.SECOND.font(), Type.MARK.font()),
                leadWidth() - Measure.px(16),
                2);
    }

    private boolean isLeadWhole() {
        Flow lead = lead();
        return lead.whole() && Flow.longestWord(face.lead(), lead.font()) <= lead.width();
    }

    private Flow first(int width) {
        return Flow.of(face.first(), Type.BUTTON.font(), room(width), 0);
    }

    private Flow second(int width) {
        return Flow.of(face.second(), Type.LINE.font(), room(width), 0);
    }

    private int room(int width) {
        int tag = face.tag().map(each -> tagWidth(each) + Measure.px(16)).orElse(0);
        return Math.max(Measure.px(120), width - left() - Measure.px(20) - tag);
    }

    private int left() {
        return face.lead().isEmpty() ? Measure.px(24) : Measure.px(24) + leadWidth();
    }

    private int leadWidth() {
        return Measure.px(112);
    }

    private int tagWidth(RowFace.TagFace tag) {
        return new Tag(tag.kind(), tag.text()).getPreferredSize().width;
    }

    private Brush.Box tagBox(RowFace.TagFace tag) {
        float width = tagWidth(tag);
        float height = Measure.px(36f);
        return new Brush.Box(getWidth() - width - Measure.px(20), (getHeight() - height) / 2, width, height);
    }
}
