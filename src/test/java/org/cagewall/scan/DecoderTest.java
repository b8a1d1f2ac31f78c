package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.image.BufferedImage;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.cagewall.cards.Symbol;
import org.cagewall.cards.Symbols;
import org.cagewall.room.card.CardCode;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class DecoderTest {

    private static final String TEXT = new CardCode("B7K", 14, "Q2").text();
    private static final String OTHER = new CardCode("B7K", 3, "11").text();
    private static final String ELSEWHERE = new CardCode("ZZ1", 14, "Q2").text();

    private final Decoder decoder = new Decoder();

    /** Three pixels a module is what a sharp picture needs; fewer pixels are tried for luck. */
    @ParameterizedTest
    @ValueSource(ints = {2, 3, 4, 5, 8, 14, 28, 60, 120})
    void aSharpCardIsReadAtAnySize(int pixels) {
        assertThat(decoder.decode(Luma.of(card(pixels, 0))).text()).contains(TEXT);
    }

    @ParameterizedTest
    @ValueSource(ints = {15, 30, 45, 60, 75, 90, 135, 180, 270, 345})
    void aCardThatIsTurnedIsRead(int degrees) {
        assertThat(decoder.decode(Luma.of(card(6, degrees))).text()).contains(TEXT);
    }

    @Test
    void aSmallSymbolInALargePictureIsRead() {
        BufferedImage photograph = blank(4000, 3000, new Color(180, 170, 150));
        draw(photograph, TEXT, 6, 2800, 2100, 4);
        assertThat(decoder.decode(Luma.of(photograph)).text()).contains(TEXT);
    }

    @Test
    void aVerySmallSymbolInALargePictureIsRead() {
        BufferedImage photograph = blank(4000, 3000, new Color(180, 170, 150));
        draw(photograph, TEXT, 3, 2800, 2100, 4);
        assertThat(decoder.decode(Luma.of(photograph)).text()).contains(TEXT);
    }

    @Test
    void aSmallCodeThatIsNoCardInALargePictureIsRead() throws WriterException {
        BitMatrix bits = new QRCodeWriter().encode("https://example.org/feed", BarcodeFormat.QR_CODE, 1, 1);
        BufferedImage photograph = blank(4000, 3000, new Color(180, 170, 150));
        for (int y = 0; y < 3 * bits.getHeight(); y++) {
            for (int x = 0; x < 3 * bits.getWidth(); x++) {
                Color ink = bits.get(x / 3, y / 3) ? Color.BLACK : Color.WHITE;
                photograph.setRGB(2800 + x, 2100 + y, ink.getRGB());
            }
        }
        assertThat(decoder.decode(Luma.of(photograph)).text()).contains("https://example.org/feed");
    }

    @Test
    void aGreyNoisyCardIsRead() {
        BufferedImage card = card(8, 3);
        Random seeded = new Random(25);
        for (int y = 0; y < card.getHeight(); y++) {
            for (int x = 0; x < card.getWidth(); x++) {
                int grey = (card.getRGB(x, y) & 0xFF) * 120 / 255 + 60 + seeded.nextInt(41);
                card.setRGB(x, y, new Color(grey, grey, grey).getRGB());
            }
        }
        assertThat(decoder.decode(Luma.of(card)).text()).contains(TEXT);
    }

    /** Where level and version alone do not help: what marks the corners is gone. */
    @ParameterizedTest
    @CsvSource({"0, 0", "1, 0", "0, 1"})
    void aCardOfWhichACornerSquareIsUnderDirtIsRead(int right, int below) {
        BufferedImage card = card(6, 0);
        int first = card.getWidth() / 2 - Symbols.SIDE * 3;
        Graphics2D g = card.createGraphics();
        g.setColor(new Color(90, 70, 40));
        g.fillOval(first + right * 84 - 6, first + below * 84 - 6, 54, 54);
        g.dispose();
        assertThat(decoder.decode(Luma.of(card)).text()).contains(TEXT);
    }

    @Test
    void aCardOfWhichTwoCornerSquaresAreUnderDirtIsRead() {
        BufferedImage card = card(6, 0);
        int first = card.getWidth() / 2 - Symbols.SIDE * 3;
        Graphics2D g = card.createGraphics();
        g.setColor(new Color(90, 70, 40));
        g.fillOval(first + 78, first - 6, 54, 54);
        g.fillOval(first - 6, first + 78, 54, 54);
        g.dispose();
        assertThat(decoder.decode(Luma.of(card)).text()).contains(TEXT);
    }

    @Test
    void ofSeveralCardsTheOneNearestTheMiddleIsReadAndTheOthersAreTold() {
        BufferedImage wall = blank(900, 500, new Color(200, 195, 190));
        draw(wall, OTHER, 5, 40, 60, 4);
        draw(wall, TEXT, 5, 380, 160, 4);
        draw(wall, ELSEWHERE, 5, 700, 300, 4);
        Decoding decoding = decoder.decode(Luma.of(wall));
        assertThat(decoding.text()).contains(TEXT);
        assertThat(((Decoding.Found) decoding).others()).containsExactlyInAnyOrder(OTHER, ELSEWHERE);
        assertThat(decoding.besides().map(Words.english()::say))
                .contains("2 other codes were in view. The one nearest the middle was read.");
    }

    /** A bag of seed behind a cage has a code of its own. */
    @Test
    void aCardIsReadEvenIfACodeThatIsNoCardLiesNearerTheMiddle() {
        BufferedImage wall = blank(900, 500, new Color(200, 195, 190));
        draw(wall, "SEED12", 5, 380, 160, 4);
        draw(wall, TEXT, 5, 700, 300, 4);
        Decoding decoding = decoder.decode(Luma.of(wall));
        assertThat(decoding.text()).contains(TEXT);
        assertThat(decoding.besides()).isEmpty();
    }

    @Test
    void aCardThatCarriesItsSymbolTwiceIsOneCard() {
        BufferedImage wall = blank(900, 500, new Color(200, 195, 190));
        draw(wall, TEXT, 5, 200, 60, 4);
        draw(wall, TEXT, 5, 500, 260, 4);
        Decoding decoding = decoder.decode(Luma.of(wall));
        assertThat(decoding.text()).contains(TEXT);
        assertThat(decoding.besides()).isEmpty();
    }

    @Test
    void whereASymbolLiesIsTold() {
        BufferedImage photograph = blank(4000, 3000, new Color(180, 170, 150));
        draw(photograph, TEXT, 20, 2000, 1000, 4);
        Sighting seen = ((Decoding.Found) decoder.decode(Luma.of(photograph))).nearest();
        assertThat(seen.x()).isCloseTo(2290, within(5.0));
        assertThat(seen.y()).isCloseTo(1290, within(5.0));
        assertThat(seen.side()).isCloseTo(420, within(10.0));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"https://example.org/feed?bag=12", "sms:+441632960000?body=All%20well", "ABC", "1234567890"})
    void anyOtherCodeIsReadAsText(String text) throws WriterException {
        BitMatrix bits = new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 300, 300);
        BufferedImage picture = blank(300, 300, Color.WHITE);
        for (int y = 0; y < 300; y++) {
            for (int x = 0; x < 300; x++) {
                picture.setRGB(x, y, (bits.get(x, y) ? Color.BLACK : Color.WHITE).getRGB());
            }
        }
        assertThat(decoder.decode(Luma.of(picture)).text()).contains(text);
    }

    /** ISO/IEC 18004: a symbol says the same light on dark and in a mirror; from version 7 on it says its version. */
    @ParameterizedTest
    @CsvSource({
        "2, false, false",
        "2, true, false",
        "2, false, true",
        "7, false, false",
        "14, true, false",
        "25, false, true"
    })
    void aCodeOfAnyVersionIsReadAlsoInvertedAndInAMirror(int version, boolean inverted, boolean mirrored)
            throws WriterException {
        String text = "seed.".repeat(version);
        int pixels = version < 10 ? 6 : 4;
        BitMatrix bits = new QRCodeWriter()
                .encode(text, BarcodeFormat.QR_CODE, 1, 1, Map.of(EncodeHintType.QR_VERSION, version));
        int side = bits.getWidth() * pixels;
        BufferedImage picture = blank(side + 60, side + 40, inverted ? Color.BLACK : Color.WHITE);
        for (int y = 0; y < side; y++) {
            for (int x = 0; x < side; x++) {
                boolean dark = bits.get(x / pixels, y / pixels) != inverted;
                picture.setRGB(20 + (mirrored ? side - 1 - x : x), 20 + y, (dark ? Color.BLACK : Color.WHITE).getRGB());
            }
        }
        assertThat(decoder.decode(Luma.of(picture)).text()).contains(text);
    }

    @Test
    void aPictureWithoutASymbolHoldsNothing() {
        assertThat(decoder.decode(Luma.of(blank(640, 480, Color.WHITE)))).isEqualTo(new Decoding.Nothing());
        assertThat(decoder.decode(Luma.of(blank(640, 480, Color.BLACK)))).isEqualTo(new Decoding.Nothing());
        assertThat(decoder.decode(noise(400, 300))).isEqualTo(new Decoding.Nothing());
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 20, 21, 22, 39, 40, 41})
    void tinyPicturesHoldNothingAndStopNothing(int side) {
        assertThat(decoder.decode(noise(side, side))).isEqualTo(new Decoding.Nothing());
        assertThat(decoder.decode(noise(side, 1))).isEqualTo(new Decoding.Nothing());
        assertThat(decoder.decode(noise(1, side))).isEqualTo(new Decoding.Nothing());
    }

    @Test
    void filesComeOneByOneFromTheirSource() throws Exception {
        try (FrameSource files = FrameSource.of(List.of(Path.of("nowhere.png"), Path.of("nor here.png")))) {
            assertThat(decoder.decode(files.next().orElseThrow())).isInstanceOf(Decoding.Unreadable.class);
            assertThat(files.next()).isPresent();
            assertThat(files.next()).isEmpty();
        }
    }

    static BufferedImage card(int pixels, int degrees) {
        int side = (Symbols.SIDE + 2 * Symbols.QUIET_ZONE) * pixels;
        BufferedImage flat = blank(side, side, Color.WHITE);
        draw(flat, TEXT, pixels, 0, 0, Symbols.QUIET_ZONE);
        int space = side * 3 / 2;
        BufferedImage turned = blank(space, space, Color.WHITE);
        Graphics2D g = turned.createGraphics();
        g.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        g.rotate(Math.toRadians(degrees), space / 2.0, space / 2.0);
        g.drawImage(flat, (space - side) / 2, (space - side) / 2, null);
        g.dispose();
        return turned;
    }

    static void draw(BufferedImage image, String text, int pixels, int left, int top, int quiet) {
        Symbol symbol = Symbols.matrix(text);
        int side = (symbol.side() + 2 * quiet) * pixels;
        Graphics2D g = image.createGraphics();
        g.setColor(Color.WHITE);
        g.fillRect(left, top, side, side);
        g.setColor(Color.BLACK);
        for (Symbol.Bar bar : symbol.bars()) {
            g.fillRect(
                    left + (quiet + bar.column()) * pixels,
                    top + (quiet + bar.row()) * pixels,
                    bar.width() * pixels,
                    bar.height() * pixels);
        }
        g.dispose();
    }

    static BufferedImage blank(int width, int height, Color colour) {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_3BYTE_BGR);
        Graphics2D g = image.createGraphics();
        g.setColor(colour);
        g.fillRect(0, 0, width, height);
        g.dispose();
        return image;
    }

    private static Luma noise(int width, int height) {
        byte[] brightness = new byte[width * height];
        new Random(width).nextBytes(brightness);
        return Luma.of(width, height, brightness);
    }
}
