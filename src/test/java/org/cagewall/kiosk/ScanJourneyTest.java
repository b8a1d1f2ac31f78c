package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.Properties;
import javax.imageio.ImageIO;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.CameraSettings;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.room.CardFaces;
import org.cagewall.room.care.How;
import org.cagewall.room.care.LogEntry;
import org.cagewall.scan.SymbolPictures;
import org.junit.jupiter.api.Test;

/** A walk along the cages with a camera, in a real window; a folder of pictures stands in for the camera. */
@RequiresDisplay
class ScanJourneyTest extends InAWindow {

    @Override
    void make(Path room) {
        try (Desk before = TestDesk.furnished(room)) {
            Files.createDirectories(pictures());
            SymbolPictures.write(pictures().resolve("1.png"), code(before, "A1"));
            SymbolPictures.write(pictures().resolve("2.png"), code(before, "A2"));
            Properties settings = new Properties();
            settings.setProperty("camera", "folder");
            settings.setProperty("camera-folder", pictures().toString());
            settings.setProperty("camera-folder-rate", "100");
            try (var out = Files.newBufferedWriter(before.folder().kioskProperties())) {
                settings.store(out, null);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void cardsBeforeTheCameraOpenTheirCagesInTurnAndAChecksOnThemAreTellsOfScans() throws IOException {
        live.press("scan")
                .read("Cage A1")
                .press("all-well")
                .read("A1: all well")
                .picture("scan-1-cage");
        live.press("scan").read("Cage A2").press("all-well").read("A2: all well");
        live.press("nav.wall").press("tile.A4").press("all-well").read("A4: all well");

        hold(wall());
        live.press("scan").read("in the frame").picture("scan-2-large");
        live.press("small-on")
                .see("small-off")
                .press("nav.wall")
                .see("live-small")
                .read("in the frame");
        live.waitUntil("the small view is kept", () -> small() == CameraSettings.SmallView.ON);
        live.picture("scan-3-small-wall");
        hold(SymbolPictures.of(code(desk, "A3")));
        live.read("Cage A3").see("live-small").press("all-well").read("A3: all well");
        live.waitUntil("the page can be touched again", () -> live.canPress("all-well"))
                .picture("scan-4-small-cage");
        hold(SymbolPictures.of(code(desk, "A2"), code(desk, "A1")));
        live.read("This is cage A2. Another code was in view").picture("scan-5-two-cards");
        hold(wall());
        live.press("nav.today")
                .see("live-small")
                .press("nav.ahead")
                .gone("live-small")
                .press("nav.wall")
                .press("small-away")
                .gone("live-small");
        live.press("tile.A3").press("all-well").read("A3: all well");
        live.waitUntil("the small view is put away", () -> small() == CameraSettings.SmallView.OFF);

        leaveAndReopen();
        assertThat(hows("A1")).containsExactly(How.SCAN);
        assertThat(hows("A2")).containsExactly(How.SCAN);
        assertThat(hows("A4")).containsExactly(How.HAND);
        assertThat(hows("A3")).containsExactly(How.HAND, How.SCAN);
    }

    private CameraSettings.SmallView small() {
        return KioskSettings.read(desk.folder().kioskProperties()).camera().small();
    }

    /** How today's checks of a cage were made that this journey recorded, the last one first. */
    private List<How> hows(String cage) {
        long id = desk.room().cage(cage).orElseThrow().id();
        return TestDesk.newest(desk, 5).stream()
                .filter(entry -> entry.deed().equals("check") && entry.cages().contains(id))
                .map(LogEntry::how)
                .flatMap(Optional::stream)
                .toList();
    }

    /** From now on this alone is before the camera. */
    private void hold(BufferedImage picture) throws IOException {
        Path made = folder.resolve("next.png");
        ImageIO.write(picture, "png", made.toFile());
        Files.move(made, pictures().resolve("1.png"), StandardCopyOption.REPLACE_EXISTING);
        Files.deleteIfExists(pictures().resolve("2.png"));
    }

    private static BufferedImage wall() {
        BufferedImage wall = new BufferedImage(640, 480, BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = wall.createGraphics();
        for (int x = 0; x < 640; x += 16) {
            brush.setColor(x % 32 == 0 ? new Color(0xb8b4a8) : new Color(0x6f6c64));
            brush.fillRect(x, 0, 16, 480);
        }
        brush.dispose();
        return wall;
    }

    private Path pictures() {
        return folder.resolve("before the camera");
    }

    private static String code(Desk desk, String cage) {
        return CardFaces.code(desk.room(), desk.room().cage(cage).orElseThrow()).text();
    }
}
