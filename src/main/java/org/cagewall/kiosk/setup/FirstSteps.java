package org.cagewall.kiosk.setup;

import java.util.function.Supplier;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.ProblemCard;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Use;
import org.cagewall.text.Words;

/** The three first steps of an empty room, one card each. Used on the event thread. */
final class FirstSteps extends Pane {

    private static final long serialVersionUID = 1L;
    private static final int ROWS = 3;
    private static final int COLUMNS = 6;
    private static final int MOST = 40;

    private final transient Words words;
    private final transient Supplier<SetupPresenter> presenter;
    private final ProblemCard problem = new ProblemCard();

    FirstSteps(Words words, Supplier<SetupPresenter> presenter, SetupState state) {
        super(new MigLayout("insets 0, fill", "push[760!,fill]push", "[0:0,grow,fill]"));
        this.words = words;
        this.presenter = presenter;
        setName("step." + state.stage().name());
        add(new TouchScroll(words, "step", step(state)), "grow, wmin 0, hmin 0");
    }

    void show(SetupState state) {
        problem.say(state.problem());
        revalidate();
        repaint();
    }

    private JComponent step(SetupState state) {
        return switch (state.stage()) {
            case OWNER -> owner();
            case FIRST_WALL -> wall();
            default -> cages(state.wall().orElseThrow());
        };
    }

    private Stack card(int number, String title, String text) {
        Stack card = new Stack(18);
        Stack head = new Stack(6);
        head.add(new WrapLabel(words.say("setup.step", number), TextStyle.TAG, Tone.SOFT));
        head.add(new WrapLabel(title, TextStyle.TITLE, Tone.INK));
        head.add(new WrapLabel(text, TextStyle.LINE, Tone.SOFT));
        card.add(head);
        return card;
    }

    private Stack framed(Stack content) {
        Card frame = new Card(new MigLayout("insets 26 32 28 32, fillx", "[grow,fill]")).strong();
        frame.add(content, "wmin 0");
        Stack whole = new Stack();
        whole.add(frame);
        return whole;
    }

    private JComponent owner() {
        Stack card = card(1, words.say("setup.welcome"), words.say("setup.welcome-text"));
        Field name = problem.about("name", Field.line("name", words.say("setup.your-name"), ""));
        Field phone = problem.about("phone", Field.line("phone", words.say("setup.your-phone"), ""));
        Runnable go = () -> presenter.get().addOwner(name.value(), phone.value());
        name.onEnter(phone::focus);
        phone.onEnter(go);
        card.add(name);
        card.add(phone);
        card.add(problem);
        card.add(main("next", words.say("setup.go-on"), go));
        return framed(card);
    }

    private JComponent wall() {
        Stack card = card(2, words.say("setup.first-wall"), words.say("setup.first-wall-text"));
        Field name =
                problem.about("wall", Field.line("wall", words.say("setup.wall"), words.say("setup.wall-name", 1)));
        Stepper rows = new Stepper(words, "rows", words.say("setup.rows"), 1, MOST, ROWS, number -> {});
        Stepper columns = new Stepper(words, "columns", words.say("setup.columns"), 1, MOST, COLUMNS, number -> {});
        card.add(name);
        Pane steppers = new Pane(new MigLayout("insets 0, gap 36 0", "[][]"));
        steppers.add(rows);
        steppers.add(columns);
        card.add(steppers);
        card.add(problem);
        card.add(main("next", words.say("setup.go-on"), () -> presenter
                .get()
                .addFirstWall(name.value(), rows.value(), columns.value())));
        return framed(card);
    }

    private JComponent cages(SetupState.FirstWall wall) {
        Stack card = card(
                3,
                words.say("setup.first-cages", wall.name()),
                words.say("setup.first-cages-text", wall.first(), wall.last()));
        Chips<Use> use = Chips.oneOf("use", Choice.of(Use.values(), words, "setup.use."), chosen -> {})
                .choose(java.util.List.of(Use.BREEDING));
        card.add(Labelled.of(words.say("setup.most-for"), use));
        card.add(problem);
        card.add(main("fill", words.say("setup.fill-all", wall.places()), () -> presenter
                .get()
                .fill(use.one().orElse(Use.BREEDING))));
        card.add(TouchButton.of(ButtonKind.OUTLINED, "one-by-one", words.say("setup.one-by-one"), () -> presenter
                        .get()
                        .oneByOne())
                .tall(64));
        return framed(card);
    }

    private TouchButton main(String name, String text, Runnable onPress) {
        return TouchButton.of(ButtonKind.MAIN, name, text, onPress)
                .type(TextStyle.ACTION)
                .tall(80);
    }
}
