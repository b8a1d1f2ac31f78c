package org.cagewall.command;

import java.awt.AWTError;
import java.awt.GraphicsEnvironment;
import java.awt.HeadlessException;
import java.io.IOException;
import java.net.UnixDomainSocketAddress;
import java.nio.channels.SocketChannel;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Finds out whether a window can be opened here. On Unix it knocks at the display's own socket first, since Java cannot
 * paint at all any more once it has tried a display that does not answer. Stateless; the thread the process starts with.
 */
final class DisplayProbe {

    private static final Pattern LOCAL_DISPLAY = Pattern.compile("(?:unix)?:(\\d{1,5})(?:\\.\\d+)?");
    private static final String SOCKETS = "/tmp/.X11-unix/X";

    private DisplayProbe() {}

    static boolean findsADisplay() {
        if (isLocalDisplayDead(System.getenv("DISPLAY"))) {
            System.setProperty("java.awt.headless", "true");
        }
        if (GraphicsEnvironment.isHeadless()) {
            return false;
        }
        try {
            return GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
        } catch (HeadlessException | AWTError | LinkageError e) {
            return false;
        }
    }

    /** Whether this is a display of this very machine and nothing answers there. */
    static boolean isLocalDisplayDead(String display) {
        Matcher local = LOCAL_DISPLAY.matcher(display == null ? "" : display);
        if (!local.matches()) {
            return false;
        }
        try (SocketChannel knock = SocketChannel.open(UnixDomainSocketAddress.of(SOCKETS + local.group(1)))) {
            return !knock.isConnected();
        } catch (IOException | UnsupportedOperationException e) {
            return true;
        }
    }
}
