package org.cagewall.kiosk.kit;

import java.util.function.IntConsumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;

/** What is looked at of several, between two arrows that turn to the one before and the next. Used on the event thread. */
public final class Turner extends Pane {

    private static final long serialVersionUID = 1L;

    private final TouchButton before;
    private final TouchButton after;
    private final WrapLabel shown =
            new WrapLabel("", TextStyle.LEAD, Tone.INK).lines(1).centred();

    /**
     * @param saidBefore what the first arrow does, for those who cannot see it; the other one alike
     * @param onTurn told 1 for the next one, -1 for the one before
     */
    public Turner(String name, String saidBefore, String saidAfter, IntConsumer onTurn) {
        super(new MigLayout("insets 0, fillx, gap 8", "[56!,fill][grow,fill][56!,fill]"));
        setName(name);
        before = TouchButton.arrow(TouchButton.Arrow.BACK, name + ".before", saidBefore, () -> onTurn.accept(-1))
                .tall(48);
        after = TouchButton.arrow(TouchButton.Arrow.ON, name + ".after", saidAfter, () -> onTurn.accept(1))
                .tall(48);
        shown.setName(name + ".shown");
        add(before);
        add(shown, "wmin pref");
        add(after);
    }

    /** Shows what is at this place, counted from 0, of n. */
    public void show(String text, int at, int of) {
        shown.setText(text);
        before.setEnabled(at > 0);
        after.setEnabled(at + 1 < of);
    }
}
