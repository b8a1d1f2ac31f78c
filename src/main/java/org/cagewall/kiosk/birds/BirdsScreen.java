package org.cagewall.kiosk.birds;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.list.ListRow;
import org.cagewall.kiosk.kit.list.LogFace;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.bird.Sex;
import org.cagewall.text.Words;

/** The birds: found by ring, name, colour or where they are, and one of them with all that is known. Event thread. */
public final class BirdsScreen extends HeadedScreen {

    private final Words words;
    private final Stack results = new Stack();
    private final Pane places = new Pane(new MigLayout("insets 0, fillx", "[grow,fill]"));
    private final BirdsPresenter presenter;
    private final Stack facts = new Stack();
    private final Pane acts = new Pane(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
    private Optional<ActForm> form = Optional.empty();
    private Optional<NewBirdForm> newcomer = Optional.empty();
    private Optional<BirdsState> before = Optional.empty();

    public BirdsScreen(Desk desk, Pen pen, Navigator navigator, Asking asking, Words words) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[grow,fill]"));
        this.words = words;
        presenter = new BirdsPresenter(desk, pen, words, this::render);
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    /** A bird that is half entered; not what was searched for. */
    @Override
    public boolean isBegun() {
        return newcomer.filter(Field::isAnyWrittenIn).isPresent();
    }

    private void render(BirdsState state) {
        boolean turned = before.filter(old -> old.page() == state.page() && old.may() == state.may())
                .isEmpty();
        switch (state.page()) {
            case SEARCH -> renderSearch(state, turned);
            case BIRD -> renderBird(state, turned);
            case NEW_BIRD -> renderNewcomer(state, turned);
        }
        before = Optional.of(state);
        rebuilt();
    }

    private void renderSearch(BirdsState state, boolean turned) {
        heading.say(words.say("birds.title"), state.search().subtitle());
        if (turned) {
            buildSearch(state);
        }
        if (turned
                || before.filter(old ->
                                old.search().offered().equals(state.search().offered()))
                        .isEmpty()) {
            places.removeAll();
            places.add(placeChips(state), "wmin 0");
        }
        if (turned || before.filter(old -> old.search().equals(state.search())).isEmpty()) {
            fillResults(state.search());
        }
    }

    private void buildSearch(BirdsState state) {
        Pane page = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 14", "[grow,fill]", "[][][0:0,grow,fill]"));
        Pane top = new Pane(new MigLayout("insets 0, fillx, gap 24", "[grow,fill][][]", "[bottom]"));
        top.add(
                Field.line("search", words.say("birds.search"), state.search().text())
                        .onChange(text -> presenter.search(text)),
                "wmin 240");
        top.add(Labelled.of(words.say("birds.only"), sexChips(state)));
        if (state.may() == BirdsState.May.KEEP) {
            top.add(TouchButton.of(ButtonKind.MAIN, "new-bird", words.say("birds.new"), () -> presenter.newBird()));
        }
        page.add(top, "wmin 0");
        page.add(places, "wmin 0");
        page.add(new TouchScroll(words, "results", results), "grow, wmin 0, hmin 0");
        show(page);
    }

    private Chips<Sex> sexChips(BirdsState state) {
        List<Choice<Sex>> choices = List.of(
                new Choice<>("cocks", words.say("birds.cocks"), Sex.COCK),
                new Choice<>("hens", words.say("birds.hens"), Sex.HEN),
                new Choice<>("unknown", words.say("birds.unknown"), Sex.UNKNOWN));
        return Chips.someOf("sexes", choices, only -> presenter.sexes(only))
                .choose(state.search().sexes());
    }

    private Chips<Whereabouts> placeChips(BirdsState state) {
        List<Choice<Whereabouts>> choices = state.search().offered().stream()
                .map(place -> new Choice<>(place.key(), words.say("birds.place." + place.key()), place))
                .toList();
        return Chips.someOf("places", choices, only -> presenter.places(only))
                .choose(state.search().places());
    }

    private void fillResults(BirdsState.Search search) {
        results.removeAll();
        if (search.rows().isEmpty()) {
            boolean all = search.text().isBlank()
                    && search.sexes().isEmpty()
                    && search.places().isEmpty();
            results.add(new EmptyState(
                    words.say(all ? "birds.none" : "birds.not-found"),
                    words.say(all ? "birds.none-text" : "birds.not-found-text"),
                    List.of()));
            return;
        }
        Pane columns = new Pane(new MigLayout(
                "insets 0, fillx, wrap 2, gap 12 12", "[grow,fill,sizegroup row][grow,fill,sizegroup row]", "[fill]"));
        search.rows()
                .forEach(row -> columns.add(
                        new ListRow("bird." + row.ring(), row.face(), () -> presenter.open(row.ring())), "wmin 0"));
        results.add(columns);
        if (search.more() > 0) {
            results.add(new WrapLabel(words.say("birds.more", search.more()), TextStyle.LINE, Tone.SOFT));
        }
        results.revalidate();
    }

    private void renderBird(BirdsState state, boolean turned) {
        BirdsState.Sheet bird = state.bird().orElseThrow();
        heading.say(bird.ring(), bird.subtitle());
        if (turned) {
            buildBird();
        }
        if (turned || before.filter(old -> old.bird().equals(state.bird())).isEmpty()) {
            fillFacts(bird);
        }
        if (turned || !sameActs(state)) {
            fillActs(state, bird);
        }
        form.ifPresent(open -> open.wrong(state.problem()));
    }

    private boolean sameActs(BirdsState state) {
        return before.filter(old -> old.act().equals(state.act())
                        && old.bird()
                                .map(BirdsState.Sheet::acts)
                                .equals(state.bird().map(BirdsState.Sheet::acts)))
                .isPresent();
    }

    private void buildBird() {
        Pane page = new Pane(new MigLayout(
                "insets 0, fill, gap 24 0",
                "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]",
                "[0:0,grow,fill]"));
        page.add(new TouchScroll(words, "known", facts), "grow, wmin 0, hmin 0");
        page.add(acts, "grow, wmin 0, hmin 0");
        show(page);
    }

    private void fillFacts(BirdsState.Sheet bird) {
        facts.removeAll();
        Card known =
                new Card(new MigLayout("insets 16 20 16 20, fillx, wrap 2, gap 16 8", "[132!][grow,fill]", "[top]"));
        known.setName("known.facts");
        bird.known().forEach(each -> {
            known.add(new WrapLabel(each.label(), TextStyle.SECOND, Tone.SOFT));
            known.add(new WrapLabel(each.value(), TextStyle.LINE, Tone.INK), "wmin 0");
        });
        facts.add(known);
        Card entries =
                new Card(new MigLayout("insets 14 20 16 20, fillx, wrap 2, gap 16 6", "[132!][grow,fill]", "[top]"));
        entries.add(new WrapLabel(words.say("birds.last-entries"), TextStyle.TAG, Tone.SOFT), "spanx 2");
        if (bird.entries().isEmpty()) {
            entries.add(new WrapLabel(words.say("birds.no-entries"), TextStyle.SECOND, Tone.INK), "spanx 2, wmin 0");
        }
        for (LogFace entry : bird.entries()) {
            entries.add(new WrapLabel(entry.when(), TextStyle.SECOND, Tone.SOFT));
            WrapLabel what = new WrapLabel(entry.what(), TextStyle.SECOND, entry.struck() ? Tone.SOFT : Tone.INK);
            entries.add(entry.struck() ? what.struckOut() : what, "wmin 0");
        }
        facts.add(entries);
        facts.revalidate();
    }

    private void fillActs(BirdsState state, BirdsState.Sheet bird) {
        acts.removeAll();
        form = state.act().map(act -> new ActForm(words, presenter, state, act));
        if (form.isPresent()) {
            acts.add(form.get(), "grow, wmin 0, hmin 0");
        } else {
            acts.add(buttons(bird), "grow, wmin 0, hmin 0");
        }
        acts.revalidate();
    }

    private Pane buttons(BirdsState.Sheet bird) {
        Pane both = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 16", "[grow,fill]", "[grow,fill][]"));
        Pane grid = new Pane(new MigLayout(
                "insets 0, fill, wrap 2, gap 16 14",
                "[grow,fill,sizegroup act][grow,fill,sizegroup act]",
                "[grow,fill]"));
        List<TouchButton> all = new ArrayList<>();
        bird.acts()
                .forEach(act -> all.add(TouchButton.of(
                                kind(act),
                                "do." + act.key(),
                                words.say("birds.do." + act.key()),
                                () -> presenter.act(act))
                        .type(TextStyle.ACTION)
                        .tall(84)));
        all.forEach(button -> grid.add(button, "hmax 108, aligny top"));
        if (all.isEmpty()) {
            grid.add(new WrapLabel(words.say("birds.gone"), TextStyle.LINE, Tone.SOFT), "spanx 2, wmin 0");
        }
        both.add(new TouchScroll(words, "acts", grid), "grow, wmin 0, hmin 0");
        both.add(TouchButton.of(ButtonKind.QUIET, "all", words.say("birds.all"), () -> presenter.all())
                .tall(64));
        return both;
    }

    private static ButtonKind kind(BirdAct act) {
        return switch (act) {
            case MOVE -> ButtonKind.LIKELY;
            case LOOSE -> ButtonKind.OUTLINED;
            case FOUND, BACK -> ButtonKind.LIKELY;
            case LEFT -> ButtonKind.QUIET;
            default -> ButtonKind.PLAIN;
        };
    }

    private void renderNewcomer(BirdsState state, boolean turned) {
        heading.say(words.say("birds.new"), words.say("birds.new-text"));
        if (turned) {
            NewBirdForm page = new NewBirdForm(words, presenter, state);
            newcomer = Optional.of(page);
            show(page);
        }
        newcomer.ifPresent(open -> open.wrong(state.problem()));
    }

    private void show(JComponent page) {
        view.removeAll();
        view.add(page, "grow, wmin 0, hmin 0");
    }
}
