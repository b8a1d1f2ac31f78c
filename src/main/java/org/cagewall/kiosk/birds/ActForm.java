package org.cagewall.kiosk.birds;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.deed.BirdDeed;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.CountPad;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.kit.ProblemCard;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.TwoButtons;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.wall.SmallWall;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.bird.Condition;
import org.cagewall.room.bird.Sex;
import org.cagewall.room.bird.Way;
import org.cagewall.room.bird.Whither;
import org.cagewall.text.Words;

/** What is filled in to record one thing about a bird. Used on the event thread. */
final class ActForm extends Pane {

    private static final long serialVersionUID = 1L;
    private static final int HEAVIEST = 500;
    private static final int COLUMNS = 6;

    private final transient Words words;
    private final transient BirdsPresenter presenter;
    private final transient BirdsState state;
    private final ProblemCard problem = new ProblemCard();
    private final Segment<BirdsState.Day> day;
    private transient BirdsState.Day chosenDay = BirdsState.Day.TODAY;
    private transient Optional<String> cage = Optional.empty();
    private transient Consumer<List<String>> chosen = names -> {};

    private record Form(JComponent body, Runnable record) {}

    ActForm(Words words, BirdsPresenter presenter, BirdsState state, BirdAct act) {
        super(new MigLayout("insets 0, fill, wrap 1, gap 0 12, hidemode 3", "[grow,fill]", "[][0:0,grow,fill][][]"));
        this.words = words;
        this.presenter = presenter;
        this.state = state;
        day = new Segment<>(
                "day",
                List.of(
                        new Choice<>("today", words.say("birds.today"), BirdsState.Day.TODAY),
                        new Choice<>("yesterday", words.say("birds.yesterday"), BirdsState.Day.YESTERDAY)),
                chosen -> chosenDay = chosen);
        setName("form." + act.key());
        Form form = form(act);
        add(head(act));
        add(form.body(), "grow, wmin 0, hmin 0");
        add(problem, "wmin 0");
        add(foot(act, form.record()));
    }

    /** Says what is wrong, by the field where there is one. */
    void wrong(Optional<Problem> what) {
        problem.say(what);
        revalidate();
        repaint();
    }

    private Pane head(BirdAct act) {
        Pane head = new Pane(new MigLayout("insets 0, fillx", "[grow,fill][]"));
        String ring = state.bird().map(BirdsState.Sheet::ring).orElse("");
        head.add(new WrapLabel(words.say("birds.form." + act.key(), ring), TextStyle.LEAD, Tone.INK), "wmin 0");
        if (hasADay(act)) {
            head.add(day);
        }
        return head;
    }

    private static boolean hasADay(BirdAct act) {
        return switch (act) {
            case MOVE, LOOKED_OVER, TREATED, NOTE, OUT, BACK, SPLIT_RING, LEFT -> true;
            default -> false;
        };
    }

    private TwoButtons foot(BirdAct act, Runnable record) {
        ButtonKind kind = act == BirdAct.LEFT ? ButtonKind.ATTENTION : ButtonKind.MAIN;
        return new TwoButtons(
                TouchButton.of(ButtonKind.OUTLINED, "leave", words.say("birds.leave"), () -> presenter.leave()),
                TouchButton.of(kind, "record", words.say("birds.record." + act.key()), record));
    }

    private Form form(BirdAct act) {
        return switch (act) {
            case MOVE -> move();
            case LOOKED_OVER -> lookedOver();
            case TREATED -> treated();
            case NOTE -> note();
            case OUT -> out();
            case BACK -> back();
            case SEX -> sex();
            case NAME -> name();
            case SPLIT_RING -> splitRing();
            case PARENTS -> parents();
            case LEFT -> left();
            case LOOSE, FOUND -> throw new IllegalArgumentException("recorded in one touch: " + act);
        };
    }

    private Form move() {
        SmallWall wall = new SmallWall(words, "to", COLUMNS, spot -> choose(spot.name())).show(state.walls());
        chosen = names -> wall.mark(names);
        return new Form(wall, () -> presenter.move(cage, chosenDay));
    }

    private void choose(String name) {
        cage = Optional.of(name);
        chosen.accept(List.of(name));
        wrong(Optional.empty());
    }

    private Form lookedOver() {
        Chips<Condition> condition =
                Chips.oneOf("condition", Choice.of(Condition.values(), words, "birds.condition."), any -> {});
        CountPad pad = CountPad.flat(words, "weight", HEAVIEST, grams -> {});
        Field note = problem.about("note", Field.line("note", words.say("birds.note"), ""));
        Stack body = new Stack(16);
        body.add(Labelled.of(words.say("birds.how-is"), condition));
        body.add(Labelled.of(words.say("birds.weight"), pad));
        body.add(note);
        return new Form(
                scrolled(body), () -> presenter.lookedOver(condition.one(), pad.value(), note.value(), chosenDay));
    }

    private Form treated() {
        Field product = problem.about("product", Field.line("product", words.say("birds.product"), ""));
        Chips<BirdDeed.TreatedFor> reason =
                Chips.oneOf("reason", Choice.of(BirdDeed.TreatedFor.values(), words, "birds.reason."), any -> {});
        Field note = problem.about("note", Field.line("note", words.say("birds.note"), ""));
        Stack body = new Stack(16);
        Card caution = new Card(new MigLayout("insets 12 16, fillx", "[grow,fill]")).attention();
        caution.add(new WrapLabel(words.say("birds.caution"), TextStyle.TAG, Tone.ATTENTION_INK), "wmin 0");
        body.add(caution);
        body.add(product);
        body.add(Labelled.of(words.say("birds.reason"), reason));
        body.add(note);
        return new Form(
                scrolled(body), () -> presenter.treated(product.value(), reason.one(), note.value(), chosenDay));
    }

    private Form note() {
        Field note = problem.about("note", Field.note("note", words.say("birds.note-long"), ""));
        return new Form(scrolled(note), () -> presenter.note(note.value(), chosenDay));
    }

    private Form out() {
        Chips<Whither> where = Chips.oneOf("where", Choice.of(Whither.values(), words, "birds.whither."), any -> {});
        Field place = problem.about("place", Field.line("place", words.say("birds.out-place"), ""));
        Field note = problem.about("note", Field.line("note", words.say("birds.note"), ""));
        Stack body = new Stack(16);
        body.add(Labelled.of(words.say("birds.where"), where));
        body.add(place);
        body.add(note);
        return new Form(scrolled(body), () -> presenter.out(where.one(), place.value(), note.value(), chosenDay));
    }

    private Form back() {
        Field result = problem.about("result", Field.note("result", words.say("birds.result"), ""));
        return new Form(scrolled(result), () -> presenter.back(result.value(), chosenDay));
    }

    private Form sex() {
        Chips<Sex> sex = Chips.oneOf("sex", Choice.of(Sex.values(), words, "birds.sex."), any -> {});
        return new Form(scrolled(Labelled.of(words.say("birds.which-sex"), sex)), () -> presenter.sex(sex.one()));
    }

    private Form name() {
        Field name = problem.about("name", Field.line("name", words.say("birds.name"), ""));
        return new Form(scrolled(name), () -> presenter.name(name.value()));
    }

    private Form splitRing() {
        Field split = problem.about("split", Field.line("split", words.say("birds.split"), ""));
        Stack body = new Stack(16);
        state.bird().flatMap(BirdsState.Sheet::splitRing).ifPresent(worn -> {
            body.add(new WrapLabel(words.say("birds.wears-split", worn), TextStyle.LINE, Tone.INK));
            body.add(TouchButton.of(
                            ButtonKind.OUTLINED,
                            "split-off",
                            words.say("birds.split-off"),
                            () -> presenter.splitRingOff(chosenDay))
                    .tall(72));
        });
        body.add(split);
        return new Form(scrolled(body), () -> presenter.splitRing(split.value(), chosenDay));
    }

    private Form parents() {
        Field father = problem.about("father", Field.line("father", words.say("birds.father"), ""));
        Field mother = problem.about("mother", Field.line("mother", words.say("birds.mother"), ""));
        Stack body = new Stack(16);
        body.add(father);
        body.add(mother);
        return new Form(scrolled(body), () -> presenter.parents(father.value(), mother.value()));
    }

    private Form left() {
        Chips<Way> how = Chips.oneOf("how", Choice.of(Way.values(), words, "birds.way."), any -> {});
        Field place = problem.about("place", Field.line("place", words.say("birds.place"), ""));
        Field likely = problem.about("likely", Field.line("likely", words.say("birds.likely"), ""));
        Stack body = new Stack(16);
        body.add(Labelled.of(words.say("birds.how"), how));
        body.add(place);
        body.add(likely);
        return new Form(scrolled(body), () -> presenter.left(how.one(), place.value(), likely.value(), chosenDay));
    }

    private JComponent scrolled(JComponent body) {
        return new TouchScroll(words, "fields", body);
    }
}
