package org.cagewall.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.cagewall.desk.DataFolder;
import org.cagewall.desk.Desk;
import org.cagewall.desk.Lanes;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.Live;
import org.cagewall.kiosk.RequiresDisplay;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.paper.Area;
import org.cagewall.paper.PdfPrinter;
import org.cagewall.paper.Printers;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Stop;
import org.cagewall.room.Cage;
import org.cagewall.room.Room;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Meaning;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cards that went through a real print spooler (CUPS) and its PDF printer, read from what that printer laid out. */
@Tag("slow")
class SpoolerTest {

    private static final int DPI = 300;

    @TempDir
    Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"a4-85x54", "letter-4x2in", "a4-64x38", "a6-105x148", "roll-100x60"})
    void everyCardOfTheSpooledSheetsOpensItsCage(String name) throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        Sheet sheet = sheet(name);
        try (Desk desk = TestDesk.demo(folder.resolve("room"))) {
            List<Cage> all = inUse(desk.room());
            List<Cage> cages = all.subList(0, Math.min(all.size(), Math.max(3, 2 * sheet.cards())));
            List<CardToPrint> cards = cages.stream()
                    .map(cage -> CardToPrint.of(desk.room(), cage))
                    .toList();
            byte[] drawn = CardsPdf.drawn(cards, Order.on(sheet), TestDesk.TODAY, Words.english());

            assertThat(Printers.ofThisMachine().print(PdfPrinter.NAME, "Cards", drawn))
                    .isEqualTo(new Printers.Done());

            byte[] printed = printer.document(pages(cages, sheet));
            assertPaperIs(printed, sheet);
            assertEachOpensItsCage(desk.room(), cages, printed, sheet);
        }
    }

    @Test
    @RequiresDisplay
    void theCardsScreenPrintsThroughTheSpooler() throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        try (Desk desk = furnished();
                Live live = Live.kiosk(desk)) {
            live.press("nav.cards").press("choose.all").press("lay-out").press("printer." + PdfPrinter.NAME);
            live.press("print").waitUntil("every card is recorded as printed", () -> inUse(desk.room()).stream()
                    .allMatch(cage -> cage.card().isPresent()));
            live.picture("cards-printed");

            List<Cage> cages = inUse(desk.room());
            Sheet sheet = sheet("a4-85x54");
            assertEachOpensItsCage(desk.room(), cages, printer.document(pages(cages, sheet)), sheet);
        }
    }

    @Test
    @RequiresDisplay
    void copiesOfAChosenCardComeOutOnTheFreePlacesOfAPartUsedSheet() throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        try (Desk desk = furnished();
                Live live = Live.kiosk(desk)) {
            live.press("nav.cards").press("choose.none").press("card.A1").press("lay-out");
            live.press("printer." + PdfPrinter.NAME)
                    .press("place.1")
                    .press("place.2")
                    .press("copies.more");
            live.picture("cards-lay-out").press("print");
            live.waitUntil(
                    "the card is recorded as printed",
                    () -> desk.room().cage("A1").orElseThrow().card().isPresent());

            ReadCards cards = ReadCards.rendered(folder, printer.document(1), sheet("a4-85x54"), DPI);
            assertThat(cards.textsAt(List.of(2, 3)))
                    .map(text -> opened(desk.room(), text))
                    .containsExactly("A1", "A1");
            assertThat(cards.textsAt(List.of(0, 1, 4, 5))).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void whatIsStoppedAtAnyPageNeverReachesTheSpooler(int page) throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        Sheet sheet = sheet("a6-105x148");
        byte[] three = CardsPdf.drawn(SampleCards.pairs(3), Order.on(sheet), TestDesk.TODAY, Words.english());
        byte[] one = CardsPdf.drawn(SampleCards.pairs(1), Order.on(sheet), TestDesk.TODAY, Words.english());
        Stop stop = new Stop();

        Printers.Outcome stopped = Printers.ofThisMachine().print(PdfPrinter.NAME, "Stopped", three, stop, begun -> {
            if (begun == page) {
                stop.ask();
            }
        });

        assertThat(stopped).isEqualTo(new Printers.Stopped());
        assertThat(Printers.ofThisMachine().print(PdfPrinter.NAME, "After", one))
                .isEqualTo(new Printers.Done());
        printer.document(1);
        assertThat(printer.documents()).singleElement().asString().contains("After");
    }

    @Test
    @RequiresDisplay
    void aPrintThatIsStoppedLeavesNothingOnPaperAndNothingInTheRecord() throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        try (Desk desk = furnished();
                Live live = Live.kiosk(desk)) {
            long before = desk.room().head();
            live.press("nav.cards").press("choose.all").press("lay-out");
            live.press("printer." + PdfPrinter.NAME).press("sheet.roll-100x60");
            for (int copies = 1; copies < 20; copies++) {
                live.press("copies.more");
            }
            live.press("print").press("stop").read("Stopped. Nothing was printed, and nothing recorded.");
            live.picture("cards-stopped");

            assertThat(desk.room().head()).isEqualTo(before);
            live.press("back")
                    .press("choose.none")
                    .press("card.A1")
                    .press("lay-out")
                    .press("print");
            live.waitUntil(
                    "the one card is recorded as printed", () -> desk.room().head() > before);
            printer.document(1);
            assertThat(printer.documents()).hasSize(1);
        }
    }

    @Test
    @RequiresDisplay
    void aPrinterThatHasGoneMeanwhileIsSaidAndNothingIsRecorded() throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        try (Desk desk = furnished();
                Live live = Live.kiosk(desk)) {
            long before = desk.room().head();
            live.press("nav.cards").press("lay-out").press("printer." + PdfPrinter.NAME);
            printer.awayDuring(() -> live.press("print")
                    .read(
                            "The printer Cagewall-PDF is not there now, and no other is. You can save the cards as a PDF.")
                    .picture("cards-printer-gone"));

            assertThat(desk.room().head()).isEqualTo(before);
            assertThat(printer.documents()).isEmpty();
        }
    }

    @Test
    @RequiresDisplay
    void aPrinterThatIsPluggedInMeanwhileIsThereWhenThePageIsOpenedAgain() throws Exception {
        PdfPrinter.need();
        try (Desk desk = furnished();
                Live live = Live.kiosk(desk)) {
            live.press("nav.cards").press("lay-out").see("printer." + PdfPrinter.NAME);
            live.gone("printer.Shelf").press("back");
            PdfPrinter.besides(
                    "Shelf", () -> live.press("lay-out").see("printer.Shelf").press("back"));
            live.press("lay-out").see("printer." + PdfPrinter.NAME).gone("printer.Shelf");
        }
    }

    @Test
    void aPrinterThatTakesNoMoreSaysWhyInItsOwnWords() throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        Printers printers = Printers.ofThisMachine();
        Sheet sheet = sheet("a6-105x148");
        byte[] card = CardsPdf.drawn(SampleCards.pairs(1), Order.on(sheet), TestDesk.TODAY, Words.english());
        assertThat(printers.print(PdfPrinter.NAME, "First", card)).isEqualTo(new Printers.Done());
        printer.document(1);

        printer.sparedDuring(() -> assertThat(Words.english()
                        .say(printers.print(PdfPrinter.NAME, "Second", card)
                                .reason()
                                .orElseThrow()))
                .isEqualTo("The printer Cagewall-PDF did not take the cards. It said: Quota limit reached. "
                        + "Is it switched on? You can save the cards as a PDF."));
        assertThat(printer.documents()).hasSize(1);
    }

    @Test
    void aPaperThatThePrinterDoesNotNameIsSaidAndOneThatItNamesIsNot() {
        PdfPrinter.need();
        Printers printers = Printers.ofThisMachine();

        assertThat(printers.doubt(PdfPrinter.NAME, sheet("a4-85x54").paper())).isEmpty();
        assertThat(printers.doubt(PdfPrinter.NAME, sheet("letter-4x2in").paper()))
                .isEmpty();
        assertThat(Words.english()
                        .say(printers.doubt(
                                        PdfPrinter.NAME, sheet("roll-100x60").paper())
                                .orElseThrow()))
                .startsWith("The printer Cagewall-PDF does not name paper of 100 x 60 mm");
    }

    private Desk furnished() {
        TestDesk.furnished(folder.resolve("room")).close();
        return Desk.open(
                DataFolder.open(folder.resolve("room")), Lanes.answeringOn(new EventThread()), TestDesk.clocks());
    }

    private void assertEachOpensItsCage(Room room, List<Cage> cages, byte[] printed, Sheet sheet) throws Exception {
        ReadCards cards = ReadCards.rendered(folder, printed, sheet, DPI);
        assertThat(cards.texts(cages.size()))
                .map(text -> opened(room, text))
                .containsExactlyElementsOf(cages.stream().map(Cage::name).toList());
        for (int index = 0; index < Math.min(sheet.cards(), cages.size()); index++) {
            SymbolTiles tiles = SymbolTiles.of(sheet.place(index));
            assertThat(symbolWidth(cards.page(1), upperRight(sheet.place(index), tiles)))
                    .as("millimetres of the symbol, as on the sheet that was sent")
                    .isEqualTo(21 * tiles.module(), within(0.2));
        }
    }

    private static Area upperRight(Area card, SymbolTiles tiles) {
        double side = tiles.boxes().get(0).width();
        return new Area(card.right() - side - 1, card.top() + 1, side, side);
    }

    private static String opened(Room room, String text) {
        return Meaning.of(CardCode.read(text), room) instanceof Meaning.Opens opens
                ? opens.cage().name()
                : "nothing: " + text;
    }

    /** From the first to the last dark column. */
    private static double symbolWidth(BufferedImage page, Area tile) {
        BufferedImage part = ReadCards.part(page, tile, DPI);
        int[] dark = IntStream.range(0, part.getWidth())
                .filter(x -> IntStream.range(0, part.getHeight()).anyMatch(y -> (part.getRGB(x, y) & 0xFF) < 128))
                .toArray();
        return (dark[dark.length - 1] + 1 - dark[0]) * 25.4 / DPI;
    }

    private static void assertPaperIs(byte[] pdf, Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            for (PDPage page : document.getPages()) {
                PDRectangle paper = page.getMediaBox();
                assertThat(paper.getWidth() * 25.4 / 72).isEqualTo(sheet.paper().width(), within(0.5));
                assertThat(paper.getHeight() * 25.4 / 72)
                        .isEqualTo(sheet.paper().height(), within(0.5));
            }
        }
    }

    private static int pages(List<Cage> cages, Sheet sheet) {
        return (cages.size() + sheet.cards() - 1) / sheet.cards();
    }

    private static List<Cage> inUse(Room room) {
        return room.walk().filter(Cage::inUse).toList();
    }

    private static Sheet sheet(String name) {
        return CardsPdf.sheets().find(name).sheet().orElseThrow();
    }
}
