package org.cagewall.cards;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.rendering.ImageType;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.cagewall.paper.Area;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.paper.Size;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.FieldSource;

/** The trial page, measured as it is rendered. */
class TrialPdfTest {

    private static final List<String> SHEETS = Sheets.BUILT_IN;
    private static final int DPI = 600;
    private static final double MM_A_DOT = 25.4 / DPI;

    @ParameterizedTest
    @FieldSource("SHEETS")
    void theOutlinesLieWhereTheSheetFileSaysToAFifthOfAMillimetre(String name) throws IOException {
        Sheet sheet = CardsPdf.sheets().find(name).sheet().orElseThrow();
        BufferedImage page = page(sheet);
        for (int index = 0; index < sheet.cards(); index++) {
            Area place = sheet.place(index);
            if (place.left() > 1) {
                double y = place.top() + place.height() * 0.9;
                assertThat(darkAcross(page, place.left() - 1, place.left() + 0.9, y))
                        .isEqualTo(place.left(), within(0.2));
                assertThat(darkAcross(page, place.right() - 0.9, place.right() + 1, y))
                        .isEqualTo(place.right(), within(0.2));
                double x = place.left() + place.width() * 0.9;
                assertThat(darkDown(page, place.top() - 1, place.top() + 0.9, x))
                        .isEqualTo(place.top(), within(0.2));
                assertThat(darkDown(page, place.bottom() - 0.9, place.bottom() + 1, x))
                        .isEqualTo(place.bottom(), within(0.2));
            }
        }
    }

    @ParameterizedTest
    @FieldSource("SHEETS")
    void theStrokesOfBothRulersLieOnTheirMillimetres(String name) throws IOException {
        Sheet sheet = CardsPdf.sheets().find(name).sheet().orElseThrow();
        BufferedImage page = page(sheet);
        for (int mm : new int[] {10, 20, 30, 40, 50}) {
            assertThat(darkAcross(page, mm - 0.4, mm + 0.4, 7.9)).isEqualTo(mm, within(0.2));
            assertThat(darkDown(page, mm - 0.4, mm + 0.4, 7.9)).isEqualTo(mm, within(0.2));
        }
    }

    @Test
    void theTrialPageSaysTheShiftThatIsSet() throws IOException {
        Sheet sheet = CardsPdf.sheets().find("a4-85x54").sheet().orElseThrow();
        Sheet shifted = new Sheet(
                "mine",
                "My sheet",
                sheet.paper(),
                2,
                5,
                sheet.card(),
                sheet.left() + 0.5,
                sheet.top() - 1,
                sheet.pitch(),
                new Size(0.5, -1));
        try (PDDocument document = Loader.loadPDF(TrialPdf.drawn(shifted, SampleCards.TODAY, Words.english()))) {
            assertThat(document.getNumberOfPages()).isEqualTo(1);
            assertThat(new PDFTextStripper().getText(document)).contains("My sheet", "shift = 0.5 x -1", "10");
        }
    }

    private static BufferedImage page(Sheet sheet) throws IOException {
        try (PDDocument document = Loader.loadPDF(TrialPdf.drawn(sheet, SampleCards.TODAY, Words.english()))) {
            return new PDFRenderer(document).renderImageWithDPI(0, DPI, ImageType.GRAY);
        }
    }

    /** The middle of what is dark along this line, in millimetres. */
    private static double darkAcross(BufferedImage page, double from, double to, double y) {
        return middle(IntStream.range(dot(from), dot(to))
                .filter(x -> x >= 0 && x < page.getWidth() && (page.getRGB(x, dot(y)) & 0xFF) < 160));
    }

    private static double darkDown(BufferedImage page, double from, double to, double x) {
        return middle(IntStream.range(dot(from), dot(to))
                .filter(y -> y >= 0 && y < page.getHeight() && (page.getRGB(dot(x), y) & 0xFF) < 160));
    }

    private static double middle(IntStream dots) {
        return (dots.average().orElse(Double.NaN) + 0.5) * MM_A_DOT;
    }

    private static int dot(double mm) {
        return (int) Math.round(mm / MM_A_DOT);
    }
}
