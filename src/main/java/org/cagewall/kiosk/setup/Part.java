package org.cagewall.kiosk.setup;

import java.awt.LayoutManager;
import java.util.Arrays;
import javax.swing.JComponent;
import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Pane;
import org.cagewall.kiosk.kit.ProblemCard;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.shell.Refresher;

/** One part of the page: what one of the words at its head leads to. Used on the event thread. */
abstract class Part {

    final Pane view;
    final ProblemCard problem = new ProblemCard();

    Part(LayoutManager layout) {
        view = new Pane(layout);
    }

    /** What keeps it up to date while it is on the screen. */
    abstract Refresher watch();

    /** A white card around what belongs together. */
    static Card card(JComponent... parts) {
        Card card = new Card(new MigLayout("insets 16 20 18 20, fillx", "[grow,fill]"));
        Stack body = new Stack(14);
        Arrays.stream(parts).forEach(body::add);
        card.add(body, "wmin 0");
        return card;
    }
}
