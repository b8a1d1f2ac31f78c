package org.cagewall.kiosk.birds;

import java.util.List;
import java.util.Optional;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Labelled;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Problem;
import org.cagewall.kiosk.kit.ProblemCard;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.wall.SmallWall;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.bird.Sex;
import org.cagewall.text.Words;

/** What is filled in to add a bird: who it is on the left, where it stands on the right. Used on the event thread. */
final class NewBirdForm extends Pane {

    private static final long serialVersionUID = 1L;
    private static final int COLUMNS = 6;

    private final transient Words words;
    private final transient BirdsPresenter presenter;
    private final Field ring;
    private final Field ringYear;
    private final Field colour;
    private final Field hatched;
    private final Chips<Sex> sex;
    private final SmallWall wall;
    private final ProblemCard problem = new ProblemCard();
    private transient Optional<String> cage = Optional.empty();

    NewBirdForm(Words words, BirdsPresenter presenter, BirdsState state) {
        super(new MigLayout(
                "insets 0, fill, gap 24 12, hidemode 3",
                "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]",
                "[0:0,grow,fill][][]"));
        this.words = words;
        this.presenter = presenter;
        setName("form.new");
        ring = problem.about("ring", Field.line("ring", words.say("birds.ring"), ""));
        ringYear = problem.about("ring-year", Field.line("ring-year", words.say("birds.ring-year-new"), ""));
        colour = problem.about("colour", Field.line("colour", words.say("birds.colour"), ""));
        hatched = problem.about("hatched", Field.line("hatched", words.say("birds.hatched"), ""));
        sex = Chips.oneOf("sex", Choice.of(Sex.values(), words, "birds.sex."), any -> {});
        wall = new SmallWall(words, "in", COLUMNS, spot -> choose(spot.name())).show(state.walls());
        add(new TouchScroll(words, "fields", left(state)), "cell 0 0, grow, wmin 0, hmin 0");
        Pane right = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 6", "[grow,fill]", "[][0:0,grow,fill]"));
        right.add(new WrapLabel(words.say("birds.which-cage"), TextStyle.TAG, Tone.SOFT));
        right.add(wall, "grow, wmin 0, hmin 0");
        add(right, "cell 1 0, grow, wmin 0");
        add(problem, "cell 0 1 2 1, wmin 0");
        add(button(ButtonKind.OUTLINED, "all", "birds.leave", () -> presenter.all()), "cell 0 2");
        add(button(ButtonKind.MAIN, "record", "birds.add", this::record), "cell 1 2");
    }

    void wrong(Optional<Problem> what) {
        problem.say(what);
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
        left.add(ringYear);
        return left;
    }

    /** The field with words below it that fill it in one touch. */
    private Stack withQuick(Field field, String name, List<String> quick) {
        Stack both = new Stack(8);
        both.add(field);
        SideBySide row = new SideBySide();
        for (String each : quick) {
            row.add(TouchButton.of(ButtonKind.PLAIN, name + ".quick." + each, each, () -> field.value(each))
                    .type(TextStyle.TAG)
                    .tall(48));
        }
        both.add(row);
        return both;
    }

    private void choose(String name) {
        cage = Optional.of(name);
        wall.mark(List.of(name));
        wrong(Optional.empty());
    }

    private void record() {
        presenter.add(new BirdsPresenter.Newcomer(
                ring.value(), ringYear.value(), sex.one(), colour.value(), hatched.value(), cage));
    }

    private TouchButton button(ButtonKind kind, String name, String key, Runnable onPress) {
        return TouchButton.of(kind, name, words.say(key), onPress)
                .type(TextStyle.LEAD)
                .tall(72);
    }
}
