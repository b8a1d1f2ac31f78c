package org.cagewall.kiosk.birds;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
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
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.SmallWall;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.room.Condition;
import org.cagewall.room.Sex;
import org.cagewall.room.Way;
import org.cagewall.room.Whither;
import org.cagewall.text.Words;

/** What is filled in to record one thing about a bird. Used on the event thread. */
final class ActForm extends Pane {

    private static final long serialVersionUID = 1L;
    private static final int HEAVIEST = 500;
    private static final int COLUMNS = 6;

    private final transient Words words;
    private final transient BirdsPresenter presenter;
    private final transient BirdsState state;
    private final transient Map<String, Field> fields = new HashMap<>();
    private final WrapLabel problem = new WrapLabel("", Type.TAG, Tone.ATTENTION_INK);
    private final Card problemCard = new Card(new MigLayout("insets 10 16, fillx", "[grow,fill]")).attention();
    private final Segment<BirdsState.Day> day;
    private transient BirdsState.Day chosenDay = BirdsState.Day.TODAY;
    private transient Optional<String> cage = Optional.empty();
    private transient Consumer<List<String>> chosen = names -> {};

    private record Form(JComponent body, Runnable record) {}

    ActForm(Words words, BirdsPresenter presenter, BirdsState state, Act act) {
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
        problem.setName("problem");
        problemCard.add(problem, "wmin 0");
        problemCard.setVisible(false);
        add(problemCard, "wmin 0");
        add(foot(act, form.record()));
    }

    /** Says what is wrong, by the field where there is one. */
    void wrong(Optional<BirdsState.Problem> what) {
        fields.values().forEach(field -> field.wrong(""));
        problemCard.setVisible(false);
        what.ifPresent(it -> {
            if (fields.containsKey(it.part())) {
                fields.get(it.part()).wrong(it.words());
                fields.get(it.part()).focus();
            } else {
                problem.setText(it.words());
                problemCard.setVisible(true);
            }
        });
        revalidate();
        repaint();
    }

    private Pane head(Act act) {
        Pane head = new Pane(new MigLayout("insets 0, fillx", "[grow,fill][]"));
        String ring = state.bird().map(BirdsState.Sheet::ring).orElse("");
        head.add(new WrapLabel(words.say("birds.form." + act.key(), ring), Type.LEAD, Tone.INK), "wmin 0");
        if (hasADay(act)) {
            head.add(day);
        }
        return head;
    }

    private static boolean hasADay(Act act) {
        return switch (act) {
            case MOVE, LOOKED_OVER, TREATED, NOTE, OUT, BACK, LEFT -> true;
            default -> false;
        };
    }

    private Pane foot(Act act, Runnable record) {
        Pane foot =
                new Pane(new MigLayout("insets 0, fillx, gap 12", "[grow 1,fill,sizegroup][grow 1,fill,sizegroup]"));
        foot.add(TouchButton.of(ButtonKind.OUTLINED, "leave", words.say("birds.leave"), () -> presenter.leave())
                .type(Type.LEAD)
                .tall(72));
        ButtonKind kind = act == Act.LEFT ? ButtonKind.ATTENTION : ButtonKind.MAIN;
        foot.add(TouchButton.of(kind, "record", words.say("birds.record." + act.key()), record)
                .type(Type.LEAD)
                .tall(72));
        return foot;
    }

    private Form form(Act act) {
        return switch (act) {
            case MOVE -> move();
            case LOOKED_OVER -> lookedOver();
            case TREATED -> treated();
            case NOTE -> note();
            case OUT -> out();
            case BACK -> back();
            case SEX -> sex();
            case NAME -> name();
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
                Chips.oneOf("condition", choices(Condition.values(), "birds.condition."), any -> {});
        CountPad pad = CountPad.flat(words, "weight", HEAVIEST, grams -> {});
        Field note = field(Field.line("note", words.say("birds.note"), ""), "note");
        Stack body = new Stack(16);
        body.add(Labelled.of(words.say("birds.how-is"), condition));
        body.add(Labelled.of(words.say("birds.weight"), pad));
        body.add(note);
        return new Form(
                scrolled(body), () -> presenter.lookedOver(condition.one(), pad.value(), note.value(), chosenDay));
    }

    private Form treated() {
        Field product = field(Field.line("product", words.say("birds.product"), ""), "product");
        Chips<BirdDeed.TreatedFor> reason =
                Chips.oneOf("reason", choices(BirdDeed.TreatedFor.values(), "birds.reason."), any -> {});
        Field note = field(Field.line("note", words.say("birds.note"), ""), "note");
        Stack body = new Stack(16);
        Card caution = new Card(new MigLayout("insets 12 16, fillx", "[grow,fill]")).attention();
        caution.add(new WrapLabel(words.say("birds.caution"), Type.TAG, Tone.ATTENTION_INK), "wmin 0");
        body.add(caution);
        body.add(product);
        body.add(Labelled.of(words.say("birds.reason"), reason));
        body.add(note);
        return new Form(
                scrolled(body), () -> presenter.treated(product.value(), reason.one(), note.value(), chosenDay));
    }

    private Form note() {
        Field note = field(Field.note("note", words.say("birds.note-long"), ""), "note");
        return new Form(scrolled(note), () -> presenter.note(note.value(), chosenDay));
    }

    private Form out() {
        Chips<Whither> where = Chips.oneOf("where", choices(Whither.values(), "birds.whither."), any -> {});
        Field note = field(Field.line("note", words.say("birds.note"), ""), "note");
        Stack body = new Stack(16);
        body.add(Labelled.of(words.say("birds.where"), where));
        body.add(note);
        return new Form(scrolled(body), () -> presenter.out(where.one(), note.value(), chosenDay));
    }

    private Form back() {
        Field result = field(Field.note("result", words.say("birds.result"), ""), "result");
        return new Form(scrolled(result), () -> presenter.back(result.value(), chosenDay));
    }

    private Form sex() {
        Chips<Sex> sex = Chips.oneOf("sex", choices(Sex.values(), "birds.sex."), any -> {});
        return new Form(scrolled(Labelled.of(words.say("birds.which-sex"), sex)), () -> presenter.sex(sex.one()));
    }

    private Form name() {
        Field name = field(Field.line("name", words.say("birds.name"), ""), "name");
        return new Form(scrolled(name), () -> presenter.name(name.value()));
    }

    private Form parents() {
        Field father = field(Field.line("father", words.say("birds.father"), ""), "father");
        Field mother = field(Field.line("mother", words.say("birds.mother"), ""), "mother");
        Stack body = new Stack(16);
        body.add(father);
        body.add(mother);
        return new Form(scrolled(body), () -> presenter.parents(father.value(), mother.value()));
    }

    private Form left() {
        Chips<Way> how = Chips.oneOf("how", choices(Way.values(), "birds.way."), any -> {});
        Field place = field(Field.line("place", words.say("birds.place"), ""), "place");
        Field likely = field(Field.line("likely", words.say("birds.likely"), ""), "likely");
        Stack body = new Stack(16);
        body.add(Labelled.of(words.say("birds.how"), how));
        body.add(place);
        body.add(likely);
        return new Form(scrolled(body), () -> presenter.left(how.one(), place.value(), likely.value(), chosenDay));
    }

    private Field field(Field field, String part) {
        fields.put(part, field);
        return field;
    }

    private JComponent scrolled(JComponent body) {
        return new TouchScroll(words, "fields", body);
    }

    private <E extends Enum<E>> List<Choice<E>> choices(E[] values, String area) {
        return Arrays.stream(values)
                .map(value -> {
                    String key = value.name().toLowerCase(Locale.ROOT).replace('_', '-');
                    return new Choice<>(key, words.say(area + key), value);
                })
                .toList();
    }
}
