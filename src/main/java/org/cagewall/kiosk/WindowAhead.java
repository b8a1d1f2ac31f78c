package org.cagewall.kiosk;

import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.Optional;
import org.cagewall.kiosk.kit.wall.Tile;
import org.cagewall.kiosk.kit.wall.TileFace;
import org.cagewall.kiosk.shell.KioskSettings;
import org.cagewall.kiosk.shell.Shell;
import org.cagewall.kiosk.shell.WindowMode;
import org.cagewall.kiosk.theme.Light;
import org.cagewall.text.Words;

/**
 * What can be had ready of the kiosk while the record is still being opened: its look, its window, not yet shown, and
 * whatever the first painting must load. Used on the event thread.
 */
public final class WindowAhead {

    private final KioskSettings settings;
    private final WindowMode mode;
    private final Words words;
    private Optional<Shell> shell = Optional.empty();

    WindowAhead(KioskSettings settings, WindowMode mode, Words words) {
        this.settings = settings;
        this.mode = mode;
        this.words = words;
    }

    void prepare() {
        Light.DAY.start(settings.textSize());
        Shell made = new Shell(words, mode);
        made.rehearse();
        paintATile();
        shell = Optional.of(made);
    }

    /** The window, in this light and not yet shown. */
    Shell shellIn(Light light) {
        if (shell.isEmpty()) {
            prepare();
        }
        if (light != Light.DAY) {
            light.shine();
        }
        return shell.orElseThrow();
    }

    private static void paintATile() {
        Tile tile = new Tile("-", new TileFace("A1", "-", "-", "-", TileFace.State.LATE), () -> {});
        tile.setSize(tile.getPreferredSize());
        BufferedImage unseen = new BufferedImage(tile.getWidth(), tile.getHeight(), BufferedImage.TYPE_INT_RGB);
        Graphics2D brush = unseen.createGraphics();
        tile.paint(brush);
        brush.dispose();
    }
}
