package org.cagewall.kiosk.setup;

import java.util.Optional;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Field;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.SideBySide;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.Stepper;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.wall.SmallWall;
import org.cagewall.kiosk.kit.wall.WallPlan;
import org.cagewall.kiosk.shell.Asking;
import org.cagewall.kiosk.shell.Pen;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.room.Use;
import org.cagewall.text.Words;

/** The walls on the left, each place to be touched; beside them what can be done there. Used on the event thread. */
final class WallsPart extends Part {

    private static final int COLUMNS = 7;
    private static final int ROWS = 3;
    private static final int PLACES = 6;
    private static final int MOST = 40;

    private final Words words;
    private final SmallWall wall;
    private final Card side = new Card(new MigLayout(
            "insets 18 20 18 20, fill, wrap 1, gap 0 12, hidemode 3", "[grow,fill]", "[0:0,grow,fill][][]"));
    private final WallsPresenter presenter;
    private Optional<WallsState> before = Optional.empty();

    WallsPart(Desk desk, Pen pen, Asking asking, Words words) {
        super(new MigLayout("insets 0, fill, gap 24 0", "[grow,fill][480!,fill]", "[0:0,grow,fill]"));
        this.words = words;
        wall = new SmallWall(words, "place", COLUMNS, spot -> touch(spot));
        view.add(wall, "grow, wmin 0, hmin 0");
        view.add(side, "grow, wmin 0, hmin 0");
        presenter = new WallsPresenter(desk, pen, asking, words, this::render);
    }

    @Override
    Refresher watch() {
        return presenter.watch();
    }

    private void touch(WallPlan.Spot spot) {
        presenter.touch(spot);
    }

    private void render(WallsState state) {
        wall.show(state.walls()).mark(state.panel().marked());
        if (before.filter(old -> old.panel().equals(state.panel())).isEmpty()) {
            side.removeAll();
            problem.forgetFields();
            build(state.panel());
        }
        problem.say(state.problem());
        before.filter(old -> old.walls().size() < state.walls().size())
                .ifPresent(old ->
                        wall.turnTo(state.walls().get(state.walls().size() - 1).name()));
        before = Optional.of(state);
        view.revalidate();
        view.repaint();
    }

    private void build(WallsState.Panel panel) {
        if (panel instanceof WallsState.NewWall adding) {
            newWall(adding);
        } else if (panel instanceof WallsState.FreePlace place) {
            freePlace(place);
        } else if (panel instanceof WallsState.TheCage cage) {
            theCage(cage);
        } else if (panel instanceof WallsState.Moving moving) {
            panel(words.say("setup.moving", moving.name()), words.say("setup.moving-text"), new Stack());
            foot(leave());
        } else {
            panel(words.say("setup.walls-title"), words.say("setup.walls-text"), new Stack());
            foot(button(ButtonKind.OUTLINED, "new-wall", words.say("setup.new-wall"), () -> presenter.newWall()));
        }
    }

    private void newWall(WallsState.NewWall adding) {
        Stack body = new Stack(16);
        Field name = problem.about("wall", Field.line("wall", words.say("setup.wall"), adding.suggested()));
        Stepper rows = new Stepper(words, "rows", words.say("setup.rows"), 1, MOST, ROWS, number -> {});
        Stepper columns = new Stepper(words, "columns", words.say("setup.columns"), 1, MOST, PLACES, number -> {});
        body.add(name);
        body.add(rows);
        body.add(columns);
        panel(words.say("setup.new-wall"), "", body);
        foot(
                leave(),
                button(
                        ButtonKind.MAIN,
                        "add-wall",
                        words.say("setup.add-wall"),
                        () -> presenter.addWall(name.value(), rows.value(), columns.value())));
    }

    private void freePlace(WallsState.FreePlace place) {
        Stack body = new Stack(16);
        Field name = problem.about("cage", Field.line("cage", words.say("setup.cage-name"), place.suggested()));
        Uses uses = new Uses(words, "use", Use.BREEDING, Optional.empty(), () -> {});
        body.add(name);
        body.add(uses.view());
        if (place.free() > 1) {
            body.add(TouchButton.of(
                    ButtonKind.PLAIN,
                    "fill",
                    words.say("setup.fill-free", place.free()),
                    () -> presenter.fill(uses.use(), uses.keeps())));
        }
        panel(
                words.say("setup.place-title"),
                words.say("setup.place-text", place.wall(), place.row(), place.column()),
                body);
        foot(
                leave(),
                button(
                        ButtonKind.MAIN,
                        "add-cage",
                        words.say("setup.add-cage"),
                        () -> presenter.addCage(name.value(), uses.use(), uses.keeps())));
    }

    private void theCage(WallsState.TheCage cage) {
        Stack body = new Stack(16);
        Uses[] uses = new Uses[1];
        uses[0] = new Uses(
                words, "use", cage.use(), cage.keeps(), () -> presenter.changeUse(uses[0].use(), uses[0].keeps()));
        body.add(uses[0].view());
        SideBySide row = new SideBySide();
        row.add(button(ButtonKind.PLAIN, "move", words.say("setup.move"), () -> presenter.move()));
        cage.neighbours()
                .forEach(other -> row.add(button(
                        ButtonKind.PLAIN,
                        "join." + other,
                        words.say("setup.join", other),
                        () -> presenter.join(other))));
        cage.parts()
                .forEach(part -> row.add(button(
                        ButtonKind.PLAIN,
                        "split." + part,
                        words.say("setup.split", part),
                        () -> presenter.split(part))));
        row.add(button(ButtonKind.QUIET, "retire", words.say("setup.retire"), () -> presenter.retire()));
        body.add(row);
        panel(words.say("setup.cage-title", cage.name()), cage.line(), body);
        foot(leave());
    }

    private void panel(String title, String text, Stack body) {
        Stack whole = new Stack(16);
        Stack head = new Stack(4);
        WrapLabel named = new WrapLabel(title, TextStyle.LEAD, Tone.INK);
        named.setName("panel.title");
        head.add(named);
        if (!text.isEmpty()) {
            head.add(new WrapLabel(text, TextStyle.SECOND, Tone.SOFT));
        }
        whole.add(head);
        whole.add(body);
        side.add(new TouchScroll(words, "panel", whole), "grow, wmin 0, hmin 0");
        side.add(problem, "wmin 0");
    }

    private void foot(TouchButton... buttons) {
        Pane foot = new Pane(new MigLayout("insets 0, fillx, gap 12", "[grow,fill,sizegroup]".repeat(buttons.length)));
        for (TouchButton each : buttons) {
            foot.add(each.tall(64));
        }
        side.add(foot, "wmin 0");
    }

    private TouchButton leave() {
        return button(ButtonKind.OUTLINED, "leave", words.say("setup.leave"), () -> presenter.nothing());
    }

    private static TouchButton button(ButtonKind kind, String name, String text, Runnable onPress) {
        return TouchButton.of(kind, name, text, onPress).type(TextStyle.BUTTON);
    }
}
