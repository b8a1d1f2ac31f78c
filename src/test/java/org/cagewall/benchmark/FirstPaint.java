package org.cagewall.benchmark;

import java.awt.Component;
import java.awt.Container;
import java.awt.Window;
import java.util.function.Predicate;
import javax.swing.RepaintManager;

/** Says once on standard output that a window has been painted with what is waited for in it, and ends the process. */
final class FirstPaint extends RepaintManager {

    static final String PAINTED = "painted";

    private final Predicate<Component> awaited;

    FirstPaint(Predicate<Component> awaited) {
        this.awaited = awaited;
    }

    @Override
    public void paintDirtyRegions() {
        super.paintDirtyRegions();
        for (Window window : Window.getWindows()) {
            if (window.isShowing() && holds(window)) {
                System.out.println(PAINTED);
                System.out.flush();
                Runtime.getRuntime().halt(0);
            }
        }
    }

    private boolean holds(Component part) {
        if (awaited.test(part)) {
            return true;
        }
        if (part instanceof Container container) {
            for (Component child : container.getComponents()) {
                if (holds(child)) {
                    return true;
                }
            }
        }
        return false;
    }
}
