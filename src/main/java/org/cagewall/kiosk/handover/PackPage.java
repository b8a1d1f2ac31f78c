package org.cagewall.kiosk.handover;

import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Labelled;
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

/** The pack for the sitter: what is in it, and onto paper or into a file with it. Used on the event thread. */
final class PackPage extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final transient Supplier<HandoverPresenter> presenter;

    PackPage(Words words, HandoverState.Packing page, Supplier<HandoverPresenter> presenter) {
        super(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[grow,fill][]"));
        this.words = words;
        this.presenter = presenter;
        Stack all = new Stack(16);
        all.add(contents(page));
        printers(all, page);
        if (Sizes.isRoomy()) {
            add(new TouchScroll(words, "pack", all), "wmin 0");
            add(foot(page), "wmin 0");
        } else {
            all.add(foot(page));
            add(new TouchScroll(words, "pack", all), "wmin 0");
        }
    }

    private Card contents(HandoverState.Packing page) {
        Card card = new Card(new MigLayout("insets 20 24 20 24, fillx, wrap 1, gap 0 8", "[grow,fill]")).leading();
        card.add(new WrapLabel(page.title(), TextStyle.TITLE, Tone.INK), "wmin 0, growx");
        for (String line : page.contents()) {
            card.add(new WrapLabel(line, TextStyle.LEAD, Tone.INK), "wmin 0, growx");
        }
        card.add(new WrapLabel(words.say("handover.pack-text"), TextStyle.LINE, Tone.SOFT), "wmin 0, growx, gaptop 4");
        return card;
    }

    private void printers(Stack all, HandoverState.Packing page) {
        List<String> names = page.printers().orElse(List.of());
        if (names.isEmpty()) {
            String key = page.printers().isEmpty() ? "handover.looking" : "handover.no-printer";
            all.add(new WrapLabel(words.say(key), TextStyle.LINE, Tone.SOFT));
            return;
        }
        List<Choice<String>> printers =
                names.stream().map(each -> new Choice<>(each, each, each)).toList();
        all.add(Labelled.of(
                words.say("handover.printer"),
                Chips.oneOf("printer", printers, name -> presenter.get().pack().printer(name))
                        .choose(List.of(page.printer()))));
    }

    private Pane foot(HandoverState.Packing page) {
        Pane foot = new Pane(new MigLayout("insets 0, fillx, wrap 1, gap 0 12", "[grow,fill]"));
        page.said().ifPresent(said -> foot.add(said(page, said), "wmin 0, growx"));
        boolean prints = page.printers().filter(all -> !all.isEmpty()).isPresent();
        SideBySide buttons = new SideBySide();
        if (prints) {
            buttons.add(ready(
                    page, ButtonKind.MAIN, "print", () -> presenter.get().pack().print()));
        }
        buttons.add(ready(page, prints ? ButtonKind.OUTLINED : ButtonKind.MAIN, "save-pack", () -> presenter
                .get()
                .pack()
                .save()));
        buttons.add(button(
                ButtonKind.OUTLINED, "back", "go-back", () -> presenter.get().backToThePlan()));
        foot.add(buttons, "growx");
        return foot;
    }

    private TouchButton ready(HandoverState.Packing page, ButtonKind kind, String name, Runnable then) {
        TouchButton button = button(kind, name, name, then);
        button.setEnabled(page.work() == HandoverState.Work.NONE);
        return button;
    }

    private TouchButton button(ButtonKind kind, String name, String key, Runnable then) {
        return TouchButton.of(kind, name, words.say("handover." + key), then)
                .type(TextStyle.LEAD)
                .tall(64);
    }

    private static JComponent said(HandoverState.Packing page, String sentence) {
        if (page.outcome() == HandoverState.Came.WELL) {
            WrapLabel label = new WrapLabel(sentence, TextStyle.LINE, Tone.INK);
            label.setName("saved");
            return label;
        }
        Card card = new Card(new MigLayout("insets 12 16, fillx", "[grow,fill]")).attention();
        WrapLabel label = new WrapLabel(sentence, TextStyle.TAG, Tone.ATTENTION_INK);
        label.setName("problem");
        card.add(label, "wmin 0");
        return card;
    }
}
