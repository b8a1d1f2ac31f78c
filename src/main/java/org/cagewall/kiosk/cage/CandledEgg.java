package org.cagewall.kiosk.cage;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import javax.swing.JComponent;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.nest.EggButton;
import org.cagewall.kiosk.kit.nest.EggLook;
import org.cagewall.room.nest.EggFinding;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/**
 * One egg held against the light: a touch on the egg itself means full, which is the likeliest, and each finding has a
 * button below it. Used on the event thread.
 */
final class CandledEgg {

    private static final List<EggFinding> LIKELIEST_FIRST =
            List.of(EggFinding.FULL, EggFinding.CLEAR, EggFinding.ADDLED, EggFinding.UNSURE);

    private final Stack column = new Stack(6);
    private final Words words;
    private final CageState.LyingFace face;
    private final Consumer<EggFinding> then;
    private final Map<EggFinding, TouchButton> buttons = new EnumMap<>(EggFinding.class);

    CandledEgg(Words words, CageState.LyingFace face, Consumer<EggFinding> then) {
        this.words = words;
        this.face = face;
        this.then = then;
        column.add(egg(face.look(), face.line()));
        for (EggFinding finding : LIKELIEST_FIRST) {
            TouchButton button = button(finding, ButtonKind.PLAIN);
            buttons.put(finding, button);
            column.add(button);
        }
    }

    JComponent part() {
        return column;
    }

    private EggButton egg(EggLook look, String line) {
        return new EggButton(
                "candle." + face.mark(), look, face.mark(), line, face.said(), () -> found(EggFinding.FULL));
    }

    private TouchButton button(EggFinding finding, ButtonKind kind) {
        String name = Message.word(finding);
        TouchButton button = TouchButton.of(
                        kind,
                        "candle." + face.mark() + "." + name,
                        words.say("cage.light." + name),
                        () -> found(finding))
                .tall(52);
        button.getAccessibleContext().setAccessibleName(words.say("cage.light-said", face.mark(), finding));
        return button;
    }

    private void found(EggFinding finding) {
        then.accept(finding);
        column.remove(0);
        EggButton egg = egg(EggLook.valueOf(finding.name()), words.say("cage.light." + Message.word(finding)));
        egg.setSelected(true);
        column.add(egg, 0);
        buttons.forEach((each, button) -> button.kind(each == finding ? ButtonKind.LIKELY : ButtonKind.PLAIN));
        column.revalidate();
        column.repaint();
    }
}
