package org.cagewall.kiosk.shell;

import java.awt.Component;
import java.awt.Graphics;
import java.awt.event.MouseAdapter;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.BorderFactory;
import javax.swing.JComponent;
import javax.swing.JPanel;
import javax.swing.LayoutFocusTraversalPolicy;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Tall;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/**
 * A card over a veil that hides the screen from touch until it is answered. Used on the event thread.
 */
final class OverlaySheet extends JPanel {

    private static final long serialVersionUID = 1L;

    private final Card card;
    private final transient Optional<AnswerButton> safe;
    private final transient Consumer<AnswerButton> onAnswer;

    OverlaySheet(
            Words words,
            String title,
            Optional<String> text,
            Optional<JComponent> content,
            List<AnswerButton> answers,
            Consumer<AnswerButton> onAnswer) {
        super(null);
        this.onAnswer = onAnswer;
        this.safe = answers.isEmpty() ? Optional.empty() : Optional.of(answers.get(answers.size() - 1));
        setName("sheet");
        setOpaque(false);
        addMouseListener(new MouseAdapter() {});
        setFocusCycleRoot(true);
        setFocusTraversalPolicy(new LayoutFocusTraversalPolicy());
        card = new Card(new MigLayout(
                        "insets 24 28 28 28, wrap 1, fill, gap 0 12", "[grow,fill]", "[]0[grow,fill]20[]"))
                .strong();
        WrapLabel heading = new WrapLabel(title, TextStyle.TITLE, Tone.INK);
        heading.setName("sheet.title");
        card.add(heading, "wmin 0");
        Stack body = new Stack(16);
        body.setBorder(BorderFactory.createEmptyBorder(Sizes.px(12), 0, 0, 0));
        text.ifPresent(said -> {
            WrapLabel line = new WrapLabel(said, TextStyle.LINE, Tone.INK).balanced();
            line.setName("sheet.text");
            body.add(line);
        });
        content.ifPresent(body::add);
        card.add(new TouchScroll(words, "sheet.body", body), "wmin 0, hmin 0");
        if (!answers.isEmpty()) {
            card.add(buttons(words, answers));
        }
        add(card);
        getAccessibleContext().setAccessibleName(title);
    }

    private Pane buttons(Words words, List<AnswerButton> answers) {
        String columns = answers.size() == 3 ? "wrap 3" : "wrap 2";
        Pane buttons = new Pane(new MigLayout("insets 0, fillx, " + columns + ", gap 16"));
        for (AnswerButton answer : answers) {
            TouchButton button = TouchButton.of(
                            answer.kind(),
                            "answer." + answer.name(),
                            words.say(answer.text()),
                            () -> onAnswer.accept(answer))
                    .type(answer.kind() == ButtonKind.QUIET ? TextStyle.BUTTON : TextStyle.LEAD)
                    .tall(80);
            buttons.add(button, "grow, sizegroup answer" + (answers.size() == 1 ? ", spanx 2" : ""));
        }
        return buttons;
    }

    void answerSafely() {
        safe.ifPresent(onAnswer);
    }

    /** Whether something was written or chosen on it that goes with it. */
    boolean isBegun() {
        return Begun.in(this);
    }

    /** Puts the keyboard on the safe answer. */
    void takeFocus() {
        Component last = getFocusTraversalPolicy().getLastComponent(this);
        if (last != null) {
            last.requestFocusInWindow();
        }
    }

    @Override
    public void doLayout() {
        int margin = Sizes.margin();
        int width = Math.min(Sizes.px(760), getWidth() - 2 * margin);
        int height = Math.min(Tall.of(card, width), getHeight() - 2 * margin);
        card.setBounds((getWidth() - width) / 2, (getHeight() - height) / 2, width, height);
    }

    @Override
    protected void paintComponent(Graphics graphics) {
        graphics.setColor(Tone.VEIL.color());
        graphics.fillRect(0, 0, getWidth(), getHeight());
    }
}
