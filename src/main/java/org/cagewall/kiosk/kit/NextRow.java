package org.cagewall.kiosk.kit;

import java.util.List;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;

/** The row whose turn it is, opened out: a very large word, what to see and do, and the answers. Event thread. */
public final class NextRow extends Card {

    private static final long serialVersionUID = 1L;

    public NextRow(String name, String lead, String first, String second, List<TouchButton> answers) {
        super(new MigLayout("insets 20 24 14 24, fillx, gap 0 0", "[112!,left][grow,fill]", "[][][]"));
        setName(name);
        leading();
        Type size = Flow.length(lead, Type.NEXT.font()) <= Measure.px(108) ? Type.NEXT : Type.LEAD;
        add(new WrapLabel(lead, size, Tone.INK).lines(2), "cell 0 0 1 3, aligny top, wmax 110");
        add(new WrapLabel(first, Type.LEAD, Tone.INK), "cell 1 0, wmin 0, growx");
        if (!second.isEmpty()) {
            add(new WrapLabel(second, Type.LINE, Tone.INK), "cell 1 1, wmin 0, growx, gaptop 4");
        }
        Pane row = new Pane(new MigLayout("insets 0, gap 16"));
        answers.forEach(answer -> row.add(answer.tall(64), "wmin 250"));
        add(row, "cell 1 2, gaptop 12");
    }
}
