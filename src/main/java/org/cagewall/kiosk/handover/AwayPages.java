package org.cagewall.kiosk.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.text.Words;

/** Days away that are not planned yet. Used on the event thread. */
final class AwayPages {

    private final Words words;
    private final Supplier<HandoverPresenter> presenter;

    AwayPages(Words words, Supplier<HandoverPresenter> presenter) {
        this.words = words;
        this.presenter = presenter;
    }

    JComponent nothing(HandoverState.Nothing page) {
        List<TouchButton> buttons = new ArrayList<>();
        if (page.lately() == HandoverState.Lately.OVER_BY_PLAN) {
            buttons.add(
                    button(ButtonKind.OUTLINED, "longer", () -> presenter.get().longer()));
        }
        buttons.add(button(ButtonKind.MAIN, "plan", () -> presenter.get().plan()));
        return new EmptyState(page.title(), page.text(), buttons);
    }

    private TouchButton button(ButtonKind kind, String name, Runnable then) {
        return TouchButton.of(kind, name, words.say("handover." + name), then);
    }
}
