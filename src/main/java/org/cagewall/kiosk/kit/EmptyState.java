package org.cagewall.kiosk.kit;

import java.util.List;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** What stands where there is nothing yet: what this place is for, and what to do first. Used on the event thread. */
public final class EmptyState extends Pane {

    private static final long serialVersionUID = 1L;

    public EmptyState(String title, String text, List<TouchButton> first) {
        super(new MigLayout("insets 24, wrap 1, fill, gap 12", "[center]", "push[][]20[]push"));
        String most = "wmin 0, wmax 620";
        add(new WrapLabel(title, TextStyle.TITLE, Tone.INK).centred(), most);
        add(new WrapLabel(text, TextStyle.LINE, Tone.SOFT).centred().balanced(), most);
        Pane buttons = new Pane(new MigLayout("insets 0, gap 12"));
        first.forEach(button -> buttons.add(button, "wmin 240"));
        add(buttons);
    }
}
