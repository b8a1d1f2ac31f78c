package org.cagewall.scan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Image;
import java.awt.image.AbstractMultiResolutionImage;
import java.awt.image.BaseMultiResolutionImage;
import java.awt.image.BufferedImage;
import java.awt.image.ImageObserver;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
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

    @ParameterizedTest
    @ValueSource(strings = {"tif", "wbmp"})
    void noOtherKindIsEvenTried(String kind) throws IOException {
        BufferedImage card = new BufferedImage(80, 80, BufferedImage.TYPE_BYTE_BINARY);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        assertThat(ImageIO.write(card, kind, out)).isTrue();
        assertThat(reason(Pictures.read("card." + kind, out.toByteArray()))).contains("no picture that can be read");
    }

    /** It has no length, and no end. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void whatIsNoFileIsNotRead() {
        assertThat(reason(Pictures.read(Path.of("/dev/zero")))).contains("no picture that can be read");
    }

    @Test
    void aPastedPictureOfAnotherKindIsDrawnFirst() {
        BufferedImage card = DecoderTest.card(5, 0);
        Image other = new BaseMultiResolutionImage(card);

        assertThat(decoder.decode(Pictures.of(other)).text()).isPresent();
    }

    /** Ten billion pixels, of which none is there. */
    @Test
    void aPastedPictureThatIsTooLargeIsNotCopied() {
        Image claims = new AbstractMultiResolutionImage() {
            @Override
            public int getWidth(ImageObserver observer) {
                return 100_000;
            }

            @Override
            public int getHeight(ImageObserver observer) {
                return 100_000;
            }

            @Override
            public Image getResolutionVariant(double width, double height) {
                throw new AssertionError("it was copied");
            }

            @Override
            public List<Image> getResolutionVariants() {
                throw new AssertionError("it was copied");
            }

            @Override
            protected Image getBaseImage() {
                throw new AssertionError("it was copied");
            }
        };
        assertThat(reason(Pictures.of(claims))).contains("pasted picture is too large");
    }

    @Test
    void whatAPictureIsCalledDoesNotMatter() throws IOException {
        Path file = folder.resolve("card.png");
        Files.write(file, bytes("jpg"));
        assertThat(decoder.decode(Pictures.read(file)).text()).isPresent();
    }

    @ParameterizedTest
    @MethodSource("org.cagewall.scan.BadPictures#all")
    void whatIsNoPictureOrTooLargeOrHoldsNoCardSaysSo(BadPictures.Bad bad) {
        assertThat(reason(Pictures.read(bad.name(), bad.bytes()))).contains(bad.said());
    }

    /** A picture of 60 million pixels is read with few of them. */
    @Test
    void aSmallFileThatUnfoldsToALargePictureIsReadWithFewerPixels() {
        BadPictures.Bad large = BadPictures.all().stream()
                .filter(bad -> bad.name().equals("large.png"))
                .findFirst()
                .orElseThrow();
        assertThat(large.bytes()).hasSizeLessThan(100_000);
        assertThat(((Frame.Picture) Pictures.read(large.name(), large.bytes()))
                        .luma()
                        .width())
                .isLessThan(4_000);
    }

    @Test
    void whateverIsInAFileItGetsAnAnswer() throws IOException {
        Random seeded = new Random(1);
        for (String kind : new String[] {"png", "jpg", "gif", "bmp", "tif"}) {
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
        assertThat(reason(Pictures.read("huge.png", BadPictures.pngThatClaims(100_000, 100_000))))
                .contains("too large");
        assertThat(reason(Pictures.read("huge.png", BadPictures.pngThatClaims(Integer.MAX_VALUE, Integer.MAX_VALUE))))
                .isNotBlank();
    }

    /** A comment of 256 million letters, packed into a quarter of a million bytes, in front of a card. */
    @Test
    void aCommentThatUnfoldsToFarTooMuchIsPassedOver() throws IOException {
        byte[] card = bytes("png");
        int afterHeader = 8 + 25;
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(card, 0, afterHeader);
        ByteArrayOutputStream comment = new ByteArrayOutputStream();
        comment.write("Comment\0\0".getBytes(StandardCharsets.ISO_8859_1));
        comment.write(BadPictures.packed());
        BadPictures.chunk("zTXt", comment.toByteArray(), new DataOutputStream(out));
        out.write(card, afterHeader, card.length - afterHeader);
        assertThat(decoder.decode(Pictures.read("card.png", out.toByteArray())).text())
                .isPresent();
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

    private static String reason(Frame frame) {
        return Words.english().say(new Decoder().decode(frame).reason().orElseThrow());
    }
}
