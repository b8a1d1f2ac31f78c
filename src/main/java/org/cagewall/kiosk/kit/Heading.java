package org.cagewall.kiosk.kit;

import java.awt.Component;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** What a screen is called and one line about it, and beside them what the whole screen turns on. Event thread. */
public final class Heading extends JPanel {

    private static final long serialVersionUID = 1L;

    private final WrapLabel title = new WrapLabel("", TextStyle.TITLE, Tone.INK).lines(1);
    private final WrapLabel subtitle = new WrapLabel("", TextStyle.SECOND, Tone.SOFT).parted();

    public Heading(String title, String subtitle) {
        super(new MigLayout("insets 0, gap 0, fill", "[grow,fill]16[]", "push[][]push"));
        setOpaque(false);
        this.title.setName("title");
        this.subtitle.setName("subtitle");
        add(this.title, "cell 0 0, wmin 0");
        add(this.subtitle, "cell 0 1, wmin 0");
        say(title, subtitle);
    }

    public void say(String title, String subtitle) {
        this.title.setText(title);
        this.subtitle.setText(subtitle);
    }

    /** How much of its right end the parts beside the title take. */
    public int takenBeside() {
        int left = getWidth();
        for (Component part : getComponents()) {
            if (part != title && part != subtitle && part.getWidth() > 0) {
                left = Math.min(left, part.getX());
            }
        }
        return getWidth() - left;
    }

    /** A part at the right of the heading, such as the choice of a wall. */
    public Heading beside(JComponent part) {
        add(part, "cell 1 0 1 2, aligny center, wmin pref");
        return this;
    }
}
