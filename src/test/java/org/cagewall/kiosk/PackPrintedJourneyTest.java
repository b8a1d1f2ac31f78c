package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.paper.PdfPrinter;
import org.cagewall.paper.Size;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The pack goes through a real print spooler (CUPS), and what its PDF printer lays out is what was saved as a file. */
@Tag("slow")
@RequiresDisplay
class PackPrintedJourneyTest extends InAWindow {

    private static final int DPI = 72;
    private static final double MM = 25.4 / DPI;

    @ParameterizedTest
    @CsvSource({"a4-85x54, 210, 297", "letter-4x2in, 215.9, 279.4"})
    void whatThePrinterLaysOutIsThePackInItsRealSize(String sheet, double width, double height) throws Exception {
        PdfPrinter printer = PdfPrinter.need();
        KioskSettings.keepForCards(desk.folder().kioskProperties(), sheet, "", PdfPrinter.NAME);

        live.press("nav.handover")
                .press("plan")
                .press("days.2026-04-20")
                .press("days.2026-04-28")
                .press("save");
        live.press("pack").press("save-pack").see("saved");
        live.press("printer." + PdfPrinter.NAME).press("print").read("Sent to " + PdfPrinter.NAME + ".");
        live.picture("pack-printed-" + sheet);

        byte[] saved = Files.readAllBytes(room().resolve("pack-2026-04-14.pdf"));
        try (PDDocument expected = Loader.loadPDF(saved);
                PDDocument printed = Loader.loadPDF(printer.document(expected.getNumberOfPages()))) {
            for (int page = 0; page < expected.getNumberOfPages(); page++) {
                BufferedImage ours = picture(expected, page);
                BufferedImage theirs = picture(printed, page);
                assertPaperIs(new Size(width, height), theirs);
                assertThat(bordersOf(theirs)).as("page %d", page + 1).containsExactly(bordersOf(ours), within(1.0));
            }
        }
    }

    private static BufferedImage picture(PDDocument document, int page) throws IOException {
        return new PDFRenderer(document).renderImageWithDPI(page, DPI);
    }

    private static void assertPaperIs(Size paper, BufferedImage page) {
        assertThat(page.getWidth() * MM).isEqualTo(paper.width(), within(0.7));
        assertThat(page.getHeight() * MM).isEqualTo(paper.height(), within(0.7));
    }

    /** From the left and upper edges of the paper to the first and the last ink, in millimetres. */
    private static double[] bordersOf(BufferedImage page) {
        double[] borders = {page.getWidth(), page.getHeight(), 0, 0};
        for (int x = 0; x < page.getWidth(); x++) {
            for (int y = 0; y < page.getHeight(); y++) {
                if ((page.getRGB(x, y) & 0xFF) < 160) {
                    borders[0] = Math.min(borders[0], x);
                    borders[1] = Math.min(borders[1], y);
                    borders[2] = Math.max(borders[2], x);
                    borders[3] = Math.max(borders[3], y);
                }
            }
        }
        return java.util.Arrays.stream(borders).map(dots -> dots * MM).toArray();
    }
}
