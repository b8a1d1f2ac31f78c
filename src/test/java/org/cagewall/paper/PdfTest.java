package org.cagewall.paper;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.rendering.PDFRenderer;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

class PdfTest {

    private static final LocalDate TODAY = LocalDate.of(2026, 4, 14);
    private static final Type PLAIN = Type.regular(3);

    @Test
    void whatIsDrawnLiesWhereARulerFindsIt() throws IOException {
        byte[] pdf = drawn(page -> page.fill(new Area(50, 100, 30, 20), Ink.BLACK));
        BufferedImage image = rendered(pdf);
        double dot = 25.4 / 300;
        assertThat(isDark(image, 50 + dot, 100 + dot)).isTrue();
        assertThat(isDark(image, 50 - dot, 100 + dot)).isFalse();
        assertThat(isDark(image, 50 + dot, 100 - dot)).isFalse();
        assertThat(isDark(image, 80 - dot, 120 - dot)).isTrue();
        assertThat(isDark(image, 80 + dot, 120 - dot)).isFalse();
        assertThat(isDark(image, 80 - dot, 120 + dot)).isFalse();
    }

    @Test
    void aCapitalIsAsHighAsItsTypeSays() throws IOException {
        byte[] pdf = drawn(page -> page.text("H", Type.bold(7), Ink.BLACK, 20, 40));
        BufferedImage image = rendered(pdf);
        double top = 0;
        double bottom = 0;
        for (double y = 25; y < 50; y += 0.02) {
            boolean dark = isDark(image, 21.1, y);
            top = dark && top == 0 ? y : top;
            bottom = dark ? y : bottom;
        }
        assertThat(bottom).isEqualTo(40, within(0.1));
        assertThat(bottom - top).isEqualTo(7, within(0.15));
    }

    @Test
    void theFontIsInTheFileAsASubset() throws IOException {
        byte[] pdf = drawn(page -> page.text("Cock HB 26-041, \u00C9lo\u00EFse, \u0141ucja", PLAIN, Ink.BLACK, 10, 10));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDPage page = document.getPage(0);
            for (var name : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(name);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).matches("[A-Z]{6}\\+Roboto-Regular");
            }
            assertThat(new PDFTextStripper().getText(document)).contains("HB 26-041, \u00C9lo\u00EFse, \u0141ucja");
        }
        assertThat(pdf.length).isLessThan(40_000);
    }

    @Test
    void lettersThatTheFontDoesNotHaveDoNotStopThePrint() throws IOException {
        byte[] pdf = drawn(page -> page.text("a\u9E1Fb\uD83D\uDC26c\nd\te\u0007", PLAIN, Ink.BLACK, 10, 10));
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(new PDFTextStripper().getText(document).strip()).isEqualTo("a?b?c d e");
        }
    }

    @Test
    void theSameDrawingGivesTheSameBytes() {
        byte[] first = drawn(page -> page.text("B3", PLAIN, Ink.BLACK, 10, 10));
        byte[] second = drawn(page -> page.text("B3", PLAIN, Ink.BLACK, 10, 10));
        assertThat(second).isEqualTo(first);
    }

    @Test
    void aLongTextIsMadeSmallerThenCut() {
        drawn(page -> {
            String text = "Sir Bartholomew the Second";
            Type smaller = page.shrunk(text, PLAIN, 30, 1);
            assertThat(page.width(text, smaller)).isEqualTo(30, within(0.01));
            assertThat(page.shrunk(text, PLAIN, 30, 2.9).capitals()).isEqualTo(2.9);
            assertThat(page.width(text, page.narrowed(text, PLAIN, 40, 0.5))).isEqualTo(40, within(0.01));
            assertThat(page.narrowed(text, PLAIN, 30, 0.9).stretch()).isEqualTo(0.9);
            assertThat(page.cut(text, PLAIN, 30)).startsWith("Sir Barth").endsWith("\u2026");
            assertThat(page.width(page.cut(text, PLAIN, 30), PLAIN)).isLessThanOrEqualTo(30);
            assertThat(page.cut(text, PLAIN, 200)).isEqualTo(text);
            assertThat(page.wrapped(text, PLAIN, 30)).containsExactly("Sir", "Bartholomew", "the Second");
        });
    }

    @Test
    void everyPageHasItsOwnSize() throws IOException {
        byte[] pdf = Pdf.drawn("Two pages", TODAY, pages -> {
            pages.page(Size.A4).line(0, 0, 210, 297, 0.2, new Ink(14, 85, 92));
            pages.page(new Size(85, 54)).frameRounded(new Area(1, 1, 83, 52), 3, 0.3, Ink.grey(90));
        });
        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(document.getPage(1).getMediaBox().getWidth() / 72 * 25.4).isEqualTo(85, within(0.001));
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Two pages");
        }
    }

    @Test
    void roundedCornersAreFilledInside() throws IOException {
        BufferedImage image = rendered(drawn(page -> page.fillRounded(new Area(10, 10, 40, 20), 8, Ink.BLACK)));
        List<Boolean> corners = List.of(
                isDark(image, 10.5, 10.5),
                isDark(image, 49.5, 10.5),
                isDark(image, 10.5, 29.5),
                isDark(image, 49.5, 29.5));
        assertThat(corners).containsOnly(false);
        assertThat(isDark(image, 13, 13)).isTrue();
        assertThat(isDark(image, 30, 10.3)).isTrue();
    }

    private static byte[] drawn(Consumer<Page> drawing) {
        return Pdf.drawn("Test", TODAY, pages -> drawing.accept(pages.page(Size.A4)));
    }

    private static BufferedImage rendered(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFRenderer(document).renderImageWithDPI(0, 300);
        }
    }

    private static boolean isDark(BufferedImage image, double x, double y) {
        int rgb = image.getRGB((int) (x / 25.4 * 300), (int) (y / 25.4 * 300));
        return (rgb & 0xFF) < 128;
    }
}
