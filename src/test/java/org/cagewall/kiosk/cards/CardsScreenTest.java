package org.cagewall.kiosk.cards;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.swing.JLabel;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.cagewall.kiosk.Birdroom;
import org.cagewall.kiosk.Painted;
import org.cagewall.kiosk.WithBirdroom;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.theme.TextSize;
import org.cagewall.room.Cage;
import org.cagewall.room.CardFaces;
import org.junit.jupiter.api.Test;

/** Presses the page of cards and reads back what it recorded and wrote. */
class CardsScreenTest extends WithBirdroom {

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
    void theChosenCardsAreSavedAndOnlyThenCountAsPrinted() throws IOException {
        Painted page = page("Ines").press("choose.none").press("card.A2").press("card.B2");

        page.press("save").png("cards-saved").assertFit();

        Path file = birdroom.desk().folder().path().resolve("cards-2026-04-14.pdf");
        try (PDDocument pdf = Loader.loadPDF(Files.readAllBytes(file))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
        }
        assertThat(birdroom.newest(2))
                .allMatch(line -> line.contains("card-printed") && line.contains("\"by\":\"Ines\""))
                .anyMatch(line -> line.contains("\"A2\""))
                .anyMatch(line -> line.contains("\"B2\""));
        assertThat(isOld("A2")).isFalse();
        assertThat(page.find("saved", JLabel.class).getText()).contains("cards-2026-04-14.pdf");
    }

    @Test
    void aSecondFileOfTheDayLeavesTheFirstAlone() {
        page("Ines").press("save").press("choose.all").press("save");

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

        Painted page = page("Ines").press("save").assertFit();

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

        Painted page =
                page("Ines").press("sheet.my-labels").png("cards-refused").assertFit();

        assertThat(page.find("refused", JLabel.class).getText()).contains("is too small");
        assertThat(page.find("save", javax.swing.AbstractButton.class).isEnabled())
                .isFalse();
    }

    @Test
    void aPrinterThatIsGoneSaysSoAndNothingIsRecorded() {
        long before = birdroom.room().head();
        List<CardsState> states = new java.util.ArrayList<>();
        birdroom.painted("Ines", new Destination.Cards(), (pen, stage) -> {
            CardsPresenter presenter = new CardsPresenter(
                    birdroom.desk(),
                    pen,
                    stage,
                    Birdroom.WORDS,
                    org.cagewall.paper.Printers.ofThisMachine(),
                    states::add);
            presenter.watch().start();
            presenter.lookForPrinters();
            presenter.printer("The old one");
            presenter.print();
            return screen(pen, stage);
        });

        assertThat(states.get(states.size() - 1).said())
                .hasValueSatisfying(said -> assertThat(said.words()).contains("The old one is not there now"));
        assertThat(birdroom.room().head()).isEqualTo(before);
    }

    @Test
    void theSheetChosenLastIsOfferedFirstTheNextTime() throws IOException {
        Path settings = birdroom.desk().folder().kioskProperties();
        Files.writeString(settings, "text-size = large\n");
        String other = org.cagewall.paper.Sheets.BUILT_IN.get(1);

        page("Ines").press("sheet." + other);
        Painted again = page("Ines");

        assertThat(again.find("sheet." + other, javax.swing.AbstractButton.class)
                        .isSelected())
                .isTrue();
        assertThat(KioskSettings.read(settings).sheet()).isEqualTo(other);
        assertThat(KioskSettings.read(settings).textSize()).isEqualTo(TextSize.LARGE);
    }

    @Test
    void aPrinterThatIsGoneIsNotOfferedButAnotherOne() {
        KioskSettings.keepForCards(birdroom.desk().folder().kioskProperties(), "", "The old one");

        Painted page = page("Ines");

        assertThat(page.maybe("printer.The old one")).isEmpty();
    }

    @Test
    void aSitterReadsWhichCardsAreOldButDoesNotPrint() {
        Painted page = page("Tomas").png("cards-sitter").assertFit();

        assertThat(page.maybe("save")).isEmpty();
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

    private CardsScreen screen(org.cagewall.kiosk.shell.Pen pen, org.cagewall.kiosk.shell.Stage stage) {
        return new CardsScreen(birdroom.desk(), pen, stage, stage, stage, Birdroom.WORDS);
    }
}
