package org.cagewall.kiosk.ahead;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.DateStrip;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.TwoButtons;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.strip.RangeChart;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.plan.Policy;
import org.cagewall.text.Words;

/** Until when they may lay, which nests will not be done, and what the nests will hold. Used on the event thread. */
public final class AheadScreen extends HeadedScreen {

    private static final int FURTHEST_DAYS_AHEAD = 730;
    private static final int MOST_ROUNDS = 4;

    private final Words words;
    private final Segment<AheadState.Tab> tabs;
    private final AheadPresenter presenter;

    public AheadScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Words words) {
        super(new MigLayout(
                "insets 0, fill, gap 20", Sizes.isRoomy() ? "[grow,fill][332!,fill]" : "[grow,fill]", "[grow,fill]"));
        this.words = words;
        tabs = new Segment<>("tab", Choice.of(AheadState.Tab.values(), words, "ahead.tab."), this::turnTo);
        if (Sizes.isRoomy()) {
            heading.beside(tabs);
        }
        presenter = new AheadPresenter(desk, pen, navigator, asking, words, this::render);
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void turnTo(AheadState.Tab tab) {
        presenter.turnTo(tab);
    }

    private void render(AheadState state) {
        heading.say(words.say("ahead.title"), Sizes.isRoomy() ? state.subtitle() : "");
        tabs.choose(state.tab());
        view.removeAll();
        if (Sizes.isRoomy()) {
            view.add(content(state), "wmin 0");
            view.add(new TouchScroll(words, "question", question(state)), "wmin 0");
        } else {
            Stack all = new Stack(20);
            all.add(tabs);
            all.add(question(state));
            all.add(part(state));
            view.add(new TouchScroll(words, "answer", all), "wmin 0");
        }
        rebuilt();
    }

    private JComponent content(AheadState state) {
        return new TouchScroll(words, "answer", part(state));
    }

    private JComponent part(AheadState state) {
        if (state.picking() == AheadState.Picking.DAY) {
            return days(state);
        }
        return state.answer()
                .map(answer -> switch (state.tab()) {
                    case DATES -> dates(state, answer);
                    case NESTS -> nests(state, answer);
                    case DAYS -> charts(answer);
                    case EGGS -> eggs(answer);
                })
                .orElseGet(() -> new WrapLabel(words.say("ahead.working"), TextStyle.LINE, Tone.SOFT));
    }

    private JComponent question(AheadState state) {
        Card card = new Card(new MigLayout("insets 20 20 20 20, fillx, wrap 1, gap 0 8", "[grow,fill]")).strong();
        card.add(new WrapLabel(words.say("ahead.done-by"), TextStyle.TAG, Tone.SOFT), "wmin 0");
        card.add(new WrapLabel(state.clearByWord(), TextStyle.ACTION, Tone.INK), "wmin 0");
        card.add(TouchButton.of(
                        ButtonKind.OUTLINED, "other-day", words.say("ahead.other-day"), () -> presenter.pickDay())
                .tall(56));
        card.add(new WrapLabel(words.say("ahead.when-done"), TextStyle.TAG, Tone.SOFT), "wmin 0, gaptop 10");
        Segment<Policy> policy = new Segment<>(
                "policy", Choice.of(Policy.values(), words, "ahead.policy."), when -> presenter.policy(when));
        card.add(policy.choose(state.policy()));
        card.add(
                new Stepper(
                        words,
                        "rounds",
                        words.say("ahead.rounds"),
                        1,
                        MOST_ROUNDS,
                        state.rounds(),
                        number -> presenter.rounds(number)),
                "gaptop 10");
        if (Sizes.isNormal() && state.tab() == AheadState.Tab.DATES) {
            state.answer().ifPresent(answer -> card.add(reckoned(answer), "gaptop 10"));
        }
        return card;
    }

    private JComponent reckoned(AheadState.Answer answer) {
        Pane pane = new Pane(new MigLayout("insets 0, fillx, wrap 2, gap 12 4", "[grow,fill][]"));
        if (answer.reckoned().isEmpty()) {
            return pane;
        }
        pane.add(new WrapLabel(words.say("ahead.days-reckoned"), TextStyle.TAG, Tone.SOFT), "span 2, wmin 0");
        answer.reckoned().forEach(days -> {
            pane.add(new WrapLabel(days.what(), TextStyle.SECOND, Tone.INK), "wmin 0");
            pane.add(new WrapLabel(days.many(), TextStyle.SECOND, Tone.INK));
        });
        return pane;
    }

    private JComponent days(AheadState state) {
        Card card = new Card(new MigLayout("insets 20 28 24 28, fillx, wrap 1, gap 0 12", "[grow,fill]")).leading();
        card.add(new WrapLabel(words.say("ahead.which-day"), TextStyle.ACTION, Tone.INK), "wmin 0");
        card.add(new DateStrip(
                words,
                "day",
                state.today(),
                state.today(),
                state.today().plusDays(FURTHEST_DAYS_AHEAD),
                state.clearBy(),
                day -> presenter.day(day)));
        card.add(TouchButton.of(ButtonKind.OUTLINED, "back", words.say("ahead.back"), () -> presenter.leaveDay())
                .tall(56));
        return card;
    }

    private JComponent dates(AheadState state, AheadState.Answer answer) {
        Card card = new Card(new MigLayout(
                "insets 16 28 20 28, fillx, wrap 4, gap 12 9", "[grow 130,fill][grow,fill][grow,fill][grow,fill]"));
        if (!answer.steps().isEmpty()) {
            card.add(new WrapLabel("", TextStyle.TAG, Tone.SOFT));
            answer.heads().forEach(head -> card.add(new WrapLabel(head, TextStyle.TAG, Tone.SOFT), "wmin 0"));
        }
        for (AheadState.Step step : answer.steps()) {
            boolean first = step.equals(answer.steps().get(0));
            TextStyle type = first ? TextStyle.BUTTON : TextStyle.LINE;
            card.add(new WrapLabel(step.word(), type, Tone.INK), "wmin 0");
            step.days().forEach(day -> card.add(new WrapLabel(day, type, Tone.INK), "wmin 0"));
        }
        Stack stack = new Stack(14);
        if (!answer.steps().isEmpty()) {
            stack.add(card);
        }
        if (!Sizes.isNormal()) {
            stack.add(reckoned(answer));
        }
        answer.notes().forEach(note -> stack.add(new WrapLabel(note, TextStyle.SECOND, Tone.INK)));
        stack.add(calendar(state.calendar()));
        return stack;
    }

    /** All of it on a phone, and beside the button what that is, or what came of it. */
    private JComponent calendar(Optional<AheadState.Said> said) {
        Pane pane = new Pane(new MigLayout(
                "insets 0, fillx, gap 20 10" + (Sizes.isRoomy() ? "" : ", wrap 1"), "[280:,fill][grow,fill]"));
        pane.add(TouchButton.of(
                        ButtonKind.OUTLINED,
                        "save-calendar",
                        words.say("ahead.save-calendar"),
                        () -> presenter.saveCalendar())
                .tall(64));
        pane.add(said.map(AheadScreen::said).orElseGet(this::whatItIs), "wmin 0, growx");
        return pane;
    }

    private JComponent whatItIs() {
        return new WrapLabel(words.say("ahead.calendar"), TextStyle.SECOND, Tone.SOFT);
    }

    private static JComponent said(AheadState.Said said) {
        if (said.came() == AheadState.Came.WELL) {
            WrapLabel label = new WrapLabel(said.sentence(), TextStyle.SECOND, Tone.INK);
            label.setName("saved");
            return label;
        }
        Card card = new Card(new MigLayout("insets 12 16, fillx", "[grow,fill]")).attention();
        WrapLabel label = new WrapLabel(said.sentence(), TextStyle.TAG, Tone.ATTENTION_INK);
        label.setName("problem");
        card.add(label, "wmin 0");
        return card;
    }

    private JComponent nests(AheadState state, AheadState.Answer answer) {
        return state.nest()
                .flatMap(cage -> answer.nests().stream()
                        .filter(nest -> nest.cage().equals(cage))
                        .findFirst())
                .map(this::nest)
                .orElseGet(() -> nestList(answer));
    }

    private JComponent nestList(AheadState.Answer answer) {
        if (answer.nests().isEmpty()) {
            return new EmptyState(words.say("ahead.no-nests"), words.say("ahead.no-nests-text"), List.of());
        }
        Stack stack = new Stack();
        answer.nests()
                .forEach(nest ->
                        stack.add(new ListRow("nest." + nest.cage(), nest.face(), () -> presenter.nest(nest.cage()))));
        return stack;
    }

    private JComponent nest(AheadState.Nest nest) {
        Stack stack = new Stack(14);
        Card head = new Card(new MigLayout("insets 20 28 24 28, fillx, wrap 1, gap 0 8", "[grow,fill]")).leading();
        head.add(new WrapLabel(words.say("ahead.nest", nest.cage()), TextStyle.TITLE, Tone.INK), "wmin 0");
        head.add(new WrapLabel(nest.done() + " " + nest.chance() + ".", TextStyle.LINE, Tone.INK), "wmin 0");
        head.add(new WrapLabel(nest.inTheWay(), TextStyle.LINE, Tone.INK), "wmin 0");
        head.add(
                new TwoButtons(
                        TouchButton.of(
                                ButtonKind.PLAIN,
                                "to-cage",
                                words.say("ahead.to-cage", nest.cage()),
                                () -> presenter.toTheCage(nest.cage())),
                        TouchButton.of(
                                ButtonKind.OUTLINED,
                                "all-nests",
                                words.say("ahead.all-nests"),
                                () -> presenter.allNests())),
                "gaptop 8");
        stack.add(head);
        if (!nest.ways().isEmpty()) {
            stack.add(new WrapLabel(words.say("ahead.ways-out"), TextStyle.ACTION, Tone.INK));
        }
        for (AheadState.Way way : nest.ways()) {
            Card card = new Card(new MigLayout("insets 16 28 16 28, fillx, wrap 1, gap 0 4", "[grow,fill]"));
            card.add(new WrapLabel(way.words(), TextStyle.BUTTON, Tone.INK), "wmin 0");
            card.add(new WrapLabel(way.done(), TextStyle.LINE, Tone.INK), "wmin 0");
            card.add(new WrapLabel(way.cost(), TextStyle.SECOND, Tone.SOFT), "wmin 0");
            stack.add(card);
        }
        return stack;
    }

    private JComponent charts(AheadState.Answer answer) {
        Stack stack = new Stack(12);
        Pane grid = new Pane(new MigLayout(
                "insets 0, fillx, wrap " + (Sizes.isRoomy() ? 2 : 1) + ", gap 16 12", "[grow,fill]", "[]"));
        for (AheadState.Chart chart : answer.charts()) {
            Card card = new Card(new MigLayout("insets 12 16 12 16, fillx, wrap 1, gap 0 4", "[grow,fill]"));
            card.add(new WrapLabel(chart.title(), TextStyle.BUTTON, Tone.INK), "wmin 0");
            card.add(new RangeChart("chart." + chart.name(), chart.said(), chart.bars()), "wmin 0");
            grid.add(card, "wmin 0");
        }
        stack.add(grid);
        stack.add(new WrapLabel(words.say("ahead.chart-how"), TextStyle.SECOND, Tone.INK));
        stack.add(new WrapLabel(answer.drawn(), TextStyle.SECOND, Tone.SOFT));
        return stack;
    }

    private JComponent eggs(AheadState.Answer answer) {
        if (answer.eggs().isEmpty()) {
            return new EmptyState(words.say("ahead.no-eggs"), words.say("ahead.no-eggs-text"), List.of());
        }
        Stack stack = new Stack();
        stack.add(new WrapLabel(words.say("ahead.eggs-how"), TextStyle.LINE, Tone.INK));
        for (int i = 0; i < answer.eggs().size(); i++) {
            AheadState.Egg egg = answer.eggs().get(i);
            stack.add(new ListRow("egg." + i, egg.face(), () -> presenter.move(egg)));
        }
        if (answer.eggs().size() > 1) {
            stack.add(TouchButton.of(
                    ButtonKind.OUTLINED, "move-all", words.say("ahead.move-all-button"), () -> presenter.moveAll()));
        }
        return stack;
    }
}
