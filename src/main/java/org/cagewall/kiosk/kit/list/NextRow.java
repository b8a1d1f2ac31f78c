package org.cagewall.kiosk.kit.list;

import java.util.List;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Flow;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** The row whose turn it is, opened out: a very large word, what to see and do, and the answers. Event thread. */
public final class NextRow extends Card {

    private static final long serialVersionUID = 1L;

    public NextRow(String name, String lead, String first, String second, List<TouchButton> answers) {
        super(new MigLayout("insets 20 24 14 24, fillx, gap 0 0", "[112!,left][grow,fill]", "[][][]"));
        setName(name);
        leading();
        TextStyle size = Flow.length(lead, TextStyle.NEXT.font()) <= Sizes.px(108) ? TextStyle.NEXT : TextStyle.LEAD;
        add(new WrapLabel(lead, size, Tone.INK).lines(2), "cell 0 0 1 3, aligny top, wmax 110");
        add(new WrapLabel(first, TextStyle.LEAD, Tone.INK), "cell 1 0, wmin 0, growx");
        if (!second.isEmpty()) {
            add(new WrapLabel(second, TextStyle.LINE, Tone.INK), "cell 1 1, wmin 0, growx, gaptop 4");
        }
        Pane row = new Pane(new MigLayout("insets 0, gap 16"));
        answers.forEach(answer -> row.add(answer.tall(64), "wmin 250"));
        add(row, "cell 1 2, gaptop 12");
    }
}
