package org.cagewall.cards;

import java.time.LocalDate;
import java.util.List;
import org.cagewall.paper.Align;
import org.cagewall.paper.Area;
import org.cagewall.paper.Ink;
import org.cagewall.paper.Page;
import org.cagewall.paper.Pdf;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Type;
import org.cagewall.text.Words;

/**
 * A trial page for a sheet: the outlines of all its places, rulers along two edges of the paper, and the shift that is
 * set, so that a printer's error is read off before cards are spoilt. All lengths in millimetres. Stateless; any thread
 * but the event thread, since fonts are loaded.
 */
public final class TrialPdf {

    private static final double LINE = 0.2;

    /** Where a ruler's strokes begin: nearer to the edge few printers print. */
    private static final double RULER = 5;

    private static final List<Double> STROKES = List.of(1.6, 2.4, 3.4);
    private static final Type FIGURE = Type.regular(1.5);
    private static final Ink SOFT = Ink.grey(110);

    private final Page page;
    private final Sheet sheet;
    private final Words words;

    private TrialPdf(Page page, Sheet sheet, Words words) {
        this.page = page;
        this.sheet = sheet;
        this.words = words;
    }

    /** The bytes of the page. */
    public static byte[] drawn(Sheet sheet, LocalDate day, Words words) {
        return Pdf.drawn(
                words.say("cards.trial.title"), day, pdf -> new TrialPdf(pdf.page(sheet.paper()), sheet, words).draw());
    }

    private void draw() {
        for (int index = 0; index < sheet.cards(); index++) {
            drawPlace(index);
        }
        drawRulerAcross();
        drawRulerDown();
    }

    private void drawPlace(int index) {
        Area place = sheet.place(index);
        page.frameRounded(place, 0, LINE, Ink.BLACK);
        double middle = place.left() + place.width() / 2;
        double capitals = Math.min(9, place.height() / 5);
        double baseline = place.top() + place.height() / 2 + capitals / 2;
        if (index > 0) {
            page.text("" + (index + 1), Type.bold(capitals), SOFT, middle, baseline, Align.CENTRE);
        } else {
            drawWords(place);
        }
    }

    /** The first place has the words, since there is one on every sheet. */
    private void drawWords(Area place) {
        double left = Math.max(place.left(), 14) + 4;
        double width = place.right() - 4 - left;
        Type type = Type.regular(1.9);
        double y = Math.max(place.top(), 14) + 5;
        Type title = page.shrunk(sheet.title(), Type.bold(2.6), width, 1.8);
        page.text(page.cut(sheet.title(), title, width), title, Ink.BLACK, left, y);
        List<String> sentences = List.of(
                words.say(
                        "cards.trial.shift",
                        sheet.shift().width(),
                        sheet.shift().height()),
                words.say("cards.trial.how"),
                words.say("cards.trial.off"));
        y += 1.2;
        for (String sentence : sentences) {
            for (String line : page.wrapped(sentence, type, width)) {
                y += 3.1;
                page.text(line, type, Ink.BLACK, left, y);
            }
            y += 0.9;
        }
    }

    private void drawRulerAcross() {
        int length = (int) Math.floor(sheet.paper().width() - RULER);
        page.line(RULER, RULER, length, RULER, LINE, Ink.BLACK);
        for (int mm = (int) RULER; mm <= length; mm++) {
            page.line(mm, RULER, mm, RULER + stroke(mm), LINE / 2, Ink.BLACK);
            if (mm % 10 == 0) {
                page.text("" + mm, FIGURE, Ink.BLACK, mm, RULER + STROKES.get(2) + 2.2, Align.CENTRE);
            }
        }
    }

    private void drawRulerDown() {
        int length = (int) Math.floor(sheet.paper().height() - RULER);
        page.line(RULER, RULER, RULER, length, LINE, Ink.BLACK);
        for (int mm = (int) RULER; mm <= length; mm++) {
            page.line(RULER, mm, RULER + stroke(mm), mm, LINE / 2, Ink.BLACK);
            if (mm % 10 == 0 && mm > 10) {
                page.text("" + mm, FIGURE, Ink.BLACK, RULER + STROKES.get(2) + 0.7, mm + FIGURE.capitals() / 2);
            }
        }
    }

    private static double stroke(int mm) {
        return mm % 10 == 0 ? STROKES.get(2) : mm % 5 == 0 ? STROKES.get(1) : STROKES.get(0);
    }
}
