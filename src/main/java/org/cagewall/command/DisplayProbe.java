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

    /** What is known of the display before a window is opened on it. */
    enum Display {
        ANSWERS,
        /** None was named. */
        NONE,
        /** One was named and does not answer, as while a desktop ends. */
        GONE
    }

    static Display look() {
        if (isLocalDisplayDead(System.getenv("DISPLAY"))) {
            System.setProperty("java.awt.headless", "true");
            return Display.GONE;
        }
        if (GraphicsEnvironment.isHeadless()) {
            return Display.NONE;
        }
        try {
            boolean hasScreens =
                    GraphicsEnvironment.getLocalGraphicsEnvironment().getScreenDevices().length > 0;
            return hasScreens ? Display.ANSWERS : Display.GONE;
        } catch (HeadlessException | AWTError | LinkageError e) {
            return Display.GONE;
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
