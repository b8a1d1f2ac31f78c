package org.cagewall.kiosk.shell;

import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.util.List;
import javax.swing.JPanel;
import javax.swing.LayoutFocusTraversalPolicy;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** The calm page after something went wrong; the kiosk goes on. Used on the event thread. */
final class FailurePage extends JPanel {

    private static final long serialVersionUID = 1L;

    private final TouchButton goOn;

    FailurePage(Words words, String code, Runnable onGoOn) {
        super(new java.awt.BorderLayout());
        setName("failure");
        setOpaque(false);
        addMouseListener(new MouseAdapter() {});
        setFocusCycleRoot(true);
        setFocusTraversalPolicy(new LayoutFocusTraversalPolicy());
        goOn = TouchButton.of(ButtonKind.MAIN, "failure.go-on", words.say("shell.go-on"), onGoOn)
                .type(TextStyle.ACTION)
                .tall(88);
        add(new EmptyState(words.say("shell.failed"), words.say("shell.failed-code", code), List.of(goOn)));
        getAccessibleContext().setAccessibleName(words.say("shell.failed"));
    }

    void takeFocus() {
        goOn.requestFocusInWindow();
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Tone.GROUND.color());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }
}
