package org.cagewall.kiosk.kit;

import java.util.List;
import java.util.OptionalInt;
import java.util.function.Consumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** Ten figures to touch, for a number that is too large for a stepper. Used on the event thread. */
public final class CountPad extends Pane {

    private static final long serialVersionUID = 1L;

    private static final int CLEAR = -1;
    private static final int BACK = -2;

    private final int most;
    private final transient Consumer<OptionalInt> onChange;
    private final WrapLabel shown =
            new WrapLabel("", TextStyle.NEXT, Tone.INK).lines(1).centred();
    private String figures = "";

    /** A number from 0 to {@code most}; nothing is a value too. */
    public CountPad(Words words, String name, int most, Consumer<OptionalInt> onChange) {
        this(words, name, most, onChange, 3, List.of(1, 2, 3, 4, 5, 6, 7, 8, 9, CLEAR, 0, BACK));
    }

    /** The same with its figures in two long rows, where there is no room for four. */
    public static CountPad flat(Words words, String name, int most, Consumer<OptionalInt> onChange) {
        return new CountPad(words, name, most, onChange, 6, List.of(1, 2, 3, 4, 5, CLEAR, 6, 7, 8, 9, 0, BACK));
    }

    private CountPad(
            Words words, String name, int most, Consumer<OptionalInt> onChange, int columns, List<Integer> keys) {
        super(new MigLayout("insets 0, fillx, gap 12, wrap " + columns, "[grow,fill,sizegroup f]".repeat(columns)));
        this.most = most;
        this.onChange = onChange;
        setName(name);
        shown.setName(name + ".value");
        Card display = new Card(new MigLayout("insets 0, fill", "[grow,fill]", "[72!,fill]"));
        display.add(shown);
        add(display, "growx, spanx " + columns);
        keys.forEach(each -> add(keyOf(words, each)));
    }

    private TouchButton keyOf(Words words, int each) {
        return switch (each) {
            case CLEAR -> key(".clear", words.say("kit.clear"), this::clear).type(TextStyle.BUTTON);
            case BACK -> key(".back", words.say("kit.rub-out"), this::rubOut).type(TextStyle.BUTTON);
            default -> figure(each);
        };
    }

    public OptionalInt value() {
        return figures.isEmpty() ? OptionalInt.empty() : OptionalInt.of(Integer.parseInt(figures));
    }

    private TouchButton figure(int figure) {
        return key("." + figure, String.valueOf(figure), () -> type(figure)).type(TextStyle.MAIN);
    }

    private TouchButton key(String name, String text, Runnable onPress) {
        TouchButton key = TouchButton.of(ButtonKind.PLAIN, getName() + name, text, onPress)
                .tall(64)
                .quick();
        key.setPreferredSize(new java.awt.Dimension(Sizes.px(104), Sizes.px(64)));
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
