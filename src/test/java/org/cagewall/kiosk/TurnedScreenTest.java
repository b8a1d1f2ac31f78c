package org.cagewall.kiosk;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Rectangle;
import java.awt.Window;
import java.nio.file.Path;
import java.util.Optional;
import javax.swing.SwingUtilities;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.kit.NavBar;
import org.cagewall.kiosk.shell.EventThread;
import org.cagewall.kiosk.shell.WindowMode;
import org.cagewall.text.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * A screen that was turned or unplugged leaves the window in a place and a size that are no longer the screen's. The
 * kiosk's own pulse finds that out.
 */
@RequiresDisplay
class TurnedScreenTest {

    private static final EventThread EVENTS = new EventThread();

    @TempDir
    Path folder;

    @Test
    void afterTheScreenWasTurnedTheKioskFillsItAgainWithItsBarAtTheBottom() {
        try (Desk desk = TestDesk.furnished(folder);
                Live live = open(desk, Optional.empty())) {
            Rectangle screen = screen(live);
            fills(live, screen);

            turned(live, new Rectangle(0, 0, screen.height, screen.width));
            turned(live, new Rectangle(40, 30, 640, 480));

            fills(live, screen);
            assertThat(live.find("nav", NavBar.class).getWidth()).isEqualTo(screen.width);
        }
    }

    @Test
    void whereItsScreenWasUnpluggedTheKioskGoesToTheMainOne() {
        try (Desk desk = TestDesk.furnished(folder);
                Live live = open(desk, Optional.of("a screen that is not there"))) {
            Rectangle screen = screen(live);

            turned(live, new Rectangle(screen.width, 0, 1024, 600));

            fills(live, screen);
        }
    }

    private static Live open(Desk desk, Optional<String> screen) {
        return Live.open(() -> Kiosk.open(desk, new WindowMode.FullScreen(screen), Words.english(), () -> {})
                .shell()
                .orElseThrow());
    }

    private static Rectangle screen(Live live) {
        return window(live)
                .getGraphicsConfiguration()
                .getDevice()
                .getDefaultConfiguration()
                .getBounds();
    }

    private static void turned(Live live, Rectangle left) {
        EVENTS.finish(() -> window(live).setBounds(left));
    }

    private static void fills(Live live, Rectangle screen) {
        live.waitUntil(
                "the window fills the screen", () -> window(live).getBounds().equals(screen));
        live.waitUntil(
                "the stage fills the window",
                () -> live.shell().stage().getSize().equals(screen.getSize()));
    }

    private static Window window(Live live) {
        return SwingUtilities.getWindowAncestor(live.shell().stage());
    }
}
