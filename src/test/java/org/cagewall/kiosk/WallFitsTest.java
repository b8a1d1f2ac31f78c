package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Component;
import java.awt.Rectangle;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.swing.JComponent;
import javax.swing.SwingUtilities;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.kit.Legible;
import org.cagewall.kiosk.kit.wall.Tile;
import org.cagewall.kiosk.shell.Layers;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A wall of four rows and eight columns on the usual tablet and on smaller ones: no tile of it is ever cut. */
class WallFitsTest {

    @TempDir
    Path folder;

    private Desk desk;
    private Kiosk kiosk;
    private Layers stage;

    @BeforeEach
    void open() {
        desk = TestDesk.empty(folder.resolve("room"));
        TestDesk.tell(desk, """
                {"deed":"person-added","person":"Ines","role":"owner","phone":"0555 0142"}
                {"deed":"wall-added","wall":"Long wall","rows":4,"columns":8,"by":"Ines"}
                """);
        List<String> cages = Stream.of("A", "B", "C", "D")
                .flatMap(row -> IntStream.rangeClosed(1, 8).mapToObj(column -> row + column))
                .toList();
        for (int i = 0; i < cages.size(); i++) {
            String name = cages.get(i).equals("B3") ? "Quarantine" : cages.get(i);
            TestDesk.tell(desk, """
                    {"deed":"cage-added","cage":"%s","wall":"Long wall","row":%d,"column":%d,"use":"breeding","by":"Ines"}
                    """.formatted(name, i / 8 + 1, i % 8 + 1));
        }
        TestDesk.tell(desk, """
                {"deed":"bird-added","bird":"HB 24-001","sex":"cock","cage":"Quarantine","by":"Ines"}
                """);
    }

    @AfterEach
    void close() {
        desk.close();
    }

    @Test
    void aWallOfFourRowsIsShownAndTurnedByWholeRowsOnTheUsualTablet() {
        Painted painted = painted(1280, 800).png("wall-four-rows").assertFit();
        assertThat(shown(painted)).isNotEmpty().allMatch(WallFitsTest::isWhole).hasSize(24);

        painted.press("wall.down").png("wall-four-rows-below");
        assertThat(shown(painted)).isNotEmpty().allMatch(WallFitsTest::isWhole);
        assertThat(names(painted)).contains("tile.D1", "tile.D8");
    }

    @Test
    void onASmallTabletAWallIsShownPieceByPieceAndEveryCageCanBeReached() {
        Painted painted = painted(1024, 600).png("wall-small");
        assertThat(shown(painted)).isNotEmpty().allMatch(WallFitsTest::isWhole);
        assertThat(names(painted)).contains("tile.A1", "tile.A4").doesNotContain("tile.A8");

        painted.press("walls.2").png("wall-small-right");
        assertThat(shown(painted)).isNotEmpty().allMatch(WallFitsTest::isWhole);
        assertThat(names(painted)).contains("tile.A8");
    }

    private Painted painted(int width, int height) {
        Painted painted = Painted.of(width, height, () -> {
            stage = new Layers(Words.english());
            kiosk = Kiosk.on(stage, desk, Words.english());
            return stage;
        });
        return painted.after(() -> {}).after(() -> {});
    }

    private static List<String> names(Painted painted) {
        return shown(painted).stream().map(Component::getName).toList();
    }

    /** The tiles of which anything can be seen. */
    private static List<Tile> shown(Painted painted) {
        return painted.all().stream()
                .filter(Tile.class::isInstance)
                .map(Tile.class::cast)
                .filter(tile -> !seen(tile).isEmpty())
                .toList();
    }

    private static boolean isWhole(Tile tile) {
        return seen(tile).height >= tile.getHeight() - 1
                && seen(tile).width == tile.getWidth()
                && ((Legible) tile).isWhole();
    }

    private static Rectangle seen(JComponent tile) {
        Rectangle seen = new Rectangle(0, 0, tile.getWidth(), tile.getHeight());
        for (Component part = tile; part.getParent() != null; part = part.getParent()) {
            Rectangle place = SwingUtilities.convertRectangle(
                    part.getParent(),
                    new Rectangle(
                            0, 0, part.getParent().getWidth(), part.getParent().getHeight()),
                    tile);
            seen = seen.intersection(place);
        }
        return seen;
    }
}
