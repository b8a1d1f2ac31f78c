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
        super(new MigLayout(
                "insets " + Measure.px(20) + " " + Measure.px(24) + " " + Measure.px(14) + " " + Measure.px(24)
                        + ", fillx, gap 0 0",
                "[" + Measure.px(112) + "!,left][grow,fill]",
                "[][][]"));
        setName(name);
        leading();
        Type size = Flow.length(lead, Type.NEXT.font()) <= Measure.px(108) ? Type.NEXT : Type.LEAD;
        add(new WrapLabel(lead, size, Tone.INK).lines(2), "cell 0 0 1 3, aligny top, wmax " + Measure.px(110));
        add(new WrapLabel(first, Type.LEAD, Tone.INK), "cell 1 0, wmin 0, growx");
        if (!second.isEmpty()) {
            add(new WrapLabel(second, Type.LINE, Tone.INK), "cell 1 1, wmin 0, growx, gaptop " + Measure.px(4));
        }
        for (int i = 0; i < answers.size(); i++) {
            String gap = i == 0 ? "" : ", gapleft " + Measure.px(16);
            add(
                    answers.get(i).tall(64),
                    "cell 1 2, growx 0, wmin " + Measure.px(200) + ", gaptop " + Measure.px(12) + gap);
        }
    }
}
