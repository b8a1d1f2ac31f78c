package org.cagewall.kiosk.cards;

import net.miginfocom.swing.MigLayout;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.kiosk.kit.Card;
import org.cagewall.kiosk.kit.Stack;
import org.cagewall.kiosk.kit.WrapLabel;
import org.cagewall.kiosk.kit.paper.QrView;
import org.cagewall.kiosk.theme.TextStyle;
import org.cagewall.kiosk.theme.Tone;
import org.cagewall.text.Words;

/** What a cage's card would say if it were printed now, with its symbol, beside the list. Used on the event thread. */
final class CardFaceView extends Card {

    private static final long serialVersionUID = 1L;

    CardFaceView(Words words, CardsState.Face face) {
        super(new MigLayout("insets 14 18 14 10, fillx, gap 8", "[grow,fill][]", "[top]"));
        Stack left = new Stack(2);
        left.add(new WrapLabel(face.name(), face.name().length() > 6 ? TextStyle.TITLE : TextStyle.NEXT, Tone.INK)
                .lines(2));
        left.add(new WrapLabel(face.pair(), TextStyle.LEAD, Tone.INK));
        if (!face.since().isEmpty()) {
            left.add(new WrapLabel(face.since(), TextStyle.SECOND, Tone.SOFT));
        }
        face.lines().forEach(line -> left.add(new WrapLabel(line, TextStyle.LINE, Tone.INK)));
        add(left, "wmin 0");
        QrView symbol = new QrView(modules(face.code()), words.say("cardscreen.leads-to", face.name()));
        add(symbol, "w 150!, h 150!");
        setName("preview");
        getAccessibleContext().setAccessibleName(words.say("cardscreen.card-of", face.name()));
    }

    private static boolean[][] modules(String code) {
        Symbol symbol = Symbols.matrix(code);
        boolean[][] dark = new boolean[symbol.side()][symbol.side()];
        for (int row = 0; row < dark.length; row++) {
            for (int column = 0; column < dark.length; column++) {
                dark[row][column] = symbol.isDark(column, row);
            }
        }
        return dark;
    }
}
