package org.cagewall.kiosk.phone;

import java.util.List;
import java.util.Optional;
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
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.AlarmButtons;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Agreement;
import org.cagewall.room.CallMatter;
import org.cagewall.room.Reached;
import org.cagewall.tasks.Danger;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** Whom to phone, in numbers that are read from across the room. Used on the event thread. */
public final class PhoneScreen extends HeadedScreen {

    private final Words words;
    private final PhonePresenter presenter;
    private final Navigator navigator;

    public PhoneScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Words words, Destination.Phone here) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Sizes.isLargest() ? "[grow,fill]" : "[grow,fill][400!,fill]", "[grow,fill]"));
        this.words = words;
        presenter = new PhonePresenter(desk, pen, asking, words, here, this::render);
        this.navigator = navigator;
    }

    @Override
    public boolean isBegun() {
        return presenter.isCallOpen();
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(PhoneState state) {
        heading.say(state.title(), state.subtitle());
        view.removeAll();
        view.add(state.call().map(this::call).orElseGet(() -> people(state)), "wmin 0");
        if (!Sizes.isLargest()) {
            view.add(side(state), "wmin 0");
        }
        rebuilt();
    }

    private JComponent people(PhoneState state) {
        Stack stack = new Stack(16);
        stack.add(new WrapLabel(words.say(Danger.EMERGENCY_FIRST), TextStyle.LINE, Tone.INK));
        for (int i = 0; i < state.people().size(); i++) {
            stack.add(person(state.people().get(i), i == 0 ? ButtonKind.MAIN : ButtonKind.OUTLINED));
        }
        if (state.people().isEmpty()) {
            stack.add(new WrapLabel(words.say("phone.nobody-text"), TextStyle.LEAD, Tone.INK));
        }
        if (Sizes.isLargest() && !state.agreed().isEmpty()) {
            addAgreed(stack, state);
        }
        return new TouchScroll(words, "people", stack);
    }

    private Card person(PhoneState.Person person, ButtonKind kind) {
        Card card = new Card(new MigLayout("insets 20 28 20 28, fillx, gap 16 0", "[grow,fill][]", "[][]"));
        if (kind == ButtonKind.MAIN) {
            card.leading();
        }
        card.add(new WrapLabel(person.said(), TextStyle.LEAD, Tone.INK), "cell 0 0, wmin 0, growx");
        card.add(new WrapLabel(person.number(), TextStyle.NEXT, Tone.INK), "cell 0 1, wmin 0, growx");
        card.add(
                TouchButton.of(
                                kind,
                                "phoned." + person.name(),
                                words.say("phone.phoned"),
                                () -> presenter.phoned(person))
                        .type(TextStyle.LEAD)
                        .tall(80),
                Sizes.px(100) > 130 ? "cell 0 2, growx 0" : "cell 1 0 1 2");
        return card;
    }

    private JComponent call(PhoneState.Person person) {
        Chips<Reached> reached = Chips.oneOf("reached", choices("phone.reached.", Reached.values()), chosen -> {});
        Chips<CallMatter> about = Chips.oneOf(
                "about", choices("phone.about.", CallMatter.ofCalls().toArray(CallMatter[]::new)), chosen -> {});
        Chips<Optional<String>> cage = Chips.oneOf("cage", cages(), chosen -> {});
        Chips<Agreement> agreed = Chips.oneOf("agreed", choices("phone.agreed.", Agreement.values()), chosen -> {});
        Chips<PhonePresenter.Lasts> lasts = Chips.oneOf(
                        "lasts", choices("phone.lasts.", PhonePresenter.Lasts.values()), chosen -> {})
                .choose(List.of(PhonePresenter.Lasts.OWNER_BACK));
        Field inWords = Field.line("in-words", words.say("phone.in-words"), "");
        presenter.about().ifPresent(matter -> about.choose(List.of(matter)));
        presenter.cage().ifPresent(name -> cage.choose(List.of(Optional.of(name))));
        Stack stack = new Stack(16);
        stack.add(new WrapLabel(words.say("phone.about-title", person.name()), TextStyle.TITLE, Tone.INK));
        stack.add(reached);
        stack.add(asked("phone.about"));
        stack.add(about);
        stack.add(asked("phone.cage"));
        stack.add(cage);
        stack.add(asked("phone.agreed"));
        stack.add(agreed);
        stack.add(asked("phone.lasts"));
        stack.add(lasts);
        stack.add(inWords);
        Card card = new Card(
                        new MigLayout("insets 24 28 24 28, fill, wrap 1, gap 0 16", "[grow,fill]", "[grow,fill][]"))
                .leading();
        card.add(new TouchScroll(words, "call", stack), "grow");
        card.add(
                new TwoButtons(
                        TouchButton.of(
                                ButtonKind.MAIN,
                                "record",
                                words.say("phone.record"),
                                () -> presenter.tell(
                                        person,
                                        new PhonePresenter.Told(
                                                reached.one(),
                                                about.one(),
                                                cage.one().flatMap(it -> it),
                                                agreed.one(),
                                                lasts.one().orElse(PhonePresenter.Lasts.OWNER_BACK),
                                                inWords.value()))),
                        TouchButton.of(ButtonKind.OUTLINED, "back", words.say("phone.back"), () -> presenter.back())),
                "growx");
        return card;
    }

    private WrapLabel asked(String key) {
        return new WrapLabel(words.say(key), TextStyle.BUTTON, Tone.SOFT);
    }

    private <E extends Enum<E>> List<Choice<E>> choices(String area, E[] all) {
        return Stream.of(all)
                .map(each -> new Choice<>(Message.word(each), words.say(area + Message.word(each)), each))
                .toList();
    }

    private List<Choice<Optional<String>>> cages() {
        Stream<Choice<Optional<String>>> none =
                Stream.of(new Choice<>("none", words.say("phone.no-cage"), Optional.empty()));
        return Stream.concat(none, presenter.cages().stream().map(cage -> new Choice<>(cage, cage, Optional.of(cage))))
                .toList();
    }

    private JComponent side(PhoneState state) {
        Stack stack = new Stack(12);
        stack.add(new WrapLabel(words.say("phone.when"), TextStyle.ACTION, Tone.INK));
        stack.add(new AlarmButtons(words, danger -> navigator.go(new Destination.Alarm(Optional.of(danger)))));
        if (!state.agreed().isEmpty()) {
            addAgreed(stack, state);
        }
        if (!state.calls().isEmpty()) {
            stack.add(new WrapLabel(words.say("phone.calls"), TextStyle.BUTTON, Tone.SOFT));
            state.calls().forEach(call -> stack.add(call(call)));
        }
        return new TouchScroll(words, "side", stack);
    }

    private void addAgreed(Stack stack, PhoneState state) {
        stack.add(new WrapLabel(words.say("phone.holds"), TextStyle.BUTTON, Tone.SOFT));
        for (PhoneState.Agreed agreed : state.agreed()) {
            Card card = call(agreed.face());
            card.add(
                    TouchButton.of(
                                    ButtonKind.OUTLINED,
                                    "over." + agreed.call(),
                                    words.say("phone.over"),
                                    () -> presenter.over(agreed))
                            .tall(52),
                    "growx 0, gaptop 4");
            stack.add(card);
        }
    }

    private static Card call(RowFace call) {
        Card card = new Card(new MigLayout("insets 10 16 10 16, fillx, wrap 1, gap 0 2", "[grow,fill]"));
        card.add(new WrapLabel(call.first(), TextStyle.SECOND, Tone.INK), "growx, wmin 0");
        card.add(new WrapLabel(call.second(), TextStyle.SECOND, Tone.SOFT), "growx, wmin 0");
        return card;
    }
}
