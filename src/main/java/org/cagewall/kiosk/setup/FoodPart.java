package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.wall.SmallWall;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.FoodKind;
import org.cagewall.room.care.DayPart;
import org.cagewall.room.care.FeedLine;
import org.cagewall.room.care.Permission;
import org.cagewall.text.Words;

/** Cages to be touched on the left; on the right what they are given and what the sitter may do. Event thread. */
final class FoodPart extends Part {

    private static final int COLUMNS = 6;
    private static final int QUICK_FOODS = 4;
    private static final int QUICK_AMOUNTS = 4;

    private final Words words;
    private final SmallWall wall;
    private final Card side = new Card(new MigLayout(
            "insets 18 20 18 20, fill, wrap 1, gap 0 12, hidemode 3", "[grow,fill]", "[][0:0,grow,fill][][]"));
    private final WrapLabel title = new WrapLabel("", TextStyle.LEAD, Tone.INK);
    private final Stack lines = new Stack(8);
    private final Pane allowedPlace = new Pane(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private final Field what;
    private final Field amount;
    private final FoodPresenter presenter;
    private DayPart when = DayPart.MORNING;
    private Optional<FoodState> before = Optional.empty();

    FoodPart(Desk desk, Pen pen, Words words) {
        super(new MigLayout(
                "insets 0, fill, gap 24 0",
                "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]",
                "[0:0,grow,fill]"));
        this.words = words;
        what = Field.line("what", words.say("setup.food"), "");
        amount = Field.line("amount", words.say("setup.amount"), "");
        problem.about("what", what);
        problem.about("amount", amount);
        wall = new SmallWall(words, "cage", COLUMNS, spot -> touch(spot.name()));
        title.setName("panel.title");
        Pane left = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", "[][0:0,grow,fill]"));
        left.add(presets(), "wmin 0");
        left.add(wall, "grow, wmin 0, hmin 0");
        view.add(left, "grow, wmin 0, hmin 0");
        view.add(side, "grow, wmin 0, hmin 0");
        presenter = new FoodPresenter(desk, pen, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void touch(String cage) {
        presenter.touch(cage);
    }

    private SideBySide presets() {
        SideBySide row = new SideBySide();
        row.add(small("choose.all", "setup.choose-all", () -> presenter.all()));
        row.add(small("choose.breeding", "setup.choose-breeding", () -> presenter.breeding()));
        row.add(small("choose.none", "setup.choose-none", () -> presenter.none()));
        return row;
    }

    private TouchButton small(String name, String key, Runnable onPress) {
        return TouchButton.of(ButtonKind.PLAIN, name, words.say(key), onPress);
    }

    private void render(FoodState state) {
        wall.show(state.walls()).mark(state.cages());
        boolean turned = before.filter(
                        old -> old.cages().isEmpty() == state.cages().isEmpty())
                .isEmpty();
        if (turned) {
            build(state);
        }
        title.setText(words.say("setup.food-for", state.cages().size(), state.cages()));
        if (turned || before.filter(old -> old.lines().equals(state.lines())).isEmpty()) {
            fillLines(state);
        }
        if (turned
                || before.filter(old -> old.allowed().equals(state.allowed())).isEmpty()) {
            fillAllowed(state);
        }
        problem.say(state.problem());
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    private void build(FoodState state) {
        side.removeAll();
        if (state.cages().isEmpty()) {
            side.add(
                    new EmptyState(words.say("setup.food-title"), words.say("setup.food-text"), List.of()),
                    "spany 4, grow, push");
            return;
        }
        what.value("");
        amount.value("");
        side.add(title, "wmin 0");
        Stack body = new Stack(16);
        body.add(lines);
        body.add(adding());
        body.add(allowedPlace);
        side.add(new TouchScroll(words, "food", body), "grow, wmin 0, hmin 0");
        side.add(problem, "wmin 0");
        side.add(
                TouchButton.of(ButtonKind.MAIN, "save", words.say("setup.save-food"), () -> presenter.save())
                        .type(TextStyle.LEAD)
                        .tall(64),
                "wmin 0");
    }

    private void fillLines(FoodState state) {
        lines.removeAll();
        if (state.lines().isEmpty()) {
            lines.add(new WrapLabel(words.say("setup.no-food"), TextStyle.LINE, Tone.SOFT));
        }
        for (int i = 0; i < state.lines().size(); i++) {
            int index = i;
            FeedLine line = state.lines().get(i);
            Pane row = new Pane(new MigLayout("insets 0, fillx, gap 12", "[grow,fill][]"));
            row.add(
                    new WrapLabel(
                            words.say("setup.food-line", line.what(), line.amount(), line.when()),
                            TextStyle.LINE,
                            Tone.INK),
                    "wmin 0");
            TouchButton out = TouchButton.of(
                            ButtonKind.PLAIN,
                            "take-out." + (i + 1),
                            words.say("setup.take-out"),
                            () -> presenter.takeOut(index))
                    .type(TextStyle.TAG)
                    .tall(48);
            out.getAccessibleContext().setAccessibleName(words.say("setup.take-out-said", line.what()));
            row.add(out, "wrap");
            row.add(
                    new Segment<>(
                                    "kind." + (i + 1),
                                    Choice.of(FoodKind.values(), words, "setup.food-kind."),
                                    kind -> presenter.sayKind(index, kind))
                            .choose(line.knownAs()),
                    "spanx, wmin 0");
            lines.add(row);
        }
        lines.revalidate();
    }

    private JComponent adding() {
        Stack both = new Stack(8);
        Pane two = new Pane(
                new MigLayout("insets 0, fillx, gap 12", "[grow,fill,sizegroup][grow,fill,sizegroup]", "[top]"));
        two.add(what, "wmin 0");
        two.add(amount, "wmin 0");
        both.add(two);
        both.add(quick("what", "setup.quick-food.", QUICK_FOODS, what));
        both.add(quick("amount", "setup.quick-amount.", QUICK_AMOUNTS, amount));
        Pane end = new Pane(new MigLayout("insets 0, fillx, gap 12", "[]push[]"));
        end.add(new Segment<>(
                        "when",
                        List.of(
                                new Choice<>("morning", words.say("setup.morning"), DayPart.MORNING),
                                new Choice<>("evening", words.say("setup.evening"), DayPart.EVENING)),
                        chosen -> when = chosen)
                .choose(when));
        end.add(TouchButton.of(
                ButtonKind.OUTLINED,
                "add-line",
                words.say("setup.add-line"),
                () -> presenter.addLine(what.value(), amount.value(), when)));
        both.add(end);
        return both;
    }

    private SideBySide quick(String name, String key, int count, Field field) {
        SideBySide row = new SideBySide();
        IntStream.rangeClosed(1, count).forEach(number -> {
            String text = words.say(key + number);
            row.add(TouchButton.of(ButtonKind.PLAIN, name + ".quick." + number, text, () -> field.value(text))
                    .type(TextStyle.TAG)
                    .tall(48));
        });
        return row;
    }

    private void fillAllowed(FoodState state) {
        allowedPlace.removeAll();
        allowedPlace.add(
                Labelled.of(
                        words.say("setup.sitter-may"),
                        Chips.someOf(
                                        "allowed",
                                        Choice.of(Permission.values(), words, "setup.may."),
                                        chosen -> presenter.allow(chosen))
                                .choose(state.allowed())),
                "wmin 0");
        allowedPlace.revalidate();
    }
}
