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
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

/** The dark line over the heading that says what was done and takes it back. Used on the event thread. */
final class NoticeBar extends JPanel {

    private static final long serialVersionUID = 1L;

    NoticeBar(String text, Optional<TouchButton> undo) {
        super(new MigLayout("insets 0 24 0 8, fill", "[grow,fill]16[]", "[fill]"));
        setName("notice");
        setOpaque(false);
        addMouseListener(new MouseAdapter() {});
        WrapLabel line = new WrapLabel(text, Type.BUTTON, Tone.SOLID_INK).lines(2);
        line.setName("notice.text");
        add(line, "wmin 0");
        undo.ifPresent(button -> add(button, "growy 0"));
        getAccessibleContext().setAccessibleName(text);
    }

    static TouchButton undo(String text, Runnable onPress) {
        return TouchButton.of(ButtonKind.ON_SOLID, "notice.undo", text, onPress).tall(48);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        Graphics2D brush = (Graphics2D) graphics.create();
        brush.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
        brush.setColor(Tone.SOLID.color());
        int arc = Math.round(2 * Measure.radius());
        brush.fillRoundRect(0, 0, getWidth(), getHeight(), arc, arc);
        brush.dispose();
    }
}
