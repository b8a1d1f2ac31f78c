package org.cagewall.kiosk.cage;

import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EggButton;
import org.cagewall.kiosk.kit.EggLook;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.ListRow;
import org.cagewall.kiosk.kit.LogFace;
import org.cagewall.kiosk.kit.LogLine;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.RowFace;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Page;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.kiosk.theme.Measure;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.text.Words;

/** One cage: what is in it on the left, what can be recorded on the right. Used on the event thread. */
public final class CageScreen extends Page {

    /** A ring and two lines below it. */
    private static final int BIRD_HEIGHT = 114;

    /** So many where the whole page is scrolled. */
    private static final int FEW_ENTRIES = 4;

    private final Words words;
    private final Pane left = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]"));
    private final Pane right = new Pane(
            new MigLayout("insets 0, fill, wrap 2, gap 16 14", "[grow,fill,sizegroup act][grow,fill,sizegroup act]"));
    private final CagePresenter presenter;

    public CageScreen(Desk desk, Pen pen, Navigator navigator, Picking picking, Words words, Destination.Cage here) {
        super(new MigLayout(
                "insets 0, fill, gap 24 0",
                Measure.isRoomy() ? "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]" : "[grow,fill]",
                "[0:0,grow,fill]"));
        this.words = words;
        if (Measure.isRoomy()) {
            view.add(left, "wmin 0");
            view.add(right, "wmin 0");
        } else {
            Stack page = new Stack(24);
            page.add(right);
            page.add(left);
            view.add(new TouchScroll(words, "page", page), "wmin 0, hmin 0");
        }
        presenter = new CagePresenter(desk, pen, navigator, picking, words, here, this::render);
    }

    @Override
    protected Watch watch() {
        return presenter.watch();
    }

    private void render(CageState state) {
        heading.say(state.title(), state.subtitle());
        left.removeAll();
        right.removeAll();
        if (state.known()) {
            renderLeft(state);
            renderRight(state);
        } else {
            left.add(new EmptyState(state.title(), state.subtitle(), List.of()), "grow");
        }
        rebuilt();
    }

    // ------------------------------------------------------------------ left: what is there

    private void renderLeft(CageState state) {
        state.nest().ifPresent(nest -> left.add(nest(nest), "wmin 0"));
        if (!state.birds().isEmpty()) {
            left.add(birds(state), "wmin 0");
        }
        state.flock().ifPresent(sentence -> left.add(flock(sentence), "wmin 0"));
        left.add(entries(state.entries()), "grow, wmin 0, hmin 0, push");
    }

    private Card cardNotice(String sentence) {
        Card card = new Card(new MigLayout("insets 10 20, fillx, gap 12", "[grow,fill][]")).attention();
        card.add(new WrapLabel(sentence, Type.TAG, Tone.ATTENTION_INK), "wmin 0, growx");
        card.add(
                TouchButton.of(ButtonKind.OUTLINED, "pencilled", words.say("cage.pencil"), () -> presenter.pencilled())
                        .tall(56),
                "wmin 220");
        return card;
    }

    private Card nest(CageState.Nest nest) {
        Card card = new Card(new MigLayout("insets 16 20 14 20, fillx, wrap 1, gap 0 6", "[grow,fill]"));
        Pane head = new Pane(new MigLayout("insets 0, fillx", "[]push[]"));
        head.add(new WrapLabel(nest.title(), Type.BUTTON, Tone.SOFT).lines(1));
        head.add(new WrapLabel(nest.line(), Type.SECOND, Tone.SOFT).lines(1));
        card.add(head);
        if (!nest.eggs().isEmpty()) {
            card.add(eggs(nest.eggs()), "wmin 0");
        }
        card.add(new WrapLabel(nest.below(), Type.SECOND, Tone.INK), "wmin 0");
        return card;
    }

    private JComponent eggs(List<CageState.EggFace> eggs) {
        int columns = Math.max(6, Math.min(9, eggs.size()));
        Pane row = new Pane(new java.awt.GridLayout(0, columns));
        for (CageState.EggFace egg : eggs) {
            row.add(new EggButton(
                    "egg." + egg.mark(),
                    EggLook.NOT_CANDLED,
                    egg.mark(),
                    egg.line(),
                    egg.said(),
                    () -> presenter.egg(egg)));
        }
        for (int i = eggs.size(); i < columns; i++) {
            row.add(new Pane(new MigLayout()));
        }
        return row;
    }

    private JComponent birds(CageState state) {
        List<CageState.BirdFace> birds = state.birds();
        Pane cards = new Pane(new MigLayout(
                "insets 0, fillx, gap 12 12, wrap " + (Measure.isLargest() ? 1 : 2), "[grow 1,fill,sizegroup bird]"));
        for (CageState.BirdFace bird : birds) {
            cards.add(
                    new ListRow(
                            "bird." + bird.ring(),
                            RowFace.of("", bird.sex() + " \u00b7 " + bird.ring(), bird.line()),
                            () -> presenter.bird(bird.id())),
                    "grow, wmin 0, hmin " + BIRD_HEIGHT);
        }
        if (birds.size() <= 4 || !Measure.isRoomy()) {
            return cards;
        }
        Pane held = new Pane(new MigLayout("insets 0, fill", "[grow,fill]", "[290!,fill]"));
        held.add(new TouchScroll(words, "birds", cards), "wmin 0");
        return held;
    }

    private Card flock(String sentence) {
        Card card = new Card();
        card.add(new WrapLabel(sentence, Type.LINE, Tone.INK), "wmin 0");
        return card;
    }

    private Card entries(List<CageState.EntryFace> entries) {
        Card card = new Card(new MigLayout("insets 12 8 8 8, fill, wrap 1, gap 0 2", "[grow,fill]", "[][grow,fill]"));
        card.add(new WrapLabel(words.say("cage.last-entries"), Type.TAG, Tone.SOFT), "gapleft 12");
        if (entries.isEmpty()) {
            card.add(new WrapLabel(words.say("cage.no-entries"), Type.SECOND, Tone.SOFT), "gapleft 12, aligny top");
            return card;
        }
        Stack rows = new Stack(0);
        long most = Measure.isRoomy() ? entries.size() : FEW_ENTRIES;
        entries.stream()
                .limit(most)
                .forEach(entry -> rows.add(new LogLine(
                        "entry." + entry.number(),
                        new LogFace(entry.when(), entry.what(), entry.struck()),
                        () -> presenter.entry(entry))));
        card.add(Measure.isRoomy() ? new TouchScroll(words, "entries", rows) : rows, "hmin 0, wmin 0");
        return card;
    }

    // ------------------------------------------------------------------ right: what can be recorded

    private void renderRight(CageState state) {
        right.add(
                TouchButton.of(ButtonKind.MAIN, "all-well", words.say("cage.all-well"), () -> presenter.allWell())
                        .type(Type.MAIN)
                        .tall(110),
                "grow");
        right.add(
                TouchButton.of(
                                ButtonKind.OUTLINED,
                                "different",
                                words.say("cage.something-different"),
                                () -> presenter.different())
                        .type(Type.ACTION)
                        .tall(110),
                "grow");
        right.add(new WrapLabel(words.say("cage.what-happened"), Type.BUTTON, Tone.SOFT).lines(1), "aligny center");
        right.add(
                new Segment<>(
                                "when",
                                List.of(
                                        new Choice<>("today", words.say("cage.on-today"), false),
                                        new Choice<>("yesterday", words.say("cage.on-yesterday"), true)),
                                yesterday -> presenter.yesterday(yesterday))
                        .choose(state.yesterday()),
                "growx 0, alignx right");
        Optional<CageState.Action> likely = state.actions().stream().findFirst();
        for (CageState.Action action : state.actions()) {
            ButtonKind kind = likely.filter(action::equals).isPresent() ? ButtonKind.LIKELY : ButtonKind.PLAIN;
            right.add(
                    TouchButton.of(kind, "do." + action.name(), action.text(), () -> presenter.act(action.name()))
                            .type(Type.ACTION)
                            .tall(96),
                    "grow, push");
        }
        state.card().ifPresent(sentence -> right.add(cardNotice(sentence), "spanx 2, grow, wmin 0"));
    }
}
