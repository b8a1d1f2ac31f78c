package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import javax.imageio.ImageIO;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The pictures of the main screens, as a machine without a display paints them. */
class PicturesTest {

    @TempDir
    Path folder;

    @Test
    void everyPictureShowsAWholeScreen() throws IOException {
        try (Desk desk = TestDesk.demo(folder.resolve("room"))) {
            List<Path> painted = Pictures.paint(desk, Words.english(), folder.resolve("pictures"));

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
