package org.cagewall.kiosk.handover;

import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.ListRow;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Row;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.text.Words;

/** Days away as they are planned, or not yet. Used on the event thread. */
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

    JComponent planned(HandoverState.Planned page) {
        boolean narrow = Measure.px(100) > 100;
        Pane pane = new Pane(new MigLayout(
                "insets 0, fill, gap 20 20" + (narrow ? ", wrap 1" : ""),
                narrow ? "[grow,fill]" : "[grow 3,fill,sizegroup][grow 2,fill]",
                "[top]"));
        pane.add(plan(page), "wmin 0");
        pane.add(before(page), "wmin 0");
        Stack stack = new Stack();
        stack.add(pane);
        return new TouchScroll(words, "away", stack);
    }

    private Card plan(HandoverState.Planned page) {
        Card card =
                new Card(new MigLayout("insets 24 28 24 28, fillx, wrap 2, gap 16 12", "[220!][grow,fill]")).leading();
        card.add(new WrapLabel(page.days(), Type.TITLE, Tone.INK), "spanx 2, wmin 0, growx");
        for (HandoverState.Fact fact : page.facts()) {
            card.add(new WrapLabel(fact.label(), Type.LINE, Tone.SOFT), "wmin 0, growx, aligny top");
            card.add(new WrapLabel(fact.text(), Type.LEAD, Tone.INK), "wmin 0, growx");
        }
        Row buttons = new Row();
        if (page.running() == HandoverState.Running.NOW) {
            buttons.add(button(ButtonKind.MAIN, "end", () -> presenter.get().end()));
        }
        buttons.add(button(ButtonKind.OUTLINED, "change", () -> presenter.get().change()));
        card.add(buttons, "spanx 2, growx, gaptop 12");
        return card;
    }

    private TouchButton button(ButtonKind kind, String name, Runnable then) {
        return TouchButton.of(kind, name, words.say("handover." + name), then)
                .type(Type.LEAD)
                .tall(72);
    }

    private Stack before(HandoverState.Planned page) {
        Stack stack = new Stack();
        stack.add(new WrapLabel(
                words.say(page.running() == HandoverState.Running.NOW ? "handover.meanwhile" : "handover.before"),
                Type.ACTION,
                Tone.INK));
        for (HandoverState.ToDo each : page.toDo()) {
            stack.add(new ListRow(
                    "to-do." + each.name(), each.face(), () -> presenter.get().see(each.where())));
        }
        return stack;
    }
}
