package org.cagewall.kiosk.kit;

import java.util.OptionalInt;
import java.util.function.Consumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.text.Words;

/** Ten figures to touch, for a number that is too large for a stepper. Used on the event thread. */
public final class CountPad extends Pane {

    private static final long serialVersionUID = 1L;

    private final int most;
    private final transient Consumer<OptionalInt> onChange;
    private final WrapLabel shown =
            new WrapLabel("", Type.NEXT, Tone.INK).lines(1).centred();
    private String figures = "";

    /** A number from 0 to {@code most}; nothing is a value too. */
    public CountPad(Words words, String name, int most, Consumer<OptionalInt> onChange) {
        super(new MigLayout(
                "insets 0, wrap 3, fillx, gap 12",
                "[grow,fill,sizegroup f][grow,fill,sizegroup f][grow,fill,sizegroup f]"));
        this.most = most;
        this.onChange = onChange;
        setName(name);
        shown.setName(name + ".value");
        Card display = new Card(new MigLayout("insets 0, fill", "[grow,fill]", "[72!,fill]"));
        display.add(shown);
        add(display, "spanx 3, growx");
        for (int figure = 1; figure <= 9; figure++) {
            add(figure(figure));
        }
        add(key(".clear", words.say("kit.clear"), this::clear).type(Type.BUTTON));
        add(figure(0));
        add(key(".back", words.say("kit.rub-out"), this::rubOut).type(Type.BUTTON));
    }

    public OptionalInt value() {
        return figures.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(figures));
    }

    private TouchButton figure(int figure) {
        return key("." + figure, String.valueOf(figure), () -> type(figure)).type(Type.MAIN);
    }

    private TouchButton key(String name, String text, Runnable onPress) {
        TouchButton key = TouchButton.of(ButtonKind.PLAIN, getName() + name, text, onPress)
                .tall(64);
        key.setPreferredSize(new java.awt.Dimension(Measure.px(104), Measure.px(64)));
        return key;
    }

    private void type(int figure) {
        String longer = figures.equals("0") ? String.valueOf(figure) : figures + figure;
        if (longer.length() < 10 && Long.parseLong(longer) <= most) {
            show(longer);
        }
    }

    private void rubOut() {
        if (!figures.isEmpty()) {
            show(figures.substring(0, figures.length() - 1));
        }
    }

    private void clear() {
        show("");
    }

    private void show(String other) {
        figures = other;
        shown.setText(figures);
        onChange.accept(value());
    }
}
