package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Random;
import java.util.zip.CRC32;
import java.util.zip.DeflaterOutputStream;
import javax.imageio.ImageIO;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PicturesTest {

    private final Decoder decoder = new Decoder();

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"png", "jpg", "gif", "bmp"})
    void aCardIsReadFromTheUsualKindsOfFile(String kind) throws IOException {
        Path file = folder.resolve("card." + kind);
        Files.write(file, bytes(kind));
        assertThat(decoder.decode(Pictures.read(file)).text()).isPresent();
    }

    @Test
    void whatAPictureIsCalledDoesNotMatter() throws IOException {
        Path file = folder.resolve("card.png");
        Files.write(file, bytes("jpg"));
        assertThat(decoder.decode(Pictures.read(file)).text()).isPresent();
    }

    @Test
    void aTextThatIsCalledAPictureIsNone() throws IOException {
        Path file = folder.resolve("card.png");
        Files.writeString(file, "Husks out of the seed dish, then fill.");
        assertThat(reason(Pictures.read(file)))
                .isEqualTo("The file card.png is no picture that can be read here. Save it as PNG or JPEG.");
    }

    @Test
    void aPictureThatWasCutShortIsSaidToBe() throws IOException {
        byte[] whole = bytes("png");
        assertThat(reason(Pictures.read("card.png", Arrays.copyOf(whole, whole.length / 2))))
                .contains("cut short");
        assertThat(reason(Pictures.read("card.png", Arrays.copyOf(whole, 20)))).contains("cut short");
    }

    @Test
    void whateverIsInAFileItGetsAnAnswer() throws IOException {
        Random seeded = new Random(1);
        for (String kind : new String[] {"png", "jpg", "gif", "bmp"}) {
            byte[] whole = bytes(kind);
            for (int i = 0; i < 40; i++) {
                byte[] spoilt = Arrays.copyOf(whole, 4 + seeded.nextInt(whole.length));
                for (int j = 0; j < 8; j++) {
                    spoilt[seeded.nextInt(spoilt.length)] = (byte) seeded.nextInt(256);
                }
                assertThat(decoder.decode(Pictures.read("spoilt", spoilt))).isInstanceOf(Decoding.class);
            }
        }
    }

    @Test
    void anEmptyAMissingFileAndAFolderEachHaveTheirSentence() throws IOException {
        Files.createFile(folder.resolve("none.png"));
        Files.createDirectory(folder.resolve("box.png"));
        assertThat(reason(Pictures.read(folder.resolve("none.png")))).contains("none.png is empty");
        assertThat(reason(Pictures.read(folder.resolve("gone.png")))).contains("There is no file gone.png");
        assertThat(reason(Pictures.read(folder.resolve("box.png")))).contains("box.png is a folder");
    }

    /** A file of a few bytes may claim any size: the claim is refused before memory is taken for it. */
    @Test
    void aPictureThatClaimsToBeHugeIsRefusedUnread() throws IOException {
        assertThat(reason(Pictures.read("huge.png", pngThatClaims(100_000, 100_000))))
                .contains("too large");
        assertThat(reason(Pictures.read("huge.png", pngThatClaims(Integer.MAX_VALUE, Integer.MAX_VALUE))))
                .isNotBlank();
    }

    @Test
    void aPictureOfAHundredMegapixelsIsRefusedUnread() throws IOException {
        assertThat(reason(Pictures.read("wall.png", pngThatClaims(10_000, 10_000))))
                .contains("too large");
    }

    /** A few kilobytes that unfold to 60 million pixels: read with few of them, and nothing is in it. */
    @Test
    void aSmallFileThatUnfoldsToALargePictureIsReadWithFewerPixels() throws IOException {
        BufferedImage empty = new BufferedImage(10_000, 6_000, BufferedImage.TYPE_BYTE_BINARY);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(empty, "png", out);
        assertThat(out.size()).isLessThan(100_000);
        Frame frame = Pictures.read("bomb.png", out.toByteArray());
        assertThat(((Frame.Picture) frame).luma().width()).isLessThan(4_000);
        assertThat(decoder.decode(frame)).isEqualTo(new Decoding.Nothing());
    }

    /** A comment of 256 million letters, packed into a quarter of a million bytes, in front of a card. */
    @Test
    void aCommentThatUnfoldsToFarTooMuchIsPassedOver() throws IOException {
        byte[] card = bytes("png");
        int afterHeader = 8 + 25;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(card, 0, afterHeader);
        ByteArrayOutputStream comment = new ByteArrayOutputStream();
        comment.write("zTXtComment\0\0".getBytes(StandardCharsets.ISO_8859_1));
        try (DeflaterOutputStream packed = new DeflaterOutputStream(comment)) {
            for (int i = 0; i < 256; i++) {
                packed.write(new byte[1_000_000]);
            }
        }
        chunk(comment.toByteArray(), new DataOutputStream(out));
        out.write(card, afterHeader, card.length - afterHeader);
        assertThat(decoder.decode(Pictures.read("card.png", out.toByteArray())).text())
                .isPresent();
    }

    @Test
    void aPictureOfOnePixelHoldsNothing() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(new BufferedImage(1, 1, BufferedImage.TYPE_INT_RGB), "png", out);
        assertThat(decoder.decode(Pictures.read("dot.png", out.toByteArray()))).isEqualTo(new Decoding.Nothing());
    }

    @Test
    void aLargePhotographIsReadWithFewerPixels() throws IOException {
        BufferedImage photograph = new BufferedImage(6000, 4000, BufferedImage.TYPE_BYTE_GRAY);
        photograph.getGraphics().drawImage(DecoderTest.card(24, 10), 2000, 1500, null);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(photograph, "png", out);
        Frame frame = Pictures.read("wall.png", out.toByteArray());
        assertThat(((Frame.Picture) frame).luma().width()).isEqualTo(3000);
        assertThat(decoder.decode(frame).text()).isPresent();
    }

    @Test
    void aPastedPictureIsRead() {
        assertThat(decoder.decode(Pictures.of(DecoderTest.card(5, 0))).text()).isPresent();
    }

    /** ITU-R BT.601: brightness is 0.299 red + 0.587 green + 0.114 blue. */
    @ParameterizedTest
    @ValueSource(
            ints = {
                BufferedImage.TYPE_3BYTE_BGR,
                BufferedImage.TYPE_INT_RGB,
                BufferedImage.TYPE_INT_ARGB,
                BufferedImage.TYPE_INT_BGR,
                BufferedImage.TYPE_4BYTE_ABGR
            })
    void everyKindOfRasterGivesTheSameBrightness(int kind) {
        BufferedImage image = new BufferedImage(16, 16, kind);
        Random seeded = new Random(601);
        for (int i = 0; i < 256; i++) {
            Color colour = new Color(seeded.nextInt(0x1000000));
            image.setRGB(i % 16, i / 16, colour.getRGB());
            double expected = 0.299 * colour.getRed() + 0.587 * colour.getGreen() + 0.114 * colour.getBlue();
            assertThat((double) Luma.of(image).at(i % 16, i / 16)).isEqualTo(expected, within(1.0));
        }
    }

    @Test
    void aPartOfAPictureIsReadAsThatPart() {
        BufferedImage image = new BufferedImage(10, 10, BufferedImage.TYPE_3BYTE_BGR);
        image.setRGB(7, 6, Color.WHITE.getRGB());
        assertThat(Luma.of(image.getSubimage(5, 5, 4, 4)).at(2, 1)).isEqualTo(255);
        assertThat(Luma.of(image.getSubimage(5, 5, 4, 4)).at(0, 0)).isZero();
    }

    @Test
    void whatIsSeeThroughLiesOnWhitePaper() {
        BufferedImage image = new BufferedImage(2, 1, BufferedImage.TYPE_INT_ARGB);
        image.setRGB(1, 0, 0xFF000000);
        assertThat(Luma.of(image).at(0, 0)).isEqualTo(255);
        assertThat(Luma.of(image).at(1, 0)).isZero();
    }

    private static byte[] bytes(String kind) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ImageIO.write(DecoderTest.card(8, 0), kind, out);
        return out.toByteArray();
    }

    /** The signature and header of a PNG file (W3C, Portable Network Graphics) and nothing after it. */
    private static byte[] pngThatClaims(int width, int height) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeLong(0x89504E470D0A1A0AL);
        ByteArrayOutputStream chunk = new ByteArrayOutputStream();
        DataOutputStream header = new DataOutputStream(chunk);
        header.write("IHDR".getBytes(StandardCharsets.US_ASCII));
        header.writeInt(width);
        header.writeInt(height);
        header.write(new byte[] {8, 2, 0, 0, 0});
        chunk(chunk.toByteArray(), out);
        return bytes.toByteArray();
    }

    private static void chunk(byte[] kindAndContent, DataOutputStream out) throws IOException {
        out.writeInt(kindAndContent.length - 4);
        out.write(kindAndContent);
        CRC32 check = new CRC32();
        check.update(kindAndContent);
        out.writeInt((int) check.getValue());
    }

    private static String reason(Frame frame) {
        return Words.english().say(new Decoder().decode(frame).reason().orElseThrow());
    }
}
