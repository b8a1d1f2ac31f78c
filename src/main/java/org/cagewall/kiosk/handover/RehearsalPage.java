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
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** One day away as the sitter will meet it, only to be read. Used on the event thread. */
final class RehearsalPage extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Supplier<HandoverPresenter> presenter;

    RehearsalPage(Words words, HandoverState.Rehearsing page, Supplier<HandoverPresenter> presenter) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Sizes.isRoomy() ? "[grow,fill][400!,fill]" : "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.presenter = presenter;
        Stack list = new Stack();
        if (!Sizes.isRoomy()) {
            list.add(heading(page));
        }
        for (HandoverState.Part part : page.parts()) {
            list.add(new WrapLabel(part.title(), TextStyle.ACTION, Tone.INK));
            part.rows().forEach(row -> list.add(Still.of(row)));
        }
        add(new TouchScroll(words, "rehearsal", list), "wmin 0");
        if (Sizes.isRoomy()) {
            Stack side = new Stack();
            side.add(heading(page));
            add(new TouchScroll(words, "rehearsal-side", side), "wmin 0");
        }
    }

    private Card heading(HandoverState.Rehearsing page) {
        Card card = new Card(new MigLayout("insets 16 20 20 20, fillx, wrap 1, gap 0 10", "[grow,fill]")).attention();
        card.add(new WrapLabel(words.say("handover.rehearsal"), TextStyle.TAG, Tone.ATTENTION_INK), "wmin 0, growx");
        card.add(new WrapLabel(page.title(), TextStyle.TITLE, Tone.ATTENTION_INK), "wmin 0, growx");
        card.add(new WrapLabel(page.text(), TextStyle.LINE, Tone.ATTENTION_INK), "wmin 0, growx");
        SideBySide days = new SideBySide();
        TouchButton before = TouchButton.arrow(
                TouchButton.Arrow.BACK, "day-before", words.say("handover.day-before"), () -> presenter
                        .get()
                        .rehearse(page.day().minusDays(1)));
        before.setEnabled(page.day().isAfter(page.first()));
        TouchButton after =
                TouchButton.arrow(TouchButton.Arrow.ON, "day-after", words.say("handover.day-after"), () -> presenter
                        .get()
                        .rehearse(page.day().plusDays(1)));
        after.setEnabled(page.day().isBefore(page.last()));
        days.add(before);
        days.add(after);
        card.add(days, "growx, gaptop 4");
        card.add(
                TouchButton.of(ButtonKind.MAIN, "back", words.say("handover.rehearsal-over"), () -> presenter
                                .get()
                                .backToThePlan())
                        .type(TextStyle.LEAD)
                        .tall(64),
                "growx, gaptop 4");
        return card;
    }
}
