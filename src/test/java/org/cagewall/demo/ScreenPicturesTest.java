package org.cagewall.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.room.card.CardCode;
import org.cagewall.scan.Decoder;
import org.cagewall.scan.Meaning;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pictures of the main screens, as a machine without a display paints them. */
class ScreenPicturesTest {

    @TempDir
    static Path folder;

    private static Desk desk;
    private static List<Path> painted;

    @BeforeAll
    static void paint() {
        desk = TestDesk.demo(folder.resolve("room"));
        painted = ScreenPictures.paint(desk, Words.english(), folder.resolve("pictures"));
    }

    @AfterAll
    static void close() {
        desk.close();
    }

    @Test
    void everyPictureShowsAWholeScreen() throws IOException {
        assertThat(painted).hasSizeGreaterThan(10);
        for (Path file : painted) {
            BufferedImage picture = ImageIO.read(file.toFile());
            assertThat(picture.getWidth()).isEqualTo(1280);
            assertThat(picture.getHeight()).isEqualTo(800);
            assertThat(coloursInTheCorners(picture))
                    .as("ground and bar of %s", file)
                    .doesNotContain(0xFF000000);
            assertThat(colours(picture)).as("parts of %s", file).hasSizeGreaterThan(20);
        }
    }

    @Test
    void theCameraOnTheScanScreenSeesACardOfTheRoom() {
        String text = new Decoder()
                .decode(org.cagewall.scan.Pictures.read(picture("scan")))
                .text()
                .orElseThrow();

        assertThat(Meaning.of(CardCode.read(text), desk.room())).isInstanceOf(Meaning.Opens.class);
    }

    /** Two places are used already, so nothing is printed on the upper row. */
    @Test
    void thePaperShowsAPartUsedSheet() throws IOException {
        BufferedImage paper = ImageIO.read(picture("cards-paper").toFile());

        assertThat(printed(paper)).isNotEmpty().noneMatch(y -> y < 200);
    }

    /** The rows of the picture in which a printed card's black stands. */
    private static List<Integer> printed(BufferedImage paper) {
        return IntStream.range(92, 600)
                .filter(y -> IntStream.range(24, 504)
                                .filter(x -> (paper.getRGB(x, y) & 0xFFFFFF) == 0)
                                .count()
                        > 20)
                .boxed()
                .toList();
    }

    private static Path picture(String name) {
        return painted.stream()
                .filter(file -> file.endsWith(name + ".png"))
                .findFirst()
                .orElseThrow();
    }

    private static Set<Integer> coloursInTheCorners(BufferedImage picture) {
        return Set.of(picture.getRGB(4, 4), picture.getRGB(picture.getWidth() - 4, picture.getHeight() - 6));
    }

    private static Set<Integer> colours(BufferedImage picture) {
        Set<Integer> colours = new HashSet<>();
        for (int y = 0; y < picture.getHeight(); y += 3) {
            for (int x = 0; x < picture.getWidth(); x += 3) {
                colours.add(picture.getRGB(x, y));
            }
        }
        return colours;
    }
}
