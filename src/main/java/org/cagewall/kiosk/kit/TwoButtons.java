package org.cagewall.kiosk.kit;

import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.TextStyle;

/** Two buttons side by side and equally wide, as they stand at the foot of a form. Used on the event thread. */
public final class TwoButtons extends Pane {

    private static final long serialVersionUID = 1L;

    public TwoButtons(TouchButton left, TouchButton right) {
        super(new MigLayout("insets 0, fillx, gap 12", "[grow,fill,sizegroup][grow,fill,sizegroup]"));
        add(left.type(TextStyle.LEAD).tall(72));
        add(right.type(TextStyle.LEAD).tall(72));
    }
}
