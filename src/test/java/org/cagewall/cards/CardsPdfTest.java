package org.cagewall.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cagewall.paper.Area;
import org.cagewall.paper.FreePlaces;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.paper.Size;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Pictures;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class CardsPdfTest {

    private static final List<String> SHEETS =
            Stream.concat(Sheets.BUILT_IN.stream(), Stream.of("smallest")).toList();

    /** The smallest cards that are allowed, as a keeper might cut them. */
    private static final Sheet SMALLEST = new Sheet(
            "smallest", "smallest", Size.A4, 2, 5, new Size(59, 36), 15, 13.5, new Size(95, 54), new Size(0, 0));

    private static final List<FaceChoice> FACES = List.of(FaceChoice.values());

    private static final int DPI = 300;
    private static final double MM_A_DOT = 25.4 / DPI;

    @TempDir
    private Path folder;

    @Tag("slow")
    @ParameterizedTest
    @CsvSource({"a4-85x54, 150", "a4-85x54, 300", "letter-4x2in, 150", "letter-4x2in, 300"})
    void everyCardOfARenderedSheetReadsAsItsCage(String name, int dpi) throws Exception {
        Sheet sheet = sheet(name);
        List<CardToPrint> cards = Stream.concat(SampleCards.all().stream(), SampleCards.pairs(13).stream())
                .toList();

        assertThat(ReadCards.rendered(folder, pdf(cards, sheet), sheet, dpi).texts(cards.size()))
                .containsExactlyElementsOf(
                        cards.stream().map(card -> card.code().text()).toList());
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void everyPrintedSymbolIsReadByTheProgramItself(String name) throws IOException {
        Laid laid = Laid.of(name, FaceChoice.BY_USE);
        Decoder decoder = new Decoder();
        for (int index = 0; index < laid.cards().size(); index++) {
            for (Area tile : laid.tiles(index).boxes()) {
                BufferedImage symbol = ReadCards.part(laid.page(index), tile, DPI);
                String text = decoder.decode(Pictures.of(symbol)).text().orElseThrow();
                assertThat(CardCode.parse(text))
                        .contains(laid.cards().get(index).code());
            }
        }
    }

    /** ISO/IEC 18004 asks for four light modules around a symbol; 0.2 mm is what a good printer is off. */
    @ParameterizedTest
    @MethodSource("laid")
    void everySymbolLiesWhereTheSheetFileSaysWithFourLightModulesAroundIt(String name, FaceChoice faces)
            throws IOException {
        Laid laid = Laid.of(name, faces);
        for (int index = 0; index < laid.cards().size(); index++) {
            Area card = laid.place(index);
            SymbolTiles tiles = laid.tiles(index);
            double quiet = 4 * tiles.module();
            for (Area tile : tiles.boxes()) {
                Area dark = darkPart(laid.page(index), tile);
                assertThat(dark.width()).isEqualTo(21 * tiles.module(), within(0.15));
                assertThat(dark.height()).isEqualTo(21 * tiles.module(), within(0.15));
                assertThat(dark.left() - tile.left()).isEqualTo(quiet, within(0.1));
                assertThat(dark.top() - tile.top()).isEqualTo(quiet, within(0.1));
            }
            double above = hasEdgeAbove(name, tiles) ? 1 + quiet : quiet;
            Area right = darkPart(laid.page(index), tiles.boxes().get(0));
            assertThat(card.right() - right.right()).isEqualTo(1 + quiet, within(0.2));
            assertThat(right.top() - card.top()).isEqualTo(above, within(0.2));
            if (tiles.boxes().size() > 1) {
                Area left = darkPart(laid.page(index), tiles.boxes().get(1));
                assertThat(left.left() - card.left()).isEqualTo(1 + quiet, within(0.2));
                assertThat(card.bottom() - left.bottom()).isEqualTo(above, within(0.2));
                assertThat(right.bottom()).isLessThanOrEqualTo(card.top() + card.height() / 2 + MM_A_DOT);
                assertThat(left.top()).isGreaterThanOrEqualTo(card.top() + card.height() / 2 - MM_A_DOT);
                assertThat(right.left()).isGreaterThan(card.left() + card.width() / 2);
                assertThat(left.right()).isLessThan(card.left() + card.width() / 2);
            }
        }
    }

    /** A symbol on the lowest card that carries two in halves of its own leaves none for a cut that goes astray. */
    private static boolean hasEdgeAbove(String name, SymbolTiles tiles) {
        return !name.equals("letter-4x2in") || tiles.boxes().size() < 2;
    }

    /** As docs/cards.md argues: one of 25 mm, two of at least 21 mm, so that each has halves of its own. */
    @Test
    void aSymbolIsAsLargeAsTheHalfOfItsCardAllows() throws IOException {
        assertThat(symbolSides("a4-85x54", 2)).containsOnly(21.3);
        assertThat(symbolSides("letter-4x2in", 2)).containsOnly(21.3);
        assertThat(symbolSides("roll-100x60", 2)).containsOnly(23.1);
        assertThat(symbolSides("a4-99x68", 2)).containsOnly(26.7);
        assertThat(symbolSides("a6-105x148", 2)).containsOnly(35.6);
    }

    @Test
    void theOneSymbolOfASmallCardIsAsLargeAsItsNameAllows() throws IOException {
        assertThat(symbolSides("a4-64x38", 1)).containsOnly(23.1);
        assertThat(symbolSides("smallest", 1)).containsOnly(21.3);
    }

    private static Set<Double> symbolSides(String name, int symbols) throws IOException {
        return Laid.of(name, FaceChoice.BY_USE).tiles().stream()
                .filter(tiles -> tiles.boxes().size() == symbols)
                .map(tiles -> Math.round(tiles.module() * 210) / 10.0)
                .collect(Collectors.toSet());
    }

    /** Whatever its face and whatever it says; the small ones have no room for a name and two symbols. */
    @Test
    void everyCardCarriesTwoSymbolsButTheSmallOnes() {
        for (String name : SHEETS) {
            int symbols = Set.of("a4-64x38", "smallest").contains(name) ? 1 : 2;
            assertThat(SampleCards.tiles(1, sheet(name)).get(0).boxes())
                    .as(name)
                    .hasSize(symbols);
        }
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void everyModuleEdgeFallsOnADotOfThePrinter(String name) throws IOException {
        Laid laid = Laid.of(name, FaceChoice.BY_USE);
        List<Integer> greys = new ArrayList<>();
        for (Area tile : laid.tiles(0).boxes()) {
            forDots(tile, (x, y) -> greys.add(laid.page(0).getRGB(x, y) & 0xFF));
        }
        assertThat(greys).containsOnly(0, 255);
    }

    @ParameterizedTest
    @MethodSource("laid")
    void theCagesNameIsAtLeastSevenMillimetresHigh(String name, FaceChoice faces) throws IOException {
        Laid laid = Laid.of(name, faces);
        for (int index = 0; index < laid.cards().size(); index++) {
            Area card = laid.place(index);
            Area firstLetter = new Area(card.left() + 2.5, card.top() + 1, 16, 34);
            assertThat(heightOfFirstInk(laid.page(index), firstLetter))
                    .as(laid.cards().get(index).face().cage())
                    .isGreaterThanOrEqualTo(Blank.SMALLEST_NAME - 0.1);
        }
    }

    /** Read from the door: on the usual card 10.5 mm as ever, in large print half as much again. */
    @Test
    void aShortNameIsTenAndAHalfMillimetresHighAndInLargePrintHalfAsMuchAgain() throws IOException {
        assertThat(nameHeight("a4-85x54", FaceChoice.PLAIN)).isEqualTo(10.5, within(0.2));
        assertThat(nameHeight("a4-85x54", FaceChoice.LARGE)).isEqualTo(15.5, within(0.2));
        assertThat(nameHeight("a6-105x148", FaceChoice.LARGE)).isGreaterThan(25);
    }

    private static double nameHeight(String name, FaceChoice faces) throws IOException {
        Laid laid = Laid.of(name, faces);
        Area card = laid.place(0);
        return heightOfFirstInk(laid.page(0), new Area(card.left() + 4, card.top() + 1, 16, 34));
    }

    @ParameterizedTest
    @MethodSource("laid")
    void nothingIsDrawnOverTheEdgeOfACard(String name, FaceChoice faces) throws IOException {
        Laid laid = Laid.of(name, faces);
        for (int index = 0; index < laid.cards().size(); index++) {
            Area card = laid.place(index).within(0.2);
            Area ink = darkPart(laid.page(index), card);
            assertThat(ink.left()).isGreaterThan(card.left() + 2);
            assertThat(ink.top()).isGreaterThan(card.top() + 1);
            assertThat(ink.right()).isLessThan(card.right() - 2);
            assertThat(ink.bottom()).isLessThan(card.bottom() - 1);
        }
    }

    @ParameterizedTest
    @MethodSource("laid")
    void noLetterStandsInTheWhiteAroundASymbol(String name, FaceChoice faces) throws IOException {
        Laid laid = Laid.of(name, faces);
        for (int index = 0; index < laid.cards().size(); index++) {
            double quiet = 4 * laid.tiles(index).module();
            for (Area tile : laid.tiles(index).boxes()) {
                for (Area edge : List.of(
                        new Area(tile.left(), tile.top(), tile.width(), quiet),
                        new Area(tile.left(), tile.bottom() - quiet, tile.width(), quiet),
                        new Area(tile.left(), tile.top(), quiet, tile.height()),
                        new Area(tile.right() - quiet, tile.top(), quiet, tile.height()))) {
                    assertThat(isWhite(laid.page(index), edge.within(0.1)))
                            .as(laid.cards().get(index).face().cage())
                            .isTrue();
                }
            }
        }
    }

    /** A pencil needs a line with room above it; common practice, no source: letters of 4 mm. */
    @ParameterizedTest
    @ValueSource(strings = {"a4-85x54", "letter-4x2in", "a4-99x68", "a6-105x148", "roll-100x60"})
    void everyCardHasRoomForPencilAboveItsLastLine(String name) throws IOException {
        Laid laid = Laid.of(name, FaceChoice.BY_USE);
        for (int index = 0; index < laid.cards().size(); index++) {
            Area card = laid.place(index);
            List<Area> tiles = laid.tiles(index).boxes();
            double left = tiles.size() > 1 ? tiles.get(1).right() + 1 : card.left() + 1;
            double lastLine = card.bottom() - 4.6;
            Area room = new Area(left, lastLine - 4.2, card.right() - 1 - left, 4);
            assertThat(isWhite(laid.page(index), room))
                    .as(laid.cards().get(index).face().cage())
                    .isTrue();
        }
    }

    @Test
    void aFlightSaysByWordHowManyItHoldsAndLeavesLinesToCountOn() throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf(SampleCards.all().subList(4, 5), sheet("a4-85x54")))) {
            assertThat(new PDFTextStripper().getText(document))
                    .contains("hens", "twenty-one birds on 14 April 2026")
                    .contains("day", "in", "out", "now");
        }
    }

    @Test
    void countsAreWordsUpToNinetyNine() {
        assertThat(IntStream.of(0, 1, 12, 20, 21, 99, 100).mapToObj(each -> CountWord.of(each, Words.english())))
                .containsExactly("nought", "one", "twelve", "twenty", "twenty-one", "ninety-nine", "100");
    }

    @Test
    void aPartUsedSheetIsFilledFirstAndCopiesLieBesideEachOther() throws IOException {
        Sheet sheet = sheet("a4-85x54");
        List<CardToPrint> cards = SampleCards.pairs(4);
        Order order =
                Order.on(sheet).with(FreePlaces.of(sheet, List.of(2, 7, 9))).copied(2);
        byte[] pdf = CardsPdf.drawn(cards, order, SampleCards.TODAY, Words.english());

        assertThat(order.sheetsFor(cards.size())).isEqualTo(2);
        assertThat(filled(pdf, 0, sheet)).containsExactly(2, 7, 9);
        assertThat(filled(pdf, 1, sheet)).containsExactly(0, 1, 2, 3, 4);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document).split("HB 25-100", -1))
                    .hasSize(3);
        }
    }

    private static List<Integer> filled(byte[] pdf, int number, Sheet sheet) throws IOException {
        BufferedImage page = rendered(pdf, number);
        return IntStream.range(0, sheet.cards())
                .filter(index -> !isWhite(page, sheet.place(index).within(1)))
                .boxed()
                .toList();
    }

    /** What a card shows is one thing, how it is laid out another: the same card whatever the face. */
    @Test
    void theFaceDoesNotChangeTheCode() throws IOException {
        CardToPrint card = SampleCards.all().get(0);
        for (FaceChoice faces : FaceChoice.values()) {
            byte[] pdf = CardsPdf.drawn(
                    List.of(card), Order.on(sheet("a4-85x54")).with(faces), SampleCards.TODAY, Words.english());
            try (PDDocument document = Loader.loadPDF(pdf)) {
                assertThat(new PDFTextStripper().getText(document))
                        .contains(card.code().text());
            }
        }
    }

    @Test
    void aCardTooSmallForItsSymbolIsRefusedWithWhatItNeeds() {
        assertThat(Words.english().say(SymbolTiles.against(new Size(40, 30)).orElseThrow()))
                .isEqualTo("a card of 40 x 30 mm is too small: the squares of its symbol would be 0.37 mm wide, and a "
                        + "camera needs 1.02 mm. Make \"card\" at least 59 x 36 mm.");
        assertThat(SymbolTiles.against(new Size(59, 36))).isEmpty();
        assertThat(SymbolTiles.against(new Size(58, 36))).isPresent();
        assertThat(SymbolTiles.against(new Size(59, 35))).isPresent();
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
        return CardsPdf.sheets().find(name).sheet().orElseThrow();
    }

    private static byte[] pdf(List<CardToPrint> cards, Sheet sheet) {
        return CardsPdf.drawn(cards, Order.on(sheet), SampleCards.TODAY, Words.english());
    }

    private static BufferedImage rendered(byte[] pdf, int page) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(page, DPI, ImageType.GRAY);
        }
    }

    private static Stream<Arguments> laid() {
        return SHEETS.stream().flatMap(name -> FACES.stream().map(faces -> Arguments.of(name, faces)));
    }

    /** Sample cards on a sheet, at most two pages of them, rendered. */
    private record Laid(Sheet sheet, List<CardToPrint> cards, List<SymbolTiles> tiles, List<BufferedImage> pages) {

        static Laid of(String name, FaceChoice faces) throws IOException {
            Sheet sheet = CardsPdfTest.sheet(name);
            List<CardToPrint> cards = SampleCards.all();
            cards = cards.subList(0, Math.min(cards.size(), 2 * sheet.cards()));
            byte[] pdf = CardsPdf.drawn(cards, Order.on(sheet).with(faces), SampleCards.TODAY, Words.english());
            List<BufferedImage> pages = new ArrayList<>();
            for (int first = 0; first < cards.size(); first += sheet.cards()) {
                pages.add(rendered(pdf, pages.size()));
            }
            return new Laid(sheet, cards, SampleCards.tiles(cards.size(), sheet), pages);
        }

        BufferedImage page(int index) {
            return pages.get(index / sheet.cards());
        }

        Area place(int index) {
            return sheet.place(index % sheet.cards());
        }

        SymbolTiles tiles(int index) {
            return tiles.get(index);
        }
    }

    /** The smallest box around all ink within the box. */
    private static Area darkPart(BufferedImage page, Area box) {
        int[] edges = {Integer.MAX_VALUE, Integer.MAX_VALUE, -1, -1};
        forDots(box, (x, y) -> {
            if ((page.getRGB(x, y) & 0xFF) < 200) {
                edges[0] = Math.min(edges[0], x);
                edges[1] = Math.min(edges[1], y);
                edges[2] = Math.max(edges[2], x + 1);
                edges[3] = Math.max(edges[3], y + 1);
            }
        });
        return new Area(
                edges[0] * MM_A_DOT,
                edges[1] * MM_A_DOT,
                (edges[2] - edges[0]) * MM_A_DOT,
                (edges[3] - edges[1]) * MM_A_DOT);
    }

    private static boolean isWhite(BufferedImage page, Area box) {
        int[] darkest = {255};
        forDots(box, (x, y) -> darkest[0] = Math.min(darkest[0], page.getRGB(x, y) & 0xFF));
        return darkest[0] == 255;
    }

    private static double heightOfFirstInk(BufferedImage page, Area box) {
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

    private static void forDots(Area box, Dot each) {
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
