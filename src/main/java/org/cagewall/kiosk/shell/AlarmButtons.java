package org.cagewall.kiosk.shell;

import java.util.function.Consumer;
import java.util.stream.Stream;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Row;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Words;

/** The dangers as buttons, those first for which nobody stops to look for a cage. Used on the event thread. */
public final class AlarmButtons extends Pane {

    private static final long serialVersionUID = 1L;

    private final Row row = new Row();

    public AlarmButtons(Words words, Consumer<Danger> onTouch) {
        super(new java.awt.BorderLayout());
        add(row);
        inOrder()
                .forEach(danger -> row.add(TouchButton.of(
                                ButtonKind.ATTENTION,
                                "alarm." + danger.word(),
                                words.say("alarm.short." + danger.word()),
                                () -> onTouch.accept(danger))
                        .type(Type.TAG)
                        .tall(52)));
    }

    private static Stream<Danger> inOrder() {
        return Stream.of(
                Danger.ILL,
                Danger.DEAD,
                Danger.LOOSE,
                Danger.MISSING,
                Danger.STUCK,
                Danger.HEAT,
                Danger.COLD,
                Danger.SMOKE,
                Danger.WATER,
                Danger.POWER,
                Danger.STRANGER,
                Danger.VERMIN);
    }

    @Override
    public int heightFor(int width) {
        return row.heightFor(width);
    }
}
