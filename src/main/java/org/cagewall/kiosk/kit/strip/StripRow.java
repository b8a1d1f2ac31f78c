package org.cagewall.kiosk.kit.strip;

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
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** A name and a mark for each day, touched anywhere. Used on the event thread. */
public final class StripRow extends JButton implements Legible {

    private static final long serialVersionUID = 1L;

    private final String title;
    private final String remark;
    private final transient List<DayMark> marks;

    /**
     * A row of marks.
     *
     * @param said all that it shows, in words
     * @param remark what is out of the ordinary; shown where there is room beside the marks
     */
    public StripRow(String name, String title, String said, String remark, List<DayMark> marks, Runnable onPress) {
        this.title = title;
        this.remark = remark;
        this.marks = List.copyOf(marks);
        setName(name);
        getAccessibleContext().setAccessibleName(said);
        addActionListener(event -> onPress.run());
    }

    @Override
    public void updateUI() {
        setUI(new FingerUI());
    }

    @Override
    public Dimension getPreferredSize() {
        return new Dimension(Sizes.px(360), Sizes.target());
    }

    @Override
    public Dimension getMinimumSize() {
        return new Dimension(Sizes.px(240), Sizes.target());
    }

    @Override
    public boolean isWhole() {
        return name().whole();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = Brush.on(graphics);
        Brush.Box all = new Brush.Box(0, 0, getWidth(), getHeight());
        if (getModel().isPressed() && getModel().isArmed()) {
            Brush.fill(brush, Tone.TILE_PRESSED.color(), all, Sizes.px(6f));
        }
        brush.setColor(Tone.LINE.color());
        brush.fillRect(0, getHeight() - 1, getWidth(), 1);
        brush.setColor(Tone.INK.color());
        Flow name = name();
        name.paint(brush, Sizes.px(8f), (getHeight() - name.height()) / 2f);
        float pitch = DayMarks.pitch(getWidth(), marks.size());
        for (int i = 0; i < marks.size(); i++) {
            DayMarks.paint(
                    brush,
                    marks.get(i),
                    new Brush.Box(DayMarks.left() + i * pitch, Sizes.px(2f), pitch, getHeight() - Sizes.px(5f)));
        }
        paintRemark(brush, DayMarks.left() + Math.round(marks.size() * pitch) + Sizes.px(24));
        FocusRing.paint(brush, this, Tone.INK.color(), all, Sizes.px(6f));
        brush.dispose();
    }

    private void paintRemark(Graphics2D brush, int left) {
        int room = getWidth() - left;
        if (Flow.length(remark, TextStyle.SECOND.font()) <= room) {
            Flow flow = Flow.of(remark, TextStyle.SECOND.font(), room, 1);
            brush.setColor(Tone.INK.color());
            flow.paint(brush, left, (getHeight() - flow.height()) / 2f);
        }
    }

    /** The largest size at which no word is cut. */
    private Flow name() {
        int width = DayMarks.left() - Sizes.px(12);
        List<Font> fonts = Stream.of(TextStyle.BUTTON, TextStyle.TAG, TextStyle.MARK)
                .map(TextStyle::font)
                .filter(font -> font.equals(TextStyle.MARK.font()) || Flow.longestWord(title, font) <= width)
                .toList();
        return Flow.fitting(title, fonts, width, 2);
    }
}
