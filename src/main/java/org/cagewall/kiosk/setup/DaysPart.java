package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.TwoButtons;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Message;
import org.cagewall.text.Words;

/** What is usual, value by value, on the left; on the right where one comes from, to be changed. Event thread. */
final class DaysPart extends ListPart {

    private static final int MOST_DAYS = 400;

    private final DaysPresenter presenter;
    private Optional<DaysState> before = Optional.empty();

    DaysPart(Desk desk, Pen pen, Words words) {
        super("days", words);
        presenter = new DaysPresenter(desk, pen, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void render(DaysState state) {
        boolean same = before.filter(old -> old.lines().equals(state.lines())
                        && old.changing().equals(state.changing())
                        && old.species().equals(state.species()))
                .isPresent();
        if (!same) {
            fillList(state);
            fillSide(state);
        }
        problem.say(state.problem());
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    private void fillList(DaysState state) {
        list.removeAll();
        for (DaysState.Line line : state.lines()) {
            RowFace plain = RowFace.of(line.days(), line.name(), line.between());
            RowFace face = line.whose() == DaysState.Whose.BOOK
                    ? plain
                    : plain.tagged(TagKind.PLAIN, words.say("setup.whose." + Message.word(line.whose())));
            ListRow row =
                    new ListRow("days." + Message.word(line.timing()), face, () -> presenter.touch(line.timing()));
            row.setSelected(state.changing().equals(Optional.of(line.timing())));
            list.add(row);
        }
    }

    private void fillSide(DaysState state) {
        side.removeAll();
        Stack body = new Stack(16);
        side.add(new TouchScroll(words, "value", body), "grow, wmin 0, hmin 0");
        side.add(problem, "wmin 0");
        Optional<DaysState.Line> changing = state.line();
        if (changing.isPresent()) {
            fillValue(body, changing.get());
        } else {
            body.add(new WrapLabel(words.say("setup.days-title"), TextStyle.LEAD, Tone.INK));
            body.add(new WrapLabel(words.say("setup.days-text"), TextStyle.LINE, Tone.SOFT));
            body.add(Labelled.of(
                    words.say("setup.days-species"),
                    Chips.oneOf(
                                    "species",
                                    state.kinds().stream()
                                            .map(kind -> new Choice<>(kind.replace(' ', '-'), kind, kind))
                                            .toList(),
                                    species -> presenter.turnTo(species))
                            .choose(List.of(state.species()))));
        }
    }

    private void fillValue(Stack body, DaysState.Line line) {
        Stepper earliest = stepper("earliest", "setup.days-earliest", line.earliest());
        Stepper expected = stepper("expected", "setup.days-expected", line.expected());
        Stepper latest = stepper("latest", "setup.days-latest", line.latest());
        body.add(new WrapLabel(line.name(), TextStyle.LEAD, Tone.INK));
        body.add(new WrapLabel(line.source(), TextStyle.LINE, Tone.SOFT));
        body.add(earliest);
        body.add(expected);
        body.add(latest);
        if (line.whose() == DaysState.Whose.OWNER) {
            body.add(TouchButton.of(
                            ButtonKind.PLAIN, "take-back", words.say("setup.days-book"), () -> presenter.takeBack())
                    .tall(64));
        }
        side.add(
                new TwoButtons(
                        TouchButton.of(
                                ButtonKind.OUTLINED, "leave", words.say("setup.leave"), () -> presenter.nothing()),
                        TouchButton.of(
                                ButtonKind.MAIN,
                                "set-days",
                                words.say("setup.save"),
                                () -> presenter.set(earliest.value(), expected.value(), latest.value()))),
                "wmin 0");
    }

    private Stepper stepper(String name, String key, int value) {
        return new Stepper(words, name, words.say(key), 0, MOST_DAYS, value, number -> {});
    }
}
