package org.cagewall.cards;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.SortedMap;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Page;
import org.cagewall.paper.Pdf;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.text.Words;

/**
 * The cards of many cages on as many sheets as they need, ready for a printer. Stateless; any thread but the event
 * thread, since fonts are loaded.
 */
public final class CardsPdf {

    private static final Ink CUT = Ink.grey(150);
    private static final double CUT_LINE = 0.1;
    private static final double CUT_GAP = 0.8;
    private static final double CUT_LENGTH = 3;

    private CardsPdf() {}

    /** The sheets that cards can be printed on: the program's, and those of this folder of the keeper's own. */
    public static Sheets sheets(Path labels) {
        return Sheets.with(labels, SymbolTiles::against);
    }

    /** The program's own sheets. */
    public static Sheets sheets() {
        return Sheets.builtIn(SymbolTiles::against);
    }

    /**
     * The bytes of the document. The same cards, order and day give the same bytes.
     *
     * @param cards what to print, in the order of the places on the sheet
     * @param order on which sheet, in which places, with which face
     * @param printed the day that the cards show as the day they were printed
     * @param words the language of the cards
     */
    public static byte[] drawn(List<CardToPrint> cards, Order order, LocalDate printed, Words words) {
        return Pdf.drawn(words.say("cards.card.title"), printed, pdf -> order.spread(cards)
                .forEach(page -> drawPage(pdf.page(order.sheet().paper()), page, order, printed, words)));
    }

    private static void drawPage(
            Page page, SortedMap<Integer, CardToPrint> cards, Order order, LocalDate printed, Words words) {
        drawCutMarks(page, order.sheet());
        cards.forEach((place, card) -> CardDrawing.of(
                        card, page, order.sheet().place(place), order.faces().of(card.face()), printed, words)
                .draw());
    }

    /** Short marks outside the block of cards, for plain paper and a knife; on cut sheets they fall into the waste. */
    private static void drawCutMarks(Page page, Sheet sheet) {
        double right = sheet.place(sheet.cards() - 1).right();
        double bottom = sheet.place(sheet.cards() - 1).bottom();
        for (int column = 0; column < sheet.columns(); column++) {
            double left = sheet.place(column).left();
            for (double x : new double[] {left, left + sheet.card().width()}) {
                markDown(page, x, sheet.top() - CUT_GAP - CUT_LENGTH);
                markDown(page, x, bottom + CUT_GAP);
            }
        }
        for (int row = 0; row < sheet.rows(); row++) {
            double top = sheet.place(row * sheet.columns()).top();
            for (double y : new double[] {top, top + sheet.card().height()}) {
                markAcross(page, sheet.left() - CUT_GAP - CUT_LENGTH, y);
                markAcross(page, right + CUT_GAP, y);
            }
        }
    }

    private static void markDown(Page page, double x, double top) {
        page.line(x, top, x, top + CUT_LENGTH, CUT_LINE, CUT);
    }

    private static void markAcross(Page page, double left, double y) {
        page.line(left, y, left + CUT_LENGTH, y, CUT_LINE, CUT);
    }
}
