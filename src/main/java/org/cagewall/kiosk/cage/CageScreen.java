package org.cagewall.kiosk.cage;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Tall;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.LogFace;
import org.cagewall.kiosk.kit.list.LogLine;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.kit.nest.EggButton;
import org.cagewall.kiosk.shell.Breadth;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Overlays;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Picking;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** One cage: what is in it on the left, what can be recorded on the right. Used on the event thread. */
public final class CageScreen extends HeadedScreen {

    /** A ring and two lines below it. */
    private static final int BIRD_HEIGHT = 114;

    /** What the shell leaves to one of two columns, and what the last entries need of it. */
    private static final int COLUMN_WIDTH = 604;

    /** A column does not grow with the letters; the words in it wrap no sooner than at this width. */
    private static final int LEAST_COLUMN = 594;

    private static final int COLUMN_HEIGHT = 620;
    private static final int SCREEN_HEIGHT = 800;
    private static final int LEAST_ENTRIES = 178;

    /** So many where the whole page is scrolled. */
    private static final int FEW_ENTRIES = 4;

    /** In columns narrower than those of four, a chick's next date finds no room on one line. */
    private static final int LEAST_ACROSS = 4;

    /** So many chicks, with their next date below them, stand side by side. */
    private static final int FEW_ACROSS = 5;

    private static final int SOME_ACROSS = 6;

    private static final int MANY_ACROSS = 7;

    private final Words words;
    private final Breadth breadth;
    private final Pane left = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]"));
    private final Pane right = new Pane(
            new MigLayout("insets 0, fill, wrap 2, gap 16 14", "[grow,fill,sizegroup act][grow,fill,sizegroup act]"));
    private final CagePresenter presenter;

    public CageScreen(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Picking picking,
            Overlays overlays,
            Words words,
            Breadth breadth,
            Destination.Cage here) {
        super(new MigLayout(
                "insets 0, fill, gap 24 0",
                breadth.isRoomy() ? "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]" : "[grow,fill]",
                "[0:0,grow,fill]"));
        this.words = words;
        this.breadth = breadth;
        heading.beside(TouchButton.of(
                ButtonKind.PLAIN, "scan", words.say("scanscreen.button"), () -> navigator.go(new Destination.Scan())));
        if (breadth.isRoomy()) {
            view.add(left, "wmin 0, hmin 0");
            view.add(new TouchScroll(words, "acts", right), "wmin 0, hmin 0");
        } else {
            Stack page = new Stack(24);
            page.add(right);
            page.add(left);
            view.add(new TouchScroll(words, "page", page), "wmin 0, hmin 0");
        }
        presenter = new CagePresenter(
                desk, pen, navigator, picking, new NestSheets(overlays, words), words, here, this::render);
    }

    @Override
    public boolean leavesRoomAside() {
        return true;
    }

    @Override
    protected Refresher watch() {
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
        List<JComponent> parts = parts(state);
        if (breadth.isRoomy() && isTall(parts)) {
            Stack all = new Stack(12);
            parts.forEach(all::add);
            all.add(entries(state.entries(), state.unread(), FEW_ENTRIES));
            left.add(new TouchScroll(words, "there", all), "grow, wmin 0, hmin 0, push");
            return;
        }
        parts.forEach(part -> left.add(part, "wmin 0"));
        left.add(
                entries(state.entries(), state.unread(), breadth.isRoomy() ? Integer.MAX_VALUE : FEW_ENTRIES),
                "grow, wmin 0, hmin 0, push");
    }

    /** Two rows of eggs, or the stages of parting, leave no room below them for the last entries. */
    private static boolean isTall(List<JComponent> parts) {
        int width = Sizes.px(COLUMN_WIDTH);
        int height = parts.stream()
                .mapToInt(part -> Tall.of(part, width) + Sizes.gap())
                .sum();
        return height > columnHeight() - Sizes.px(LEAST_ENTRIES);
    }

    /** What stands above and below the columns grows with the letters, the screen does not. */
    private static int columnHeight() {
        return SCREEN_HEIGHT - Sizes.px(SCREEN_HEIGHT - COLUMN_HEIGHT);
    }

    private List<JComponent> parts(CageState state) {
        List<JComponent> parts = new ArrayList<>();
        state.parting().ifPresent(parting -> parts.add(parting(parting)));
        state.nest().ifPresent(nest -> parts.add(nest(nest)));
        if (!state.birds().isEmpty()) {
            parts.add(birds(state));
        }
        state.flock().ifPresent(sentence -> parts.add(flock(sentence)));
        return parts;
    }

    /** What has changed on the card, and the two ways to settle it. */
    private Card cardNotice(CageState.CardNotice notice) {
        Card card = new Card(new MigLayout("insets 10 20, fillx, gap 12", "[grow,fill][][]")).attention();
        card.add(new WrapLabel(notice.sentence(), TextStyle.TAG, Tone.ATTENTION_INK), "wmin 0, growx");
        card.add(way("pencilled", "cage.pencil", () -> presenter.pencilled()), "wmin 168");
        if (notice.ways() == CageState.CardNotice.Ways.PENCIL_OR_PRINT) {
            card.add(way("print-card", "cage.print-card", () -> presenter.printCard()), "wmin 104");
        }
        return card;
    }

    private TouchButton way(String name, String key, Runnable onPress) {
        return TouchButton.of(ButtonKind.OUTLINED, name, words.say(key), onPress)
                .tall(56);
    }

    private Card nest(CageState.Nest nest) {
        Card card = new Card(new MigLayout("insets 16 20 14 20, fillx, wrap 1, gap 0 6", "[grow,fill]"));
        Pane head = new Pane(new MigLayout("insets 0, fillx", "[][grow,fill]"));
        head.add(new WrapLabel(nest.title(), TextStyle.BUTTON, Tone.SOFT).lines(1), "wmin pref");
        head.add(new WrapLabel(nest.line(), TextStyle.SECOND, Tone.SOFT).toTheRight(), "wmin 0");
        card.add(head);
        for (CageState.Lot lot : nest.lots()) {
            if (!lot.title().isEmpty()) {
                card.add(new WrapLabel(lot.title(), TextStyle.TAG, Tone.SOFT).lines(1));
            }
            rows(lot).forEach(row -> card.add(row(row), "wmin 0"));
        }
        nest.allFed()
                .ifPresent(text -> card.add(
                        TouchButton.of(ButtonKind.OUTLINED, "do.all-fed", text, () -> presenter.act("all-fed"))
                                .type(TextStyle.LEAD)
                                .tall(60),
                        "gaptop 4"));
        card.add(new WrapLabel(String.join(" ", nest.sentences()), TextStyle.SECOND, Tone.INK), "wmin 0");
        return card;
    }

    /** Chicks have more to say and stand in rows of their own, unless all fit into one. */
    private static List<List<CageState.LyingFace>> rows(CageState.Lot lot) {
        if (lot.faces().size() <= FEW_ACROSS) {
            return List.of(lot.faces());
        }
        List<List<CageState.LyingFace>> rows = new ArrayList<>(cut(lot.chicks(), FEW_ACROSS));
        rows.addAll(cut(lot.eggs(), lot.eggs().size() > MANY_ACROSS ? SOME_ACROSS : MANY_ACROSS));
        return rows;
    }

    private static List<List<CageState.LyingFace>> cut(List<CageState.LyingFace> faces, int across) {
        List<List<CageState.LyingFace>> rows = new ArrayList<>();
        for (int from = 0; from < faces.size(); from += across) {
            rows.add(faces.subList(from, Math.min(faces.size(), from + across)));
        }
        return rows;
    }

    private JComponent row(List<CageState.LyingFace> faces) {
        int columns = Math.max(LEAST_ACROSS, faces.size());
        Pane row = new Pane(new java.awt.GridLayout(0, columns));
        for (CageState.LyingFace face : faces) {
            row.add(new EggButton(
                            face.name(),
                            face.look(),
                            face.mark(),
                            face.line(),
                            face.said(),
                            () -> presenter.lying(face))
                    .second(face.second()));
        }
        for (int i = faces.size(); i < columns; i++) {
            row.add(new Pane(new MigLayout()));
        }
        return row;
    }

    private Card parting(CageState.Parting parting) {
        Card card = new Card(new MigLayout(
                "insets 14 16 16 16, fillx, gap 8 8, wrap " + (breadth.isRoomy() ? 2 : 1),
                "[grow,fill,sizegroup stage]"));
        card.add(new WrapLabel(parting.title(), TextStyle.BUTTON, Tone.SOFT), "gapleft 4, wmin 0, span, wrap");
        for (CageState.StageFace stage : parting.stages()) {
            card.add(
                    new ListRow(
                            "stage." + Actions.nameOf(stage.stage()),
                            RowFace.of("", stage.first(), stage.second()).in(stage.state()),
                            () -> presenter.stage(stage)),
                    "grow, wmin 0");
        }
        return card;
    }

    private JComponent birds(CageState state) {
        List<CageState.BirdFace> birds = state.birds();
        Pane cards = new Pane(new MigLayout(
                "insets 0, fillx, gap 12 12, wrap " + (Sizes.isLargest() ? 1 : 2), "[grow 1,fill,sizegroup bird]"));
        int width = Sizes.isLargest() ? LEAST_COLUMN : (LEAST_COLUMN - Sizes.px(12)) / 2;
        for (CageState.BirdFace bird : birds) {
            ListRow row = new ListRow(
                    "bird." + bird.ring(),
                    RowFace.of("", bird.sex() + " \u00b7 " + bird.ring(), bird.line()),
                    () -> presenter.bird(bird.id()));
            cards.add(row, "grow, wmin 0, hmin " + Math.max(BIRD_HEIGHT, Tall.of(row, width)));
        }
        if (birds.size() <= 4 || !breadth.isRoomy()) {
            return cards;
        }
        Pane held = new Pane(new MigLayout("insets 0, fill", "[grow,fill]", "[290!,fill]"));
        held.add(new TouchScroll(words, "birds", cards), "wmin 0");
        return held;
    }

    private Card flock(String sentence) {
        Card card = new Card();
        card.add(new WrapLabel(sentence, TextStyle.LINE, Tone.INK), "wmin 0");
        return card;
    }

    private Card entries(Optional<List<CageState.PastFace>> read, Optional<String> unread, int most) {
        Card card = new Card(new MigLayout(
                "insets 12 8 8 8, fill, wrap 1, gap 0 2",
                "[grow,fill]",
                unread.isPresent() ? "[][][grow,fill]" : "[][grow,fill]"));
        card.add(new WrapLabel(words.say("cage.last-entries"), TextStyle.TAG, Tone.SOFT), "gapleft 12");
        unread.ifPresent(why -> {
            WrapLabel label = new WrapLabel(why, TextStyle.SECOND, Tone.INK);
            label.setName("entries.unread");
            card.add(label, "gapleft 12, wmin 0, aligny top");
        });
        if (read.isEmpty()) {
            return card;
        }
        List<CageState.PastFace> entries = read.get();
        if (entries.isEmpty()) {
            card.add(
                    new WrapLabel(words.say("cage.no-entries"), TextStyle.SECOND, Tone.SOFT), "gapleft 12, aligny top");
            return card;
        }
        Stack rows = new Stack(0);
        entries.stream()
                .limit(most)
                .forEach(face -> rows.add(new LogLine(
                        face instanceof CageState.EntryFace entry ? "entry." + entry.number() : "lapsed." + face.when(),
                        new LogFace(
                                face.when(), face.what(), face instanceof CageState.EntryFace entry && entry.struck()),
                        () -> presenter.past(face))));
        card.add(
                Math.min(most, entries.size()) > FEW_ENTRIES ? new TouchScroll(words, "entries", rows) : rows,
                "hmin 0, wmin 0");
        return card;
    }

    // ------------------------------------------------------------------ right: what can be recorded

    /** What is to be done here at this hour; a look is answered by the large button below. */
    private Card chore(CageState.Chore chore) {
        Card card = new Card(new MigLayout("insets 16 20 16 20, fillx, wrap 1, gap 0 8", "[grow,fill]"));
        card.setName("chore");
        card.add(new WrapLabel(chore.title(), TextStyle.ACTION, Tone.INK), "wmin 0");
        chore.see().ifPresent(see -> card.add(new WrapLabel(see, TextStyle.LEAD, Tone.INK), "wmin 0"));
        card.add(new WrapLabel(String.join(" ", chore.how()), TextStyle.LINE, Tone.INK), "wmin 0");
        if (chore.by() == CageState.Chore.Answered.DONE) {
            card.add(
                    TouchButton.of(ButtonKind.MAIN, "chore-done", chore.answer(), () -> presenter.choreDone())
                            .type(TextStyle.ACTION)
                            .tall(72),
                    "wmin 0");
        }
        return card;
    }

    private void renderRight(CageState state) {
        state.chore().ifPresent(chore -> right.add(chore(chore), "spanx 2, grow, wmin 0"));
        String well = state.chore()
                .filter(chore -> chore.by() == CageState.Chore.Answered.ALL_WELL)
                .map(CageState.Chore::answer)
                .orElseGet(() -> words.say("cage.all-well"));
        right.add(
                TouchButton.of(ButtonKind.MAIN, "all-well", well, () -> presenter.allWell())
                        .type(TextStyle.MAIN)
                        .tall(100),
                "grow");
        right.add(
                TouchButton.of(
                                ButtonKind.OUTLINED,
                                "different",
                                words.say("cage.something-different"),
                                () -> presenter.different())
                        .type(TextStyle.ACTION)
                        .tall(100),
                "grow");
        right.add(
                new WrapLabel(words.say("cage.what-happened"), TextStyle.BUTTON, Tone.SOFT).lines(1), "aligny center");
        right.add(
                new Segment<>(
                                "when",
                                List.of(
                                        new Choice<>("today", words.say("cage.on-today"), false),
                                        new Choice<>("yesterday", words.say("cage.on-yesterday"), true)),
                                yesterday -> presenter.yesterday(yesterday))
                        .choose(state.yesterday()),
                "growx 0, alignx right");
        for (CageState.Action action : state.actions()) {
            right.add(
                    TouchButton.of(
                                    action.due() ? ButtonKind.LIKELY : ButtonKind.PLAIN,
                                    "do." + action.name(),
                                    action.text(),
                                    () -> presenter.act(action.name()))
                            .type(TextStyle.ACTION)
                            .tall(64),
                    "grow, push");
        }
        if (state.actions().size() % 2 == 1) {
            right.add(new Pane(new MigLayout()), "grow");
        }
        for (CageState.Action action : state.below()) {
            right.add(
                    TouchButton.of(
                                    ButtonKind.QUIET,
                                    "do." + action.name(),
                                    action.text(),
                                    () -> presenter.act(action.name()))
                            .tall(52),
                    "grow" + (state.below().size() == 1 ? ", spanx 2" : ""));
        }
        state.card().ifPresent(notice -> right.add(cardNotice(notice), "spanx 2, grow, wmin 0"));
    }
}
