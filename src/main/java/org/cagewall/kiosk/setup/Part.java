package org.cagewall.kiosk.setup;

import java.awt.LayoutManager;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.ProblemCard;
import org.cagewall.kiosk.shell.Watch;

/** One part of the page: what one of the words at its head leads to. Used on the event thread. */
abstract class Part {

    final Pane view;
    final ProblemCard problem = new ProblemCard();

    Part(LayoutManager layout) {
        view = new Pane(layout);
    }

    /** What keeps it up to date while it is on the screen. */
    abstract Watch watch();
}
