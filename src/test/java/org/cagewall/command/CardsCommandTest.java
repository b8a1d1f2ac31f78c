package org.cagewall.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.cagewall.command.Cli.Ran;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.BadPictures;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Cards out to paper and back by a picture. */
class CardsCommandTest {

    private static final int DPI = 200;

    @TempDir
    Path folder;

    @Test
    void aCardThatIsPrintedIsFoundAgainInAPictureAndGrowsOld() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path pdf = folder.resolve("cards.pdf");

        Ran printed = cli.run("cards", "--out", pdf.toString(), "--by", "Ines", "A1");
        assertThat(printed.out()).isEqualTo("1 card in " + pdf + ".\n");
        Path card = picture(pdf);
        assertThat(cli.run("scan", card.toString()).out()).isEqualTo("A1\n");

        cli.record("{\"deed\":\"bird-moved\",\"bird\":\"HB 26-041\",\"to\":\"A2\",\"by\":\"Ines\"}");
        Ran old = cli.run("scan", card.toString());

        assertThat(old.code()).isZero();
        assertThat(old.out()).isEqualTo("A1\n");
        assertThat(old.err()).contains("The card of cage A1 is out of date.");
        assertThat(cli.run("cards", "--changed", "--json", "--out", pdf.toString())
                        .out())
                .contains("\"cages\":[\"A1\",\"A2\",\"F1\"],\"recorded\":false");
    }

    @Test
    void onlyCardsThatChangedAreDrawnAndNoneWhereAllAreAsTheyShouldBe() {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        String pdf = folder.resolve("cards.pdf").toString();
        cli.run("cards", "--out", pdf, "--by", "Ines");

        Ran ran = cli.run(
                "cards", "--changed", "--out", folder.resolve("again.pdf").toString());

        assertThat(ran.out()).isEqualTo("Every card is as it should be. There is nothing to print.\n");
        assertThat(folder.resolve("again.pdf")).doesNotExist();
    }

    @Test
    void cardsThatMayNotBePrintedLeaveNoFile() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path pdf = folder.resolve("cards.pdf");

        assertThat(cli.run("cards", "--out", pdf.toString(), "--by", "Tom").err())
                .contains("a sitter may record what happens, but not set up the birdroom");
        assertThat(cli.run("cards", "--out", pdf.toString(), "A7").err()).contains("Did you mean A1?");
        assertThat(cli.run("cards", "--out", pdf.toString(), "--sheet", "a3").err())
                .contains("a4-85x54");
        assertThat(cli.run("cards", "--out", folder.resolve("none/cards.pdf").toString())
                        .err())
                .contains("cannot be written. Check that its folder is there");
        assertThat(cli.run("cards", "--out", folder.toString()).err()).contains("cannot be written");
        try (var left = Files.list(folder)) {
            assertThat(left).containsExactly(cli.data());
        }
    }

    @Test
    void cardsGoToTheChosenPlacesOfAPartUsedSheetInTheChosenFace() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path pdf = folder.resolve("cards.pdf");

        Ran ran = cli.run(
                "cards",
                "--json",
                "--out",
                pdf.toString(),
                "--places",
                "2,9-",
                "--copies",
                "2",
                "--face",
                "large",
                "A1",
                "A2");

        assertThat(ran.out()).contains("\"face\":\"large\",\"sheets\":2");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
        }
        assertThat(cli.run("cards", "--out", pdf.toString(), "--places", "11").err())
                .contains("\"11\" are not places of the sheet a4-85x54, which has 1 to 10");
        assertThat(cli.run("cards", "--out", pdf.toString(), "--places", "4-2").err())
                .contains("are not places");
        assertThat(cli.run("cards", "--out", pdf.toString(), "--places", "").err())
                .contains("are not places");
        assertThat(cli.run("cards", "--out", pdf.toString(), "--face", "huge").err())
                .contains("Choose one of: by-use, plain, large, flight.");
        assertThat(cli.run("cards", "--out", pdf.toString(), "--copies", "0").err())
                .contains("1 to 99 times");
    }

    @Test
    void aTrialPageOfASheetIsDrawnAndNothingIsRecorded() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path pdf = folder.resolve("trial.pdf");

        Ran ran = cli.run("cards", "--trial", "--sheet", "a4-64x38", "--by", "Ines", "--json", "--out", pdf.toString());

        assertThat(ran.out()).contains("\"file\":\"" + pdf + "\"", "\"cages\":[],\"recorded\":false");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
        }
    }

    @Test
    void everyPictureHasItsLineAndWhatIsNoCardHasItsReason() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path other = symbol("other.png", "Elsewhere\nentirely");
        Path text = Files.writeString(folder.resolve("notes.png"), "no picture");
        Path missing = folder.resolve("missing.png");

        Ran ran = cli.run("scan", other.toString(), text.toString(), missing.toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).isEqualTo("-\n-\n-\n");
        assertThat(ran.err().lines().toList()).hasSizeGreaterThanOrEqualTo(3);
        assertThat(ran.err())
                .contains("This is not a cage card.", "notes.png is no picture", "There is no file missing.png.");

        Ran said = Cli.bare(
                new byte[0], "--data", folder.resolve("nowhere").toString(), "scan", "--text", other.toString());
        assertThat(said).isEqualTo(new Ran(0, "Elsewhere entirely\n", ""));
        assertThat(Cli.bare(new byte[0], "scan", "--text", "--json", other.toString())
                        .out())
                .isEqualTo("[{\"image\":\"" + other
                        + "\",\"cage\":null,\"outOfDate\":null,\"text\":\"Elsewhere\\nentirely\",\"problem\":null}]\n");
    }

    @Test
    void whatACodeSaysTellsTheTerminalNothing() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        Path sly = symbol("sly.png", "seed\u001b[2J\u0007grit");

        assertThat(cli.run("scan", "--text", sly.toString()).out()).isEqualTo("seed [2J grit\n");
        assertThat(cli.run("scan", sly.toString()).err()).contains("It says: seed [2J grit");
    }

    @Test
    void everyBadPictureHasItsSentenceAndTheGoodOneAfterThemIsRead() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        List<String> arguments = new ArrayList<>(List.of("scan"));
        for (BadPictures.Bad bad : BadPictures.all()) {
            arguments.add(Files.write(folder.resolve(bad.name()), bad.bytes()).toString());
        }
        arguments.add(symbol("good.png", card(cli, "A1")).toString());

        Ran ran = cli.run(arguments.toArray(String[]::new));

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).isEqualTo("-\n".repeat(BadPictures.all().size()) + "A1\n");
        for (BadPictures.Bad bad : BadPictures.all()) {
            assertThat(ran.err().lines()).anyMatch(line -> line.contains(bad.name()) && line.contains(bad.said()));
        }
    }

    @Test
    void aWebAddressAWrongLetterAndACardOfAnotherRoomOpenNothingAndSayWhatTheyAre() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        String right = card(cli, "A1");
        String wrong = right.substring(0, 5) + (right.charAt(5) == '7' ? '8' : '7') + right.substring(6);
        String elsewhere = new CardCode("ZZ1", 1, "11").text();

        Ran ran = cli.run(
                "scan",
                symbol("address.png", "https://example.org/seed?a=1").toString(),
                symbol("wrong.png", wrong).toString(),
                symbol("elsewhere.png", elsewhere).toString());

        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out()).isEqualTo("-\n-\n-\n");
        assertThat(ran.err())
                .contains(
                        "This is not a cage card. It says: https://example.org/seed?a=1",
                        "the code does not hold together",
                        "This card is from another birdroom. Nothing was changed.");
    }

    @Test
    void ofTheCardsOfTwoRoomsInOnePictureTheOneNearestTheMiddleIsMeantAndTheOtherIsSaid() throws IOException {
        Cli cli = Cli.furnished(folder.resolve("birds"));
        String nearest = new CardCode("ZZ1", 3, "11").text();
        BufferedImage both = new BufferedImage(900, 300, BufferedImage.TYPE_INT_RGB);
        Graphics2D g = both.createGraphics();
        g.drawImage(ImageIO.read(symbol("one.png", nearest).toFile()), 350, 0, null);
        g.drawImage(
                ImageIO.read(
                        symbol("aside.png", new CardCode("ZZ2", 3, "11").text()).toFile()),
                0,
                0,
                null);
        g.dispose();
        Path file = folder.resolve("both.png");
        ImageIO.write(both, "png", file.toFile());

        Ran ran = cli.run("scan", file.toString());

        assertThat(ran.out()).isEqualTo("-\n");
        assertThat(ran.err())
                .contains(
                        "This card is from another birdroom. Nothing was changed.",
                        "Another code was in view. The one nearest the middle was read.");
        assertThat(cli.run("scan", "--text", file.toString()).out()).isEqualTo(nearest + "\n");
    }

    /** What the symbol of this cage's card says. */
    private String card(Cli cli, String cage) throws IOException {
        Path pdf = folder.resolve("card.pdf");
        cli.run("cards", "--out", pdf.toString(), cage);
        return cli.run("scan", "--text", picture(pdf).toString()).out().strip();
    }

    private Path symbol(String name, String says) throws IOException {
        BitMatrix bits;
        try {
            bits = new QRCodeWriter().encode(says, BarcodeFormat.QR_CODE, 300, 300);
        } catch (WriterException e) {
            throw new IllegalStateException(e);
        }
        BufferedImage image = new BufferedImage(300, 300, BufferedImage.TYPE_INT_RGB);
        for (int x = 0; x < 300; x++) {
            for (int y = 0; y < 300; y++) {
                image.setRGB(x, y, bits.get(x, y) ? 0 : 0xFFFFFF);
            }
        }
        Path file = folder.resolve(name);
        ImageIO.write(image, "png", file.toFile());
        return file;
    }

    private Path picture(Path pdf) throws IOException {
        Path file = folder.resolve("card.png");
        try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
            ImageIO.write(new PDFRenderer(document).renderImageWithDPI(0, DPI), "png", file.toFile());
        }
        return file;
    }
}
