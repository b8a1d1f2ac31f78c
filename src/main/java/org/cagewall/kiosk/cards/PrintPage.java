package org.cagewall.kiosk.cards;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.cards.FaceChoice;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.Turner;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.paper.DrawnSheet;
import org.cagewall.kiosk.kit.paper.SheetPlan;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.paper.Area;
import org.cagewall.paper.Sheet;
import org.cagewall.text.Words;

/**
 * The page on which cards are laid out on paper and printed: the sheet as it will come out, whose places can be touched,
 * and beside it what can be chosen. Used on the event thread.
 */
final class PrintPage {

    private final Words words;
    private final Pane view;
    private final Pane sheetSide = new Pane(new MigLayout(
            "insets 0, fill, wrap 1, gap 0 4, hidemode 3",
            "[grow,fill]",
            Sizes.isRoomy() ? "[0:0,grow,fill][][]" : "[][][]"));
    private final DrawnSheet drawn =
            new DrawnSheet("sheet-drawn", index -> presenter().place(index));
    private final Turner turner;
    private final TouchButton allFree;
    private final Pane below = new Pane(new MigLayout("insets 0, fillx, gap 8, hidemode 3"));
    private final WrapLabel hint = new WrapLabel("", TextStyle.SECOND, Tone.SOFT);
    private final Stack options = new Stack(16);
    private final Pane foot = new Pane(new MigLayout("insets 0, fillx, wrap 1, gap 12", "[grow,fill]"));
    private Optional<PrintPresenter> answering = Optional.empty();
    private Runnable onBack = () -> {};
    private Optional<PrintState> before = Optional.empty();

    PrintPage(Words words) {
        this.words = words;
        turner = new Turner(
                "turn", words.say("cardscreen.sheet-before"), words.say("cardscreen.sheet-after"), by -> presenter()
                        .turn(by));
        allFree = TouchButton.of(ButtonKind.OUTLINED, "all-free", words.say("cardscreen.all-free"), () -> presenter()
                        .allFree())
                .tall(48);
        below.add(turner, "wmin pref, pushx 100, growx");
        below.add(allFree, "wmin 0, pushx 1, growx");
        sheetSide.add(drawn, Sizes.isRoomy() ? "grow, wmin 0, hmin 0" : "wmin 0");
        sheetSide.add(below, "wmin 0");
        sheetSide.add(hint, "wmin 0");
        TouchScroll scroll = new TouchScroll(words, "print-options", options);
        if (Sizes.isRoomy()) {
            view = new Pane(new MigLayout("insets 0, fill, gap 24", "[480!,fill][grow,fill]", "[0:0,grow,fill]"));
            view.add(sheetSide, "grow, wmin 0, hmin 0");
            Pane side = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 12", "[grow,fill]", "[0:0,grow,fill][]"));
            side.add(scroll, "wmin 0, hmin 0");
            side.add(foot, "wmin 0");
            view.add(side, "grow, wmin 0");
        } else {
            view = new Pane(new MigLayout("insets 0, fill", "[grow,fill]", "[0:0,grow,fill]"));
            view.add(scroll, "wmin 0, hmin 0");
        }
    }

    JComponent view() {
        return view;
    }

    void answersTo(PrintPresenter presenter, Runnable back) {
        answering = Optional.of(presenter);
        onBack = back;
    }

    private PrintPresenter presenter() {
        return answering.orElseThrow();
    }

    void render(PrintState state) {
        state.theSheet().ifPresent(sheet -> drawn.show(plan(state, sheet)));
        drawn.setVisible(state.theSheet().isPresent());
        fillBelow(state);
        if (before.filter(old -> sameOptions(old, state)).isEmpty()) {
            fillOptions(state);
        }
        fillFoot(state);
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    /** Whether nothing was found or chosen that the options show, so that what a finger is on stays where it is. */
    private static boolean sameOptions(PrintState old, PrintState state) {
        return old.sheets().equals(state.sheets())
                && old.sheet().equals(state.sheet())
                && old.faces() == state.faces()
                && old.copies() == state.copies()
                && old.printers().equals(state.printers())
                && old.printer().equals(state.printer())
                && old.doubt().equals(state.doubt());
    }

    private SheetPlan plan(PrintState state, Sheet sheet) {
        Set<Integer> taken = state.taken();
        boolean first = state.at() == 0;
        List<SheetPlan.Place> places = new ArrayList<>();
        for (int index = 0; index < sheet.cards(); index++) {
            boolean used = state.usedHere().contains(index);
            SheetPlan.Look look =
                    used ? SheetPlan.Look.USED : taken.contains(index) ? SheetPlan.Look.TAKEN : SheetPlan.Look.FREE;
            String number = "" + (index + 1);
            Area place = sheet.place(index);
            places.add(new SheetPlan.Place(
                    "place." + number,
                    place.left(),
                    place.top(),
                    place.width(),
                    place.height(),
                    used ? words.say("cardscreen.used") : number,
                    words.say(
                            switch (look) {
                                case TAKEN -> first ? "cardscreen.place-taken" : "cardscreen.later-place-taken";
                                case FREE -> first ? "cardscreen.place-free" : "cardscreen.later-place-free";
                                case USED -> "cardscreen.place-used";
                            },
                            number),
                    look));
        }
        return new SheetPlan(
                sheet.paper().width(),
                sheet.paper().height(),
                places,
                state.preview().drawn().map(page -> new SheetPlan.Picture(page.width(), page.height(), page.pixels())),
                first);
    }

    /** What has been touched says how it is done, and leaves its room to what takes it back. */
    private void fillBelow(PrintState state) {
        boolean turns = state.pages() > 1;
        boolean isUsed = !state.usedHere().isEmpty();
        boolean several = state.theSheet().map(Sheet::cards).orElse(1) > 1;
        turner.setVisible(turns);
        turner.show(words.say("cardscreen.which-sheet", state.at() + 1, state.pages()), state.at(), state.pages());
        allFree.setVisible(isUsed);
        below.setVisible(turns || isUsed);
        hint.setVisible(several && !isUsed);
        hint.setText(words.say(state.at() == 0 ? "cardscreen.touch-used" : "cardscreen.whole-sheet"));
    }

    private void fillOptions(PrintState state) {
        options.removeAll();
        if (!Sizes.isRoomy()) {
            options.add(foot);
            options.add(sheetSide);
        }
        addPrinters(state);
        state.doubt().ifPresent(why -> options.add(CardsScreen.attention("doubt", why)));
        if (!state.sheets().isEmpty()) {
            List<Choice<String>> sheets = state.sheets().stream()
                    .map(each -> new Choice<>(each.name(), each.title(), each.name()))
                    .toList();
            options.add(Labelled.of(
                    words.say("cardscreen.sheet"),
                    Chips.oneOf("sheet", sheets, name -> presenter().sheet(name))
                            .choose(List.of(state.sheet()))));
        }
        state.theChoice()
                .flatMap(PrintState.SheetChoice::refused)
                .ifPresent(why -> options.add(CardsScreen.attention("refused", why)));
        List<Choice<FaceChoice>> faces = Stream.of(FaceChoice.values())
                .map(each -> new Choice<>(each.word(), words.say("cardscreen.face-" + each.word()), each))
                .toList();
        options.add(Labelled.of(
                words.say("cardscreen.face"),
                Chips.oneOf("face", faces, choice -> presenter().face(choice)).choose(List.of(state.faces()))));
        Pane last = new Pane(new MigLayout("insets 0, fillx, gap 24 12", "[][grow]"));
        last.add(new Stepper(
                words,
                "copies",
                words.say("cardscreen.copies"),
                1,
                PrintState.MOST_COPIES,
                state.copies(),
                times -> presenter().copies(times)));
        TouchButton trial =
                TouchButton.of(ButtonKind.OUTLINED, "trial", words.say("cardscreen.trial"), () -> presenter()
                        .trial());
        trial.setEnabled(state.theSheet().isPresent());
        last.add(trial, "aligny bottom, alignx right, hmin 64");
        options.add(last);
        options.revalidate();
    }

    private void addPrinters(PrintState state) {
        if (!state.printers().areAny()) {
            String key = state.printers().names().isEmpty() ? "cardscreen.looking" : "cardscreen.no-printer";
            options.add(new WrapLabel(words.say(key), TextStyle.SECOND, Tone.SOFT));
            return;
        }
        List<Choice<String>> printers = state.printers().names().orElseThrow().stream()
                .map(each -> new Choice<>(each, each, each))
                .toList();
        options.add(Labelled.of(
                words.say("cardscreen.printer"),
                Chips.oneOf("printer", printers, name -> presenter().printer(name))
                        .choose(List.of(state.printer()))));
    }

    private void fillFoot(PrintState state) {
        foot.removeAll();
        state.problem()
                .ifPresentOrElse(
                        why -> foot.add(CardsScreen.attention("problem", why)),
                        () -> foot.add(CardsScreen.sentence("summary", summary(state))));
        foot.add(state.isIdle() ? buttons(state) : stop(state));
        foot.revalidate();
    }

    private String summary(PrintState state) {
        return switch (state.work().kind()) {
            case SAVING -> words.say("cardscreen.working");
            case PRINTING -> words.say("cardscreen.page-at", state.work().page(), state.printer());
            case STOPPING -> words.say("cardscreen.stopping");
            case NONE ->
                state.news()
                        .orElseGet(() -> state.theSheet().isPresent()
                                        && state.order().isEmpty()
                                ? words.say("cardscreen.no-place")
                                : words.say(
                                        "cardscreen.summary", state.cages().size() * state.copies(), state.pages()));
        };
    }

    private JComponent buttons(PrintState state) {
        boolean prints = state.printers().areAny();
        Pane buttons = new Pane(new MigLayout(
                "insets 0, fillx, gap 12" + (Sizes.isLargest() ? ", wrap 1" : ""), "[grow,fill,sizegroup]"));
        buttons.add(button(ButtonKind.OUTLINED, "back", "cardscreen.back", () -> onBack.run()));
        TouchButton save =
                button(prints ? ButtonKind.OUTLINED : ButtonKind.MAIN, "save", "cardscreen.save", () -> presenter()
                        .save());
        save.setEnabled(state.isReady());
        buttons.add(save);
        if (prints) {
            TouchButton print = button(ButtonKind.MAIN, "print", "cardscreen.print", () -> presenter()
                    .print());
            print.setEnabled(state.isReady());
            buttons.add(print);
        }
        return buttons;
    }

    private JComponent stop(PrintState state) {
        TouchButton stop = button(ButtonKind.OUTLINED, "stop", "cardscreen.stop", () -> presenter()
                .stop());
        stop.setEnabled(state.work().kind() == PrintState.Work.Kind.PRINTING);
        return stop;
    }

    private TouchButton button(ButtonKind kind, String name, String key, Runnable onPress) {
        return TouchButton.of(kind, name, words.say(key), onPress)
                .type(TextStyle.LEAD)
                .tall(72);
    }
}
