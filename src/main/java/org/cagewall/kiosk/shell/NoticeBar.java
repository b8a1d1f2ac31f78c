package org.cagewall.kiosk.shell;

import java.awt.Graphics;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.event.MouseAdapter;
import java.util.Optional;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** The dark line over the heading that says what was done and takes it back. Used on the event thread. */
final class NoticeBar extends JPanel {

    private static final long serialVersionUID = 1L;

    private final WrapLabel line;
    private final transient Optional<TouchButton> undoing;
    private int throughFrom;
    private int throughTo;

    NoticeBar(String text, Optional<TouchButton> undo) {
        super(new MigLayout("insets 0 24 0 8, fill", "[grow,fill]16[]", "[fill]"));
        undoing = undo;
        setName("notice");
        setOpaque(false);
        addMouseListener(new MouseAdapter() {});
        line = new WrapLabel(text, TextStyle.BUTTON, Tone.SOLID_INK).lines(2);
        line.setName("notice.text");
        add(line, "wmin 0");
        undo.ifPresent(button -> add(button, "growy 0, wmin pref"));
        getAccessibleContext().setAccessibleName(text);
    }

    /** The least width in which all words stand in two lines. */
    int leastWidth() {
        int undo = undoing.map(button -> button.getPreferredSize().width).orElse(0);
        return Math.round(line.getPreferredSize().width * 0.6f) + undo + Sizes.px(64);
    }

    /** Between these a touch goes to what lies below, but for the button that takes back. */
    void letThrough(int left, int right) {
        throughFrom = left;
        throughTo = right;
    }

    @Override
    public boolean contains(int x, int y) {
        boolean onUndo =
                undoing.filter(button -> button.getBounds().contains(x, y)).isPresent();
        return super.contains(x, y) && (x < throughFrom || x >= throughTo || onUndo);
    }

    static TouchButton undo(String text, Runnable onPress) {
        return TouchButton.of(ButtonKind.ON_SOLID, "notice.undo", text, onPress).tall(48);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = (Graphics2D) graphics.create();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setColor(Tone.SOLID.color());
        int arc = Math.round(2 * Sizes.radius());
        brush.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
        brush.dispose();
    }
}
