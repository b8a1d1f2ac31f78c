package org.cagewall.kiosk.shell;

import java.util.function.Consumer;
import java.util.function.UnaryOperator;

/**
 * What a screen shows now, kept by its presenter: each change is a function from the old state to the new one, and the
 * view is told only of what is different. Free of Swing. Used on the event thread.
 */
public final class Shown<S> {

    private final Consumer<S> view;
    private S now;

    /** Begins with this state, and shows it at once. */
    public Shown(S first, Consumer<S> view) {
        this.view = view;
        this.now = first;
        view.accept(first);
    }

    public S now() {
        return now;
    }

    public void change(UnaryOperator<S> to) {
        S next = to.apply(now);
        if (!next.equals(now)) {
            now = next;
            view.accept(next);
        }
    }
}
