package org.cagewall.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cagewall.paper.Box;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.paper.Size;
import org.cagewall.room.CardCode;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Pictures;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;

class CardsPdfTest {

    private static final List<String> SHEETS = List.of("a4-85x54", "letter-4x2in", "smallest");

    /** The smallest cards that are allowed, as a keeper might cut them. */
    private static final Sheet SMALLEST =
            new Sheet("smallest", "smallest", Size.A4, 2, 5, CardsPdf.SMALLEST_CARD, 15, 13.5, new Size(95, 54));

    private static final int DPI = 300;
    private static final double MM_A_DOT = 25.4 / DPI;

    @TempDir
    private Path folder;

    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"a4-85x54, 150", "a4-85x54, 300", "letter-4x2in, 150", "letter-4x2in, 300"})
    void everyCardOfARenderedSheetReadsAsItsCage(String name, int dpi) throws Exception {
        Sheet sheet = sheet(name);
        List<PrintedCard> cards = Stream.concat(SampleCards.all().stream(), SampleCards.pairs(13).stream())
                .toList();

        assertThat(ReadCards.rendered(folder, pdf(cards, sheet), sheet, dpi).texts(cards.size()))
                .containsExactlyElementsOf(
                        cards.stream().map(card -> card.code().text()).toList());
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void everyPrintedCardIsReadByTheProgramItself(String name) throws IOException {
        Sheet sheet = sheet(name);
        List<PrintedCard> cards = SampleCards.all();
        BufferedImage page = rendered(pdf(cards, sheet));
        Decoder decoder = new Decoder();
        for (int index = 0; index < sheet.cards(); index++) {
            String text = decoder.decode(Pictures.of(ReadCards.part(page, sheet.place(index), DPI)))
                    .text()
                    .orElseThrow();
            assertThat(CardCode.parse(text)).contains(cards.get(index).code());
        }
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void theSymbolIsTwentyFiveMillimetresWithFourLightModulesAroundIt(String name) throws IOException {
        Sheet sheet = sheet(name);
        BufferedImage page = rendered(pdf(SampleCards.all(), sheet));
        for (int index = 0; index < sheet.cards(); index++) {
            Box tile = CardDrawing.tile(sheet.place(index));
            Box dark = darkPart(page, tile);
            assertThat(dark.width()).isEqualTo(25, within(0.15));
            assertThat(dark.height()).isEqualTo(25, within(0.15));
            double quiet = 4 * dark.width() / 21;
            assertThat(dark.left() - tile.left()).isEqualTo(quiet, within(0.1));
            assertThat(dark.top() - tile.top()).isEqualTo(quiet, within(0.1));
            assertThat(tile.right() - dark.right()).isEqualTo(quiet, within(0.1));
            assertThat(tile.bottom() - dark.bottom()).isEqualTo(quiet, within(0.1));
            assertThat(sheet.place(index).right() - tile.right()).isGreaterThanOrEqualTo(1);
        }
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void everyModuleEdgeFallsOnADotOfThePrinter(String name) throws IOException {
        BufferedImage page = rendered(pdf(SampleCards.all(), sheet(name)));
        Box tile = CardDrawing.tile(sheet(name).place(0));
        List<Integer> greys = new ArrayList<>();
        forDots(tile, (x, y) -> greys.add(page.getRGB(x, y) & 0xFF));
        assertThat(greys).containsOnly(0, 255);
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void theCagesNameIsAtLeastSevenMillimetresHigh(String name) throws IOException {
        Sheet sheet = sheet(name);
        List<PrintedCard> cards = SampleCards.all();
        BufferedImage page = rendered(pdf(cards, sheet));
        for (int index = 0; index < sheet.cards(); index++) {
            Box card = sheet.place(index);
            Box firstLetter = new Box(card.left() + 3, card.top() + 1, 5, 18);
            assertThat(heightOfFirstInk(page, firstLetter))
                    .as(cards.get(index).face().cage())
                    .isGreaterThanOrEqualTo(CardDrawing.SMALLEST_NAME - 0.1);
        }
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void nothingIsDrawnOverTheEdgeOfACard(String name) throws IOException {
        Sheet sheet = sheet(name);
        BufferedImage page = rendered(pdf(SampleCards.all(), sheet));
        for (int index = 0; index < sheet.cards(); index++) {
            Box card = sheet.place(index).within(0.2);
            Box ink = darkPart(page, card);
            assertThat(ink.left()).isGreaterThan(card.left() + 2);
            assertThat(ink.top()).isGreaterThan(card.top() + 1);
            assertThat(ink.right()).isLessThan(card.right() - 2);
            assertThat(ink.bottom()).isLessThan(card.bottom() - 1);
        }
    }

    /** A pencil needs a line with room above it; common practice, no source: letters of 4 mm. */
    @ParameterizedTest
    @FieldSource("SHEETS")
    void everyCardHasRoomForPencilAboveItsLastLine(String name) throws IOException {
        Sheet sheet = sheet(name);
        List<PrintedCard> cards = SampleCards.all();
        BufferedImage page = rendered(pdf(cards, sheet));
        for (int index = 0; index < sheet.cards(); index++) {
            Box card = sheet.place(index);
            double lastLine = card.bottom() - 4.9;
            Box room = new Box(card.left() + 1, lastLine - 4.2, card.width() - 2, 4);
            assertThat(isWhite(page, room)).as(cards.get(index).face().cage()).isTrue();
        }
    }

    @Test
    void aCardSaysWhoLivesThereAndWhenItWasPrinted() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleCards.all().subList(1, 2), sheet("a4-85x54")))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("B3", "Pair 12", "Round 2", "HB 24-009", "HB 25-203", "since 1 April 2026")
                    .contains("printed 14 April 2026")
                    .contains(SampleCards.all().get(1).code().text());
        }
    }

    @Test
    void aFlightNamesTheBirdsItHasRoomForAndCountsTheRest() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleCards.all().subList(9, 10), sheet("a4-85x54")))) {
            String text = new PDFTextStripper().getText(document);
            int named = text.split("HB 26-", -1).length - 1;
            assertThat(named).isBetween(5, 20);
            assertThat(text).contains("and " + (21 - named) + " more");
        }
    }

    @Test
    void cardsAreShapesAndLettersWithoutPicturesOrTransparency() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleCards.all(), sheet("a4-85x54")))) {
            for (PDPage page : document.getPages()) {
                assertThat(page.getResources().getXObjectNames()).isEmpty();
                assertThat(page.getResources().getExtGStateNames()).isEmpty();
                assertThat(page.getResources().getShadingNames()).isEmpty();
            }
        }
    }

    @Test
    void asManySheetsAreDrawnAsTheCardsNeed() throws IOException {
        assertThat(pages(0)).isEqualTo(0);
        assertThat(pages(10)).isEqualTo(1);
        assertThat(pages(11)).isEqualTo(2);
        assertThat(pages(200)).isEqualTo(20);
    }

    private static int pages(int cards) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleCards.pairs(cards), sheet("a4-85x54")))) {
            return document.getNumberOfPages();
        }
    }

    private static Sheet sheet(String name) {
        if (name.equals(SMALLEST.name())) {
            return SMALLEST;
        }
        return Sheets.builtIn(CardsPdf.SMALLEST_CARD).find(name).sheet().orElseThrow();
    }

    private static byte[] pdf(List<PrintedCard> cards, Sheet sheet) {
        return CardsPdf.drawn(cards, sheet, SampleCards.TODAY, Words.english());
    }

    private static BufferedImage rendered(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
        }
    }

    /** The smallest box around all ink within the box. */
    private static Box darkPart(BufferedImage page, Box box) {
        int[] edges = {Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1};
        forDots(box, (x, y) -> {
            if ((page.getRGB(x, y) & 0xFF) < 200) {
                edges[0] = Math.min(edges[0], x);
                edges[1] = Math.min(edges[1], y);
                edges[2] = Math.max(edges[2], x + 1);
                edges[3] = Math.max(edges[3], y + 1);
            }
        });
        return new Box(
                edges[0] * MM_A_DOT,
                edges[1] * MM_A_DOT,
                (edges[2] - edges[0]) * MM_A_DOT,
                (edges[3] - edges[1]) * MM_A_DOT);
    }

    private static boolean isWhite(BufferedImage page, Box box) {
        int[] darkest = {255};
        forDots(box, (x, y) -> darkest[0] = Math.min(darkest[0], page.getRGB(x, y) & 0xFF));
        return darkest[0] == 255;
    }

    private static double heightOfFirstInk(BufferedImage page, Box box) {
        int rows = 0;
        for (int y = dot(box.top()); y < dot(box.bottom()); y++) {
            boolean dark = false;
            for (int x = dot(box.left()); x < dot(box.right()); x++) {
                dark |= (page.getRGB(x, y) & 0xFF) < 128;
            }
            if (!dark && rows > 0) {
                break;
            }
            rows += dark ? 1 : 0;
        }
        return rows * MM_A_DOT;
    }

    private static void forDots(Box box, Dot each) {
        for (int y = dot(box.top()); y < dot(box.bottom()); y++) {
            for (int x = dot(box.left()); x < dot(box.right()); x++) {
                each.at(x, y);
            }
        }
    }

    private static int dot(double mm) {
        return (int) Math.round(mm / MM_A_DOT);
    }

    private interface Dot {

        void at(int x, int y);
    }
}
