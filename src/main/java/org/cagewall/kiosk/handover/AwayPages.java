package org.cagewall.kiosk.handover;

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
        return new EmptyState(
                page.title(),
                page.text(),
                List.of(TouchButton.of(ButtonKind.MAIN, "plan", words.say("handover.plan"), () -> presenter
                        .get()
                        .plan())));
    }
}
