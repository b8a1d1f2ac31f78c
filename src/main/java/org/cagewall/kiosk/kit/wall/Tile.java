package org.cagewall.kiosk.kit.wall;

import java.awt.Dimension;
import java.awt.Font;
import java.awt.Graphics;
import java.awt.Graphics2D;
import java.util.List;
import java.util.stream.Stream;
import javax.swing.JButton;
import org.cagewall.kiosk.kit.Brush;
import org.cagewall.kiosk.kit.FingerUI;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.kit.FocusRing;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.kit.Signs;
import org.cagewall.kiosk.kit.Tag;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/**
 * A cage on the wall: its name, one big word that can be read at a metre and a half, and one date or tag. It is a
 * button. Used on the event thread.
 */
public final class Tile extends JButton implements Legible {

    private static final long serialVersionUID = 1L;

    private static final int LEAST_HEIGHT = 166;

    private transient TileFace face;

    public Tile(String name, TileFace face, Runnable onPress) {
        setName(name);
        addActionListener(event -> onPress.run());
        show(face);
    }

    /** Shows another face. */
    public void show(TileFace other) {
        face = other;
        getAccessibleContext().setAccessibleName(face.inOneSentence());
        repaint();
    }

    public TileFace face() {
        return face;
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public Dimension getPreferredSize() {
        return isPreferredSizeSet() ? super.getPreferredSize() : new Dimension(Sizes.px(196), Sizes.px(190));
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(150), Sizes.px(LEAST_HEIGHT));
    }

    @Override
    public boolean isWhole() {
        return bigFlow().whole()
                && nameFlow().whole()
                && (face.foot().isEmpty() || footIsWhole())
                && (!saysSmall() || smallFlow().whole());
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box box = new Brush.Box(0, 0, getWidth(), getHeight());
        Brush.fill(brush, ground().color(), box, Sizes.radius());
        paintEdge(brush, box);
        paintHead(brush);
        brush.setColor((face.state() == TileFace.State.EMPTY ? Tone.EMPTY_SOFT : Tone.INK).color());
        bigFlow().paint(brush, pad(), bigTop());
        paintFoot(brush);
        FocusRing.paint(brush, this, Tone.INK.color(), box, Sizes.radius());
        brush.dispose();
    }

    private Tone ground() {
        boolean pressed = isDown();
        return switch (face.state()) {
            case EMPTY -> pressed ? Tone.TILE_PRESSED : Tone.EMPTY;
            case DIFFERENT -> pressed ? Tone.ATTENTION_PRESSED : Tone.ATTENTION;
            default -> pressed ? Tone.TILE_PRESSED : Tone.TILE;
        };
    }

    private void paintEdge(Graphics2D brush, Brush.Box box) {
        boolean strong = face.state() == TileFace.State.LATE || face.state() == TileFace.State.DIFFERENT;
        if (isSelected()) {
            Brush.outline(brush, Tone.LIKELY_EDGE.color(), Sizes.px(5f), box, Sizes.radius());
        } else if (strong || isDown()) {
            Brush.outline(brush, Tone.INK.color(), Sizes.px(3f), box, Sizes.radius());
        } else {
            Brush.outline(brush, Tone.LINE.color(), Sizes.px(1.5f), box, Sizes.radius());
        }
    }

    private void paintHead(Graphics2D brush) {
        brush.setColor(Tone.INK.color());
        Flow name = nameFlow();
        float top = nameTop();
        name.paint(brush, pad(), top);
        if (saysSmall()) {
            Flow small = smallFlow();
            brush.setColor(soft().color());
            small.paint(brush, smallLeft(), top + name.firstBaseline() - small.firstBaseline());
        }
        if (face.state() == TileFace.State.DIFFERENT) {
            Signs.warning(brush, Tone.ATTENTION_INK.color(), signBox());
        }
    }

    private void paintFoot(Graphics2D brush) {
        if (face.foot().isEmpty()) {
            return;
        }
        switch (face.state()) {
            case DUE -> Tag.paint(brush, TagKind.DUE, foot(), footBox());
            case LATE -> Tag.paint(brush, TagKind.LATE, foot(), footBox());
            default -> {
                brush.setColor(footTone().color());
                Flow foot = footFlow();
                Brush.Box box = footBox();
                foot.paint(brush, pad(), box.y() + (box.height() - foot.height()) / 2);
            }
        }
    }

    private Tone footTone() {
        return switch (face.state()) {
            case EMPTY -> Tone.EMPTY_SOFT;
            default -> soft();
        };
    }

    private Tone soft() {
        if (face.state() == TileFace.State.DIFFERENT) {
            return Tone.ATTENTION_INK;
        }
        return isDown() ? Tone.TILE_PRESSED_SOFT : Tone.SOFT;
    }

    private boolean isDown() {
        return getModel().isPressed() && getModel().isArmed();
    }

    private Brush.Box footBox() {
        return new Brush.Box(pad(), getHeight() - footHeight() - footGap(), getWidth() - 2f * pad(), footHeight());
    }

    private Brush.Box signBox() {
        return new Brush.Box(getWidth() - Sizes.px(50f), Sizes.px(12f), Sizes.px(38f), Sizes.px(34f));
    }

    private Flow nameFlow() {
        int sign = face.state() == TileFace.State.DIFFERENT ? Sizes.px(42) : 0;
        return Flow.fitting(
                face.name(),
                List.of(TextStyle.TITLE.font(), TextStyle.LEAD.font(), TextStyle.TAG.font()),
                inner() - sign,
                1);
    }

    /** The small word gives way to the sign where there is no room for both. */
    private boolean saysSmall() {
        return !face.small().isEmpty()
                && (face.state() != TileFace.State.DIFFERENT || smallFlow().whole());
    }

    private Flow smallFlow() {
        int sign = face.state() == TileFace.State.DIFFERENT ? Sizes.px(42) : 0;
        int room = getWidth() - smallLeft() - pad() - sign;
        return Flow.parted(face.small(), List.of(TextStyle.SECOND.font(), TextStyle.MARK.font()), Math.max(1, room));
    }

    private int smallLeft() {
        return pad() + nameFlow().longest() + Sizes.px(12);
    }

    private Flow bigFlow() {
        Font large = TextStyle.BIG.font();
        int room = getHeight() - (int) bigTop() - footGap() - (face.foot().isEmpty() ? 0 : footHeight());
        int lines = room >= Flow.pitch(large) + Flow.lineHeight(large) ? 2 : 1;
        Font tighter = large.deriveFont(java.util.Map.of(java.awt.font.TextAttribute.TRACKING, -0.03f));
        List<Font> unbroken = Stream.of(large, tighter, TextStyle.TITLE.font(), TextStyle.ACTION.font())
                .filter(font -> Flow.longestWord(face.big(), font) <= inner())
                .toList();
        return Flow.fitting(
                face.big(), unbroken.isEmpty() ? List.of(TextStyle.ACTION.font()) : unbroken, inner(), lines);
    }

    private float bigTop() {
        return nameTop() + Flow.pitch(TextStyle.TITLE.font()) + Sizes.px(isLow() ? 2f : 6f);
    }

    private float nameTop() {
        return Sizes.px(isLow() ? 7f : 11f);
    }

    private int footHeight() {
        return Sizes.px(isLow() ? 32 : 36);
    }

    private int footGap() {
        return Sizes.px(isLow() ? 7 : 10);
    }

    /** Whether there is only just room for two lines of the big word. */
    private boolean isLow() {
        return getHeight() < Sizes.px(188);
    }

    private Flow footFlow() {
        return Flow.fitting(foot(), footFonts(), inner(), 1);
    }

    private List<Font> footFonts() {
        TextStyle type = face.state() == TileFace.State.DIFFERENT ? TextStyle.TAG : TextStyle.SECOND;
        return List.of(type.font(), TextStyle.MARK.font());
    }

    /** As much of it as has room. */
    private String foot() {
        return Stream.concat(Stream.of(face.foot()), face.shorter().stream())
                .filter(this::hasRoom)
                .findFirst()
                .orElseGet(() -> face.shorter().isEmpty()
                        ? face.foot()
                        : face.shorter().get(face.shorter().size() - 1));
    }

    private boolean hasRoom(String said) {
        return switch (face.state()) {
            case DUE -> Tag.holds(TagKind.DUE, said, inner());
            case LATE -> Tag.holds(TagKind.LATE, said, inner());
            default -> Flow.fitting(said, footFonts(), inner(), 1).whole();
        };
    }

    private boolean footIsWhole() {
        return hasRoom(foot());
    }

    private int inner() {
        return getWidth() - 2 * pad();
    }

    private int pad() {
        return Sizes.px(12);
    }
}
