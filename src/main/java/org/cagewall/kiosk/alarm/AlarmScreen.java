package org.cagewall.kiosk.alarm;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.TwoButtons;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Halfway;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Words;

/** What to do in an alarm, and whom to phone, on one page. Used on the event thread. */
public final class AlarmScreen extends HeadedScreen {

    private final Words words;
    private final AlarmPresenter presenter;

    public AlarmScreen(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Asking asking,
            Words words,
            Halfway<AlarmHalf> halfway,
            Optional<Danger> danger) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Sizes.isLargest() ? "[grow,fill]" : "[grow,fill][400!,fill]", "[grow,fill]"));
        this.words = words;
        presenter = new AlarmPresenter(desk, pen, navigator, asking, words, halfway, danger, this::render);
    }

    @Override
    public boolean isBegun() {
        return presenter.isBegun();
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(AlarmState state) {
        heading.say(state.title(), state.subtitle());
        view.removeAll();
        state.open()
                .ifPresentOrElse(
                        open -> {
                            view.add(steps(open), "wmin 0, hmin 0");
                            if (!Sizes.isLargest()) {
                                view.add(new TouchScroll(words, "side", phones(open)), "wmin 0");
                            }
                        },
                        () -> view.add(all(state), "span, wmin 0"));
        rebuilt();
    }

    private JComponent all(AlarmState state) {
        SideBySide row = new SideBySide();
        for (Choice<Danger> danger : state.dangers()) {
            row.add(TouchButton.of(
                            ButtonKind.OUTLINED,
                            "alarm." + danger.name(),
                            danger.word(),
                            () -> presenter.choose(danger.value()))
                    .tall(80));
        }
        Stack stack = new Stack(16);
        stack.add(row);
        return new TouchScroll(words, "alarms", stack);
    }

    private JComponent steps(AlarmState.Open open) {
        Stack stack = new Stack(12);
        stack.add(new WrapLabel(open.title(), TextStyle.TITLE, Tone.INK));
        if (Sizes.isLargest()) {
            stack.add(phones(open));
        }
        int number = 1;
        for (String step : open.steps()) {
            stack.add(new WrapLabel(words.say("alarm.step", number++, step), TextStyle.LEAD, Tone.INK));
        }
        if (!open.cages().isEmpty()) {
            stack.add(new WrapLabel(words.say("alarm.which-cage"), TextStyle.BUTTON, Tone.SOFT));
            Chips<Optional<String>> cages = Chips.oneOf("cage", open.cages(), cage -> presenter.at(cage));
            open.at().ifPresent(at -> cages.choose(List.of(at)));
            stack.add(cages);
        }
        Card card = new Card(new MigLayout(
                        Sizes.isLargest()
                                ? "insets 8 12 8 12, fill, wrap 1, gap 0 8"
                                : "insets 20 28 20 28, fill, wrap 1, gap 0 16",
                        "[grow,fill]",
                        "[0:0,grow,fill][]"))
                .leading();
        card.add(new TouchScroll(words, "steps", stack), "grow, hmin 0");
        card.add(
                new TwoButtons(
                        TouchButton.of(ButtonKind.MAIN, "phone", words.say("alarm.phone"), () -> presenter.phone())
                                .tall(52),
                        TouchButton.of(
                                        ButtonKind.OUTLINED,
                                        "record",
                                        words.say("alarm.record"),
                                        () -> presenter.record())
                                .tall(52)),
                "growx");
        return card;
    }

    private Stack phones(AlarmState.Open open) {
        Stack stack = new Stack(12);
        for (AlarmState.Phone phone : open.phones()) {
            Card card = new Card(new MigLayout("insets 12 20 12 20, fillx, wrap 1, gap 0", "[grow,fill]"));
            card.add(new WrapLabel(phone.name(), TextStyle.SECOND, Tone.SOFT), "wmin 0, growx");
            card.add(new WrapLabel(phone.number(), TextStyle.ACTION, Tone.INK).lines(1), "wmin 0, growx");
            stack.add(card);
        }
        stack.add(new WrapLabel(open.noAnswer(), TextStyle.LINE, Tone.INK));
        stack.add(new WrapLabel(open.until(), TextStyle.LINE, Tone.INK));
        open.agreed().forEach(agreed -> stack.add(new WrapLabel(agreed, TextStyle.TAG, Tone.INK)));
        stack.add(TouchButton.of(ButtonKind.PLAIN, "another", words.say("alarm.another"), () -> presenter.another())
                .tall(52));
        return stack;
    }
}
