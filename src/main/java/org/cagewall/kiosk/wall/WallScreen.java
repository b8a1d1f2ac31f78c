package org.cagewall.kiosk.wall;

import java.awt.event.ComponentAdapter;
import java.awt.event.ComponentEvent;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.desk.Desk;
import org.cagewall.kiosk.kit.ButtonKind;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.EmptyState;
import org.cagewall.kiosk.kit.Grid;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Segment;
import org.cagewall.kiosk.kit.TouchButton;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.kit.wall.Tile;
import org.cagewall.kiosk.shell.Breadth;
import org.cagewall.kiosk.shell.HeadedScreen;
import org.cagewall.kiosk.shell.Navigator;
import org.cagewall.kiosk.shell.Refresher;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.text.Words;

/** Every cage in its place, three short lines each. Used on the event thread. */
public final class WallScreen extends HeadedScreen {

    /** So many tiles of the normal text size stand side by side and can still be read from a metre and a half. */
    private static final int COLUMNS = 8;

    /** Larger letters have the wall scrolled, and what scrolls it takes the width of one. */
    private static final int COLUMNS_SCROLLED = COLUMNS - 1;

    /** A lower tile, with the gap below it, would not hold two lines of its big word: then the wall is scrolled. */
    private static final int LEAST_HEIGHT = 178;

    /** The least width of a tile whose words can still be read. */
    private static final int LEAST_WIDTH = 132;

    /** What scrolls a wall, with the gap before it. */
    private static final int SCROLLER = 76;

    private final Words words;
    private final Breadth breadth;
    private final Pane choice = new Pane(new MigLayout("insets 0"));
    private final WallPresenter presenter;
    private final Map<String, Tile> tiles = new HashMap<>();
    private List<WallState.Part> parts = List.of();
    private int chosen = -1;
    private List<String> names = List.of();

    public WallScreen(Desk desk, Navigator navigator, Words words, Breadth breadth) {
        super(new MigLayout("insets 0, fill", "[grow,fill]", "[]0[0:0,grow,fill]"));
        this.words = words;
        this.breadth = breadth;
        if (breadth.isRoomy()) {
            heading.beside(choice);
        }
        presenter = new WallPresenter(
                desk, navigator, words, breadth.columns(Sizes.isNormal() ? COLUMNS : COLUMNS_SCROLLED), this::render);
        view.addComponentListener(new ComponentAdapter() {
            @Override
            public void componentResized(ComponentEvent event) {
                fit();
            }
        });
        heading.beside(
                TouchButton.of(ButtonKind.PLAIN, "scan", words.say("scanscreen.button"), () -> presenter.scan()));
    }

    @Override
    public boolean leavesRoomAside() {
        return true;
    }

    @Override
    protected Refresher watch() {
        return presenter.watch();
    }

    private void render(WallState state) {
        heading.say(
                state.isEmpty()
                        ? words.say("wall.title")
                        : state.parts().get(state.chosen()).name(),
                state.subtitle());
        List<String> cages =
                state.tiles().stream().map(tile -> tile.face().name()).toList();
        if (!state.parts().equals(parts) || state.chosen() != chosen || !cages.equals(names)) {
            parts = state.parts();
            chosen = state.chosen();
            names = cages;
            build(state);
        } else {
            state.tiles().forEach(tile -> tiles.get(tile.face().name()).show(tile.face()));
        }
    }

    private void build(WallState state) {
        tiles.clear();
        buildChoice(state);
        view.removeAll();
        if (state.isEmpty()) {
            view.add(
                    new EmptyState(
                            words.say("wall.no-walls"),
                            words.say("wall.no-walls-text"),
                            List.of(TouchButton.of(
                                    ButtonKind.MAIN, "set-up", words.say("wall.set-up"), () -> presenter.setUp()))),
                    "cell 0 1, grow");
        } else {
            view.add(grid(state), "cell 0 1, grow, wmin 0, hmin 0");
            if (!breadth.isRoomy() && state.parts().size() > 1) {
                view.add(choice, "cell 0 0, growx 0, gapbottom 12");
            }
        }
        rebuilt();
    }

    private void buildChoice(WallState state) {
        choice.removeAll();
        if (state.parts().size() > 1) {
            List<Choice<Integer>> choices = new ArrayList<>();
            for (int i = 0; i < state.parts().size(); i++) {
                choices.add(new Choice<>(
                        Integer.toString(i + 1), state.parts().get(i).name(), i));
            }
            Segment<Integer> segment = new Segment<>("walls", choices, part -> presenter.choose(part));
            segment.choose(state.chosen());
            choice.add(segment);
        }
        choice.revalidate();
    }

    private JComponent grid(WallState state) {
        WallState.Part part = state.parts().get(state.chosen());
        Grid grid = new Grid(part.rows(), part.columns());
        for (WallState.Tile tile : state.tiles()) {
            String name = tile.face().name();
            Tile button = new Tile("tile." + name, tile.face(), () -> presenter.open(name));
            grid.put(button, tile.row(), tile.column());
            tiles.put(name, button);
        }
        return new TouchScroll(words, "wall", grid).inRows(part.rows(), Sizes.px(LEAST_HEIGHT));
    }

    /** As much of a wall stands side by side as can be read: on a narrow screen it is shown piece by piece. */
    private void fit() {
        int room = view.getWidth() - Sizes.px(SCROLLER) + Sizes.gap();
        presenter.fit(Math.max(1, room / (Sizes.px(LEAST_WIDTH) + Sizes.gap())));
    }
}
