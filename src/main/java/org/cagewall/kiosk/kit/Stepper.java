package org.cagewall.kiosk.kit;

import java.util.function.IntConsumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** A small number that is made less or more by touch. Used on the event thread. */
public final class Stepper extends Pane {

    private static final long serialVersionUID = 1L;

    private final int least;
    private final int most;
    private final transient IntConsumer onChange;
    private final WrapLabel shown;
    private final TouchButton fewer;
    private final TouchButton more;
    private int value;

    /** A number from least to most; {@code label} says what is counted. */
    public Stepper(Words words, String name, String label, int least, int most, int value, IntConsumer onChange) {
        super(new MigLayout("insets 0, gap 8 6", "[][][]"));
        this.least = least;
        this.most = most;
        this.onChange = onChange;
        setName(name);
        shown = new WrapLabel("", TextStyle.TITLE, Tone.INK).lines(1).centred();
        shown.setName(name + ".value");
        fewer = step(name + ".fewer", "\u2212", words.say("kit.fewer", label), -1);
        more = step(name + ".more", "+", words.say("kit.more", label), 1);
        if (!label.isEmpty()) {
            add(new WrapLabel(label, TextStyle.TAG, Tone.SOFT), "spanx 3, wrap");
        }
        add(fewer);
        add(shown, most < 1000 ? "w 72!" : "w 104!");
        add(more);
        set(value);
    }

    public int value() {
        return value;
    }

    /** Shows this number, without telling anyone. */
    public void set(int number) {
        value = Math.max(least, Math.min(most, number));
        shown.setText(String.valueOf(value));
        fewer.setEnabled(value > least);
        more.setEnabled(value < most);
    }

    private TouchButton step(String name, String sign, String said, int by) {
        TouchButton button = TouchButton.of(ButtonKind.PLAIN, name, sign, () -> {
                    set(value + by);
                    onChange.accept(value);
                })
                .type(TextStyle.MAIN)
                .tall(64)
                .quick();
        button.getAccessibleContext().setAccessibleName(said);
        button.setPreferredSize(new java.awt.Dimension(Sizes.px(72), Sizes.px(64)));
        return button;
    }
}
