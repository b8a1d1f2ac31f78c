package org.cagewall.benchmark;

import javax.swing.RepaintManager;
import org.cagewall.command.Main;
import org.cagewall.kiosk.kit.wall.Tile;

/** Starts the kiosk as its command does, until the wall has been painted. */
final class StartKiosk {

    private StartKiosk() {}

    public static void main(String[] args) {
        RepaintManager.setCurrentManager(new FirstPaint(part -> part instanceof Tile && part.isShowing()));
        Main.main(args);
    }
}
