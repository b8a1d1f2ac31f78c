package org.cagewall.command;

import java.util.Optional;
import org.cagewall.kiosk.shell.WindowMode;
import picocli.CommandLine.Option;

/** How the kiosk is opened, with the command's name or without. Filled once, when the command line is read. */
final class KioskOptions {

    @Option(
            names = "--window",
            paramLabel = "WxH",
            converter = WindowSize.class,
            description = "A window of that size instead of the full screen.")
    private Optional<WindowMode.Window> window;

    @Option(names = "--demo", description = "An invented birdroom, in a folder of its own.")
    private boolean demo;

    WindowMode mode() {
        return window.<WindowMode>map(size -> size).orElseGet(() -> new WindowMode.FullScreen(Optional.empty()));
    }

    boolean isDemo() {
        return demo;
    }

    boolean areGiven() {
        return demo || window.isPresent();
    }
}
