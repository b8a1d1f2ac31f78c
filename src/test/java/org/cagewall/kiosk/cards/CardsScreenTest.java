package org.cagewall.kiosk.cards;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JLabel;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripperByArea;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.WithBirdroom;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Presses the page of cards and reads back what it recorded and wrote. */
class CardsScreenTest extends WithBirdroom {

    private static final org.cagewall.paper.Printers NO_PRINTER = org.cagewall.paper.TestPrinters.none();

    @Test
    void aCardThatNoLongerFitsSaysWhatChanged() {
        Painted page = page("Ines").png("cards").assertFit();

        assertThat(said(page, "card.A2"))
                .contains("Changed since 21 March 2026")
                .contains("pair is now 2, the card has none, and 3 more changes");
        assertThat(said(page, "card.A1")).contains("Up to date");
        assertThat(said(page, "card.B2")).contains("Never printed");
    }

    @Test
    void thePageIsFitAtLargeLettersToo() {
        birdroom.painted(TextSize.LARGE, "Ines", new Destination.Cards(), this::screen)
                .png("cards-large")
                .assertFit();
    }

    @Test
    void savedCardsCountAsPrintedOnlyOnceSomebodySaysTheyHang() throws IOException {
        Painted page = page("Ines").press("choose.none").press("card.A2").press("card.B2");

        page.press("lay-out").press("save").png("cards-saved").assertFit();

        Path file = birdroom.desk().folder().path().resolve("cards-2026-04-14.pdf");
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(page.find("saved", JLabel.class).getText()).contains("cards-2026-04-14.pdf");
        assertThat(isOld("A2")).isTrue();

        page.press("hung");

        assertThat(birdroom.newest(2))
                .allMatch(line -> line.contains("card-printed") && line.contains("\"by\":\"Ines\""))
                .anyMatch(line -> line.contains("\"A2\""))
                .anyMatch(line -> line.contains("\"B2\""));
        assertThat(isOld("A2")).isFalse();
    }

    @Test
    void savedCardsThatDoNotHangYetStayDue() {
        long before = birdroom.room().head();

        Painted page = page("Ines").press("lay-out").press("save").press("not-hung");

        assertThat(birdroom.room().head()).isEqualTo(before);
        assertThat(isOld("A2")).isTrue();
        assertThat(page.maybe("hung")).isEmpty();
        assertThat(page.maybe("lay-out")).isPresent();
    }

    @Test
    void aSecondFileOfTheDayLeavesTheFirstAlone() {
        page("Ines")
                .press("lay-out")
                .press("save")
                .press("not-hung")
                .press("choose.all")
                .press("lay-out")
                .press("save");

        assertThat(birdroom.desk().folder().path().resolve("cards-2026-04-14-2.pdf"))
                .isRegularFile();
    }

    @Test
    void aCardSavedInVainIsNotRecorded() throws IOException {
        long before = birdroom.room().head();
        Path target = birdroom.desk().folder().path();
        for (int number = 1; number < 1000; number++) {
            Files.createFile(target.resolve("cards-2026-04-14" + (number == 1 ? "" : "-" + number) + ".pdf"));
        }

        Painted page = page("Ines").press("lay-out").press("save").assertFit();

        assertThat(page.find("problem", JLabel.class).getText()).contains("could not be written");
        assertThat(birdroom.room().head()).isEqualTo(before);
    }

    @Test
    void aPencilSettlesAChangedCard() {
        page("Ines").press("card.A2").press("pencilled.A2");

        assertThat(birdroom.newest(1)).allMatch(line -> line.contains("card-pencilled") && line.contains("\"A2\""));
        assertThat(isOld("A2")).isFalse();
    }

    @Test
    void aSheetThatCannotBeUsedSaysWhyAndPrintsNothing() throws IOException {
        Path labels = birdroom.desk().folder().labels();
        Files.createDirectories(labels);
        Files.writeString(
                labels.resolve("my-labels.txt"),
                "paper = 210 x 297\ncards = 3 x 9\ncard = 63.5 x 29.6\n" + "first = 7.2 x 15.1\npitch = 66 x 29.6\n");

        Painted page = page("Ines")
                .press("lay-out")
                .press("sheet.my-labels")
                .png("cards-refused")
                .assertFit();

        assertThat(page.find("refused", JLabel.class).getText()).contains("is too small");
        assertThat(page.find("save", javax.swing.AbstractButton.class).isEnabled())
                .isFalse();
    }

    @Test
    void aPrinterThatIsGoneSaysSoAndNothingIsRecorded() {
        long before = birdroom.room().head();
        List<PrintState> states = new java.util.ArrayList<>();
        birdroom.painted("Ines", new Destination.Cards(), (pen, stage) -> {
            CardsPresenter presenter = new CardsPresenter(
                    birdroom.desk(),
                    pen,
                    stage,
                    Birdroom.WORDS,
                    org.cagewall.paper.Printers.ofThisMachine(),
                    state -> {},
                    states::add);
            presenter.watch().start();
            presenter.layOut();
            presenter.printing().printer("The old one");
            presenter.printing().print();
            return screen(pen, stage);
        });

        assertThat(states.get(states.size() - 1).problem())
                .hasValueSatisfying(said -> assertThat(said).contains("The old one is not there now"));
        assertThat(birdroom.room().head()).isEqualTo(before);
    }

    @Test
    void theSheetChosenLastIsOfferedFirstTheNextTime() throws IOException {
        Path settings = birdroom.desk().folder().kioskProperties();
        Files.writeString(settings, "text-size = large\n");
        String other = org.cagewall.paper.Sheets.BUILT_IN.get(1);

        page("Ines").press("lay-out").press("sheet." + other);
        Painted again = page("Ines").press("lay-out");

        assertThat(again.find("sheet." + other, javax.swing.AbstractButton.class)
                        .isSelected())
                .isTrue();
        assertThat(KioskSettings.read(settings).sheet()).isEqualTo(other);
        assertThat(KioskSettings.read(settings).textSize()).isEqualTo(TextSize.LARGE);
    }

    @Test
    void aPrinterThatIsGoneIsNotOfferedButAnotherOne() {
        KioskSettings.keepForCards(birdroom.desk().folder().kioskProperties(), "", "", "The old one");

        Painted page = page("Ines").press("lay-out");

        assertThat(page.maybe("printer.The old one")).isEmpty();
    }

    @Test
    void theNewAndChangedCardsAreSavedInTwoTouchesAndHungWithAThird() {
        page("Ines").press("lay-out").press("save").press("hung");

        assertThat(birdroom.room()
                        .walk()
                        .filter(cage -> isOld(cage.name()) || cage.card().isEmpty()))
                .isEmpty();
    }

    @Test
    void theCardOfOneCageIsReadyToBePrinted() throws IOException {
        birdroom.painted(
                        "Ines",
                        Destination.Cards.of("A2"),
                        (pen, stage) -> new CardsScreen(
                                birdroom.desk(),
                                pen,
                                stage,
                                stage,
                                Birdroom.WORDS,
                                Destination.Cards.of("A2"),
                                NO_PRINTER))
                .press("save")
                .press("hung");

        assertThat(birdroom.newest(1)).allMatch(line -> line.contains("card-printed") && line.contains("\"A2\""));
        assertThat(isOld("A2")).isFalse();
    }

    @Test
    void placesThatAreUsedAlreadyAreLeftOut() throws IOException {
        Painted page = page("Ines")
                .press("choose.none")
                .press("card.A2")
                .press("card.B2")
                .press("lay-out");

        page.press("place.1").press("place.3").png("cards-places").assertFit().press("save");

        try (PDDocument pdf = Loader.loadPDF(
                birdroom.desk().folder().path().resolve("cards-2026-04-14.pdf").toFile())) {
            assertThat(textIn(pdf, 0)).isBlank();
            assertThat(textIn(pdf, 1)).contains("A2");
            assertThat(textIn(pdf, 2)).isBlank();
            assertThat(textIn(pdf, 3)).contains("B2");
        }
    }

    @Test
    void everySheetIsLookedAtBeforeItIsPrinted() {
        Painted page = page("Ines").press("choose.all").press("lay-out").assertFit();
        assertThat(whichSheet(page)).isEqualTo("Sheet 1 of 2");
        assertThat(canPress(page, "turn.before")).isFalse();

        page.press("turn.after").png("cards-second-sheet").assertFit();

        assertThat(whichSheet(page)).isEqualTo("Sheet 2 of 2");
        assertThat(said(page, "place.8")).isEqualTo("Place 8: a card is printed here");
        assertThat(said(page, "place.9")).contains("nothing is printed here");
        assertThat(canPress(page, "turn.after")).isFalse();
        assertThat(whichSheet(page.press("turn.before"))).isEqualTo("Sheet 1 of 2");
    }

    @Test
    void onlyTheFirstSheetMayBeUsedInPart() {
        Painted page = page("Ines")
                .press("choose.all")
                .press("lay-out")
                .press("place.1")
                .press("place.2")
                .png("cards-first-of-two")
                .assertFit();
        assertThat(said(page, "place.2")).contains("used already");

        page.press("turn.after");

        assertThat(said(page, "place.2")).contains("a card is printed here");
        assertThat(said(page, "place.10")).contains("a card is printed here");
        assertThat(canPress(page, "place.2")).isFalse();
        assertThat(page.maybe("all-free")).isEmpty();
    }

    @Test
    void whenFewerSheetsAreNeededTheLastOfThemIsLookedAt() {
        Painted page = page("Ines").press("choose.all").press("lay-out").press("copies.more");
        for (int sheet = 1; sheet < 4; sheet++) {
            page.press("turn.after");
        }
        assertThat(whichSheet(page)).isEqualTo("Sheet 4 of 4");

        page.press("copies.fewer");

        assertThat(whichSheet(page)).isEqualTo("Sheet 2 of 2");
        assertThat(said(page, "place.8")).contains("a card is printed here");
    }

    @Test
    void whatFitsOnOneSheetHasNothingToTurn() {
        Painted page = page("Ines").press("choose.none").press("card.A2").press("lay-out");

        assertThat(page.maybe("turn.after")).isEmpty();
    }

    private static String whichSheet(Painted page) {
        return page.find("turn.shown", JLabel.class).getText();
    }

    private static boolean canPress(Painted page, String name) {
        return page.find(name, javax.swing.AbstractButton.class).isEnabled();
    }

    @Test
    void aSheetWithoutAFreePlaceIsSaidAndPrintsNothing() {
        Painted page = page("Ines").press("lay-out").press("sheet.roll-100x60").press("place.1");

        assertThat(page.find("summary", JLabel.class).getText()).startsWith("No place of the sheet is free");
        assertThat(page.find("save", javax.swing.AbstractButton.class).isEnabled())
                .isFalse();
        page.press("all-free");
        assertThat(page.find("save", javax.swing.AbstractButton.class).isEnabled())
                .isTrue();
    }

    @Test
    void copiesAndLargePrintAreLaidOutAndTheFaceIsOfferedAgain() throws IOException {
        Painted page = page("Ines").press("choose.none").press("card.A2").press("lay-out");

        page.press("copies.more")
                .press("face.large")
                .png("cards-large-print")
                .assertFit()
                .press("save")
                .press("hung");

        try (PDDocument pdf = Loader.loadPDF(
                birdroom.desk().folder().path().resolve("cards-2026-04-14.pdf").toFile())) {
            assertThat(textIn(pdf, 0)).contains("A2");
            assertThat(textIn(pdf, 1)).contains("A2");
            assertThat(textIn(pdf, 2)).isBlank();
        }
        assertThat(birdroom.newest(1)).allMatch(line -> line.contains("card-printed"));
        assertThat(page("Ines")
                        .press("lay-out")
                        .find("face.large", javax.swing.AbstractButton.class)
                        .isSelected())
                .isTrue();
    }

    @Test
    void theTrialPageIsNoCardAndIsNotRecorded() {
        long before = birdroom.room().head();

        Painted page = page("Ines").press("lay-out").press("trial").assertFit();

        assertThat(birdroom.desk().folder().path().resolve("trial-2026-04-14.pdf"))
                .isRegularFile();
        assertThat(page.find("summary", JLabel.class).getText()).contains("trial-2026-04-14.pdf");
        assertThat(birdroom.room().head()).isEqualTo(before);
    }

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void thePageOfThePaperIsFitAtEveryTextSize(TextSize size) {
        for (String sheet : List.of("a4-85x54", "a4-64x38", "roll-100x60")) {
            birdroom.painted(size, "Ines", new Destination.Cards(), this::screen)
                    .press("lay-out")
                    .press("sheet." + sheet)
                    .png("cards-print-" + size + "-" + sheet)
                    .assertFit();
        }
    }

    @ParameterizedTest
    @EnumSource(TextSize.class)
    void severalSheetsOfWhichTheFirstIsPartUsedAreFitAtEveryTextSize(TextSize size) {
        birdroom.painted(size, "Ines", new Destination.Cards(), this::screen)
                .press("lay-out")
                .press("sheet.a4-64x38")
                .press("copies.more")
                .press("place.1")
                .png("cards-several-" + size)
                .assertFit()
                .press("turn.after")
                .assertFit();
    }

    /** What stands in a place of the first sheet. */
    private static String textIn(PDDocument pdf, int place) throws IOException {
        org.cagewall.paper.Area box = org.cagewall.cards.CardsPdf.sheets()
                .find("a4-85x54")
                .sheet()
                .orElseThrow()
                .place(place);
        PDFTextStripperByArea stripper = new PDFTextStripperByArea();
        double point = 72 / 25.4;
        stripper.addRegion(
                "place",
                new java.awt.geom.Rectangle2D.Double(
                        box.left() * point, box.top() * point, box.width() * point, box.height() * point));
        stripper.extractRegions(pdf.getPage(0));
        return stripper.getTextForRegion("place");
    }

    @Test
    void aSitterReadsWhichCardsAreOldButDoesNotPrint() {
        Painted page = page("Tomas").png("cards-sitter").assertFit();

        assertThat(page.maybe("lay-out")).isEmpty();
        assertThat(page.find("may-not", JLabel.class).getText()).startsWith("The owner or a keeper");
    }

    @Test
    void aRoomWithoutCagesLeadsToSetup() {
        birdroom.close();
        birdroom = Birdroom.empty(folder.resolve("new"));
        page("").png("cards-empty").assertFit().find("set-up", javax.swing.AbstractButton.class);
    }

    private boolean isOld(String name) {
        Cage cage = birdroom.room().cage(name).orElseThrow();
        return CardFaces.isOutOfDate(birdroom.room(), cage);
    }

    private static String said(Painted page, String row) {
        return page.find(row, javax.swing.JComponent.class)
                .getAccessibleContext()
                .getAccessibleName();
    }

    private Painted page(String person) {
        return birdroom.painted(person, new Destination.Cards(), this::screen);
    }

    private CardsScreen screen(org.cagewall.kiosk.shell.Pen pen, org.cagewall.kiosk.shell.Layers stage) {
        return new CardsScreen(birdroom.desk(), pen, stage, stage, Birdroom.WORDS, new Destination.Cards(), NO_PRINTER);
    }
}
