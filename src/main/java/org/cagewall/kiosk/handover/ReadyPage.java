package org.cagewall.kiosk.handover;

import java.util.function.Supplier;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** The days away as they are planned, and beside them what is to be ready. Used on the event thread. */
final class ReadyPage extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Supplier<HandoverPresenter> presenter;
    private final Stack plan = new Stack();
    private final Stack list = new Stack();

    ReadyPage(Words words, HandoverState.Planned page, Supplier<HandoverPresenter> presenter) {
        super(new MigLayout(
                "insets 0, fill, gap 20",
                isWide() ? "[grow 1,fill,sizegroup][grow 1,fill,sizegroup]" : "[grow,fill]",
                "[grow,fill]"));
        this.words = words;
        this.presenter = presenter;
        if (isWide()) {
            add(new TouchScroll(words, "away", plan), "wmin 0");
            add(new TouchScroll(words, "ready", list), "wmin 0");
        } else {
            Stack both = new Stack(20);
            both.add(plan);
            both.add(list);
            add(new TouchScroll(words, "away", both), "wmin 0");
        }
        show(page);
    }

    private static boolean isWide() {
        return Sizes.px(100) <= 100;
    }

    void show(HandoverState.Planned page) {
        plan.removeAll();
        list.removeAll();
        plan.add(card(page));
        list.add(new WrapLabel(page.ready().title(), TextStyle.ACTION, Tone.INK));
        list.add(new WrapLabel(page.ready().text(), TextStyle.LINE, Tone.SOFT));
        for (HandoverState.ToDo each : page.ready().lines()) {
            list.add(new ListRow(
                    "ready." + each.name(), each.face(), () -> presenter.get().see(each)));
        }
        revalidate();
        repaint();
    }

    private Card card(HandoverState.Planned page) {
        Card card =
                new Card(new MigLayout("insets 20 24 20 24, fillx, wrap 2, gap 16 10", "[190!][grow,fill]")).leading();
        card.add(new WrapLabel(page.days(), TextStyle.TITLE, Tone.INK), "spanx 2, wmin 0, growx");
        for (HandoverState.Fact fact : page.facts()) {
            card.add(new WrapLabel(fact.label(), TextStyle.LINE, Tone.SOFT), "wmin 0, growx, aligny top");
            card.add(new WrapLabel(fact.text(), TextStyle.LEAD, Tone.INK), "wmin 0, growx");
        }
        boolean away = page.running() == HandoverState.Running.NOW;
        SideBySide buttons = new SideBySide();
        if (away) {
            buttons.add(button(ButtonKind.MAIN, "end", () -> presenter.get().end()));
        }
        buttons.add(button(away ? ButtonKind.OUTLINED : ButtonKind.MAIN, "rehearse", () -> presenter
                .get()
                .rehearse()));
        buttons.add(
                button(ButtonKind.OUTLINED, "pack", () -> presenter.get().pack().open()));
        buttons.add(button(ButtonKind.OUTLINED, "change", () -> presenter.get().change()));
        card.add(buttons, "spanx 2, growx, gaptop 8");
        return card;
    }

    private TouchButton button(ButtonKind kind, String name, Runnable then) {
        return TouchButton.of(kind, name, words.say("handover." + name), then)
                .type(TextStyle.LEAD)
                .tall(64);
    }
}
