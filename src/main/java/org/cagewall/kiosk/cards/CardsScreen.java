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
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.ListRow;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.RowFace;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TagKind;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Notices;
import org.cagewall.kiosk.shell.Page;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Watch;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.paper.Printers;
import org.cagewall.text.Words;

/** Which cards are old, and the way to new ones: a file or a printer. Used on the event thread. */
public final class CardsScreen extends Page {

    private final Words words;
    private final Navigator navigator;
    private final Pane presets = new Pane(new MigLayout("insets 0, gap 12"));
    private final Stack list = new Stack();
    private final Stack options = new Stack(16);
    private final Pane foot = new Pane(new MigLayout("insets 0, fillx, wrap 1, gap 12, hidemode 3", "[grow,fill]"));
    private final Map<String, ListRow> rows = new LinkedHashMap<>();
    private final CardsPresenter presenter;
    private Optional<CardsState> before = Optional.empty();

    public CardsScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Notices notices, Words words) {
        this(desk, pen, navigator, notices, words, Printers.ofThisMachine());
    }

    CardsScreen(Desk desk, Pen pen, Navigator navigator, Notices notices, Words words, Printers printers) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.words = words;
        this.navigator = navigator;
        presenter = new CardsPresenter(desk, pen, notices, words, printers, this::render);
    }

    @Override
    public void shown() {
        super.shown();
        presenter.lookForPrinters();
    }

    @Override
    protected Watch watch() {
        return presenter.watch();
    }

    private void render(CardsState state) {
        heading.say(words.say("cardscreen.title"), state.subtitle());
        if (before.isEmpty() || before.get().cages().isEmpty() != state.cages().isEmpty()) {
            build(state);
        }
        if (!state.cages().isEmpty()) {
            if (before.filter(old -> old.cages().equals(state.cages()) && old.may() == state.may())
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
        long changed = state.cages().stream()
                .filter(each -> each.standing() != CardsState.Standing.UP_TO_DATE)
                .count();
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
        if (!state.sheets().isEmpty()) {
            List<Choice<String>> sheets = state.sheets().stream()
                    .map(each -> new Choice<>(each.name(), each.title(), each.name()))
                    .toList();
            options.add(Labelled.of(
                    words.say("cardscreen.sheet"),
                    Chips.oneOf("sheet", sheets, name -> presenter.sheet(name)).choose(List.of(state.sheet()))));
        }
        state.theSheet()
                .flatMap(CardsState.SheetChoice::refused)
                .ifPresent(why -> options.add(attention("refused", why)));
        addPrinters(state);
        options.revalidate();
    }

    private void lookAt(CardsState.CageCard card) {
        options.add(new CardFaceView(words, card.face()));
        if (card.changes().isEmpty()) {
            return;
        }
        Stack changes = new Stack(4);
        card.changes().forEach(change -> changes.add(new WrapLabel(change, Type.SECOND, Tone.INK)));
        options.add(Labelled.of(words.say("cardscreen.what-changed", card.cage()), changes));
        options.add(TouchButton.of(
                ButtonKind.OUTLINED,
                "pencilled." + card.cage(),
                words.say("cardscreen.i-pencilled"),
                () -> presenter.pencilled(card.cage())));
    }

    private void addPrinters(CardsState state) {
        List<String> names = state.printers().names().orElse(List.of());
        if (names.isEmpty()) {
            String key = state.printers().names().isEmpty() ? "cardscreen.looking" : "cardscreen.no-printer";
            options.add(new WrapLabel(words.say(key), Type.SECOND, Tone.SOFT));
            return;
        }
        List<Choice<String>> printers =
                names.stream().map(each -> new Choice<>(each, each, each)).toList();
        options.add(Labelled.of(
                words.say("cardscreen.printer"),
                Chips.oneOf("printer", printers, name -> presenter.printer(name))
                        .choose(List.of(state.printer()))));
    }

    private void fillFoot(CardsState state) {
        foot.removeAll();
        if (state.may() == CardsState.May.READ) {
            foot.add(attention("may-not", words.say("cardscreen.sitter")));
            return;
        }
        state.said()
                .ifPresent(said -> foot.add(
                        said.tone() == CardsState.Tone.PROBLEM
                                ? attention("problem", said.words())
                                : plain("saved", said.words())));
        Optional<String> refused = state.theSheet().flatMap(CardsState.SheetChoice::refused);
        refused.ifPresent(why -> foot.add(attention("refused", why)));
        if (state.said().isEmpty() && refused.isEmpty()) {
            foot.add(plain("summary", summary(state)));
        }
        boolean prints = state.printers().names().filter(all -> !all.isEmpty()).isPresent();
        Pane buttons = new Pane(new MigLayout(
                "insets 0, fillx, gap 12", prints ? "[grow,fill,sizegroup][grow,fill,sizegroup]" : "[grow,fill]"));
        TouchButton save = TouchButton.of(
                        prints ? ButtonKind.OUTLINED : ButtonKind.MAIN,
                        "save",
                        words.say("cardscreen.save"),
                        () -> presenter.save())
                .type(Type.LEAD)
                .tall(72);
        save.setEnabled(state.ready());
        buttons.add(save);
        if (prints) {
            TouchButton print = TouchButton.of(
                            ButtonKind.MAIN, "print", words.say("cardscreen.print"), () -> presenter.print())
                    .type(Type.LEAD)
                    .tall(72);
            print.setEnabled(state.ready());
            buttons.add(print);
        }
        foot.add(buttons);
        foot.revalidate();
    }

    private String summary(CardsState state) {
        if (state.work() == CardsState.Work.MAKING_PAGES) {
            return words.say("cardscreen.working");
        }
        return state.chosen().isEmpty()
                ? words.say("cardscreen.none-chosen")
                : words.say("cardscreen.summary", state.chosen().size(), state.pages());
    }

    private static JComponent plain(String name, String sentence) {
        WrapLabel label = new WrapLabel(sentence, Type.LINE, Tone.INK);
        label.setName(name);
        return label;
    }

    private static JComponent attention(String name, String sentence) {
        Card card = new Card(new MigLayout("insets 12 16, fillx", "[grow,fill]")).attention();
        WrapLabel label = new WrapLabel(sentence, Type.TAG, Tone.ATTENTION_INK);
        label.setName(name);
        card.add(label, "wmin 0");
        return card;
    }
}
