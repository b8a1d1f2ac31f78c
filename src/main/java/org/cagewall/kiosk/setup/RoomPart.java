package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Leaving;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.FirstCall;
import org.cagewall.text.Words;

/** What holds for the whole room: its name, its rules, heat, the night, the rings. Used on the event thread. */
final class RoomPart extends Part {

    private static final int COLDEST = 15;
    private static final int HOTTEST = 45;
    private static final int DEEPEST_FROST = -20;
    private static final int MILDEST = 20;
    private static final int MOST_YOUNG = 12;
    private static final int MOST_ROUNDS = 6;
    private static final int LONGEST_REST = 12;
    private static final List<Integer> LEAST_SPACES = List.of(0, 200, 500, 1000, 5000);

    private final Words words;
    private final Leaving leaving;
    private final RoomPresenter presenter;
    private RoomState.Night night = RoomState.Night.BRIGHT;
    private Optional<RoomState> before = Optional.empty();

    RoomPart(Desk desk, Pen pen, Leaving leaving, Words words) {
        super(new MigLayout("insets 0, fill, wrap 1, gap 0 12, hidemode 3", "[grow,fill]", "[0:0,grow,fill][][]"));
        this.leaving = leaving;
        this.words = words;
        presenter = new RoomPresenter(desk, pen, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void render(RoomState state) {
        boolean same = before.filter(old -> withoutProblem(old).equals(withoutProblem(state)))
                .isPresent();
        if (!same) {
            build(state);
        }
        problem.say(state.problem());
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    private static RoomState withoutProblem(RoomState state) {
        return new RoomState(
                state.name(),
                state.rules(),
                state.heatAct(),
                state.heatPhone(),
                state.coldPhone(),
                state.illFirst(),
                state.mostEggs(),
                state.mostChicks(),
                state.mostRounds(),
                state.restMonths(),
                state.leastSpace(),
                state.night(),
                state.quietFrom(),
                state.quietTo(),
                state.ringsDay(),
                state.ringsMonth(),
                Optional.empty());
    }

    private void build(RoomState state) {
        view.removeAll();
        problem.forgetFields();
        night = state.night();
        Field name = problem.about("room", Field.line("room", words.say("setup.room-name"), state.name()));
        Field rules = problem.about("rules", Field.note("rules", words.say("setup.rules"), state.rules()));
        Stepper act = stepper("act", "setup.heat-act", COLDEST, HOTTEST, state.heatAct());
        Stepper phone = stepper("heat-phone", "setup.heat-phone", COLDEST, HOTTEST, state.heatPhone());
        Stepper cold = stepper("cold-phone", "setup.cold-phone", DEEPEST_FROST, MILDEST, state.coldPhone());
        Chips<FirstCall> first = Chips.oneOf(
                        "ill-first", Choice.of(FirstCall.values(), words, "setup.ill-first."), chosen -> {})
                .choose(List.of(state.illFirst()));
        Stepper eggs = stepper("most-eggs", "setup.most-eggs", 1, MOST_YOUNG, state.mostEggs());
        Stepper chicks = stepper("most-chicks", "setup.most-chicks", 1, MOST_YOUNG, state.mostChicks());
        Stepper rounds = stepper("most-rounds", "setup.most-rounds", 1, MOST_ROUNDS, state.mostRounds());
        Stepper rest = stepper("rest-months", "setup.rest-months", 0, LONGEST_REST, state.restMonths());
        Chips<Integer> space =
                Chips.oneOf("least-space", spaces(), chosen -> {}).choose(List.of(state.leastSpace()));
        Stepper from = stepper("from", "setup.quiet-from", 0, 23, state.quietFrom());
        Stepper to = stepper("to", "setup.quiet-to", 0, 23, state.quietTo());
        Stepper day = stepper("day", "setup.rings-day", 1, 31, state.ringsDay());
        Stepper month = stepper("month", "setup.rings-month", 1, 12, state.ringsMonth());
        Stack left = new Stack(16);
        Stack named = new Stack(16);
        named.add(name);
        named.add(rules);
        left.add(card(named));
        left.add(card(
                Labelled.of(words.say("setup.most"), row(eggs, chicks)),
                new WrapLabel(words.say("setup.most-text"), TextStyle.SECOND, Tone.SOFT)));
        left.add(card(
                Labelled.of(words.say("setup.pair"), row(rounds, rest)),
                new WrapLabel(words.say("setup.pair-text"), TextStyle.SECOND, Tone.SOFT)));
        Stack right = new Stack(16);
        right.add(card(Labelled.of(words.say("setup.heat"), row(act, phone)), cold));
        right.add(card(Labelled.of(words.say("setup.ill-first"), first)));
        right.add(card(Labelled.of(words.say("setup.quiet"), quiet(state, row(from, to)))));
        right.add(card(Labelled.of(words.say("setup.rings"), row(day, month))));
        right.add(card(
                Labelled.of(words.say("setup.least-space"), space),
                new WrapLabel(words.say("setup.least-space-text"), TextStyle.SECOND, Tone.SOFT)));
        Pane columns = new Pane(new MigLayout(
                "insets 0, fillx, gap 24 0", "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]", "[top]"));
        columns.add(left, "wmin 0");
        columns.add(right, "wmin 0");
        view.add(new TouchScroll(words, "settings", columns), "grow, wmin 0, hmin 0");
        view.add(problem, "wmin 0");
        Pane foot = new Pane(new MigLayout("insets 0, fillx", "[]16:push[240:420:,fill]"));
        foot.add(TouchButton.of(ButtonKind.QUIET, "close-kiosk", words.say("setup.close"), leaving::askToLeave)
                .tall(Sizes.isLargest() ? 56 : 72));
        foot.add(TouchButton.of(
                        ButtonKind.MAIN,
                        "save",
                        words.say("setup.save"),
                        () -> presenter.save(new RoomState(
                                name.value(),
                                rules.value(),
                                act.value(),
                                phone.value(),
                                cold.value(),
                                first.one().orElse(state.illFirst()),
                                eggs.value(),
                                chicks.value(),
                                rounds.value(),
                                rest.value(),
                                space.one().orElse(state.leastSpace()),
                                night,
                                from.value(),
                                to.value(),
                                day.value(),
                                month.value(),
                                Optional.empty())))
                .type(TextStyle.LEAD)
                .tall(Sizes.isLargest() ? 56 : 72));
        view.add(foot, "wmin 0");
    }

    /** Whether there are quiet hours; from when to when is asked only if there are. */
    private Stack quiet(RoomState state, Pane hours) {
        Stack both = new Stack();
        hours.setVisible(state.night() == RoomState.Night.DIM);
        both.add(Chips.oneOf(
                        "night",
                        List.of(
                                new Choice<>("bright", words.say("setup.bright"), RoomState.Night.BRIGHT),
                                new Choice<>("dim", words.say("setup.dim"), RoomState.Night.DIM)),
                        chosen -> {
                            night = chosen;
                            hours.setVisible(chosen == RoomState.Night.DIM);
                            both.revalidate();
                        })
                .choose(List.of(state.night())));
        both.add(hours);
        both.add(new WrapLabel(words.say("setup.quiet-text"), TextStyle.SECOND, Tone.SOFT));
        return both;
    }

    private List<Choice<Integer>> spaces() {
        return LEAST_SPACES.stream()
                .map(megabytes ->
                        new Choice<>(megabytes.toString(), words.say("setup.least-space.of", megabytes), megabytes))
                .toList();
    }

    private Stepper stepper(String name, String key, int least, int most, int value) {
        return new Stepper(words, name, words.say(key), least, most, value, number -> {});
    }

    private static Pane row(JComponent one, JComponent other) {
        Pane first = new Pane(new MigLayout("insets 0 0 0 24"));
        first.add(one);
        SideBySide row = new SideBySide();
        row.add(first);
        row.add(other);
        return row;
    }
}
