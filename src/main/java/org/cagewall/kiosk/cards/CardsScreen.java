package org.cagewall.kiosk.cards;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.RowFace;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.paper.Printers;
import org.cagewall.text.Words;

/** Which cards are old, what has changed on them, and the way to new ones. Used on the event thread. */
public final class CardsScreen extends HeadedScreen {

    private final Words words;
    private final Navigator navigator;
    private final Pane presets = new Pane(new MigLayout("insets 0, gap 12"));
    private final Stack list = new Stack();
    private final Stack options = new Stack(16);
    private final Pane foot = new Pane(new MigLayout("insets 0, fillx, wrap 1, gap 12, hidemode 3", "[grow,fill]"));
    private final Map<String, ListRow> rows = new LinkedHashMap<>();
    private final PrintPage paper;
    private final CardsPresenter presenter;
    private Optional<CardsState> before = Optional.empty();

    public CardsScreen(Desk desk, Pen pen, Navigator navigator, Notices notices, Words words, Destination.Cards here) {
        this(desk, pen, navigator, notices, words, here, Printers.ofThisMachine());
    }

    CardsScreen(
            Desk desk,
            Pen pen,
            Navigator navigator,
            Notices notices,
            Words words,
            Destination.Cards here,
            Printers printers) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.navigator = navigator;
        paper = new PrintPage(words);
        presenter = new CardsPresenter(desk, pen, notices, words, printers, this::render, paper::render);
        paper.answersTo(presenter.printing(), presenter::backToChoosing);
        here.cage().ifPresent(presenter::layOutOnly);
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(CardsState state) {
        heading.say(
                words.say(state.step() == CardsState.Step.PRINTING ? "cardscreen.print-title" : "cardscreen.title"),
                state.subtitle());
        boolean sameParts = before.filter(old -> old.step() == state.step()
                        && old.cages().isEmpty() == state.cages().isEmpty())
                .isPresent();
        if (!sameParts) {
            build(state);
        }
        if (!state.cages().isEmpty() && state.step() == CardsState.Step.CHOOSING) {
            if (!sameParts
                    || before.filter(old -> old.cages().equals(state.cages()) && old.may() == state.may())
                            .isEmpty()) {
                fillList(state);
            }
            fillPresets(state);
            markChosen(state);
            fillOptions(state);
            fillFoot(state);
        }
        before = Optional.of(state);
        rebuilt();
    }

    private void build(CardsState state) {
        view.removeAll();
        if (state.cages().isEmpty()) {
            view.add(new EmptyState(
                    words.say("cardscreen.no-cages"),
                    words.say("cardscreen.no-cages-text"),
                    List.of(TouchButton.of(
                            ButtonKind.MAIN,
                            "set-up",
                            words.say("cardscreen.set-up"),
                            () -> navigator.go(new Destination.Setup())))));
            return;
        }
        if (state.step() == CardsState.Step.PRINTING) {
            view.add(paper.view());
            return;
        }
        Pane page = new Pane(new MigLayout("insets 0, fill, gap 24", "[grow,fill][452!,fill]", "[0:0,grow,fill]"));
        Pane cages = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 12", "[grow,fill]", "[][0:0,grow,fill]"));
        cages.add(presets, "wmin 0");
        cages.add(new TouchScroll(words, "list", list), "grow, wmin 0, hmin 0");
        page.add(cages, "grow, wmin 0");
        Pane side = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 12", "[grow,fill]", "[0:0,grow,fill][]"));
        side.add(new TouchScroll(words, "options", options), "wmin 0, hmin 0");
        side.add(foot, "wmin 0");
        page.add(side, "grow, wmin 0");
        view.add(page);
    }

    private void fillPresets(CardsState state) {
        presets.removeAll();
        int changed = state.changed().size();
        presets.add(TouchButton.of(
                changed > 0 ? ButtonKind.LIKELY : ButtonKind.PLAIN,
                "choose.changed",
                words.say("cardscreen.choose-changed", changed),
                () -> presenter.chooseChanged()));
        presets.add(TouchButton.of(
                ButtonKind.PLAIN,
                "choose.all",
                words.say("cardscreen.choose-all", state.cages().size()),
                () -> presenter.chooseAll()));
        presets.add(TouchButton.of(
                ButtonKind.PLAIN, "choose.none", words.say("cardscreen.choose-none"), () -> presenter.chooseNone()));
    }

    private void fillList(CardsState state) {
        list.removeAll();
        rows.clear();
        for (CardsState.CageCard card : state.cages()) {
            ListRow row = new ListRow("card." + card.cage(), face(card, state), () -> presenter.touch(card.cage()));
            rows.put(card.cage(), row);
            list.add(row);
        }
    }

    private RowFace face(CardsState.CageCard card, CardsState state) {
        RowFace face = RowFace.of(card.cage(), card.first(), card.second());
        if (state.chosen().contains(card.cage())) {
            return face.tagged(TagKind.DUE, words.say("cardscreen.to-print"));
        }
        return card.standing() == CardsState.Standing.UP_TO_DATE ? face.in(RowFace.State.DONE) : face;
    }

    private void markChosen(CardsState state) {
        for (CardsState.CageCard card : state.cages()) {
            ListRow row = rows.get(card.cage());
            row.show(face(card, state));
            row.setSelected(state.chosen().contains(card.cage()));
        }
    }

    private void fillOptions(CardsState state) {
        options.removeAll();
        state.theLooked().ifPresent(this::lookAt);
        options.revalidate();
    }

    private void lookAt(CardsState.CageCard card) {
        options.add(new CardFaceView(words, card.face()));
        if (card.changes().isEmpty()) {
            return;
        }
        Stack changes = new Stack(4);
        card.changes().forEach(change -> changes.add(new WrapLabel(change, TextStyle.SECOND, Tone.INK)));
        options.add(Labelled.of(words.say("cardscreen.what-changed", card.cage()), changes));
        options.add(TouchButton.of(
                ButtonKind.OUTLINED,
                "pencilled." + card.cage(),
                words.say("cardscreen.i-pencilled"),
                () -> presenter.pencilled(card.cage())));
    }

    private void fillFoot(CardsState state) {
        foot.removeAll();
        if (state.may() == CardsState.May.READ) {
            foot.add(attention("may-not", words.say("cardscreen.sitter")));
            return;
        }
        state.news().ifPresent(news -> foot.add(sentence("saved", news)));
        if (!state.saved().isEmpty()) {
            askWhetherTheyHang();
            return;
        }
        if (state.chosen().isEmpty() && state.news().isEmpty()) {
            foot.add(sentence("summary", words.say("cardscreen.none-chosen")));
        }
        boolean changed = state.chosen().equals(state.changed());
        TouchButton print = TouchButton.of(
                        ButtonKind.MAIN,
                        "lay-out",
                        words.say(
                                changed ? "cardscreen.print-changed" : "cardscreen.print-chosen",
                                state.chosen().size()),
                        () -> presenter.layOut())
                .type(TextStyle.LEAD)
                .tall(72);
        print.setEnabled(!state.chosen().isEmpty());
        foot.add(print);
        foot.revalidate();
    }

    private void askWhetherTheyHang() {
        foot.add(sentence("are-hung", words.say("cardscreen.are-hung")));
        foot.add(TouchButton.of(ButtonKind.MAIN, "hung", words.say("cardscreen.yes-hung"), () -> presenter.hung())
                .tall(72));
        foot.add(TouchButton.of(
                        ButtonKind.OUTLINED, "not-hung", words.say("cardscreen.not-hung"), () -> presenter.notYetHung())
                .tall(72));
        foot.revalidate();
    }

    static JComponent sentence(String name, String sentence) {
        WrapLabel label = new WrapLabel(sentence, TextStyle.LINE, Tone.INK);
        label.setName(name);
        return label;
    }

    static JComponent attention(String name, String sentence) {
        Card card = new Card(new MigLayout("insets 12 16, fillx", "[grow,fill]")).attention();
        WrapLabel label = new WrapLabel(sentence, TextStyle.TAG, Tone.ATTENTION_INK);
        label.setName(name);
        card.add(label, "wmin 0");
        return card;
    }
}
