package org.cagewall.kiosk.kit;

import java.util.Optional;
import javax.swing.JComponent;
import javax.swing.JPanel;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

/** What a screen is called and one line about it, and beside them what the whole screen turns on. Event thread. */
public final class Heading extends JPanel {

    private static final long serialVersionUID = 1L;

    private final WrapLabel title = new WrapLabel("", Type.TITLE, Tone.INK).lines(1);
    private final WrapLabel subtitle = new WrapLabel("", Type.SECOND, Tone.SOFT).parted();
    private transient Optional<JComponent> beside = Optional.empty();

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

    /** A part at the right of the heading, such as the choice of a wall. */
    public Heading beside(JComponent part) {
        add(part, "cell 1 0 1 2, aligny center");
        beside = Optional.of(part);
        return this;
    }

    /** How wide the words may be, left of the part beside them. */
    public int roomForWords() {
        return beside.filter(part -> part.isVisible() && part.getPreferredSize().width > 0)
                .map(part -> getWidth() - part.getPreferredSize().width - Measure.px(16))
                .orElse(getWidth());
    }
}
