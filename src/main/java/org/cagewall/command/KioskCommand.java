package org.cagewall.command;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParentCommand;

/** Opens the kiosk. */
@Command(
        name = "kiosk",
        header = "Opens the kiosk, full screen; also what happens without any command.",
        description = "On a machine without a display it paints its screens into a folder instead.")
final class KioskCommand implements Callable<Integer> {

    @ParentCommand
    private Cagewall cagewall;

    @Mixin
    private KioskOptions options;

    @Override
    public Integer call() {
        return new Opening(cagewall, options).open();
    }
}
