package org.cagewall.cards;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.awt.image.ConvolveOp;
import java.awt.image.Kernel;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import org.cagewall.paper.Box;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Decoding;
import org.cagewall.scan.Luma;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Printed cards at the coarseness of a poor camera, blurred and half covered, read by a stranger's program (ZBar). */
@Tag("slow")
class CoveredCardsTest {

    private static final List<String> SHEETS = Sheets.BUILT_IN;
    private static final int DPI = 150;
    private static final int MOST_CARDS = 10;

    @TempDir
    private Path folder;

    @ParameterizedTest
    @FieldSource("SHEETS")
    void everySymbolIsReadAt150DotsAnInchAndAfterABlurOfThreeByThree(String name) throws Exception {
        for (FaceChoice faces : List.of(FaceChoice.BY_USE, FaceChoice.LARGE)) {
            Rendered rendered = rendered(name, faces);
            List<Path> pictures = new ArrayList<>();
            List<String> expected = new ArrayList<>();
            for (int index = 0; index < rendered.cards().size(); index++) {
                for (Box tile : rendered.tiles(index).boxes()) {
                    BufferedImage symbol = ReadCards.part(rendered.page(index), tile, DPI);
                    pictures.add(rendered.picture(pictures.size(), symbol));
                    pictures.add(rendered.picture(pictures.size(), blurred(symbol)));
                    expected.addAll(Collections.nCopies(
                            2, rendered.cards().get(index).code().text()));
                }
            }
            assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
        }
    }

    /** With both its symbols in view, and no part of the other taken for its own. */
    @ParameterizedTest
    @FieldSource("SHEETS")
    void aWholeCardIsReadByTheKiosksOwnDecoderWholeAndBlurred(String name) throws Exception {
        Decoder decoder = new Decoder();
        for (FaceChoice faces : List.of(FaceChoice.BY_USE, FaceChoice.LARGE)) {
            Rendered rendered = rendered(name, faces);
            for (int index = 0; index < rendered.cards().size(); index++) {
                BufferedImage card = ReadCards.part(rendered.page(index), rendered.place(index), DPI);
                String code = rendered.cards().get(index).code().text();
                for (BufferedImage picture : List.of(card, blurred(card))) {
                    Decoding seen = decoder.decode(Luma.of(picture));
                    assertThat(seen.text())
                            .as("%s, %s, card %d", name, faces, index)
                            .contains(code);
                    assertThat(seen.besides()).as("one card, not two").isEmpty();
                }
            }
        }
    }

    /** The halves that docs/cards.md promises. */
    @ParameterizedTest
    @ValueSource(strings = {"a4-85x54", "letter-4x2in", "a4-99x68", "roll-100x60"})
    void aPairsCardIsReadWithItsLeftOrRightHalfCovered(String name) throws Exception {
        assertReadWithHalvesCovered(name, FaceChoice.PLAIN, Half.LEFT, Half.RIGHT);
    }

    @ParameterizedTest
    @CsvSource({"a6-105x148, PLAIN", "a6-105x148, LARGE", "a6-105x148, FLIGHT"})
    void aLargeCardIsReadWithAnyHalfCovered(String name, FaceChoice faces) throws Exception {
        assertReadWithHalvesCovered(name, faces, Half.values());
    }

    private void assertReadWithHalvesCovered(String name, FaceChoice faces, Half... halves) throws Exception {
        Rendered rendered = rendered(name, faces);
        List<Path> pictures = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (int index = 0; index < rendered.cards().size(); index++) {
            if (rendered.tiles(index).boxes().size() == 2) {
                BufferedImage card = ReadCards.part(rendered.page(index), rendered.place(index), DPI);
                for (Half half : halves) {
                    pictures.add(rendered.picture(pictures.size(), covered(card, half)));
                    expected.add(rendered.cards().get(index).code().text());
                }
            }
        }
        assertThat(expected).hasSizeGreaterThanOrEqualTo(2 * halves.length);
        assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
    }

    private enum Half {
        LEFT,
        RIGHT,
        UPPER,
        LOWER
    }

    private static BufferedImage covered(BufferedImage card, Half half) {
        int width = card.getWidth();
        int height = card.getHeight();
        BufferedImage covered = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = covered.createGraphics();
        brush.drawImage(card, 0, 0, null);
        brush.setColor(new Color(0x6B5A3C));
        switch (half) {
            case LEFT -> brush.fillRect(0, 0, width / 2, height);
            case RIGHT -> brush.fillRect(width - width / 2, 0, width / 2, height);
            case UPPER -> brush.fillRect(0, 0, width, height / 2);
            case LOWER -> brush.fillRect(0, height - height / 2, width, height / 2);
        }
        brush.dispose();
        return covered;
    }

    private static BufferedImage blurred(BufferedImage symbol) {
        float[] ninth = new float[9];
        Arrays.fill(ninth, 1 / 9f);
        BufferedImage blurred = new BufferedImage(symbol.getWidth(), symbol.getHeight(), BufferedImage.TYPE_INT_RGB);
        BufferedImage plain = new BufferedImage(symbol.getWidth(), symbol.getHeight(), BufferedImage.TYPE_INT_RGB);
        plain.createGraphics().drawImage(symbol, 0, 0, null);
        return new ConvolveOp(new Kernel(3, 3, ninth), ConvolveOp.EDGE_NO_OP, null).filter(plain, blurred);
    }

    private Rendered rendered(String name, FaceChoice faces) throws IOException, InterruptedException {
        Sheet sheet = CardsPdf.sheets().find(name).sheet().orElseThrow();
        List<PrintedCard> cards = SampleCards.all();
        cards = cards.subList(0, Math.min(MOST_CARDS, Math.max(4, Math.min(cards.size(), sheet.cards()))));
        byte[] pdf = CardsPdf.drawn(cards, Order.on(sheet).with(faces), SampleCards.TODAY, Words.english());
        ReadCards pages = ReadCards.rendered(folder, pdf, sheet, DPI);
        List<BufferedImage> images = new ArrayList<>();
        for (int first = 0; first < cards.size(); first += sheet.cards()) {
            images.add(pages.page(images.size() + 1));
        }
        return new Rendered(pages, sheet, cards, SampleCards.tiles(cards, sheet, faces), images);
    }

    private record Rendered(
            ReadCards pages, Sheet sheet, List<PrintedCard> cards, List<Tiles> tiles, List<BufferedImage> images) {

        BufferedImage page(int index) {
            return images.get(index / sheet.cards());
        }

        Box place(int index) {
            return sheet.place(index % sheet.cards());
        }

        Tiles tiles(int index) {
            return tiles.get(index);
        }

        Path picture(int number, BufferedImage picture) throws IOException {
            return pages.picture("part-%03d".formatted(number), picture);
        }
    }
}
