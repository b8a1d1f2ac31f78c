package org.cagewall.kiosk.setup;

import net.miginfocom.swing.MigLayout;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.TouchScroll;
import org.cagewall.text.Words;

/** A list on the left, and on the right a card for what is touched in it. Used on the event thread. */
abstract class ListPart extends Part {

    final Words words;
    final Stack list = new Stack();
    final Card side = new Card(new MigLayout(
            "insets 18 20 18 20, fill, wrap 1, gap 0 12, hidemode 3", "[grow,fill]", "[0:0,grow,fill][][]"));

    ListPart(String name, Words words) {
        super(new MigLayout(
                "insets 0, fill, gap 24 0",
                "[grow 1,fill,sizegroup half][grow 1,fill,sizegroup half]",
                "[0:0,grow,fill]"));
        this.words = words;
        view.add(new TouchScroll(words, name, list), "grow, wmin 0, hmin 0");
        view.add(side, "grow, wmin 0, hmin 0");
    }
}
