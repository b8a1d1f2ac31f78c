package org.cagewall.kiosk.birds;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Row;
import org.cagewall.kiosk.kit.SmallWall;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.kiosk.theme.Type;
import org.cagewall.room.Sex;
import org.cagewall.text.Words;

/** What is filled in to add a bird: who it is on the left, where it stands on the right. Used on the event thread. */
final class NewBirdForm extends Pane {

    private static final long serialVersionUID = 1L;
    private static final int COLUMNS = 6;

    private final transient Words words;
    private final transient BirdsPresenter presenter;
    private final transient Map<String, Field> fields = new HashMap<>();
    private final Field ring;
    private final Field colour;
    private final Field hatched;
    private final Chips<Sex> sex;
    private final SmallWall wall;
    private final WrapLabel problem = new WrapLabel("", Type.TAG, Tone.ATTENTION_INK);
    private final Card problemCard = new Card(new MigLayout("insets 10 16, fillx", "[grow,fill]")).attention();
    private transient Optional<String> cage = Optional.empty();

    NewBirdForm(Words words, BirdsPresenter presenter, BirdsState state) {
        super(new MigLayout(
                "insets 0, fill, gap 24 12, hidemode 3",
                "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]",
                "[0:0,grow,fill][][]"));
        this.words = words;
        this.presenter = presenter;
        setName("form.new");
        ring = field("ring", Field.line("ring", words.say("birds.ring"), ""));
        colour = field("colour", Field.line("colour", words.say("birds.colour"), ""));
        hatched = field("hatched", Field.line("hatched", words.say("birds.hatched"), ""));
        sex = Chips.oneOf("sex", sexes(), any -> {});
        wall = new SmallWall(words, "in", COLUMNS, spot -> choose(spot.name())).show(state.walls());
        add(new TouchScroll(words, "fields", left(state)), "cell 0 0, grow, wmin 0, hmin 0");
        Pane right = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 6", "[grow,fill]", "[][0:0,grow,fill]"));
        right.add(new WrapLabel(words.say("birds.which-cage"), Type.TAG, Tone.SOFT));
        right.add(wall, "grow, wmin 0, hmin 0");
        add(right, "cell 1 0, grow, wmin 0");
        problem.setName("problem");
        problemCard.add(problem, "wmin 0");
        problemCard.setVisible(false);
        add(problemCard, "cell 0 1 2 1, wmin 0");
        add(button(ButtonKind.OUTLINED, "all", "birds.leave", () -> presenter.all()), "cell 0 2");
        add(button(ButtonKind.MAIN, "record", "birds.add", this::record), "cell 1 2");
    }

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

    private Stack left(BirdsState state) {
        Stack left = new Stack(16);
        left.add(ring);
        left.add(Labelled.of(words.say("birds.which-sex"), sex));
        left.add(withQuick(colour, "colour", state.colours()));
        left.add(withQuick(
                hatched, "hatched", state.years().stream().map(String::valueOf).toList()));
        return left;
    }

    /** The field with words below it that fill it in one touch. */
    private Stack withQuick(Field field, String name, List<String> quick) {
        Stack both = new Stack(8);
        both.add(field);
        Row row = new Row();
        for (String each : quick) {
            row.add(TouchButton.of(ButtonKind.PLAIN, name + ".quick." + each, each, () -> field.value(each))
                    .type(Type.TAG)
                    .tall(48));
        }
        both.add(row);
        return both;
    }

    private List<Choice<Sex>> sexes() {
        List<Choice<Sex>> sexes = new ArrayList<>();
        Arrays.stream(Sex.values()).forEach(each -> {
            String key = each.name().toLowerCase(Locale.ROOT);
            sexes.add(new Choice<>(key, words.say("birds.sex." + key), each));
        });
        return sexes;
    }

    private void choose(String name) {
        cage = Optional.of(name);
        wall.mark(List.of(name));
        wrong(Optional.empty());
    }

    private void record() {
        presenter.add(new BirdsPresenter.Newcomer(ring.value(), sex.one(), colour.value(), hatched.value(), cage));
    }

    private Field field(String part, Field field) {
        fields.put(part, field);
        return field;
    }

    private TouchButton button(ButtonKind kind, String name, String key, Runnable onPress) {
        return TouchButton.of(kind, name, words.say(key), onPress)
                .type(Type.LEAD)
                .tall(72);
    }
}
