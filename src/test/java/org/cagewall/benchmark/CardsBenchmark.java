package org.cagewall.benchmark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.cagewall.cards.CardToPrint;
import org.cagewall.cards.CardsPdf;
import org.cagewall.cards.Order;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.room.card.CardCode;
import org.cagewall.room.card.CardFace;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

/** What printing the whole birdroom's cards costs. */
@Tag("benchmark")
class CardsBenchmark {

    private static final int CARDS = 200;
    private static final int TO_A_PAGE = 10;
    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    /** Points of PDF (ISO 32000) to a module of 25 mm over 21 modules. */
    private static final float MODULE = 25f / Symbols.SIDE * 72f / 25.4f;

    @Test
    void twoHundredCardsAgainstTheirSymbolsAlone() {
        List<CardToPrint> cards =
                IntStream.rangeClosed(1, CARDS).mapToObj(CardsBenchmark::card).toList();
        Sheet sheet = CardsPdf.sheets().find(Sheets.BUILT_IN.get(0)).sheet().orElseThrow();
        Words words = Words.english();
        assertThat(CardsPdf.drawn(cards, Order.on(sheet), TODAY, words)).isNotEmpty();

        Race.run(
                "200 cards as PDF",
                3,
                10,
                Race.of(5, i -> CardsPdf.drawn(cards, Order.on(sheet), TODAY, words)),
                Race.of(5, i -> bare(cards)));
    }

    private static CardToPrint card(int number) {
        CardFace face = CardFace.of("A" + number, "breeding")
                .withPair(Integer.toString(number))
                .withCock("HB 25-%03d".formatted(number))
                .withHen("HB 24-%03d".formatted(number))
                .withSince(TODAY)
                .withRound(1);
        return new CardToPrint(face, CardCode.of("K7Q", number, face), 2);
    }

    private static byte[] bare(List<CardToPrint> cards) {
        try (PDDocument document = new PDDocument();
                ByteArrayOutputStream out = new ByteArrayOutputStream()) {
            for (int first = 0; first < cards.size(); first += TO_A_PAGE) {
                PDPage page = new PDPage(PDRectangle.A4);
                document.addPage(page);
                try (PDPageContentStream content = new PDPageContentStream(document, page)) {
                    for (int i = 0; i < TO_A_PAGE; i++) {
                        draw(
                                content,
                                Symbols.matrix(cards.get(first + i).code().text()),
                                50 + i % 2 * 250,
                                80 + i / 2 * 150);
                    }
                    content.fill();
                }
            }
            document.save(out);
            return out.toByteArray();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void draw(PDPageContentStream content, Symbol symbol, float left, float bottom) throws IOException {
        for (Symbol.Bar bar : symbol.bars()) {
            content.addRect(
                    left + bar.column() * MODULE,
                    bottom + bar.row() * MODULE,
                    bar.width() * MODULE,
                    bar.height() * MODULE);
        }
    }
}
