package org.cagewall.kiosk.today;

import java.awt.BorderLayout;
import java.util.List;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.Stack;

/**
 * What is said above the answers, as high as the longest of all that will stand in its place, so that the answers stay
 * under the finger from line to line. Used on the event thread.
 */
final class Steady extends Pane {

    private static final long serialVersionUID = 1L;

    private final transient List<Stack> all;

    /** These words now, and those in their turn. */
    Steady(Stack said, List<Stack> others) {
        super(new BorderLayout());
        this.all = others;
        add(said, BorderLayout.NORTH);
    }

    @Override
    public int heightFor(int width) {
        return all.stream().mapToInt(each -> each.heightFor(width)).reduce(super.heightFor(width), Math::max);
    }
}
