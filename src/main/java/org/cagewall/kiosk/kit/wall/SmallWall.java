package org.cagewall.kiosk.kit.wall;

import java.awt.BorderLayout;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Chips;
import org.cagewall.kiosk.kit.Choice;
import org.cagewall.kiosk.kit.Grid;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.kiosk.theme.Sizes;
import org.cagewall.text.Words;

/**
 * The walls drawn small, each place a button: to lay a wall out, or to choose cages where they hang. A wall that is
 * wider than the screen is turned in parts. Used on the event thread.
 */
public final class SmallWall extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient Words words;
    private final String name;
    private final int mostColumns;
    private final transient Consumer<WallPlan.Spot> onPress;
    private final transient Map<String, PlaceButton> buttons = new LinkedHashMap<>();
    private transient List<WallPlan> plans = List.of();
    private transient Set<String> marked = Set.of();
    private int page;

    private record Part(WallPlan plan, int first, int last, String title) {}

    /** Walls with at most n columns beside one another at the normal text size, fewer at larger ones. */
    public SmallWall(Words words, String name, int mostColumns, Consumer<WallPlan.Spot> onPress) {
        super(new BorderLayout());
        this.words = words;
        this.name = name;
        this.mostColumns = Math.max(2, mostColumns * 100 / Sizes.px(100));
        this.onPress = onPress;
        setName(name);
    }

    /** Shows these walls, the same part of them as before where there still is one. */
    public SmallWall show(List<WallPlan> walls) {
        if (!walls.equals(plans)) {
            plans = List.copyOf(walls);
            build();
        }
        return this;
    }

    /** Turns to the wall of this name. */
    public void turnTo(String wall) {
        List<Part> parts = parts();
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i).plan().name().equals(wall)) {
                page = i;
                build();
                return;
            }
        }
    }

    /** Rings the places of these names. */
    public SmallWall mark(Collection<String> names) {
        marked = Set.copyOf(names);
        buttons.forEach((each, button) -> button.setSelected(marked.contains(each)));
        return this;
    }

    private void build() {
        removeAll();
        buttons.clear();
        List<Part> parts = parts();
        if (!parts.isEmpty()) {
            page = Math.min(page, parts.size() - 1);
            Pane whole = new Pane(new MigLayout("insets 0, fill, wrap 1, gap 0 12", "[grow,fill]", ""));
            if (parts.size() > 1) {
                whole.add(turns(parts), "wmin 0");
            }
            whole.add(grid(parts.get(page)), "grow, pushy, wmin 0");
            add(new TouchScroll(words, name + ".scroll", whole));
        }
        revalidate();
        repaint();
    }

    private Chips<Integer> turns(List<Part> parts) {
        List<Choice<Integer>> choices = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            choices.add(new Choice<>(String.valueOf(i + 1), parts.get(i).title(), i));
        }
        return Chips.oneOf(name + ".part", choices, chosen -> {
                    page = chosen;
                    build();
                })
                .choose(List.of(page));
    }

    private Grid grid(Part part) {
        Grid grid = new Grid(part.plan().rows(), part.last() - part.first() + 1);
        for (WallPlan.Spot spot : part.plan().spots()) {
            if (spot.column() >= part.first() && spot.column() <= part.last()) {
                PlaceButton button = new PlaceButton(name + "." + spot.name(), spot, () -> onPress.accept(spot));
                button.setSelected(marked.contains(spot.name()));
                buttons.put(spot.name(), button);
                grid.put(button, spot.row() - 1, spot.column() - part.first());
            }
        }
        return grid;
    }

    private List<Part> parts() {
        List<Part> parts = new ArrayList<>();
        for (WallPlan plan : plans) {
            int count = (plan.columns() + mostColumns - 1) / mostColumns;
            int each = (plan.columns() + count - 1) / Math.max(1, count);
            for (int first = 1; first <= plan.columns(); first += each) {
                int last = Math.min(plan.columns(), first + each - 1);
                String title = count == 1 ? plan.name() : words.say("kit.wall-part", plan.name(), first, last);
                parts.add(new Part(plan, first, last, title));
            }
        }
        return parts;
    }
}
