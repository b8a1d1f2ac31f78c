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
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.cagewall.paper.Area;
import org.cagewall.paper.Sheet;
import org.cagewall.paper.Sheets;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Decoding;
import org.cagewall.scan.Luma;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.FieldSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Printed cards at the coarseness of a poor camera, blurred and half covered, read by a stranger's program (ZBar). */
@Tag("slow")
class CoveredCardsTest {

    private static final int DPI = 150;
    private static final int MOST_CARDS = 3;
    private static final List<Color> COVERS = List.of(Color.WHITE, Color.GRAY, new Color(0x2B2418));

    @TempDir
    private Path folder;

    private final Decoder decoder = new Decoder();

    private static Stream<Arguments> sheetsAndFaces() {
        return Sheets.BUILT_IN.stream()
                .flatMap(name -> Stream.of(FaceChoice.values()).map(faces -> Arguments.of(name, faces)));
    }

    @ParameterizedTest
    @MethodSource("sheetsAndFaces")
    void everySymbolIsReadAt150DotsAnInchAndAfterABlurOfThreeByThree(String name, FaceChoice faces) throws Exception {
        Rendered rendered = rendered(name, faces);
        List<Path> pictures = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (int index = 0; index < rendered.cards().size(); index++) {
            for (Area tile : rendered.tiles(index).boxes()) {
                BufferedImage symbol = ReadCards.part(rendered.page(index), tile, DPI);
                pictures.add(rendered.picture(pictures.size(), symbol));
                pictures.add(rendered.picture(pictures.size(), blurred(symbol)));
                expected.addAll(Collections.nCopies(2, rendered.code(index)));
            }
        }
        assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
    }

    /** With both its symbols in view, and no part of the other taken for its own. */
    @ParameterizedTest
    @MethodSource("sheetsAndFaces")
    void aWholeCardIsReadByTheKiosksOwnDecoderWholeAndBlurred(String name, FaceChoice faces) throws Exception {
        Rendered rendered = rendered(name, faces);
        for (int index = 0; index < rendered.cards().size(); index++) {
            BufferedImage card = rendered.card(index);
            String code = rendered.code(index);
            for (BufferedImage picture : List.of(card, blurred(card))) {
                Decoding seen = decoder.decode(Luma.of(picture));
                assertThat(seen.text())
                        .as("%s, %s, card %d", name, faces, index)
                        .contains(code);
                assertThat(seen.besides()).as("one card, not two").isEmpty();
            }
        }
    }

    /** Whatever of the other half is left, pale, grey or dark; the cover lies against the symbol where there is no white. */
    @ParameterizedTest
    @MethodSource("sheetsAndFaces")
    void aCardWithTwoSymbolsIsReadWithAnyHalfCovered(String name, FaceChoice faces) throws Exception {
        Rendered rendered = rendered(name, faces);
        List<Path> pictures = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        List<String> read = new ArrayList<>();
        for (int index : rendered.withSymbols(2)) {
            for (Half half : Half.values()) {
                for (Color cover : COVERS) {
                    BufferedImage covered = covered(rendered.card(index), half, cover);
                    pictures.add(rendered.picture(pictures.size(), covered));
                    expected.add(rendered.code(index));
                    read.add(decoder.decode(Luma.of(covered)).text().orElse("nothing"));
                }
            }
        }
        assertThat(expected.isEmpty()).as("no card with two symbols").isEqualTo(name.equals("a4-64x38"));
        assertThat(read).isEqualTo(expected);
        if (!pictures.isEmpty()) {
            assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
        }
    }

    /**
     * Its symbol lies in the right half and takes nearly all of its height: only what covers the left half is sure to leave
     * it. Of what the upper or the lower half leaves it is read by luck, and as no other cage.
     */
    @ParameterizedTest
    @EnumSource(FaceChoice.class)
    void aSmallCardIsReadWithItsLeftHalfCoveredLostWithItsRightAndNeverTakenForAnother(FaceChoice faces)
            throws Exception {
        Rendered rendered = rendered("a4-64x38", faces);
        List<Path> pictures = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        assertThat(rendered.withSymbols(1)).hasSize(MOST_CARDS);
        for (int index : rendered.withSymbols(1)) {
            Optional<String> code = Optional.of(rendered.code(index));
            for (Color cover : COVERS) {
                BufferedImage left = covered(rendered.card(index), Half.LEFT, cover);
                pictures.add(rendered.picture(pictures.size(), left));
                expected.add(rendered.code(index));
                assertThat(read(left)).isEqualTo(code);
                assertThat(read(covered(rendered.card(index), Half.RIGHT, cover)))
                        .isEmpty();
                for (Half half : List.of(Half.UPPER, Half.LOWER)) {
                    assertThat(read(covered(rendered.card(index), half, cover))).isIn(code, Optional.empty());
                }
            }
        }
        assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
    }

    private Optional<String> read(BufferedImage picture) {
        return decoder.decode(Luma.of(picture)).text();
    }

    /**
     * The knife runs beside the line: a strip of the card is gone on one side, its neighbour's or the table shows on the
     * other. On cards of 4 x 2 inches it takes from the white of one symbol, on all others there is a millimetre to spare.
     */
    @ParameterizedTest
    @FieldSource("org.cagewall.paper.Sheets#BUILT_IN")
    void aCardThatIsCutAMillimetreAstrayShowsAllItsSymbolsWhicheverWay(String name) throws Exception {
        Rendered rendered = rendered(name, FaceChoice.BY_USE);
        List<Path> pictures = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (int index = 0; index < rendered.cards().size(); index++) {
            for (Half side : Half.values()) {
                for (Color around : COVERS) {
                    BufferedImage cut = onTable(cutAstray(rendered.card(index), side), around);
                    String code = rendered.code(index);
                    assertThat(decoder.decode(Luma.of(cut)).text())
                            .as("%s, card %d, %s", name, index, side)
                            .contains(code);
                    pictures.add(rendered.picture(pictures.size(), cut));
                    expected.addAll(
                            Collections.nCopies(rendered.tiles(index).boxes().size(), code));
                }
            }
        }
        assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
    }

    /** Each by itself, the other under a hand: so none leans on the other. */
    @ParameterizedTest
    @FieldSource("org.cagewall.paper.Sheets#BUILT_IN")
    void eachSymbolOfACardThatIsCutAMillimetreAstrayIsRead(String name) throws Exception {
        Rendered rendered = rendered(name, FaceChoice.BY_USE);
        List<Path> pictures = new ArrayList<>();
        List<String> expected = new ArrayList<>();
        for (int index : rendered.withSymbols(2)) {
            for (Half side : Half.values()) {
                for (Half hand : List.of(Half.LEFT, Half.RIGHT)) {
                    BufferedImage cut = cutAstray(covered(rendered.card(index), hand, Color.GRAY), side);
                    BufferedImage seen = onTable(cut, new Color(0x2B2418));
                    assertThat(decoder.decode(Luma.of(seen)).text())
                            .as("%s, card %d, %s off, %s covered", name, index, side, hand)
                            .contains(rendered.code(index));
                    pictures.add(rendered.picture(pictures.size(), seen));
                    expected.add(rendered.code(index));
                }
            }
        }
        if (!pictures.isEmpty()) {
            assertThat(OutsidePrograms.symbols(folder, pictures)).isEqualTo(expected);
        }
    }

    /** Without a millimetre on this side. */
    private static BufferedImage cutAstray(BufferedImage card, Half side) {
        int off = (int) Math.round(DPI / 25.4);
        int width = card.getWidth();
        int height = card.getHeight();
        return switch (side) {
            case LEFT -> card.getSubimage(off, 0, width - off, height);
            case RIGHT -> card.getSubimage(0, 0, width - off, height);
            case UPPER -> card.getSubimage(0, off, width, height - off);
            case LOWER -> card.getSubimage(0, 0, width, height - off);
        };
    }

    private static BufferedImage onTable(BufferedImage card, Color table) {
        int around = DPI / 5;
        BufferedImage seen = new BufferedImage(
                card.getWidth() + 2 * around, card.getHeight() + 2 * around, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = seen.createGraphics();
        brush.setColor(table);
        brush.fillRect(0, 0, seen.getWidth(), seen.getHeight());
        brush.drawImage(card, around, around, null);
        brush.dispose();
        return seen;
    }

    private enum Half {
        LEFT,
        RIGHT,
        UPPER,
        LOWER
    }

    private static BufferedImage covered(BufferedImage card, Half half, Color cover) {
        int width = card.getWidth();
        int height = card.getHeight();
        BufferedImage covered = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = covered.createGraphics();
        brush.drawImage(card, 0, 0, null);
        brush.setColor(cover);
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
        List<CardToPrint> cards = SampleCards.all().subList(0, MOST_CARDS);
        byte[] pdf = CardsPdf.drawn(cards, Order.on(sheet).with(faces), SampleCards.TODAY, Words.english());
        ReadCards pages = ReadCards.rendered(folder, pdf, sheet, DPI);
        List<BufferedImage> images = new ArrayList<>();
        for (int first = 0; first < cards.size(); first += sheet.cards()) {
            images.add(pages.page(images.size() + 1));
        }
        return new Rendered(pages, sheet, cards, SampleCards.tiles(cards.size(), sheet), images);
    }

    private record Rendered(
            ReadCards pages,
            Sheet sheet,
            List<CardToPrint> cards,
            List<SymbolTiles> tiles,
            List<BufferedImage> images) {

        BufferedImage page(int index) {
            return images.get(index / sheet.cards());
        }

        Area place(int index) {
            return sheet.place(index % sheet.cards());
        }

        BufferedImage card(int index) {
            return ReadCards.part(page(index), place(index), DPI);
        }

        String code(int index) {
            return cards.get(index).code().text();
        }

        List<Integer> withSymbols(int count) {
            return IntStream.range(0, cards.size())
                    .filter(index -> tiles(index).boxes().size() == count)
                    .boxed()
                    .toList();
        }

        SymbolTiles tiles(int index) {
            return tiles.get(index);
        }

        Path picture(int number, BufferedImage picture) throws IOException {
            return pages.picture("part-%03d".formatted(number), picture);
        }
    }
}
