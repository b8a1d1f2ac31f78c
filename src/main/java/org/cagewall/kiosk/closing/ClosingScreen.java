package org.cagewall.kiosk.closing;

import java.util.List;
import java.util.stream.Stream;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.TwoButtons;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.shell.AlarmButtons;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Begun;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Dishes;
import org.cagewall.room.Reason;
import org.cagewall.text.Words;

/** The end of a sitter's day: what is left, a word to the owner, and a last look round. Used on the event thread. */
public final class ClosingScreen extends HeadedScreen {

    private static final List<Reason> REASONS =
            List.of(Reason.COULD_NOT_OPEN, Reason.NO_TIME, Reason.NO_FOOD, Reason.NOT_SURE, Reason.SOMETHING_ELSE);
    private static final List<String> LAST_LOOK = List.of("doors", "water", "bin", "lights");

    private final Words words;
    private final ClosingPresenter presenter;

    public ClosingScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Words words) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Sizes.isLargest() ? "[grow,fill]" : "[grow,fill][400!,fill]", "[grow,fill]"));
        this.words = words;
        presenter = new ClosingPresenter(desk, pen, navigator, asking, words, this::render);
    }

    @Override
    public boolean isBegun() {
        return !presenter.isSending() && Begun.in(view);
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(ClosingState state) {
        heading.say(state.title(), state.subtitle());
        view.removeAll();
        if (state.sending().isPresent()) {
            view.add(new SendingPage(words, state.sending().get(), () -> presenter), "span, wmin 0");
        } else {
            view.add(state.step() == ClosingState.Step.WHY ? why(state) : left(state), "wmin 0");
            if (!Sizes.isLargest()) {
                view.add(side(), "wmin 0");
            }
        }
        rebuilt();
    }

    private JComponent left(ClosingState state) {
        Stack stack = new Stack();
        Card card = new Card(new MigLayout("insets 20 28 24 28, fillx, wrap 1, gap 0 8", "[grow,fill]")).leading();
        card.add(new WrapLabel(state.word(), TextStyle.TITLE, Tone.INK), "wmin 0");
        card.add(new WrapLabel(state.text(), TextStyle.LINE, Tone.INK), "wmin 0");
        if (state.step() == ClosingState.Step.LEFT) {
            card.add(
                    new TwoButtons(
                            TouchButton.of(
                                    ButtonKind.MAIN,
                                    "to-list",
                                    words.say(
                                            state.left().stream().anyMatch(ClosingState.Left::isACall)
                                                    ? "closing.phone"
                                                    : "closing.to-list"),
                                    () -> presenter.toTheList()),
                            TouchButton.of(
                                    ButtonKind.OUTLINED,
                                    "say-why",
                                    words.say("closing.say-why"),
                                    () -> presenter.askWhy())),
                    "growx, gaptop 8");
        }
        card.add(
                TouchButton.of(
                        state.step() == ClosingState.Step.LEFT ? ButtonKind.OUTLINED : ButtonKind.MAIN,
                        "send",
                        words.say("closing.send"),
                        () -> presenter.send()),
                "growx, gaptop 8");
        stack.add(card);
        for (int i = 0; i < state.left().size(); i++) {
            ClosingState.Left left = state.left().get(i);
            stack.add(new ListRow("left." + i, left.face(), () -> presenter.open(left)));
        }
        return new TouchScroll(words, "left", stack);
    }

    private JComponent why(ClosingState state) {
        Chips<Reason> chips = Chips.oneOf("why", Choice.of(REASONS, words, "today.why."), chosen -> {});
        Chips<Dishes> dishes = Chips.oneOf("dishes", dishes(), chosen -> {});
        Field inWords = Field.line("in-words", words.say("closing.in-words"), "");
        Card card = new Card(
                        new MigLayout("insets 24 28 24 28, fill, wrap 1, gap 0 16", "[grow,fill]", "[grow,fill][]"))
                .leading();
        Stack stack = new Stack(16);
        stack.add(new WrapLabel(words.say("closing.why-title"), TextStyle.TITLE, Tone.INK));
        stack.add(chips);
        state.ofDishes().ifPresent(question -> {
            stack.add(new WrapLabel(question, TextStyle.ACTION, Tone.INK));
            stack.add(dishes);
        });
        stack.add(inWords);
        card.add(new TouchScroll(words, "why-page", stack), "grow, wmin 0");
        card.add(
                new TwoButtons(
                        TouchButton.of(
                                ButtonKind.MAIN,
                                "record",
                                words.say("closing.record"),
                                () -> presenter.tellWhy(chips.one(), dishes.one(), inWords.value())),
                        TouchButton.of(ButtonKind.OUTLINED, "back", words.say("closing.back"), () -> presenter.back())),
                "growx");
        return card;
    }

    private List<Choice<Dishes>> dishes() {
        return Stream.of(Dishes.values())
                .map(each -> new Choice<>(each.word(), words.say("today.dishes." + each.word()), each))
                .toList();
    }

    private JComponent side() {
        Stack stack = new Stack(16);
        Card look = new Card().strong();
        look.add(new WrapLabel(words.say("closing.last-look"), TextStyle.ACTION, Tone.INK), "wmin 0, growx");
        for (String each : LAST_LOOK) {
            look.add(new WrapLabel(words.say("closing.look." + each), TextStyle.LINE, Tone.INK), "wmin 0, growx");
        }
        stack.add(look);
        stack.add(new WrapLabel(words.say("phone.when"), TextStyle.ACTION, Tone.INK));
        stack.add(new AlarmButtons(words, danger -> presenter.alarm(danger)));
        Card note = new Card();
        Field field = Field.note("note", words.say("closing.note"), "");
        note.add(field, "wmin 0, growx");
        note.add(
                TouchButton.of(ButtonKind.OUTLINED, "keep-note", words.say("closing.keep-note"), () -> {
                            presenter.note(field.value());
                            field.value("");
                        })
                        .tall(64),
                "growx");
        stack.add(note);
        return new TouchScroll(words, "side", stack);
    }
}
