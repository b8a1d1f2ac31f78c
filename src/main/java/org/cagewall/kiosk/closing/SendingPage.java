package org.cagewall.kiosk.closing;

import java.awt.Dimension;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.paper.QrView;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** The note as a symbol for a phone's camera, and beside it what it says. Used on the event thread. */
final class SendingPage extends Card {

    private static final long serialVersionUID = 1L;

    /** A symbol of version 12 with its quiet zone has 73 modules a side. */
    private static final int MODULES = 73;

    SendingPage(Words words, ClosingState.Sending sending, Supplier<ClosingPresenter> presenter) {
        super(new MigLayout(
                Sizes.isLargest() ? "insets 12, fill, gap 20 12" : "insets 20 28 20 28, fill, gap 28 16",
                "[][grow,fill]",
                "[grow,fill][]"));
        leading();
        add(symbol(words, sending), "spany 2, aligny center, growy 0");
        add(new TouchScroll(words, "message", message(words, sending, presenter)), "wmin 0, wrap");
        add(buttons(words, sending, presenter), "growx");
    }

    /** The symbol does not grow with the letters: it is read by a camera, and six pixels a module are plenty. */
    private static QrView symbol(Words words, ClosingState.Sending sending) {
        Symbol symbol = Symbols.link(sending.shown().link());
        boolean[][] dark = new boolean[symbol.side()][symbol.side()];
        for (int row = 0; row < symbol.side(); row++) {
            for (int column = 0; column < symbol.side(); column++) {
                dark[row][column] = symbol.isDark(column, row);
            }
        }
        QrView view = new QrView(dark, words.say("closing.symbol"));
        int side = MODULES * (Sizes.isLargest() ? 5 : 6);
        view.setPreferredSize(new Dimension(side, side));
        view.setMinimumSize(new Dimension(side, side));
        return view;
    }

    private static Stack message(Words words, ClosingState.Sending sending, Supplier<ClosingPresenter> presenter) {
        Stack stack = new Stack(16);
        if (sending.ways().size() > 1) {
            stack.add(ways(sending, presenter));
        }
        stack.add(new WrapLabel(words.say("closing.send-how"), TextStyle.LEAD, Tone.INK));
        stack.add(new WrapLabel(sending.chosen().to(), TextStyle.ACTION, Tone.INK));
        if (sending.parts() > 1) {
            stack.add(new WrapLabel(
                    words.say("closing.send-part", sending.part() + 1, sending.parts()), TextStyle.TAG, Tone.INK));
        }
        Card card = new Card().plain();
        card.add(new WrapLabel(sending.shown().text(), TextStyle.LEAD, Tone.INK), "wmin 0, growx");
        stack.add(card);
        return stack;
    }

    private static JComponent ways(ClosingState.Sending sending, Supplier<ClosingPresenter> presenter) {
        List<Choice<Integer>> choices = new ArrayList<>();
        for (int i = 0; i < sending.ways().size(); i++) {
            ClosingState.Way way = sending.ways().get(i);
            choices.add(new Choice<>(way.name(), way.word(), i));
        }
        return new Segment<>("way", choices, way -> presenter.get().sendBy(way)).choose(sending.way());
    }

    private static Pane buttons(Words words, ClosingState.Sending sending, Supplier<ClosingPresenter> presenter) {
        Pane buttons = new Pane(new MigLayout("insets 0, fill, gap 16"));
        boolean more = sending.part() + 1 < sending.parts();
        if (sending.parts() > 1) {
            buttons.add(
                    button(
                            more ? ButtonKind.MAIN : ButtonKind.OUTLINED,
                            "next-message",
                            words.say(more ? "closing.send-next" : "closing.send-again"),
                            () -> presenter.get().nextMessage()),
                    "grow, sizegroup answer");
        }
        buttons.add(
                button(
                        more ? ButtonKind.OUTLINED : ButtonKind.MAIN,
                        "back",
                        words.say(more ? "closing.back" : "closing.sent"),
                        () -> presenter.get().back()),
                "grow, sizegroup answer");
        return buttons;
    }

    private static TouchButton button(ButtonKind kind, String name, String text, Runnable onPress) {
        return TouchButton.of(kind, name, text, onPress).type(TextStyle.LEAD).tall(Sizes.isLargest() ? 52 : 72);
    }
}
